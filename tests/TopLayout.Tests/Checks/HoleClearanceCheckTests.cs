using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Checks;

/// <summary>The preset's hole is 100 across and begins 6 behind the fretboard's end at 89.15; the bridge begins at 280.6, the block's face lies at 44.1.</summary>
public class HoleClearanceCheckTests
{
    private static readonly string[] NearTheHole =
        ["[x_brace]", "[x_cap]", "[[tone_bar]]", "[[tone_bar]]", "[bridge_plate]", "[transverse_brace]", "[flat_brace]", "[locating_pins]"];

    // Nothing but what is asked about stands near the hole.
    private static Layout Bare(string hole, Func<string, string>? edit = null) => Built.Preset(
        "auditorium",
        t => (edit ?? (s => s))(NearTheHole.Aggregate(t, (text, section) => text.Without(section)).Replaced("behind_fretboard = 6", hole)));

    [Theory]
    [InlineData(240, Severity.Fail)]
    [InlineData(228, Severity.Remark)]
    [InlineData(222, Severity.Pass)]
    public void Bridge_NearTheHole_IsMeasuredFromItsFrontEdge(int center, Severity severity)
    {
        var layout = Bare($"from_neck_edge = {center}");
        var front = Bridge.FrontFromNeckEdge(layout.Design);

        var finding = Assert.Single(HoleClearanceCheck.Of(layout), f => f.Subject == Bridge.Name);

        Check.Near(front - (center + 50), finding.Measured!.Value.Value, 1e-9, "clearance");
        Assert.Equal(severity, finding.Severity);
        Assert.NotNull(finding.Where);
    }

    [Fact]
    public void Bridge_OnTheRosette_FailsByHowDeepItStandsOnIt()
    {
        var layout = Bare("from_neck_edge = 228");
        var channel = layout.Members.First(m => m.Kind == MemberKind.Channel).Footprint.Bounds;

        var finding = Assert.Single(OverlapCheck.Of(layout), f => f.Severity == Severity.Fail);

        Assert.Equal("bridge and rosette channel", finding.Subject);
        Check.Near(-channel.Min.Y - Bridge.FrontFromNeckEdge(layout.Design), finding.Measured!.Value.Value, 1e-6, "depth");
    }

    /// <summary>A block of 110 reaches from 2.1 to 112.1, its front corners 45 to each side: they lie outside the hole, the face's middle is what reaches in.</summary>
    [Fact]
    public void Block_OverTheHole_Fails()
    {
        var layout = Bare("behind_fretboard = 6", t => t.Replaced("length = 42", "length = 110"));

        var finding = Assert.Single(HoleClearanceCheck.Of(layout), f => f.Subject == Block.Neck.Name);

        Assert.Equal(Severity.Fail, finding.Severity);
        Check.Near(layout.Hole.NearEdge - 112.1, finding.Measured!.Value.Value, 0.01, "into the hole");
        Assert.StartsWith("shorten the neck block by", finding.Cure, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tenor-ukulele", "width = 54", "width = 200", true)]
    [InlineData("tenor-ukulele", "width = 54", "width = 60", false)]
    public void Block_WiderThanTheBody_IsSaid(string preset, string line, string edited, bool isSaid)
    {
        var layout = Built.Preset(preset, t => t.Replaced(line, edited));

        Assert.Equal(isSaid, layout.Faults.Any(f => f.Subject == Block.Neck.Name && f.Rule == Rules.DrawnOtherwise && f.Severity == Severity.Fail));
    }

    /// <summary>The crossing lies 33 below the hole's edge: a cap of 66 touches it, of 70 reaches 2 over.</summary>
    [Theory]
    [InlineData(60, null)]
    [InlineData(70, -2.0)]
    public void Cap_OverTheHole_Fails(int side, double? clearance)
    {
        var layout = Built.Preset("auditorium", t => t.Replaced("side = 25", $"side = {side}"));

        var finding = HoleClearanceCheck.Of(layout).SingleOrDefault(f => f.Subject == XCap.Name);

        Assert.Equal(clearance, finding?.Measured?.Value is { } mm ? Math.Round(mm, 6) : null);
    }

    /// <summary>A hole that begins where the fretboard has 5 or 8 to go, its chord narrower than the board; glue holds the board only beside it.</summary>
    [Theory]
    [InlineData(-5, false)]
    [InlineData(-8, true)]
    public void Fretboard_OverTheHole_WarnsWhereItCoversMuch(int gap, bool warns)
    {
        var layout = Bare($"behind_fretboard = {gap}");

        var finding = HoleClearanceCheck.Of(layout).SingleOrDefault(f => f.Subject == Fretboard.Name);

        Assert.Equal(warns, finding is { Severity: Severity.Warning });

        // The segment of a circle of 50, so high: r² acos((r − h)/r) − (r − h)·√(2rh − h²).
        var (board, h) = (layout.Find(Fretboard.Name)!, (double)-gap);
        var segment = (2500 * Math.Acos((50 - h) / 50)) - ((50 - h) * Math.Sqrt((100 * h) - (h * h)));
        Check.Near(board.Footprint.Area - segment, layout.GluedArea(board).Area, 0.01, "glued");
    }
}
