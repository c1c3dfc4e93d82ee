using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>A line or arc that runs one way in x and in y, as a function of either. Mm.</summary>
internal readonly struct MonotoneEdge
{
    /// <summary>An x nearer than this to an end is that end: beside a vertical tangent y moves as the root of x.</summary>
    private const double SnapMm = 1e-9;

    private readonly Point2 _left;
    private readonly Point2 _right;
    private readonly Vec2 _toCenter;
    private readonly Vec2 _quadrant;

    public MonotoneEdge(Segment edge)
    {
        var forward = edge.Start.X <= edge.End.X ? edge : edge.Reversed();
        (_left, _right, IsArc) = (forward.Start, forward.End, forward.IsArc);
        if (IsArc)
        {
            var chord = _right - _left;
            var toCenter = chord.Left * ((1 - (forward.Bulge * forward.Bulge)) / (4 * forward.Bulge));
            (_toCenter, _quadrant) = ((chord / 2) + toCenter, new Vec2(-Math.Sign(toCenter.X), -Math.Sign(toCenter.Y)));
        }
    }

    public bool IsArc { get; }

    public double MinX => _left.X;

    public double MaxX => _right.X;

    public double MinY => Math.Min(_left.Y, _right.Y);

    public double MaxY => Math.Max(_left.Y, _right.Y);

    /// <summary>The stretch of y on the part with x from one value to another; those overlap the edge's own range.</summary>
    public (double Low, double High) Within(double fromX, double toX)
    {
        if (_right.X - _left.X <= SnapMm)
        {
            return (MinY, MaxY);
        }

        var (a, b) = (YAt(fromX), YAt(toX));
        return a <= b ? (a, b) : (b, a);
    }

    /// <summary>The least angle to the y axis on the part with x from one value to another.</summary>
    public Angle LeastAngle(double fromX, double toX)
    {
        if (!IsArc)
        {
            return GrainAngle.Of(_right - _left, Angle.Zero);
        }

        var (a, b) = (AngleAt(Math.Max(fromX, MinX)), AngleAt(Math.Min(toX, MaxX)));
        return a < b ? a : b;
    }

    /// <summary>The y at an x, clamped to the edge.</summary>
    public double YAt(double x)
    {
        if (x <= _left.X + SnapMm)
        {
            return _left.Y;
        }

        if (x >= _right.X - SnapMm)
        {
            return _right.Y;
        }

        if (!IsArc)
        {
            return _left.Y + ((_right.Y - _left.Y) * ((x - _left.X) / (_right.X - _left.X)));
        }

        return Math.Clamp(_left.Y + (_quadrant.Y * Rise(x - _left.X, _toCenter.X, _toCenter.Y)), MinY, MaxY);
    }

    /// <summary>The x at a y, clamped to the edge.</summary>
    public double XAt(double y)
    {
        var (low, high) = _left.Y <= _right.Y ? (_left, _right) : (_right, _left);
        if (y <= low.Y || y >= high.Y)
        {
            return y <= low.Y ? low.X : high.X;
        }

        if (!IsArc)
        {
            return low.X + ((high.X - low.X) * ((y - low.Y) / (high.Y - low.Y)));
        }

        return Math.Clamp(_left.X + (_quadrant.X * Rise(y - _left.Y, _toCenter.Y, _toCenter.X)), MinX, MaxX);
    }

    private Angle AngleAt(double x) =>
        Trig.Atan2(Math.Abs(YAt(x) - _left.Y - _toCenter.Y), Math.Abs(x - _left.X - _toCenter.X));

    // How far a circle has moved out from the centre's level after a step d from a point of it, with the centre at (c, other) from that
    // point: √(other² + d(2c − d)) − |other|, written so that nothing cancels on a nearly flat arc.
    private static double Rise(double d, double c, double other)
    {
        var gained = d * ((2 * c) - d);
        return gained / (Math.Sqrt(Math.Max(0, (other * other) + gained)) + Math.Abs(other));
    }
}
