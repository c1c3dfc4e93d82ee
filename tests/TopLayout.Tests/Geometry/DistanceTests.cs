using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Least distances between segments, against a plain search over many points of both.</summary>
public class DistanceTests
{
    private const int Steps = 200;

    [Fact]
    public void Between_RandomSegments_IsTheLeastAPlainSearchFinds() => Trials.Run(2000, r =>
    {
        var (a, b) = (RandomCurves.Segment(r), RandomCurves.Segment(r));

        var found = Distances.Between(a, b);

        // Between two points of the search lies no more than half a step, so the search cannot be farther off than that.
        var least = Enumerable.Range(0, Steps + 1).Min(i => b.DistanceTo(a.PointAt(i / (double)Steps)));
        Assert.True(found <= least + 1e-9 && found >= least - (a.Length / Steps), $"found {found}, searched {least}");
        Check.Near(found, Distances.Between(b, a), 1e-9, "the other way round");
    });

    /// <summary>By hand: circles of radius 3 and 4 round (0, 0) and (13, 0) leave 6; the line x = 5 leaves 2; a circle in a circle leaves the ring.</summary>
    [Fact]
    public void Between_CirclesAndALine_IsTheGap()
    {
        var (small, large) = (Contour.Circle(new Point2(0, 0), 3), Contour.Circle(new Point2(13, 0), 4));
        var line = new Contour([new Vertex(new Point2(5, -50)), new Vertex(new Point2(5, 50))], isClosed: false);

        Check.Near(6, Distances.Between(small, large), 1e-12, "circles apart");
        Check.Near(2, Distances.Between(small, line), 1e-12, "circle and line");
        Check.Near(4, Distances.Between(small, Contour.Circle(new Point2(1, 0), 8)), 1e-12, "circle in a circle");
    }

    [Fact]
    public void Between_Areas_IsNothingWhereOneHoldsTheOther()
    {
        var (large, small) = (Region.Inside(Contour.Circle(new Point2(0, 0), 20)), Region.Inside(Contour.Circle(new Point2(3, 4), 2)));
        var ring = Region.Between(Contour.Circle(new Point2(0, 0), 20), Contour.Circle(new Point2(0, 0), 10));

        Check.Near(0, Distances.Between(large, small), 0, "inside");
        Check.Near(0, Distances.Between(small, large), 0, "inside, the other way round");
        Check.Near(3, Distances.Between(ring, small), 1e-12, "in the ring's hole");
        Assert.Equal(double.PositiveInfinity, Distances.Between(ring, Region.Empty));
    }
}
