namespace TopLayout.Geometry.Arrangements;

/// <summary>How a half-edge leaves its node.</summary>
internal readonly struct Departure
{
    /// <summary>What <see cref="Heading"/> grows by in a full turn.</summary>
    public const double FullTurn = 4;

    private readonly Curve _along;
    private readonly Vec2 _tangent;
    private readonly double _sense;

    public Departure(int half, Curve along)
    {
        Half = half;
        _along = along;
        _sense = (half & 1) == 0 ? 1 : -1;
        _tangent = (half & 1) == 0 ? along.StartTangent : -along.EndTangent;
        var share = _tangent.Y / (Math.Abs(_tangent.X) + Math.Abs(_tangent.Y));
        Heading = _tangent.X >= 0 ? share : 2 - share;
    }

    public int Half { get; }

    /// <summary>Grows counter-clockwise from −1 (straight down) to 3 with the direction; not an angle, but in its order.</summary>
    public double Heading { get; private init; }

    public Departure AfterFullTurn() => this with { Heading = Heading + FullTurn };

    /// <summary>
    /// True when this one comes before the other counter-clockwise. Where both leave in nearly one direction the shorter's end tells:
    /// as they do not meet on the way, it lies on the side on which the shorter left.
    /// </summary>
    public bool IsClockwiseOf(in Departure other)
    {
        var cross = _tangent.Cross(other._tangent);
        if (Math.Abs(cross) > Tolerances.AlikeRadians || _tangent.Dot(other._tangent) < 0)
        {
            return Heading < other.Heading;
        }

        if (End == other.End)
        {
            return _sense * _along.Bulge > other._sense * other._along.Bulge;
        }

        var left = _along.ChordLength < other._along.ChordLength ? -other.LeftDistance(End) : LeftDistance(other.End);
        return Math.Abs(left) > Tolerances.ExactMm ? left > 0 : cross > 0;
    }

    private Point2 End => _sense > 0 ? _along.End : _along.Start;

    private double LeftDistance(Point2 p) => _sense * _along.LeftDistance(p);
}
