namespace TopLayout.Geometry;

/// <summary>A place in the plane: mm, y up. <c>default</c> is the origin. Point − point = vector, point + vector = point.</summary>
/// <param name="X">mm, to the right.</param>
/// <param name="Y">mm, up.</param>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>The vector from <paramref name="b"/> to <paramref name="a"/>, mm.</summary>
    public static Vec2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The point <paramref name="v"/> away from <paramref name="p"/>.</summary>
    public static Point2 operator +(Point2 p, Vec2 v) => new(p.X + v.X, p.Y + v.Y);

    /// <summary>The point <paramref name="v"/> back from <paramref name="p"/>.</summary>
    public static Point2 operator -(Point2 p, Vec2 v) => new(p.X - v.X, p.Y - v.Y);

    /// <summary>Distance in mm, ≥ 0.</summary>
    public double DistanceTo(Point2 other) => (other - this).Length;

    /// <summary>The point halfway to <paramref name="other"/>.</summary>
    public Point2 MidpointTo(Point2 other) => new((X + other.X) / 2, (Y + other.Y) / 2);

    /// <summary>True when the two points lie within <paramref name="toleranceMm"/>.</summary>
    public bool IsNear(Point2 other, double toleranceMm = Tolerances.TouchMm) => DistanceTo(other) <= toleranceMm;

    /// <summary>True when both coordinates are finite.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y);
}
