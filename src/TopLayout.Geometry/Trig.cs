namespace TopLayout.Geometry;

/// <summary>
/// Sine, cosine, tangent and their inverses: the only place of the kernel that calls them. Exact at multiples of 30° and 45°,
/// so that a half circle ends where it should and a quarter turn leaves no 6e-17.
/// </summary>
public static class Trig
{
    private static readonly double Root3Half = Math.Sqrt(3) / 2;
    private static readonly double Root2Half = Math.Sqrt(2) / 2;

    /// <summary>Sine of an angle, in [−1, 1].</summary>
    public static double Sin(Angle angle)
    {
        var degrees = Math.IEEERemainder(angle.Degrees, 360);
        return degrees < 0 ? -SinUpToHalfTurn(-degrees) : SinUpToHalfTurn(degrees);
    }

    /// <summary>Cosine of an angle, in [−1, 1].</summary>
    public static double Cos(Angle angle) => Sin(Angle.FromDegrees(90 - Math.Abs(Math.IEEERemainder(angle.Degrees, 360))));

    /// <summary>Tangent of an angle; infinite at odd multiples of 90°.</summary>
    public static double Tan(Angle angle) => Sin(angle) / Cos(angle);

    /// <summary>The unit vector at an angle from +x.</summary>
    public static Vec2 Direction(Angle angle) => new(Cos(angle), Sin(angle));

    /// <summary>The direction of a vector from +x, in (−180°, 180°]; 0 for the zero vector.</summary>
    public static Angle Heading(Vec2 v) => Atan2(v.Y, v.X);

    /// <summary>The turn from one direction to another, in (−180°, 180°]; positive to the left.</summary>
    public static Angle Turn(Vec2 from, Vec2 to) => Atan2(from.Cross(to), from.Dot(to));

    /// <summary>The angle whose tangent is <paramref name="value"/>, in [−90°, 90°].</summary>
    public static Angle Atan(double value) => Angle.FromRadians(Math.Atan(value));

    /// <summary>The angle of the point (<paramref name="x"/>, <paramref name="y"/>), in (−180°, 180°]; −0 counts as 0, the origin has 0.</summary>
    public static Angle Atan2(double y, double x)
    {
        var angle = Angle.FromRadians(Math.Atan2(y + 0.0, x + 0.0));
        return angle.Degrees == -180 ? -angle : angle;
    }

    /// <summary>The angle whose sine is <paramref name="value"/> clamped to [−1, 1], in [−90°, 90°].</summary>
    public static Angle Asin(double value) => Angle.FromRadians(Math.Asin(Math.Clamp(value, -1, 1)));

    /// <summary>The angle whose cosine is <paramref name="value"/> clamped to [−1, 1], in [0°, 180°].</summary>
    public static Angle Acos(double value) => Angle.FromRadians(Math.Acos(Math.Clamp(value, -1, 1)));

    private static double SinUpToHalfTurn(double degrees) => (degrees > 90 ? 180 - degrees : degrees) switch
    {
        0 => 0,
        30 => 0.5,
        45 => Root2Half,
        60 => Root3Half,
        90 => 1,
        var d => Math.Sin(d * (Math.PI / 180)),
    };
}
