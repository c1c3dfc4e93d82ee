namespace TopLayout.Geometry.Arrangements;

/// <summary>Points with numbers. A point within the touch distance of a node becomes that node; the first to come keeps its place.</summary>
internal sealed class NodeTable(double touchMm, int expected)
{
    // Wide against the touch distance, so that few points lie near a border of their cell.
    private const double CellsPerTouch = 64;

    private readonly double _cell = touchMm * CellsPerTouch;
    private readonly Dictionary<(long X, long Y), int> _firsts = new(expected);
    private readonly List<int> _nexts = new(expected);
    private readonly List<Point2> _points = new(expected);

    public int Count => _points.Count;

    public Point2 this[int node] => _points[node];

    /// <summary>The number of the nearest node within reach, or of a new one.</summary>
    public int Snap(Point2 p)
    {
        var (x, y) = (p.X / _cell, p.Y / _cell);
        var (ix, iy) = ((long)Math.Floor(x), (long)Math.Floor(y));
        var best = -1;
        var distance = touchMm;
        for (var cx = (long)Math.Floor(x - (1 / CellsPerTouch)); cx <= x + (1 / CellsPerTouch); cx++)
        {
            for (var cy = (long)Math.Floor(y - (1 / CellsPerTouch)); cy <= y + (1 / CellsPerTouch); cy++)
            {
                Nearest(p, (cx, cy), ref best, ref distance);
            }
        }

        if (best >= 0)
        {
            return best;
        }

        _points.Add(p);
        _nexts.Add(_firsts.TryGetValue((ix, iy), out var first) ? first : -1);
        _firsts[(ix, iy)] = _points.Count - 1;
        return _points.Count - 1;
    }

    private void Nearest(Point2 p, (long X, long Y) cell, ref int best, ref double distance)
    {
        for (var node = _firsts.TryGetValue(cell, out var first) ? first : -1; node >= 0; node = _nexts[node])
        {
            var d = p.DistanceTo(_points[node]);
            if (d <= distance)
            {
                (best, distance) = (node, d);
            }
        }
    }
}
