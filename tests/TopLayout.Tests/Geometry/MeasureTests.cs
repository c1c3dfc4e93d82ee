using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Against the standard formulas of engineering handbooks ("properties of sections"), from memory.</summary>
public class MeasureTests
{
    private const double R = 20;

    // Standard formula, from memory: half circle yc = 4r/3π; Ixx = (π/8 − 8/9π) r⁴; Iyy = π r⁴/8.
    [Fact]
    public void Moments_HalfCircle_AreTheHandbooks()
    {
        var m = new Contour([new Vertex(new Point2(107, 50), 1), new Vertex(new Point2(67, 50))], isClosed: true).Moments();

        Near(Math.PI * R * R / 2, m.SignedArea);
        Near(87, m.Centroid.X);
        Near(50 + (4 * R / (3 * Math.PI)), m.Centroid.Y);
        Near(((Math.PI / 8) - (8 / (9 * Math.PI))) * Math.Pow(R, 4), m.Ixx);
        Near(Math.PI / 8 * Math.Pow(R, 4), m.Iyy);
        Check.Near(0, m.Ixy, 1e-7);
    }

    // Standard formula, from memory: circular segment of half angle α, from the centre: A = r²(α − sin α cos α), yc = 2r³sin³α/3A,
    // Iyy = r⁴/12·(3α − 3 sin α cos α − 2 sin³α cos α), ∫y² = r⁴/4·(α − sin α cos α + 2 sin³α cos α).
    [Theory]
    [InlineData(90)]
    [InlineData(60)]
    [InlineData(20)]
    public void Moments_CircularSegment_AreTheHandbooks(double halfDegrees)
    {
        var a = halfDegrees * Math.PI / 180;
        var (s, c) = (Math.Sin(a), Math.Cos(a));
        var m = new Contour([new Vertex(new Point2(R * s, R * c), Math.Tan(a / 2)), new Vertex(new Point2(-R * s, R * c))], isClosed: true).Moments();

        var area = R * R * (a - (s * c));
        var y = 2 * Math.Pow(R * s, 3) / (3 * area);
        Near(area, m.SignedArea);
        Near(y, m.Centroid.Y);
        Near(Math.Pow(R, 4) / 12 * ((3 * a) - (3 * s * c) - (2 * s * s * s * c)), m.Iyy);
        Check.Near((Math.Pow(R, 4) / 4 * (a - (s * c) + (2 * s * s * s * c))) - (area * y * y), m.Ixx, 1e-8, "Ixx");
    }

    // Standard formula, from memory: sector of an annulus, half angle α: A = α(R² − r²), yc = 2 sin α (R³ − r³)/3α(R² − r²),
    // about the centre Ixx = (R⁴ − r⁴)/4·(α + sin α cos α), Iyy = (R⁴ − r⁴)/4·(α − sin α cos α).
    [Fact]
    public void Moments_AnnulusSector_AreTheHandbooks()
    {
        const double Inner = 12;
        var a = 0.7;
        var (s, c, b) = (Math.Sin(a), Math.Cos(a), Math.Tan(a / 2));
        var m = new Contour(
            [
                new Vertex(new Point2(R * s, R * c), b), new Vertex(new Point2(-R * s, R * c)),
                new Vertex(new Point2(-Inner * s, Inner * c), -b), new Vertex(new Point2(Inner * s, Inner * c)),
            ],
            isClosed: true).Moments();

        var area = a * ((R * R) - (Inner * Inner));
        var y = 2 * s * (Math.Pow(R, 3) - Math.Pow(Inner, 3)) / (3 * area);
        var quarter = (Math.Pow(R, 4) - Math.Pow(Inner, 4)) / 4;
        Near(area, m.SignedArea);
        Near(y, m.Centroid.Y);
        Near((quarter * (a + (s * c))) - (area * y * y), m.Ixx);
        Near(quarter * (a - (s * c)), m.Iyy);
    }

    // Standard formula, from memory: Reuleaux triangle of width w: A = (π − √3) w²/2, perimeter π w (Barbier).
    [Fact]
    public void Measures_ReuleauxTriangle_AreTheHandbooks()
    {
        Point2[] corners = [default, new(R, 0), new(R / 2, R * Math.Sqrt(3) / 2)];
        var reuleaux = new Contour(corners.Select(p => new Vertex(p, Math.Tan(Math.PI / 12))), isClosed: true);

        Near((Math.PI - Math.Sqrt(3)) * R * R / 2, reuleaux.Moments().SignedArea);
        Near(Math.PI * R, reuleaux.Length);
        Near(R / 2, reuleaux.Moments().Centroid.X);
        Near(R / 2 / Math.Sqrt(3), reuleaux.Moments().Centroid.Y);
        Near(reuleaux.Moments().Ixx, reuleaux.Moments().Iyy);
    }

