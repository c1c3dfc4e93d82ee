namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Tells whether a point lies nearer to given curves than an offset: nearer to a foot between the ends of a curve, or to an end that is
/// gone round in an arc. Ends that are cut flat do not count.
/// </summary>
internal sealed class Nearness(double offsetMm)
{
    // A grid pays from the third question on; most offsets ask once, of the face outside.
    private const int FewQuestions = 2;

    private readonly double _reach = offsetMm - (2 * Tolerances.TouchMm);
    private readonly List<Curve> _curves = [];
    private readonly List<bool> _endCounts = [];
    private readonly List<int> _found = [];
    private CurveGrid? _grid;
    private int _asked;

    /// <summary>Adds a curve, before the first question.</summary>
    public void Add(Curve curve, bool endCounts)
    {
        _curves.Add(curve);
        _endCounts.Add(endCounts);
    }

    public bool IsNear(Point2 p)
    {
        var box = new Box2(p, p).Grown(_reach);
        if (_asked++ < FewQuestions)
        {
            for (var i = 0; i < _curves.Count; i++)
            {
                if (_curves[i].Bounds.Overlaps(box) && IsNearTo(i, p))
                {
                    return true;
                }
            }

            return false;
        }

        _grid ??= new CurveGrid([.. _curves], 0);
        _grid.Within(box, _found);
        foreach (var i in _found)
        {
            if (IsNearTo(i, p))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsNearTo(int i, Point2 p)
    {
        var c = _curves[i];
        return (_endCounts[i] && c.End.DistanceTo(p) < _reach) || (Math.Abs(c.LeftDistance(p)) < _reach && IsAcross(c, p));
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
}
