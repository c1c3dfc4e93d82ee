using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>
/// Areas and centroids of figures of circles against closed formulas, the figures made by area operations. Sources: sector and segment,
/// Wikipedia, "List of centroids", rows "Circular sector" and "Circular segment" (α is half the angle at the centre); area of the lens
/// and of the Reuleaux triangle, MathWorld, "Circle-Circle Intersection" and "Reuleaux Triangle" (from memory); the rest derived.
/// </summary>
public class HandbookTests
{
    private const double RelativeError = 1e-12;

    // A wedge of 80° to each side ends at 40 cos 80° = 6.9, beyond the circle cut with it.
    private const double FarMm = 40;

    private static readonly Placement Frame = new(new Vec2(31, -17), Angle.FromDegrees(67), false);

    // The figure is looked at in its own frame, but computed in a turned one: no axis helps.
    private static void Agree(Region figure, double area, Point2 centroid, string what)
    {
        var loop = Assert.Single(figure.Loops);
        var moments = loop.Moments();
        Check.Near(area, figure.Area, RelativeError * FarMm * FarMm, what + ": area");
        Check.Near(area, moments.SignedArea, RelativeError * FarMm * FarMm, what + ": area among the moments");
        Check.Near(0, moments.Centroid.DistanceTo(Frame.Apply(centroid)), 1e-11, what + ": centroid");
    }

    private static Region Disc(double x, double r) => HardPairs.Disc(x, 0, r).Placed(Frame);

    private static Region Wedge(double halfDegrees)
    {
        var (up, down) = (Trig.Direction(Angle.FromDegrees(halfDegrees)) * FarMm, Trig.Direction(Angle.FromDegrees(-halfDegrees)) * FarMm);
        Point2[] points = halfDegrees < 90
            ? [default, default(Point2) + down, default(Point2) + up]
            : [default, default(Point2) + down, new(FarMm, -FarMm), new(FarMm, FarMm), default(Point2) + up];
        return Region.Inside(Contour.Polygon(points)).Placed(Frame);
    }

    // Area α r², centroid at 2r sin α/(3α) from the centre.
    [Theory]
    [InlineData(9, 15)]
    [InlineData(9, 60)]
    [InlineData(5, 80)]
    [InlineData(7, 130)]
    public void Sector_OfACircle(double r, double halfDegrees)
    {
        var alpha = halfDegrees * Math.PI / 180;

        Agree(Disc(0, r).Intersect(Wedge(halfDegrees)), alpha * r * r, new Point2(2 * r * Math.Sin(alpha) / (3 * alpha), 0), "sector");
    }

    // Area r²/2 (2α − sin 2α), centroid at 4r sin³α/(3(2α − sin 2α)) from the centre.
    [Theory]
    [InlineData(9, 15)]
    [InlineData(9, 60)]
    [InlineData(5, 90)]
    [InlineData(7, 130)]
    public void Segment_OfACircle(double r, double halfDegrees)
    {
        var alpha = halfDegrees * Math.PI / 180;
        var chord = r * Math.Cos(alpha);
        var twice = (2 * alpha) - Math.Sin(2 * alpha);

        Agree(
            Disc(0, r).Intersect(HardPairs.Rectangle(chord, -FarMm, FarMm, FarMm).Placed(Frame)),
            r * r * twice / 2,
            new Point2(4 * r * Math.Pow(Math.Sin(alpha), 3) / (3 * twice), 0),
            "segment");
    }

    // Area α(R² − r²). Derived: the moment about the centre is ∫ρ cos φ dA = 2 sin α (R³ − r³)/3; divided by the area.
    [Theory]
    [InlineData(9, 4, 15)]
    [InlineData(9, 8.9, 60)]
    [InlineData(7, 1, 130)]
    public void Sector_OfAnAnnulus(double big, double small, double halfDegrees)
    {
        var alpha = halfDegrees * Math.PI / 180;
        var area = alpha * ((big * big) - (small * small));
        var moment = 2 * Math.Sin(alpha) * (Math.Pow(big, 3) - Math.Pow(small, 3)) / 3;

        Agree(Disc(0, big).Intersect(Wedge(halfDegrees)).Subtract(Disc(0, small)), area, new Point2(moment / area, 0), "annulus sector");
    }

    // Derived: the common chord halves the lens into a segment of each circle. About its own centre a segment has the moment
    // ∫2x√(r²−x²)dx from the chord on = (2/3)(half chord)³, the same for both and towards each other. So the lens has, about the centre
    // of the first, the moment d·A₂ of the second's segment alone; divided by the area.
    [Theory]
    [InlineData(5, 3, 6)]
    [InlineData(5, 5, 1)]
    [InlineData(7, 2, 5.5)]
    [InlineData(9, 8, 16.9)]
    public void Lens_OfTwoCircles(double first, double second, double d)
    {
        var one = Math.Acos(((d * d) + (first * first) - (second * second)) / (2 * d * first));
        var two = Math.Acos(((d * d) + (second * second) - (first * first)) / (2 * d * second));
        var segment = second * second * (two - (Math.Sin(2 * two) / 2));
        var area = segment + (first * first * (one - (Math.Sin(2 * one) / 2)));

        Agree(Disc(0, first).Intersect(Disc(d, second)), area, new Point2(d * segment / area, 0), "lens");
    }

    // Area (π − √3)s²/2; the centroid is the triangle's, by its three axes of symmetry.
    [Theory]
    [InlineData(6)]
    [InlineData(0.7)]
    public void ReuleauxTriangle(double side)
    {
        var top = HardPairs.Disc(side / 2, side * Math.Sqrt(3) / 2, side).Placed(Frame);

        Agree(
            Disc(0, side).Intersect(Disc(side, side)).Intersect(top),
            (Math.PI - Math.Sqrt(3)) * side * side / 2,
            new Point2(side / 2, side * Math.Sqrt(3) / 6),
            "Reuleaux triangle");
    }
}
