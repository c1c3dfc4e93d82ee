namespace TopLayout.Geometry;

/// <summary>An angle, counter-clockwise positive. <c>default</c> is zero. Its value says whether degrees or radians are read.</summary>
public readonly record struct Angle : IComparable<Angle>
{
    private Angle(double degrees) => Degrees = degrees;

    /// <summary>The angle in degrees, unbounded.</summary>
    public double Degrees { get; }

    /// <summary>The angle in radians, unbounded.</summary>
    public double Radians => Degrees * (Math.PI / 180);

    /// <summary>No turn at all.</summary>
    public static Angle Zero => default;

    /// <summary>An angle of so many degrees.</summary>
    public static Angle FromDegrees(double degrees) => new(degrees);

    /// <summary>An angle of so many radians.</summary>
    public static Angle FromRadians(double radians) => new(radians * (180 / Math.PI));

    /// <summary>Sum.</summary>
    public static Angle operator +(Angle a, Angle b) => new(a.Degrees + b.Degrees);

    /// <summary>Difference.</summary>
    public static Angle operator -(Angle a, Angle b) => new(a.Degrees - b.Degrees);

    /// <summary>The opposite turn.</summary>
    public static Angle operator -(Angle a) => new(-a.Degrees);

    /// <summary>Scaled by a factor.</summary>
    public static Angle operator *(Angle a, double k) => new(a.Degrees * k);

    /// <summary>A fraction of the angle.</summary>
    public static Angle operator /(Angle a, double k) => new(a.Degrees / k);

    /// <summary>Smaller than.</summary>
    public static bool operator <(Angle a, Angle b) => a.Degrees < b.Degrees;

    /// <summary>Larger than.</summary>
    public static bool operator >(Angle a, Angle b) => a.Degrees > b.Degrees;

    /// <summary>Smaller than or equal to.</summary>
    public static bool operator <=(Angle a, Angle b) => a.Degrees <= b.Degrees;

    /// <summary>Larger than or equal to.</summary>
    public static bool operator >=(Angle a, Angle b) => a.Degrees >= b.Degrees;

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Degrees.CompareTo(other.Degrees);
}
