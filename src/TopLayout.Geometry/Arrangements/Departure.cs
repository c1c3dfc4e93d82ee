namespace TopLayout.Geometry.Arrangements;

/// <summary>How a half-edge leaves its node.</summary>
internal readonly struct Departure
{
    /// <summary>What <see cref="Heading"/> grows by in a full turn.</summary>
    public const double FullTurn = 4;

    private readonly Curve _curve;
    private readonly Vec2 _tangent;

    public Departure(int half, in Curve along)
    {
        Half = half;
        _curve = (half & 1) == 0 ? along : new Curve(along.End, along.Start, -along.Bulge);
        _tangent = _curve.StartTangent;
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

        if (_curve.End == other._curve.End)
        {
            return _curve.Bulge > other._curve.Bulge;
        }

        var isShorter = _curve.ChordLength < other._curve.ChordLength;
        var left = isShorter ? -other._curve.LeftDistance(_curve.End) : _curve.LeftDistance(other._curve.End);
        return Math.Abs(left) > Tolerances.ExactMm ? left > 0 : cross > 0;
    }
}
