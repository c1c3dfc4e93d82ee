using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Tests.Drawing;

public class HatchingTests
{
    private const double Step = 4;

    private static readonly Region Plate = Region.Between(Contour.Rectangle(Box(0, 0, 100, 60)), Contour.Circle(new Point2(70, 30), 12));

    /// <summary>Every stroke lies in the area and off its border, its holes and what stays free; all of them at the angle, on one grid.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(45)]
    [InlineData(-30)]
    [InlineData(90)]
    public void Strokes_OfAPlateWithAHoleAndALabel_KeepOffAllBorders(double degrees)
    {
        var label = Contour.Rectangle(Box(10.3, 20.2, 45.1, 26.7));
        var normal = Trig.Direction(Angle.FromDegrees(degrees)).Left;

        var strokes = Strokes(Plate, degrees, label);

        Assert.True(strokes.Count > 15, $"{strokes.Count} strokes");
        foreach (var stroke in strokes)
        {
            for (var t = 0.0; t <= 1; t += 0.125)
            {
                var p = stroke.PointAt(t);
                Assert.True(Plate.Contains(p) && !label.Contains(p), $"{p}");
                Assert.Equal(0, Math.IEEERemainder((p - new Point2(0, 0)).Dot(normal), Step), 1e-9);
            }

            // The nearest border lies no farther than along the stroke.
            var ends = (double[])[Nearest(stroke.Start), Nearest(stroke.End)];
            Assert.All(ends, d => Assert.InRange(d, 0.01, Hatching.OffBorderMm + 1e-9));
        }

        double Nearest(Point2 p) => Math.Min(Plate.Loops.Min(l => l.DistanceTo(p)), label.DistanceTo(p));
    }

    /// <summary>100 x 60 by hand: rows at 4, 8 … 56, 99.2 mm each; those at 0 and 60 would lie on the border.</summary>
    [Fact]
    public void Strokes_OfARectangle_AreAsManyAndAsLongAsByHand()
    {
        var strokes = Strokes(Region.Inside(Contour.Rectangle(Box(0, 0, 100, 60))), 0);

        Assert.Equal(14, strokes.Count);
        Assert.All(strokes, s => Check.Near(100 - (2 * Hatching.OffBorderMm), s.Length, 1e-9, "length"));
    }

    [Fact]
    public void Strokes_WhereAllStaysFree_AreNone() => Assert.Empty(Strokes(Plate, 45, Contour.Rectangle(Box(-1, -1, 101, 61))));

    private static List<Segment> Strokes(Region area, double degrees, params Contour[] free) =>
        [.. Hatching.Strokes(area, Angle.FromDegrees(degrees), Step, free).Select(c => c.Segments.Single())];

    private static Box2 Box(double left, double bottom, double right, double top) => new(new Point2(left, bottom), new Point2(right, top));
}
