namespace TopLayout.Geometry;

/// <summary>A displacement or direction in the plane: mm, y up. <c>default</c> is the zero vector.</summary>
/// <param name="X">mm, to the right.</param>
/// <param name="Y">mm, up.</param>
public readonly record struct Vec2(double X, double Y)
{
    /// <summary>The unit vector along +x.</summary>
    public static Vec2 UnitX => new(1, 0);

    /// <summary>The unit vector along +y.</summary>
    public static Vec2 UnitY => new(0, 1);

    /// <summary>Length in mm, ≥ 0.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The same direction at length 1; not a number for the zero vector.</summary>
    public Vec2 Unit => this / Length;

    /// <summary>This vector turned a quarter to the left (counter-clockwise).</summary>
    public Vec2 Left => new(-Y, X);

    /// <summary>Sum, component by component.</summary>
    public static Vec2 operator +(Vec2 a, Vec2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference, component by component.</summary>
    public static Vec2 operator -(Vec2 a, Vec2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The opposite vector.</summary>
    public static Vec2 operator -(Vec2 v) => new(-v.X, -v.Y);

    /// <summary>Scaled by a factor.</summary>
    public static Vec2 operator *(Vec2 v, double k) => new(v.X * k, v.Y * k);

    /// <summary>Scaled by the inverse of a divisor.</summary>
    public static Vec2 operator /(Vec2 v, double k) => new(v.X / k, v.Y / k);

    /// <summary>Scalar product: |a||b| cos of the angle between.</summary>
    public double Dot(Vec2 other) => (X * other.X) + (Y * other.Y);

    /// <summary>Cross product: |a||b| sin of the turn from this to <paramref name="other"/>; positive when it turns left.</summary>
    public double Cross(Vec2 other) => (X * other.Y) - (Y * other.X);

    /// <summary>The two components. The text a record makes of itself would name <see cref="Unit"/>, whose text names its own, without end.</summary>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");
}
