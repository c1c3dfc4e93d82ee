using TopLayout.Lutherie.Findings;
using TopLayout.Plans;

namespace TopLayout.Tests.Parts.Braces;

public class AnchorTests
{
    /// <summary>The hole of the preset ends at fret 19 (108.1 mm), 3 and 86; the bridge begins at 325, the mean compensation of 1.75 later, 8 earlier.</summary>
    [Fact]
    public void Bar_ByTwoPhrases_RunsFromTheOneToTheOther()
    {
        var layout = Built.Preset("classical", t => t.Without("[fan]").Without("[closing_bars]").With(
            "[[bar]]\nfrom = \"25 mm below the soundhole edge, 60 mm to the treble\"\nto = \"1 in above the bridge front, 2 cm to the bass\"\nends = \"floating\""));

        var bar = layout.Find("bar 1")!;
        var far = Axis.Fret(650, 12, 19) + 3 + 86;
        Axis.Near(60, -(far + 25), Axis.Middle(bar, "treble end"), "from");
        Axis.Near(-20, -(325 + 1.75 - 8 - 25.4), Axis.Middle(bar, "bass end"), "to");
    }

    /// <summary>Above a thing with two edges counts from the upper, below it from the lower; the saddle is a line.</summary>
    [Theory]
    [InlineData("10 mm below the transverse brace", 108.1 + 3 - 24 + 3 + 10)]
    [InlineData("10 above the tail block", 470 - 10)]
    [InlineData("At the  Saddle", 325 + 1.75)]
    [InlineData("at lower bout", 368)]
    [InlineData("30.5 mm above tail edge", 487 - 30.5)]
    [InlineData("90 mm below the neck edge", 90)]
    public void Bar_FromALandmark_LiesAtItsDistance(string phrase, double fromNeckEdge)
    {
        var layout = Built.Preset("classical", t => t.Without("[fan]").With($"[[bar]]\nfrom = \"{phrase}\"\nangle = 90\nends = \"floating\"\nlength = 20"));

        Check.Near(-fromNeckEdge, layout.Find("bar 1")!.Footprint.Bounds.Center.Y, 0.05, phrase);
    }

    [Theory]
    [InlineData("25 mm below the soundhol edge", 17, 13, "`from` has `soundhol edge` where it needs a landmark", "did you mean `soundhole edge`?")]
    [InlineData("25 mm under the crossing", 7, 5, "`from` has `under` where it needs `above` or `below`", "above is towards the neck, below towards the tail")]
    [InlineData("below the crossing", 1, 5, "`from` has `below` where it needs a distance such as `25 mm`, `at` or `against`", "write for example `25 mm below the soundhole edge, 60 mm to the treble`")]
    [InlineData("at the crossing, 5 mm to the left", 30, 4, "`from` has `left` where it needs `bass` or `treble`", "sides are named as on a right-handed instrument's strings")]
    [InlineData("at the crossing, 5 mm", 22, 0, "`from` ends where it needs `to the bass` or `to the treble`", "the distance is from the centre line")]
    [InlineData("at the soundhole edge", 1, 2, "`from` has `at` where it needs a distance `above` or `below`, for the soundhole edge has an upper and a lower edge", "write `0 mm above the soundhole edge` or `0 mm below the soundhole edge`")]
    [InlineData("25 mm below the tone bat 1", 17, 10, "`from` has `tone bat 1` where it needs a landmark", "did you mean `tone bar 1`?")]
    [InlineData("against the X leg, 5 mm to the bass", 20, 1, "`from` has `5` where it needs a side, `bass` or `treble`", "write `X leg, bass` or `X leg, treble`")]
    [InlineData("at the tone bar 1", 1, 2, "`from` has `at` where it needs `against`, or a distance `above` or `below`, for tone bar 1 has two sides", "write `against the tone bar 1` to butt against it, or `0 mm below the tone bar 1`")]
    [InlineData("against the tail of the tone bar 1", 13, 22, "`from` has `tail of the tone bar 1` where it needs a bar, not its end", "write `against the tone bar 1`, or `at the tail of the tone bar 1`")]
    [InlineData("against the tone bar 1, 90 mm from the nut", 40, 3, "`from` has `nut` where it needs `neck edge`", "a place on a bar is told from the centre line or from the neck edge")]
    [InlineData("against the tone bar 1, 90 mm", 30, 0, "`from` ends where it needs `to the bass`, `to the treble` or `from the neck edge`", "the distance tells where on the bar's axis the place lies")]
    [InlineData("at the crossing, 5 mm to the bass side", 35, 4, "`from` has `side` where it needs the end of the phrase", "leave the rest out")]
    public void Bar_ByAnUnreadablePhrase_IsAnErrorAtTheCharacter(string phrase, int at, int length, string sentence, string cure)
    {
        var text = Built.PresetText("auditorium").With($"[[bar]]\nfrom = \"{phrase}\"\nangle = 90");
        var finding = Assert.Single(Pipeline.Check(text, "a.toml").Findings, f => f.Severity == Severity.Error);

        Assert.Equal((Rules.UnreadableAnchor, sentence, cure), (finding.Rule, finding.Sentence, finding.Cure));
        var line = Array.IndexOf(text.Split('\n'), $"from = \"{phrase}\"") + 1;
        Assert.Equal(new SourcePlace("a.toml", line, "from = \"".Length + at, length), finding.Place);
    }

    [Fact]
    public void Bar_FromALandmarkThatIsNotThere_IsLeftOutWithBothLines() => Assert.Contains(
        (
            "`to` of bar 1 starts from the crossing, and the top has none; left out of the plan",
            "add the section [x_brace], or start from another landmark",
            "to [[bar]]"),
        Built.Misfits("classical", t => t.With("[[bar]]\nfrom_neck_edge = 300\nacross = 90\nto = \"at the crossing\"")));

    [Fact]
    public void Bar_WithAPhraseAndANumberAcross_IsLeftOutWithBothLines() => Assert.Contains(
        (
            "`from` of bar 1 says a place in words, and `across` says one besides; left out of the plan",
            "leave `across` out and add `, 20 mm to the bass` to `from`",
            "across from"),
        Built.Misfits("classical", t => t.With("[[bar]]\nfrom = \"at the saddle\"\nacross = -20\nangle = 90")));
}
