namespace TopLayout.Geometry;

/// <summary>An axis-parallel rectangle, mm. <see cref="Empty"/> holds nothing and joins as the neutral element.</summary>
/// <param name="Min">Lower left corner.</param>
/// <param name="Max">Upper right corner.</param>
public readonly record struct Box2(Point2 Min, Point2 Max)
{
    /// <summary>The box without a point.</summary>
    public static Box2 Empty => new(
        new Point2(double.PositiveInfinity, double.PositiveInfinity), new Point2(double.NegativeInfinity, double.NegativeInfinity));

    /// <summary>The smallest box round two points in any order.</summary>
    public static Box2 Around(Point2 a, Point2 b) => new(
        new Point2(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y)), new Point2(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y)));

    /// <summary>The box of all boxes in a sequence; <see cref="Empty"/> for none.</summary>
    public static Box2 Around(IEnumerable<Box2> boxes) => boxes.Aggregate(Empty, (a, b) => a.Union(b));

    /// <summary>True when the box holds no point.</summary>
    public bool IsEmpty => Min.X > Max.X || Min.Y > Max.Y;

    /// <summary>Extent in x, mm; negative infinity for the empty box.</summary>
    public double Width => Max.X - Min.X;

    /// <summary>Extent in y, mm; negative infinity for the empty box.</summary>
    public double Height => Max.Y - Min.Y;

    /// <summary>Middle of the box.</summary>
    public Point2 Center => Min.MidpointTo(Max);

    /// <summary>The smallest box that holds both.</summary>
    public Box2 Union(Box2 other) => new(
        new Point2(Math.Min(Min.X, other.Min.X), Math.Min(Min.Y, other.Min.Y)),
        new Point2(Math.Max(Max.X, other.Max.X), Math.Max(Max.Y, other.Max.Y)));

    /// <summary>What both boxes hold; empty when they are apart.</summary>
    public Box2 Common(Box2 other) => new(
        new Point2(Math.Max(Min.X, other.Min.X), Math.Max(Min.Y, other.Min.Y)),
        new Point2(Math.Min(Max.X, other.Max.X), Math.Min(Max.Y, other.Max.Y)));

    /// <summary>The box grown by a margin on every side, mm (negative shrinks).</summary>
    public Box2 Grown(double marginMm) => new(
        new Point2(Min.X - marginMm, Min.Y - marginMm), new Point2(Max.X + marginMm, Max.Y + marginMm));

    /// <summary>True when the boxes share a point; borders count.</summary>
    public bool Overlaps(Box2 other) => Min.X <= other.Max.X && other.Min.X <= Max.X && Min.Y <= other.Max.Y && other.Min.Y <= Max.Y;

    /// <summary>True when the point lies in the box; borders count.</summary>
    public bool Contains(Point2 p) => p.X >= Min.X && p.X <= Max.X && p.Y >= Min.Y && p.Y <= Max.Y;
}
