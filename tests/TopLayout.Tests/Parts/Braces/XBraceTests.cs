using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts.Braces;

public class XBraceTests
{
    /// <summary>Front of the bridge: theoretical saddle S·2^(−14/12) and mean compensation, less 10; the crossing lies 48/tan 47° before it.</summary>
    [Fact]
    public void Crossing_ByTheLegsAtTheBridge_FollowsFromTheTarget()
    {
        var layout = Built.Preset("concert");
        var front = (632 * Math.Pow(2, -14 / 12.0)) + ((4.2 + 2) / 2) - 10;

        Check.Near(-(front - (48 / Axis.Tan(47))), XBrace.Crossing(layout.Design, layout.Hole).Y, 1e-9, "crossing");
        foreach (var (name, side) in (ReadOnlySpan<(string, int)>)[(XBrace.BassLeg, -1), (XBrace.TrebleLeg, 1)])
        {
            var across = layout.Find(name)!.Footprint.Outer.Segments.Where(s => s.Label is "neck side" or "tail side")
                .Average(s => s.Start.X + ((s.End.X - s.Start.X) * ((-front - s.Start.Y) / (s.End.Y - s.Start.Y))));
            Check.Near(side * 48, across, 1e-7, $"{name}, at the bridge's front edge");
        }
    }

    [Fact]
    public void Crossing_SaidEitherWay_IsTheSame()
    {
        var byTarget = Built.Preset("concert");
        var below = -XBrace.Crossing(byTarget.Design, byTarget.Hole).Y - byTarget.Hole.FarEdge;
        var byHole = Built.Preset("concert", t => t.Replaced("at_bridge_front = 48 ", FormattableString.Invariant($"below_hole = {below:R} ")));

        Check.Near(XBrace.Crossing(byTarget.Design, byTarget.Hole).Y, XBrace.Crossing(byHole.Design, byHole.Hole).Y, 1e-9, "crossing");
    }

    [Fact]
    public void Crossing_NotSaid_LiesAtTheDefaultBelowTheHole()
    {
        var layout = Built.Preset("concert", t => t.Replaced("at_bridge_front = 48 ", "# "));

        Check.Near(33, -XBrace.Crossing(layout.Design, layout.Hole).Y - layout.Hole.FarEdge, 1e-9, "below the hole");
    }

    /// <summary>By hand: from the hole's far edge to the front edge 274.6 − 186.5 = 88.2 mm, and 88.17·tan 47° = 94.55: a leg there crosses on the hole's edge, one at 100 mm beyond it.</summary>
    [Fact]
    public void Crossing_InsideTheHole_FailsWithTheMostThatFits()
    {
        // 47 + d = (6 + 47 + 3.75)/sin 47° leaves 6 mm, d = 30.6; (88.17 − 30.6)·tan 47° = 61.7.
        Assert.Contains(
            ("the X legs reach 20.1 mm over the hole's edge", "`at_bridge_front = 61.7` gives 6 mm; or open the X's angle, or make the hole smaller", "at_bridge_front diameter"),
            Built.Misfits("concert", t => t.Replaced("at_bridge_front = 48", "at_bridge_front = 100")));
    }

    /// <summary>A leg nearer than 30° to the centre line still has a neck and a tail side: what butts against it asks for them.</summary>
    [Fact]
    public void Legs_OfASteepX_KeepTheirSidesNames()
    {
        var leg = Built.Preset("auditorium", t => t.Replaced("angle = 97", "angle = 56")).Find(XBrace.TrebleLeg)!;

        Assert.Equal(["lower end", "neck side", "tail side", "upper end"], leg.Footprint.Edges.Select(e => e.Label).Distinct().Order(StringComparer.Ordinal));
    }
}
