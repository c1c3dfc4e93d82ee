using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts.Braces;

namespace TopLayout.Tests.Parts;

/// <summary>
/// The chain from the scale to the legs of the X, worked by hand. On 645 mm, joined at fret 14: fret 20 at 84.2, board 5 past it, hole of 102
/// mm 6 behind: from 95.2 to 197.2; a crossing 33 below it lies at 230.2. Saddle 287.3 and mean compensation 3.25: a bridge 17 before it
/// begins at 273.5 and, 36 deep, ends at 309.5.
/// </summary>
public class WorkedValueTests
{
    /// <summary>A leg of width w passes (d + R)·sin(a/2) − R − w/2 from the hole: 84·sin 48° = 62.42, 84·sin 49° = 63.40, less 51 and 4.</summary>
    [Theory]
    [InlineData(96, 7.42)]
    [InlineData(98, 8.40)]
    public void Legs_FromTheHole_KeepTheWorkedClearance(double angle, double clearance)
    {
        var legs = HoleClearanceCheck.Of(Worked(angle, "below_hole = 33")).Single(f => f.Subject == "X legs");

        Check.Near(clearance, legs.Measured!.Value.Value, 0.005, $"{angle} degrees");
        Assert.Equal(Severity.Pass, legs.Severity);
    }

    /// <summary>43.4 and 79.4 mm behind the crossing, times tan 48.5° = 1.130.</summary>
    [Fact]
    public void Legs_AtTheBridgesEdges_StandAt49And90()
    {
        var layout = Worked(97, "below_hole = 33");
        var design = layout.Design;

        Check.Near(49, XBrace.OffsetAt(design, layout.Hole, Bridge.FrontFromNeckEdge(design)), 0.5, "front");
        Check.Near(90, XBrace.OffsetAt(design, layout.Hole, Bridge.RearFromNeckEdge(design)), 0.5, "rear");
        Check.Near(230.2, -XBrace.Crossing(design, layout.Hole).Y, 0.05, "crossing");
    }

    /// <summary>273.56 − 64/1.1303 = 216.94, only 19.8 below the hole: there the legs pass at 70.79·sin 48.5° − 55 = −1.98.</summary>
    [Fact]
    public void Legs_At64BeforeTheBridge_CutTheHole()
    {
        var layout = Worked(97, "at_bridge_front = 64");

        Check.Near(20, -XBrace.Crossing(layout.Design, layout.Hole).Y - layout.Hole.FarEdge, 0.5, "below the hole");
        var legs = HoleClearanceCheck.Of(layout).Single(f => f.Subject == "X legs");
        Assert.Equal(Severity.Fail, legs.Severity);
        Check.Near(-1.98, legs.Measured!.Value.Value, 0.01, "clearance");
    }

    /// <summary>The plate stops (w/2 + gap)/cos(a/2) short of the legs: front edge at 271.56, 41.41 behind the crossing: 41.41·1.1303 − 4.5/cos 48.5°.</summary>
    [Fact]
    public void BridgePlate_BetweenTheLegs_StopsShortOfThem()
    {
        var layout = Worked(97, "below_hole = 33");

        var front = layout.Find(BridgePlate.Name)!.Footprint.Edges.Single(e => e.Label == "front edge");
        Check.Near(2 * ((41.41 * Axis.Tan(48.5)) - (4.5 / Axis.Cos(48.5))), front.Length, 0.02, "front edge");
    }

    /// <summary>Saddles as shares of the body, 14 and 12 frets to it: 287.3 of 500, 325 of 487.</summary>
    [Theory]
    [InlineData("auditorium", 0.575)]
    [InlineData("classical", 0.667)]
    public void Saddle_OnTheBody_LiesAtItsShare(string preset, double share)
    {
        Check.Near(share, SaddlePlaceCheck.Of(Built.Preset(preset)).Single().Measured!.Value.Value, 0.001, preset);
    }

    private static Layout Worked(double angle, string crossing) => Built.Preset("auditorium", t => t
        .Replaced("diameter = 100", "diameter = 102")
        .Replaced("below_hole = 33", crossing)
        .Replaced("angle = 97", FormattableString.Invariant($"angle = {angle}"))
        .Replaced("depth = 34", "depth = 36")
        .Replaced("front_to_saddle = 10", "front_to_saddle = 17"));
}
