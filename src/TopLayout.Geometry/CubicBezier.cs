namespace TopLayout.Geometry;

/// <summary>A cubic Bézier segment, as outlines from other programs are made of. Mm, y up.</summary>
/// <param name="Start">Its first point.</param>
/// <param name="Control1">The handle at the start.</param>
/// <param name="Control2">The handle at the end.</param>
/// <param name="End">Its last point.</param>
public readonly record struct CubicBezier(Point2 Start, Point2 Control1, Point2 Control2, Point2 End)
{
    /// <summary>The direction at the start, any length: towards the first point that differs from it. Zero where all four are one.</summary>
    public Vec2 StartDirection => First(Control1 - Start, Control2 - Start, End - Start);

    /// <summary>The direction at the end, any length: from the last point that differs from it. Zero where all four are one.</summary>
    public Vec2 EndDirection => First(End - Control2, End - Control1, End - Start);

    /// <summary>True when all coordinates are finite.</summary>
    public bool IsFinite => Start.IsFinite && Control1.IsFinite && Control2.IsFinite && End.IsFinite;

    /// <summary>The point at a parameter in [0, 1], by Bernstein's polynomials; the ends exactly.</summary>
    public Point2 PointAt(double t)
    {
        var s = 1 - t;
        return t == 1 ? End : Start + ((Control1 - Start) * (3 * s * s * t)) + ((Control2 - Start) * (3 * s * t * t)) + ((End - Start) * (t * t * t));
    }

    /// <summary>
    /// How many equal steps of the parameter keep the joining lines within a tolerance, mm. A chord over a step h misses by at most
    /// h²/8 of the second derivative, which is at most 6 times the larger second difference of the control points.
    /// </summary>
    internal int StepsFor(double toleranceMm)
    {
        var bend = Math.Max(((Start - Control1) - (Control1 - Control2)).Length, ((Control1 - Control2) - (Control2 - End)).Length);
        return Math.Max(1, (int)Math.Ceiling(Math.Sqrt(6 * bend / (8 * toleranceMm))));
    }

    private static Vec2 First(Vec2 a, Vec2 b, Vec2 c) => a.Length > Tolerances.TouchMm ? a : b.Length > Tolerances.TouchMm ? b : c;
}
