using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>Which half of the top, as seen from outside with the neck up.</summary>
public enum TopHalf
{
    /// <summary>The whole top: one plate, or both halves at once.</summary>
    Whole,

    /// <summary>x &lt; 0: bass on a right-handed instrument.</summary>
    Left,

    /// <summary>x ≥ 0: treble on a right-handed instrument.</summary>
    Right,
}

/// <summary>The way the top's grain runs at every point. Grain angles are measured from the y axis, counter-clockwise.</summary>
public sealed class TopGrain
{
    private TopGrain(Angle left, Angle right, bool isOnePlate) => (LeftGrain, RightGrain, IsOnePlate) = (left, right, isOnePlate);

    /// <summary>Grain of the half at x &lt; 0.</summary>
    public Angle LeftGrain { get; }

    /// <summary>Grain of the half at x ≥ 0.</summary>
    public Angle RightGrain { get; }

    /// <summary>True when there is no centre joint.</summary>
    public bool IsOnePlate { get; }

    /// <summary>A top of one plate.</summary>
    public static TopGrain OnePlate(Angle grain) => new(grain, grain, isOnePlate: true);

    /// <summary>Two halves joined at x = 0; a positive skew leans outward towards the tail.</summary>
    public static TopGrain Halves(Angle leftSkew, Angle rightSkew) => new(-leftSkew, rightSkew, isOnePlate: false);

    /// <summary>The same grain turned as a whole.</summary>
    public TopGrain Turned(Angle turn) => new(LeftGrain + turn, RightGrain + turn, IsOnePlate);

    /// <summary>The grain at a point.</summary>
    public Angle At(Point2 p) => p.X < 0 ? LeftGrain : RightGrain;

    /// <summary>The half a point lies in.</summary>
    public TopHalf HalfAt(Point2 p) => IsOnePlate ? TopHalf.Whole : p.X < 0 ? TopHalf.Left : TopHalf.Right;

    /// <summary>The grain under an area: that of its half, or the mean of both when it lies across the centre.</summary>
    public Angle Under(Region area)
    {
        var bounds = area.Bounds;
        return bounds.Max.X <= 0 ? LeftGrain : bounds.Min.X >= 0 ? RightGrain : (LeftGrain + RightGrain) / 2;
    }
}
