using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;
using TopLayout.Tests.Plans;

namespace TopLayout.Tests.Parts;

public class TrussRodKeyTests
{
    /// <summary>
    /// By hand: fret 19 of 628 lies 418.43 from the nut, 104.43 from fret 12; 5 more to the board's end, 4 to the hole: 113.43. The block's face
    /// is 2 and 35 from the edge, the slot ends 14 further, at 51. Tongue 8 and brace 16 thick, less 4.
    /// </summary>
    [Fact]
    public void Key_BehindTongueAndBrace_NeedsANotchInBoth()
    {
        var (far, way) = TrussRodKey.Of(Built.Preset("tapered-tongue"))!.Value;

        Check.Near(62.43, far!.Value, 0.01, "to the hole");
        Assert.Equal(
            "for a key through the soundhole cut a notch 4 mm deep, no wider than the key, in the glued face of the tongue (4 mm left below) and the upper transverse brace (12 mm left below); "
            + "else set the rod's nut at the headstock",
            way);
    }

    [Theory]
    [InlineData("depth = 4", "depth = 4", "nothing is in its way")]
    [InlineData("depth = 4", "depth = 3", "nothing is in its way")]
    public void Key_WithNothingBetween_ComesThroughTheHole(string from, string to, string ends) =>
        Assert.EndsWith(ends, Way(t => t.Without("[tongue]").Without("[transverse_brace]").Replaced(from, to)), StringComparison.Ordinal);

    /// <summary>Of a brace 6 high a slot 4 deep leaves 2.</summary>
    [Fact]
    public void Key_ThatWouldWeakenABrace_GoesToTheHeadstock() => Assert.Equal(
        "a groove 4 mm deep on to the soundhole leaves less than 3 mm of the upper transverse brace: set the rod's nut at the headstock",
        Way(t => t.Replaced("above_hole = 20\nwidth = 10\nheight = 16", "above_hole = 20\nwidth = 10\nheight = 6")));

    /// <summary>A plate as thin as the slot is deep is cut in two.</summary>
    [Fact]
    public void Key_BehindAFlatBrace_PartsIt() => Assert.Contains(
        "and through the flat brace from face to face; else",
        Way(t => t.Without("[tongue]").With("[flat_brace]\nlength = 120\nwidth = 20\nthickness = 3")),
        StringComparison.Ordinal);

    [Fact]
    public void Key_BesideTheHole_GoesToTheHeadstock() =>
        Assert.StartsWith("no soundhole lies in line with the slot", Way(t => t.Replaced("behind_fretboard = 4 ", "toward_treble = 60\nbehind_fretboard = 4 ")), StringComparison.Ordinal);

    [Fact]
    public void Key_IsInTheReportAndTheStep()
    {
        Assert.Null(TrussRodKey.Of(Built.Preset("auditorium")));
        var row = BenchNumbers.Of(Built.Preset("tapered-tongue")).Single(t => t.Key == "positions").Rows.Single(r => ((Cell.Words)r[0]).Text.StartsWith("truss-rod key", StringComparison.Ordinal));
        Check.Near(62.43, ((Cell.Length)row[1]).Mm, 0.01, "the report's");
    }

    /// <summary>The brace between slot and hole is glued before the neck end: its notch is cut first, and the step that glues it says so.</summary>
    [Fact]
    public void Brace_InTheWay_IsNamedWhereItIsGlued()
    {
        Assert.Equal([TransverseBrace.Name], TrussRodKey.BracesInTheWay(Built.Preset("tapered-tongue")).Select(b => b.Name));
        Assert.Empty(TrussRodKey.BracesInTheWay(Built.Preset("auditorium")));
        Assert.Contains("the notch for the truss rod's key in the upper transverse brace", string.Join(" ", Drawn.One("tapered-tongue", "steps", "3-bracing").Words()), StringComparison.Ordinal);
    }

    private static string Way(Func<string, string> edit) => TrussRodKey.Of(Built.Preset("tapered-tongue", edit))!.Value.Way;
}
