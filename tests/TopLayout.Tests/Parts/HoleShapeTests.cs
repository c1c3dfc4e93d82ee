using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

/// <summary>Holes that are not round: their edges, what hangs on them, what they refuse.</summary>
public class HoleShapeTests
{
    private const string RoundHole = "diameter = 100";

    /// <summary>
    /// The four-arc oval with half axes 60 and 45, by hand: h = 75, p − q = 15; r = 75·60/120 = 37.5, R = 75·90/90 = 75. The joint lies on the line
    /// through the centres (22.5, 0) and (0, −30): direction (0.6, 0.8), so at (22.5 + 37.5·0.6, 37.5·0.8) = (45, 30).
    /// </summary>
    [Fact]
    public void Oval_HalfAxes60And45_HasTheRadiiAndJointsFoundByHand()
    {
        var oval = HoleShapes.Oval(new Point2(0, 0), 60, 45, "hole");

        Assert.Equal([37.5, 75], oval.Segments.Select(s => Math.Round(s.Radius, 9)).Distinct().Order());
        Assert.Contains(oval.Vertices, v => v.Position.IsNear(new Point2(45, 30), 1e-9));
        Assert.Contains(oval.Vertices, v => v.Position.IsNear(new Point2(-45, -30), 1e-9));
        Check.Near(120, oval.Bounds.Width, 1e-9, "width");
        Check.Near(90, oval.Bounds.Height, 1e-9, "length");
    }

    [Theory]
    [InlineData(60, 45)]
    [InlineData(45, 60)]
    [InlineData(50, 49.9)]
    [InlineData(80, 20)]
    public void Oval_AnyAxes_TurnsLeftWithoutACornerAndIsItsOwnMirrorImage(double across, double along)
    {
        var oval = HoleShapes.Oval(new Point2(3, -150), across, along, "hole");

        for (var i = 0; i < oval.Segments.Length; i++)
        {
            var (s, next) = (oval.Segments[i], oval.Segments[(i + 1) % oval.Segments.Length]);
            Check.Near(0, s.TangentAt(1).Cross(next.TangentAt(0)), 1e-9, $"corner after edge {i}");
            Assert.True(s.Bulge > 0);
            Check.Near(0, oval.DistanceTo(new Point2(6 - s.PointAt(0.3).X, s.PointAt(0.3).Y)), 1e-9, $"mirror of edge {i} in the centre line");
            Check.Near(0, oval.DistanceTo(new Point2(s.PointAt(0.3).X, -300 - s.PointAt(0.3).Y)), 1e-9, $"mirror of edge {i} across it");
        }
    }

    /// <summary>
    /// By hand: a straight side of 100 − 2·10, two quarter circles of radius 10, half a circle of radius 50 from 10 above the side. Its area is
    /// that half circle, a rectangle of 80 × 10 and two quarter circles.
    /// </summary>
    [Fact]
    public void D_OfWidth100AndLength60_HasTheAreaFoundByHand()
    {
        var edge = HoleShapes.D(new Point2(0, 0), 50, 60, towardTail: false, 10, "hole")!;

        var side = Assert.Single(edge.Segments, s => !s.IsArc);
        Check.Near(80, side.Length, 1e-9, "straight side");
        Check.Near(0, side.Start.Y, 1e-9, "its place");
        Check.Near(100, edge.Bounds.Width, 1e-9, "width");
        Check.Near(60, edge.Bounds.Max.Y, 1e-9, "far end of the bow");
        Check.Near((1250 * Math.PI) + 800 + (50 * Math.PI), edge.SignedArea, 1e-6, "area");
    }

    [Theory]
    [InlineData("neck")]
    [InlineData("tail")]
    public void D_StraightSide_LiesAtTheEndAskedFor(string end)
    {
        var hole = Built.Preset("auditorium", t => WithoutToneBars(t).Replaced(RoundHole, $"shape = \"d\"\ndiameter = 100\nlength = 60\nstraight_side = \"{end}\"")).Hole;

        var side = Assert.Single(hole.Edge.Segments, s => !s.IsArc);
        Check.Near(end == "neck" ? -hole.NearEdge : -hole.FarEdge, side.Start.Y, 1e-9, "straight side");
        Check.Near(60, hole.FarEdge - hole.NearEdge, 1e-9, "length");
        Check.Near(50, hole.HalfWidth, 1e-9, "half width");
    }

    [Theory]
    [InlineData("oval")]
    [InlineData("d")]
    public void RosetteAndReinforcement_RoundAHoleOfAnyShape_KeepTheirDistanceAllRound(string shape)
    {
        var layout = Built.Preset("auditorium", t => WithoutToneBars(t)
            .Replaced(RoundHole, $"shape = \"{shape}\"\ndiameter = 100\nlength = 80")
            .With("[hole_reinforcement]\nstyle = \"ring\"\ninset = 1\nwidth = 4"));

        var channel = layout.Find(Rosette.Name)!.Footprint;
        var (margin, width) = (layout.Design[Rosette.Margin].Value, layout.Design[Rosette.Width].Value);
        AtDistance(layout.Hole, channel.Loops[1], margin, "inner wall");
        AtDistance(layout.Hole, channel.Outer, margin + width, "outer wall");
        var ring = layout.Find(HoleReinforcement.Name)!.Footprint;
        AtDistance(layout.Hole, ring.Loops[1], 1, "hole side");
        AtDistance(layout.Hole, ring.Outer, 5, "outer edge");
    }

