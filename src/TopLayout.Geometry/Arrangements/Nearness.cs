namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Tells whether a point lies nearer to given curves than an offset: nearer to a foot between the ends of a curve, or to an end that is
/// gone round in an arc. Ends that are cut flat do not count.
/// </summary>
internal sealed class Nearness
{
    private readonly double _reach;
    private readonly Curve[] _curves;
    private readonly bool[] _endCounts;
    private readonly CurveGrid _grid;
    private readonly List<int> _found = [];

    private Nearness(double offsetMm, Curve[] curves, bool[] endCounts)
    {
        _reach = offsetMm - (2 * Tolerances.TouchMm);
        (_curves, _endCounts) = (curves, endCounts);
        _grid = new CurveGrid(curves, 0);
    }

    public bool IsNear(Point2 p)
    {
        _grid.Within(new Box2(p, p).Grown(_reach), _found);
        foreach (var i in _found)
        {
            var c = _curves[i];
            if ((_endCounts[i] && c.End.DistanceTo(p) < _reach) || (Math.Abs(c.LeftDistance(p)) < _reach && IsAcross(c, p)))
            {
                return true;
            }
        }

        return false;
    }

    // A foot at an end does not tell: points straight across a flat end have it there.
    private static bool IsAcross(Curve c, Point2 p)
    {
        if (!c.HasFoot(p))
        {
            return false;
        }

        var foot = c.IsArc ? c.Center + ((p - c.Center).Unit * c.Radius) : p - (c.Along.Left * c.LeftDistance(p));
        return !foot.IsNear(c.Start, 2 * Tolerances.TouchMm) && !foot.IsNear(c.End, 2 * Tolerances.TouchMm);
    }

    /// <summary>Collects the curves.</summary>
    public sealed class Builder(double offsetMm)
    {
        private readonly List<Curve> _curves = [];
        private readonly List<bool> _endCounts = [];

        public void Add(Curve curve, bool endCounts)
        {
            _curves.Add(curve);
            _endCounts.Add(endCounts);
        }

        public Nearness Build() => new(offsetMm, [.. _curves], [.. _endCounts]);
    }
}
