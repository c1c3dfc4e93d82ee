using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class ContourTests
{
    // Chord 100, bulge 1e-9: sagitta 5e-8 mm, radius 2.5e10 mm. As an arc its middle came out 1e-6 mm off, at 1e-20 anywhere.
    [Theory]
    [InlineData(1e-9)]
    [InlineData(-1e-20)]
    public void Contour_ArcFlatterThanTheTolerance_IsALine(double bulge)
    {
        var segment = new Contour([new Vertex(default, bulge, "top"), new Vertex(new Point2(100, 0))], isClosed: false).Segments[0];

        Assert.False(segment.IsArc);
        Assert.Equal(new Point2(25, 0), segment.PointAt(0.25));
        Assert.Equal("top", segment.Label);
    }

    [Fact]
    public void Contour_FlatArcAboveTheTolerance_StaysAnArc() =>
        Assert.True(new Contour([new Vertex(default, 2.1e-8), new Vertex(new Point2(100, 0))], isClosed: false).Segments[0].IsArc);

    [Theory]
    [InlineData(double.NaN, 0)]
    [InlineData(double.PositiveInfinity, 0)]
    [InlineData(0, double.NaN)]
    [InlineData(0, 1.0000001)]
    public void Contour_NoNumberOrTooMuchBulge_IsRefused(double x, double bulge) => Assert.Throws<ArgumentException>(
        () => new Contour([new Vertex(new Point2(x, 0), bulge), new Vertex(new Point2(9, 9))], isClosed: false));

    [Fact]
    public void ReversedAndMirrored_Twice_AreTheIdentity() => Trials.Run(300, r =>
    {
        var c = RandomCurves.Contour(r, r.Next(2) == 0);

        Assert.Equal(c, c.Reversed().Reversed());
        Assert.Equal(c, c.Placed(Placement.MirroredAcrossY).Placed(Placement.MirroredAcrossY));
    });

    // The last vertex of an open contour carried a bulge and a label for no segment; reversing twice lost them.
    [Fact]
    public void Contour_OpenWithABulgeAtItsEnd_DropsIt()
    {
        var c = new Contour([new Vertex(default, 0.3, "a"), new Vertex(new Point2(9, 0), 0.5, "b")], isClosed: false);

        Assert.Equal(new Vertex(new Point2(9, 0)), c.Vertices[^1]);
        Assert.Equal(c, c.Reversed().Reversed());
    }

    [Fact]
    public void Placed_AnyMove_KeepsLengthAndSignsTheArea() => Trials.Run(300, r =>
    {
        var (c, placement) = (RandomCurves.Contour(r, isClosed: true), RandomCurves.Placement(r));
        var moved = c.Placed(placement);

        Check.Near(c.Length, moved.Length, 1e-9, "length");
        Check.Near(placement.Mirrored ? -c.SignedArea : c.SignedArea, moved.SignedArea, 1e-7, "area");
        Check.Near(-c.SignedArea, c.Reversed().SignedArea, 1e-8, "reversed");
    });

    [Fact]
    public void Contains_AgainstAFinePolygon_Agrees() => Trials.Run(200, r =>
    {
        var c = RandomCurves.Contour(r, isClosed: true);
        var polygon = Contour.Polygon(c.Flattened(1e-4));
        for (var i = 0; i < 50; i++)
        {
            var p = r.Next(3) == 0 ? c.Segments[r.Next(c.Segments.Length)].PointAt(0.5) + new Vec2(r.Between(-1, 1), r.Between(-1, 1)) : RandomCurves.Point(r);
            if (c.DistanceTo(p) > 2e-4)
            {
                Assert.Equal(polygon.WindingNumber(p), c.WindingNumber(p));
                Assert.Equal(-c.WindingNumber(p), c.Reversed().WindingNumber(p));
            }
        }
    });

    // The chords of the two half turns pass through the centre, where they used to turn by +180° and −180°: not contained.
    /// <summary>A point on the chord of an arc is on no border: it is where the arcs say, whichever way the chord runs.</summary>
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(0, 0.25, 0)]
    [InlineData(0, 0.75, 1)]
    [InlineData(0.6, 0, 0)]
    [InlineData(0, 1.25, 0)]
    [InlineData(0, -0.5, 0)]
    public void WindingNumber_OfACrescent_OnAndBesideItsChord(double x, double y, int expected)
    {
        // A half circle over a chord of 2, and back by an arc that rises half as high.
        var crescent = new Contour([new Vertex(new Point2(1, 0), 1), new Vertex(new Point2(-1, 0), -0.5)], isClosed: true);
        for (var degrees = 0; degrees < 360; degrees += 30)
        {
            var turn = new Placement(default, Angle.FromDegrees(degrees), false);
            var (contour, p) = (crescent.Placed(turn), turn.Apply(new Point2(x, y)));
            Assert.Equal(expected, contour.WindingNumber(p));
            Assert.Equal(-expected, contour.Reversed().WindingNumber(p));
        }
    }

    [Fact]
    public void WindingNumber_OfACircleOnTheChordOfItsHalves_IsOne()
    {
        var circle = Contour.Circle(new Point2(3, 2), 5);
        Assert.All((double[])[-1.9, 0, 3, 7.9], x => Assert.Equal(1, circle.WindingNumber(new Point2(x, 2))));
        Assert.All((double[])[-2.1, 8.1], x => Assert.Equal(0, circle.WindingNumber(new Point2(x, 2))));
    }

    [Fact]
    public void Contains_PointOnTheChordOfAnArc_IsInside()
    {
        var circle = Contour.Circle(new Point2(3, 4), 12.5);

        Assert.True(circle.Contains(new Point2(3, 4)));
        Assert.True(circle.Reversed().Contains(new Point2(3, 4)));
        Trials.Run(300, r =>
        {
            var turned = Contour.Circle(default, 10).Placed(RandomCurves.Placement(r));
            Assert.True(turned.Contains(turned.Vertices[0].Position + ((turned.Vertices[1].Position - turned.Vertices[0].Position) * r.Between(0.01, 0.99))));
        });
    }

    [Fact]
    public void Circle_Measures_AreExact()
    {
        var circle = Contour.Circle(new Point2(3, -4), 12.5);

        Assert.Equal(new Box2(new Point2(-9.5, -16.5), new Point2(15.5, 8.5)), circle.Bounds);
        Check.Near(Math.PI * 156.25, circle.SignedArea, 1e-13 * 500, "area");
        Check.Near(Math.PI * 25, circle.Length, 1e-13, "length");
        Assert.All(circle.Segments, s => Assert.Equal((new Point2(3, -4), 12.5), (s.Center, s.Radius)));
    }

    [Fact]
    public void Between_AroundAClosedContour_LengthsAddUp() => Trials.Run(300, r =>
    {
        var c = RandomCurves.Loop(r);
        var (from, to) = (c.LocationAt(r.NextDouble() * c.Length), c.LocationAt(r.NextDouble() * c.Length));
        var (there, back) = (c.Between(from, to).Sum(s => s.Length), c.Between(to, from).Sum(s => s.Length));
        var way = c.ShorterWay(from, to);

        Check.Near(c.Length, there + back, 0.06, "both ways");
        Check.Near(Math.Min(there, back), way.Sum(s => s.Length), 1e-9, "the shorter");
        Assert.Equal((from.Point, to.Point), (way[0].Start, way[^1].End));
        Assert.All(way, s => Assert.True(s.ChordLength >= Tolerances.ShortestMm || way.Count == 1));
    });
}