    // Standard formula, from memory: rectangle b·h has Ixx = bh³/12; right triangle Ixx = bh³/36, Ixy = −b²h²/72.
    [Fact]
    public void Moments_RectangleAndTriangle_AreTheHandbooks()
    {
        var rectangle = Contour.Polygon(new(500, 70), new(530, 70), new(530, 80), new(500, 80)).Moments();
        var triangle = Contour.Polygon(new(0, 0), new(30, 0), new(0, 10)).Moments();

        Near(30 * 1000 / 12.0, rectangle.Ixx);
        Near(27000 * 10 / 12.0, rectangle.Iyy);
        Near(30 * 1000 / 36.0, triangle.Ixx);
        Near(-900 * 100 / 72.0, triangle.Ixy);
        Assert.True(triangle.Centroid.IsNear(new Point2(10, 10 / 3.0)));
    }

    [Fact]
    public void Moments_AnyMove_ObeyParallelAxesAndTheSumOfAxes() => Trials.Run(200, r =>
    {
        var (c, placement) = (RandomCurves.Loop(r), RandomCurves.Placement(r));
        var (m, n) = (c.Moments(), c.Placed(placement).Moments());
        var scale = m.Ixx + m.Iyy;

        Check.Near(0, n.Centroid.DistanceTo(placement.Apply(m.Centroid)), 1e-10, "centroid");
        Check.Near(scale, n.Ixx + n.Iyy, 1e-11 * scale, "polar moment");
        Check.Near((m.Ixx * m.Iyy) - (m.Ixy * m.Ixy), (n.Ixx * n.Iyy) - (n.Ixy * n.Ixy), 1e-10 * scale * scale, "determinant");
        Check.Near(c.SignedArea, m.SignedArea, 1e-10 * m.SignedArea, "area");
        Assert.True(m.Ixx > 0 && c.Reversed().Moments().Ixx > 0);
    });

    [Fact]
    public void Moments_AgainstAFinePolygon_Agree() => Trials.Run(50, r =>
    {
        var c = RandomCurves.Loop(r);
        var (m, n) = (c.Moments(), Contour.Polygon(c.Flattened(1e-4)).Moments());

        Check.Near(m.Ixx, n.Ixx, 2e-5 * m.Ixx, "Ixx");
        Check.Near(m.Ixy, n.Ixy, 2e-5 * m.Ixx, "Ixy");
        Assert.True(m.Centroid.IsNear(n.Centroid, 1e-3));
    });

    [Fact]
    public void Moments_OpenContour_Throws() => Assert.Throws<InvalidOperationException>(
        () => new Contour([new Vertex(default), new Vertex(new Point2(1, 1))], isClosed: false).Moments());

    [Fact]
    public void Places_PointTangentAndLength_Agree() => Trials.Run(300, r =>
    {
        var c = RandomCurves.Contour(r, r.Next(2) == 0);
        var at = r.NextDouble() * c.Length;
        var place = c.LocationAt(at);

        Check.Near(at, c.LengthTo(place), 1e-9, "there and back");
        Assert.Equal(c.PointAt(at), place.Point);
        var difference = (c.PointAt(at + 1e-5) - c.PointAt(at)) / 1e-5;
        if (place.Fraction < 0.99)
        {
            Check.Near(0, (difference - c.TangentAt(at)).Length, 1e-4, "tangent");
        }

        Assert.Equal(c.Segments[^1].End, c.PointAt(c.Length + 5));
        Assert.Equal(c.Vertices[0].Position, c.PointAt(-5));
    });

    [Fact]
    public void ClosestTo_AgainstDenseSampling_IsNearest() => Trials.Run(200, r =>
    {
        var (c, p) = (RandomCurves.Contour(r, r.Next(2) == 0), RandomCurves.Point(r));
        var place = c.ClosestTo(p);

        Check.Near(c.DistanceTo(p), place.Point.DistanceTo(p), 1e-11);
        Check.Near(0, c.Segments[place.Segment].PointAt(place.Fraction).DistanceTo(place.Point), 0, "place");
        Assert.True(place.Point.DistanceTo(p) <= c.Segments.Min(s => RandomCurves.Samples(s, 500).Min(q => q.DistanceTo(p))) + 1e-9);
    });

    [Fact]
    public void Flattened_AnyTolerance_StaysWithinItAndItsAreaBound() => Trials.Run(200, r =>
    {
        var c = RandomCurves.Loop(r);
        var tolerance = Math.Pow(10, -r.Between(0, 4));
        var points = c.Flattened(tolerance);
        var polygon = Contour.Polygon(points);

        Assert.All(c.Vertices, v => Assert.Contains(v.Position, points));
        Assert.All(points, p => Assert.True(c.DistanceTo(p) < 1e-9));
        Assert.All(polygon.Segments, s => Assert.True(c.DistanceTo(s.PointAt(0.5)) <= tolerance * (1 + 1e-6)));
        Check.Near(c.SignedArea, polygon.SignedArea, c.Length * tolerance * 2 / 3, "area");
    });

    [Fact]
    public void Flattened_OpenAndCoarse_KeepsTheEnds()
    {
        var arc = new Contour([new Vertex(default, 1), new Vertex(new Point2(10, 0))], isClosed: false);

        Assert.Equal([default, new Point2(10, 0)], arc.Flattened(50));
        Assert.Equal(new Point2(10, 0), arc.Flattened(0.01)[^1]);
        Assert.Throws<ArgumentOutOfRangeException>(() => arc.Flattened(0));
    }

    private static void Near(double expected, double actual) => Check.Near(expected, actual, 1e-11 * Math.Max(1, Math.Abs(expected)));
}
