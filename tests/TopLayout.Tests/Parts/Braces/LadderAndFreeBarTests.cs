using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts.Braces;

public class LadderAndFreeBarTests
{
    [Theory]
    [InlineData("below_hole = 24", 86 + 24)]
    [InlineData("above_hole = 40", -40)]
    public void LadderBar_FromTheHole_LiesAtItsDistance(string line, double behindNearEdge)
    {
        var layout = Built.Preset("classical", t => t.Without("[flat_brace]").Without("[fan]").Replaced("below_hole = 24", line).Without("[transverse_brace]"));

        var bar = layout.Find("ladder bar")!;
        Check.Near(-(Axis.Fret(650, 12, 19) + 3 + behindNearEdge), bar.Footprint.Bounds.Center.Y, 1e-7, "centre line");
        Check.Near(6, bar.Footprint.Bounds.Height, 1e-7, "width");
        Check.Near(90, bar.Grain.Degrees, 1e-9, "grain");
    }

    [Fact]
    public void LadderBar_Floating_ReachesItsHalfLengthBothWays()
    {
        var layout = Built.Preset("concert", t => t.Without("[cleats]").With("[[ladder_bar]]\nfrom_neck_edge = 455\nends = \"floating\"\nhalf_length = 30"));

        var bar = layout.Find("ladder bar")!;
        Axis.Near(-30, -455, Axis.Middle(bar, "bass end"), "bass end");
        Axis.Near(30, -455, Axis.Middle(bar, "treble end"), "treble end");
        Assert.Empty(bar.JoinedWith);
    }

    [Fact]
    public void Bar_ByAnAngle_PassesItsPointAndEndsInTheLinings()
    {
        var layout = Built.Preset("classical", t => t.Without("[fan]").With("[[bar]]\nfrom_neck_edge = 280\nacross = 20\nangle = 70"));

        var bar = layout.Find("bar 1")!;
        var sides = bar.Footprint.Edges.Where(e => e.Label is "neck side" or "tail side").ToList();
        Assert.Equal(2, sides.Count);
        Assert.All(sides, s => Check.Near(3, Math.Abs((new Point2(20, -280) - s.Start).Cross(s.TangentAt(0))), 1e-7, "half the width from the point"));
        var way = sides.Single(s => s.Label == "neck side").TangentAt(0);
        Check.Near(Axis.Tan(70), Math.Abs(way.X / way.Y), 1e-7, "angle");
        Assert.True(way.X * way.Y < 0, "its end towards the tail leans to the treble side");
        foreach (var end in bar.Footprint.Edges.Where(e => e.Label is "bass end" or "treble end"))
        {
            Check.Near(0, layout.InsideOfSides.DistanceTo(end.PointAt(0.5)), 1e-6, end.Label);
        }
    }

    [Fact]
    public void Bar_ByTwoPoints_RunsFromOneToTheOther()
    {
        var layout = Built.Preset("classical", t => t.With("[[bar]]\nfrom_neck_edge = 240\nacross = -110\nend_from_neck_edge = 330\nend_across = -125\nends = \"floating\""));

        var (neck, tail) = Axis.Of(layout.Find("bar 1")!, "neck end", "tail end");
        Axis.Near(-110, -240, neck, "neck end");
        Axis.Near(-125, -330, tail, "tail end");
    }

    [Fact]
    public void Bar_FloatingByAnAngle_LiesEvenlyAboutItsPoint()
    {
        var layout = Built.Preset("classical", t => t.With("[[bar]]\nfrom_neck_edge = 300\nacross = 130\nangle = -12\nlength = 60\nends = \"floating\""));

        var (neck, tail) = Axis.Of(layout.Find("bar 1")!, "neck end", "tail end");
        Axis.Near(130 + (30 * Axis.Sin(12)), -300 + (30 * Axis.Cos(12)), neck, "neck end");
        Axis.Near(130 - (30 * Axis.Sin(12)), -300 - (30 * Axis.Cos(12)), tail, "tail end");
    }

    [Fact]
    public void BridgePlate_WithoutAnX_IsARectangleOfItsLength()
    {
        var layout = Built.Preset("classical");

        var plate = layout.Find(BridgePlate.Name)!;
        var front = (650 * Math.Pow(2, -1)) + 1.75 - 8 - 1;
        Check.Near(140 * (28 + 1 + 2), plate.Footprint.Area, 1e-6, "area");
        Axis.Near(0, -front, Axis.Middle(plate, "front edge"), "front edge");
        Check.Near(90, plate.Grain.Degrees, 0, "grain");
    }
}
