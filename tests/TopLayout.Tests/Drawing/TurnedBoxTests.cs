using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Tests.Geometry;

namespace TopLayout.Tests.Drawing;

public class TurnedBoxTests
{
    /// <summary>A box 4 by 2 about (10, 5), turned by 90°: it reaches from (9, 3) to (11, 7).</summary>
    [Fact]
    public void Bounds_TurnedUpright_AreSwapped()
    {
        var box = TurnedBox.Around(new Point2(10, 5), new Box2(new Point2(0, 0), new Point2(4, 2)), Angle.FromDegrees(90));

        Assert.Equal(new Box2(new Point2(9, 3), new Point2(11, 7)), box.Bounds);
        Assert.Equal(new Point2(11, 3), box.Corners[0]);
        Assert.Equal(new Box2(new Point2(8, 2), new Point2(12, 8)), box.Grown(1).Bounds);
        Assert.True(box.Holds(new Point2(11, 7)) && !box.Holds(new Point2(11.01, 5)));
    }

    // A circle round the box without touching it, one inside it, one beside it.
    [Theory]
    [InlineData(0, 0, 3, false)]
    [InlineData(0, 0, 0.5, true)]
    [InlineData(2.5, 0, 0.4, false)]
    [InlineData(2.5, 0, 0.6, true)]
    [InlineData(0, 0, 1.5, true)]
    public void Meets_Circle_IsAsDrawn(double x, double y, double radius, bool expected)
    {
        var box = new TurnedBox(default, Vec2.UnitX, 2, 1);

        Assert.Equal(expected, Contour.Circle(new Point2(x, y), radius).Segments.Any(box.Meets));
    }

    // Against the definition: an end in the box, or a side that the line or arc crosses.
    [Fact]
    public void Meets_RandomSegments_IsASideCrossedOrAnEndInside() => Trials.Run(3000, r =>
    {
        var box = Random(r);
        var segment = RandomCurves.Segment(r);

        var byDefinition = box.Holds(segment.Start) || box.Holds(segment.End) || box.ToContour().Segments.Any(side => Intersections.Of(side, segment).Count > 0);
        Assert.True(byDefinition == box.Meets(segment), $"{box} {segment}");
    });

    [Fact]
    public void Meets_RandomBoxes_IsACornerInsideOrSidesCrossed() => Trials.Run(3000, r =>
    {
        var (a, b) = (Random(r), Random(r));

        var byDefinition = a.Corners.Any(b.Holds) || b.Corners.Any(a.Holds) || a.ToContour().Segments.Any(b.Meets);
        Assert.True(byDefinition == a.Meets(b), $"{a} {b}");
        Assert.Equal(a.Meets(b), b.Meets(a));
    });

    private static TurnedBox Random(Random r) => new(
        RandomCurves.Point(r), Trig.Direction(Angle.FromDegrees(360 * r.NextDouble())), 1 + (60 * r.NextDouble()), 1 + (20 * r.NextDouble()));
}
