namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Points with numbers. A point within the touch distance of a node becomes that node; the first to come keeps its place. Nodes wait in
/// about as many buckets as are expected, by the cell of a grid they lie in; cells that share a bucket cost a comparison, no more.
/// </summary>
internal sealed class NodeTable
{
    // Wide against the touch distance, so that few points lie near a border of their cell.
    private const double CellsPerTouch = 64;

    private readonly double _touch;
    private readonly double _cell;
    private readonly int[] _lastOfBucket;
    private readonly List<int> _before;
    private readonly List<Point2> _points;

    public NodeTable(double touchMm, int expected)
    {
        (_touch, _cell) = (touchMm, touchMm * CellsPerTouch);
        (_before, _points) = (new List<int>(expected), new List<Point2>(expected));
        _lastOfBucket = new int[System.Numerics.BitOperations.RoundUpToPowerOf2((uint)Math.Max(expected, 4))];
        Array.Fill(_lastOfBucket, -1);
    }

    public int Count => _points.Count;

    public Point2 this[int node] => _points[node];

    /// <summary>The number of the nearest node within reach, or of a new one.</summary>
    public int Snap(Point2 p)
    {
        var (x, y) = (p.X / _cell, p.Y / _cell);
        var best = -1;
        var distance = _touch;
        for (var cx = Math.Floor(x - (1 / CellsPerTouch)); cx <= x + (1 / CellsPerTouch); cx++)
        {
            for (var cy = Math.Floor(y - (1 / CellsPerTouch)); cy <= y + (1 / CellsPerTouch); cy++)
            {
                Nearest(p, Bucket(cx, cy), ref best, ref distance);
            }
        }

        if (best >= 0)
        {
            return best;
        }

        ref var last = ref _lastOfBucket[Bucket(Math.Floor(x), Math.Floor(y))];
        _before.Add(last);
        _points.Add(p);
        return last = _points.Count - 1;
    }

    private void Nearest(Point2 p, int bucket, ref int best, ref double distance)
    {
        for (var node = _lastOfBucket[bucket]; node >= 0; node = _before[node])
        {
            var d = p.DistanceTo(_points[node]);
            if (d < distance || (d == distance && (best < 0 || node < best)))
            {
                (best, distance) = (node, d);
            }
        }
    }

    private int Bucket(double column, double row) =>
        unchecked(((int)(long)column * 73856093) ^ ((int)(long)row * 19349663)) & (_lastOfBucket.Length - 1);
}
