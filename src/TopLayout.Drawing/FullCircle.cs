using TopLayout.Geometry;

namespace TopLayout.Drawing;

/// <summary>A whole circle found in a contour.</summary>
/// <param name="Center">Its centre, mm.</param>
/// <param name="RadiusMm">Its radius, mm, &gt; 0.</param>
public readonly record struct FullCircle(Point2 Center, double RadiusMm)
{
    /// <summary>The circle that a closed contour runs round once, to <see cref="Tolerances.TouchMm"/>; null for any other contour.</summary>
    public static FullCircle? Of(Contour contour)
    {
        if (!contour.IsClosed || !contour.Segments.All(s => s.IsArc))
        {
            return null;
        }

        var first = contour.Segments.MaxBy(s => Math.Abs(s.Bulge));
        var (center, radius) = (first.Center, first.Radius);
        var once = Math.Abs(Math.Abs(contour.Segments.Sum(s => s.Sweep.Degrees)) - 360) < 1e-6;
        var round = contour.Segments.All(s =>
            s.Bulge > 0 == first.Bulge > 0
            && s.Center.IsNear(center)
            && Math.Abs(s.Start.DistanceTo(center) - radius) <= Tolerances.TouchMm);
        return once && round ? new FullCircle(center, radius) : null;
    }
}