    [Fact]
    public void Liner_OfAnOval_LiesInsideTheEdgeByItsThickness()
    {
        var layout = Built.Preset("auditorium", t => WithoutToneBars(t).Replaced(RoundHole, "shape = \"oval\"\ndiameter = 100\nlength = 70\nliner = 1.5"));

        Assert.All(layout.HoleLiner!.Segments, s => Check.Near(1.5, layout.Hole.Edge.DistanceTo(s.PointAt(0.3)), 1e-9, "liner"));
        Assert.All(layout.HoleLiner!.Segments, s => Assert.True(layout.Hole.Edge.Contains(s.PointAt(0.3))));
    }

    [Fact]
    public void TowardTreble_MovesHoleAndRosetteSideways()
    {
        var layout = Built.Preset("auditorium", t => WithoutToneBars(t).Replaced(RoundHole, "diameter = 60\ntoward_treble = 30"));

        Check.Near(30, layout.Hole.Center.X, 1e-12, "hole");
        Check.Near(30, layout.Find(Rosette.Name)!.Footprint.Bounds.Center.X, 1e-9, "rosette");
    }

    /// <summary>By hand: a bar's long side 3 mm inside a circle of radius 50 must let it shrink by 3 mm.</summary>
    [Fact]
    public void Clearance_OfAPartOverTheEdge_IsHowFarTheHoleMustShrink()
    {
        var hole = new Hole(Contour.Circle(new Point2(0, 0), 50, "hole"));
        var bar = Region.Inside(Contour.Polygon(new(-80, 47), new(80, 47), new(80, 60), new(-80, 60)));

        Check.Near(-3, hole.ClearanceOf(bar), 1e-5, "over the edge");
        Check.Near(4, hole.ClearanceOf(bar.Placed(Placement.Moved(0, 7))), 1e-9, "beside it");
        Check.Near(-52, hole.ClearanceOf(bar.Placed(Placement.Moved(0, -49))), 1e-9, "over the centre: 2 more to its edge");
    }

    /// <summary>By hand: an oval's end lies 60 from its centre; a bar whose end lies 57 from it must let the oval shrink by 3.</summary>
    [Fact]
    public void Clearance_OfAPartOverTheEndOfAnOval_IsHowFarTheHoleMustShrink()
    {
        var hole = new Hole(HoleShapes.Oval(new Point2(0, 0), 60, 45, "hole"));
        var bar = Region.Inside(Contour.Polygon(new(57, -10), new(90, -10), new(90, 10), new(57, 10)));

        Check.Near(-3, hole.ClearanceOf(bar), 1e-5, "over the end");
        Check.Near(4, hole.ClearanceOf(bar.Placed(Placement.Moved(7, 0))), 1e-9, "beside it");
        Check.Near(-55, hole.ClearanceOf(bar.Placed(Placement.Moved(-67, 0))), 1e-9, "over the centre: 45 and 10 more to its side");
    }

    [Fact]
    public void Misfits_OfShapes_PointAtTheLinesToChange()
    {
        Assert.Equal(
            [("a hole that is not round has a `length` along the body, and none is written", "add `length`, or say `shape = \"round\"`", "shape")],
            Said("shape = \"oval\"\ndiameter = 100"));
        Assert.Equal(
            [("a round hole has a diameter, and this one has a `length` besides", "leave `length` out, or say `shape = \"oval\"` or `shape = \"d\"`", "length [soundhole]")],
            Said("diameter = 100\nlength = 80"));
        Assert.Equal(
            [("corners of radius 60 mm do not fit a D 100 mm across and 60 mm long", "make `corner_radius` 30 mm or less, or the hole larger", "corner_radius diameter")],
            Said("shape = \"d\"\ndiameter = 100\nlength = 60\ncorner_radius = 60"));

        static IReadOnlyList<(string Sentence, string? Cure, string Keys)> Said(string hole) => Built.Misfits("auditorium", t => t.WithRosette().Replaced(RoundHole, hole));
    }

    // They hang on the X, which follows the hole; and tiles are laid round round holes only.
    private static string WithoutToneBars(string text) => text.WithRosette().Without("[[tone_bar]]").Without("[[tone_bar]]");

    private static void AtDistance(Hole hole, Contour line, double mm, string what) => Assert.All(line.Segments, s =>
    {
        Check.Near(mm, hole.Edge.DistanceTo(s.PointAt(0)), 1e-7, what);
        Check.Near(mm, hole.Edge.DistanceTo(s.PointAt(0.37)), 1e-7, what);
    });
}
