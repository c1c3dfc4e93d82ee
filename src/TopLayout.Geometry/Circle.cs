namespace TopLayout.Geometry;

/// <summary>A whole circle. Mm, y up.</summary>
/// <param name="Center">Its centre.</param>
/// <param name="Radius">mm, ≥ 0; 0 is a point.</param>
public readonly record struct Circle(Point2 Center, double Radius)
{
    /// <summary>
    /// The circle through three points; null where they lie on a line to within <see cref="Tolerances.FlatSagittaMm"/>. With u, v the
    /// vectors from a to b and c, the centre is a + (|u|²·v⊥ − |v|²·u⊥)/(2 u×v) turned right: equal distance to a and b gives
    /// centre·u = |u|²/2, to a and c centre·v = |v|²/2, and Cramer's rule solves both.
    /// </summary>
    public static Circle? Through(Point2 a, Point2 b, Point2 c)
    {
        var (u, v) = (b - a, c - a);
        var cross = u.Cross(v);
        var longest = Math.Max(Math.Max(u.Length, v.Length), (c - b).Length);
        if (!(Math.Abs(cross) >= Tolerances.FlatSagittaMm * longest) || cross == 0)
        {
            return null;
        }

        var toCenter = ((u.Left * v.Dot(v)) - (v.Left * u.Dot(u))) / (2 * cross);
        return new Circle(a + toCenter, toCenter.Length);
    }

    /// <summary>Distance from the line of the circle to a point, mm; negative inside.</summary>
    public double SignedDistanceTo(Point2 p) => Center.DistanceTo(p) - Radius;

    /// <summary>The circle as a closed contour, counter-clockwise.</summary>
    public Contour ToContour(string label = "") => Contour.Circle(Center, Radius, label);
}
