namespace TopLayout.Geometry;

/// <summary>
/// A rigid move: mirror in the y axis (x → −x) if asked, then turn about the origin, then shift. An arc stays an arc; a mirrored
/// one turns the other way. <c>default</c> is the identity.
/// </summary>
/// <param name="Shift">Applied last, mm.</param>
/// <param name="Rotation">Applied second, counter-clockwise.</param>
/// <param name="Mirrored">Applied first: x → −x.</param>
public readonly record struct Placement(Vec2 Shift, Angle Rotation, bool Mirrored)
{
    /// <summary>Nothing moves.</summary>
    public static Placement Identity => default;

    /// <summary>A pure shift, mm.</summary>
    public static Placement Moved(double x, double y) => new(new Vec2(x, y), Angle.Zero, false);

    /// <summary>A mirror in the y axis: x → −x.</summary>
    public static Placement MirroredAcrossY => new(default, Angle.Zero, true);

    /// <summary>The point after the move.</summary>
    public Point2 Apply(Point2 p)
    {
        var v = Apply(new Vec2(p.X, p.Y)) + Shift;
        return new Point2(v.X, v.Y);
    }

    /// <summary>A direction after the move: mirrored and turned, not shifted.</summary>
    public Vec2 Apply(Vec2 v)
    {
        var x = Mirrored ? -v.X : v.X;
        if (Rotation == Angle.Zero)
        {
            return new Vec2(x, v.Y);
        }

        var (c, s) = (Trig.Cos(Rotation), Trig.Sin(Rotation));
        return new Vec2((x * c) - (v.Y * s), (x * s) + (v.Y * c));
    }
}
