namespace TopLayout.Geometry;

/// <summary>A straight line without ends. Mm, y up.</summary>
/// <param name="Point">A point on it.</param>
/// <param name="Direction">Along it, any length but zero; it tells left from right.</param>
public readonly record struct Line(Point2 Point, Vec2 Direction)
{
    /// <summary>The line through two points, in the sense from the first to the second; they must differ.</summary>
    public static Line Through(Point2 a, Point2 b) => new(a, b - a);

    /// <summary>Distance to a point, mm; positive to the left.</summary>
    public double SignedDistanceTo(Point2 p) => Direction.Cross(p - Point) / Direction.Length;

    /// <summary>The foot of the perpendicular from a point.</summary>
    public Point2 Foot(Point2 p) => Point + (Direction * ((p - Point).Dot(Direction) / Direction.Dot(Direction)));

    /// <summary>The line so far to the left, mm (negative: to the right).</summary>
    public Line Parallel(double leftMm) => this with { Point = Point + (Direction.Left.Unit * leftMm) };
}
