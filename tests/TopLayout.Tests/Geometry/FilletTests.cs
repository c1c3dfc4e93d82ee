using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class FilletTests
{
    private static readonly Contour Square = Contour.Polygon(new(0, 0), new(100, 0), new(100, 60), new(0, 60));

    // A right angle rounded by r loses r²(1 − π/4).
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void TryFillet_RightAngle_CutsOffTheKnownArea(int vertex)
    {
        var rounded = Square.TryFillet(vertex, 10, "round")!;

        Check.Near(6000 - (100 * (1 - (Math.PI / 4))), rounded.SignedArea, 1e-9);
        Check.Near(320 - 20 + (5 * Math.PI), rounded.Length, 1e-9);
        Assert.Equal(10, Assert.Single(rounded.Segments, s => s.Label == "round").Radius, 1e-12);
    }

    [Fact]
    public void TryFillet_HollowCorner_AddsTheKnownArea()
    {
        var angle = Contour.Polygon(new(0, 0), new(100, 0), new(100, 20), new(20, 20), new(20, 80), new(0, 80));

        Check.Near(angle.SignedArea + (25 * (1 - (Math.PI / 4))), angle.TryFillet(3, 5)!.SignedArea, 1e-9);
    }

    // r·tan of half the turn is cut off on each side: at most what the segments hold; 60 uses the short side up whole.
    [Fact]
    public void TryFillet_LargestThatFits_UsesASegmentUp()
    {
        Assert.Equal(4, Square.TryFillet(1, 60)!.Segments.Length);
        Assert.Null(Square.TryFillet(1, 60.001));
        Assert.Null(Square.TryFillet(1, 59.995));
        Assert.NotNull(Square.TryFillet(1, 59.98));
    }

    [Fact]
    public void TryFillet_SmoothJoint_HasNoCorner() =>
        Assert.Null(Contour.Polygon(new(0, 0), new(50, 0), new(100, 0), new(50, 80)).TryFillet(1, 5));

    [Fact]
    public void TryFillet_NoCorner_Throws()
    {
        var open = new Contour([new Vertex(default), new Vertex(new Point2(10, 0)), new Vertex(new Point2(10, 10))], isClosed: false);

        Assert.Throws<ArgumentOutOfRangeException>(() => open.TryFillet(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => open.TryFillet(2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => open.TryFillet(1, 0));
        Assert.NotNull(open.TryFillet(1, 1));
    }

    // Between the chord y = 0 and the arc of radius 50 a circle of radius 10 touches both near either end of the half disc; to reach
    // the far end it would turn by 255°.
    [Fact]
    public void TryFillet_LineAndArc_LiesAtItsRadiusFromBoth()
    {
        var half = new Contour([new Vertex(new Point2(-50, 0)), new Vertex(new Point2(50, 0), 1)], isClosed: true);
        var rounded = half.TryFillet(1, 10)!;
        var arc = rounded.Segments[1];

        // Centre at height 10, √(40² − 10²) from the middle.
        Check.Near(Math.Sqrt(1500), arc.Center.X, 1e-9);
        Check.Near(10, arc.Center.Y, 1e-9);
        Assert.Single(half.Fillets(1, 10));
    }

    [Fact]
    public void Fillets_RandomCorners_RunOnWithoutACorner()
    {
        var kinds = new HashSet<(bool, bool, bool)>();
        Trials.Run(1500, r =>
        {
            var c = RandomCurves.Contour(r, isClosed: true);
            var (vertex, radius) = (r.Next(c.Vertices.Length), r.Between(0.5, 20));
            var found = c.Fillets(vertex, radius, "fillet");
            var removed = -1.0;
            foreach (var rounded in found)
            {
                var index = rounded.Segments.ToList().FindIndex(s => s.Label == "fillet");
                var arc = rounded.Segments[index];
                var before = rounded.Segments[(index + rounded.Segments.Length - 1) % rounded.Segments.Length];
                var after = rounded.Segments[(index + 1) % rounded.Segments.Length];
                Check.Near(radius, arc.Radius, 1e-6, "radius");
                Check.Near(1, before.TangentAt(1).Dot(arc.TangentAt(0)), 1e-9, "arrives smoothly");
                Check.Near(1, arc.TangentAt(1).Dot(after.TangentAt(0)), 1e-9, "leaves smoothly");
                Check.Near(0, c.DistanceTo(arc.Start) + c.DistanceTo(arc.End), 1e-6, "ends on the contour");
                var cutOff = c.Length - (rounded.Length - arc.Length);
                Assert.True(cutOff >= removed - 1e-6);
                removed = cutOff;
                kinds.Add((before.IsArc, after.IsArc, arc.Bulge > 0));
            }
        });
        Assert.Equal(8, kinds.Count);
    }

    [Fact]
    public void TryFillet_MirroredOrReversed_IsTheSameFillet() => Trials.Run(300, r =>
    {
        var c = RandomCurves.Loop(r);
        var vertex = r.Next(c.Vertices.Length);
        var rounded = c.TryFillet(vertex, 6);
        var mirrored = c.Placed(Placement.MirroredAcrossY).TryFillet(vertex, 6);
        var reversed = c.Reversed().TryFillet((c.Vertices.Length - vertex) % c.Vertices.Length, 6);

        Check.Near(-rounded?.SignedArea ?? 0, mirrored?.SignedArea ?? 0, 1e-8, "mirrored");
        Check.Near(-rounded?.SignedArea ?? 0, reversed?.SignedArea ?? 0, 1e-8, "reversed");
    });

    [Fact]
    public void TryChamfer_RightAngle_CutsOffTheTriangle()
    {
        Check.Near(6000 - (10 * 20 / 2.0), Square.TryChamfer(2, 10, 20, "cut")!.SignedArea, 1e-9);
        Assert.Equal(4, Square.TryChamfer(2, 60, 20)!.Segments.Length);
        Assert.Null(Square.TryChamfer(2, 60.1, 20));
        Assert.Equal("cut", Square.TryChamfer(0, 10, 10, "cut")!.Segments[^1].Label);
    }

    [Fact]
    public void TryChamfer_AtAnArc_IsMeasuredAlongIt() => Trials.Run(200, r =>
    {
        var c = RandomCurves.Loop(r);
        var cut = c.TryChamfer(1, 3, 5, "cut")!.Segments[1];

        Check.Near(0, cut.Start.DistanceTo(c.PointAt(c.Segments[0].Length - 3)), 1e-9);
        Check.Near(0, cut.End.DistanceTo(c.PointAt(c.Segments[0].Length + 5)), 1e-9);
    });
}
