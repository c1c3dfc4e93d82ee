namespace TopLayout.Lutherie.Mechanics;

/// <summary>A run found on a grain line.</summary>
/// <param name="X">The grain line in the grain's frame, mm.</param>
/// <param name="Run">The run.</param>
internal readonly record struct RunAt(double X, Stretch Run);

/// <summary>
/// A band of half-width w swept across pieces that share one frame. Which pieces it holds changes only at events: where the band's edge
/// meets the end of a piece. Between two events the pieces fall into clusters that no gap in reach could join; only a cluster whose
/// stretches over the whole interval are longer than the floor is looked at closely (<see cref="ClusterScan"/>).
/// </summary>
internal sealed class BandScan
{
    /// <summary>Events nearer than this are one, mm.</summary>
    private const double SameMm = 1e-9;

    /// <summary>Width of a column, mm.</summary>
    private const double ColumnMm = 10;

    private readonly BandEdge[] _edges;
    private readonly Calibration _calibration;
    private readonly double _w;
    private readonly Runs _runs;
    private readonly ClusterScan _cluster;
    private Dictionary<int, List<BandEdge>>? _columns;

    public BandScan(IEnumerable<EdgePiece> pieces, Calibration calibration)
    {
        _edges = [.. pieces.Where(p => p.Side != EdgeSide.Neither).Select(p => new BandEdge(p))];
        Array.Sort(_edges, (a, b) => a.Edge.MinX.CompareTo(b.Edge.MinX));
        (_calibration, _w, _runs) = (calibration, calibration.BandHalfWidthMm, new Runs(calibration.MergeGapMm));
        _cluster = new ClusterScan(calibration, _runs);
    }

    /// <summary>The pieces that reach into the band of a grain line, with the stretch of each there.</summary>
    public List<(BandEdge Edge, Stretch Stretch)> InBand(double x)
    {
        var found = new List<(BandEdge Edge, Stretch Stretch)>();
        foreach (var edge in Columns().GetValueOrDefault(Column(x), []))
        {
            if (edge.Edge.MinX <= x + _w + SameMm && edge.Edge.MaxX >= x - _w - SameMm)
            {
                found.Add((edge, edge.StretchAt(x, _w)));
            }
        }

        return found;
    }

    /// <summary>The runs on the grain line at an x.</summary>
    public List<Stretch> At(double x)
    {
        _runs.Clear();
        foreach (var (edge, stretch) in InBand(x))
        {
            _runs.Add(edge.IsSupported, stretch.Low, stretch.High);
        }

        var found = new List<Stretch>();
        _runs.Into(found);
        return found;
    }

    /// <summary>
    /// The runs longer than a floor at every station, in patches: runs on neighbouring stations that overlap along the grain belong to one.
    /// </summary>
    /// <param name="floorMm">Shorter runs are left out, mm.</param>
    /// <param name="onlyLongest">True to leave out also what is shorter than the longest found so far.</param>
    public RunPatches Patches(double floorMm, bool onlyLongest)
    {
        var patches = new RunPatches(floorMm, onlyLongest);
        foreach (var (from, to, active) in Intervals())
        {
            patches.BeginInterval();
            var start = 0;
            while (start < active.Count)
            {
                var (end, low, high) = Cluster(active, start);
                if (high - low > patches.Floor)
                {
                    _cluster.Scan(active, start, end, (low, high), from, to, patches);
                }

                start = end;
            }
        }

        return patches;
    }

    /// <summary>Λ and the total on grain lines no further apart than w, both sides of every jump among them.</summary>
    public IEnumerable<(double X, double Longest, double Total)> Profile()
    {
        var runs = new List<Stretch>();
        foreach (var (from, to, active) in Intervals())
        {
            var steps = (int)Math.Ceiling((to - from) / _w * 2);
            for (var i = 0; i <= steps; i++)
            {
                var x = i == steps ? to : from + ((to - from) * i / steps);
                _runs.Clear();
                foreach (var edge in active)
                {
                    var s = edge.StretchAt(x, _w);
                    _runs.Add(edge.IsSupported, s.Low, s.High);
                }

                _runs.Into(runs);
                var (longest, total) = (0.0, 0.0);
                foreach (var run in runs)
                {
                    (longest, total) = (Math.Max(longest, run.Length), total + run.Length);
                }

                yield return (x, longest, total);
            }
        }
    }

    // The intervals between events, each with the pieces in the band throughout it, in order along the grain; the list is used again.
    private IEnumerable<(double From, double To, List<BandEdge> Active)> Intervals()
    {
        var events = Events();
        var active = new List<BandEdge>();
        var next = 0;
        for (var i = 0; i + 1 < events.Count; i++)
        {
            var (from, to) = (events[i], events[i + 1]);
            active.RemoveAll(e => e.Edge.MaxX + _w < to - SameMm);
            for (; next < _edges.Length && _edges[next].Edge.MinX - _w <= from + SameMm; next++)
            {
                if (_edges[next].Edge.MaxX + _w >= to - SameMm)
                {
                    active.Add(_edges[next]);
                }
            }

            foreach (var edge in active)
            {
                edge.Reach = edge.StretchOver(from - _w, to + _w);
            }

            Sort(active);
            yield return (from, to, active);
        }
    }

    // The pieces that reach into the band of a grain line of a column across the top, in their order.
    private Dictionary<int, List<BandEdge>> Columns()
    {
        if (_columns is null)
        {
            _columns = [];
            foreach (var edge in _edges)
            {
                for (var column = Column(edge.Edge.MinX - _w - SameMm); column <= Column(edge.Edge.MaxX + _w + SameMm); column++)
                {
                    (_columns.TryGetValue(column, out var list) ? list : _columns[column] = []).Add(edge);
                }
            }
        }

        return _columns;
    }

    private static int Column(double x) => (int)Math.Floor(x / ColumnMm);

    private List<double> Events()
    {
        var all = new double[4 * _edges.Length];
        for (var i = 0; i < _edges.Length; i++)
        {
            var edge = _edges[i].Edge;
            (all[4 * i], all[(4 * i) + 1], all[(4 * i) + 2], all[(4 * i) + 3]) = (edge.MinX - _w, edge.MinX + _w, edge.MaxX - _w, edge.MaxX + _w);
        }

        Array.Sort(all);
        var events = new List<double>(all.Length);
        foreach (var x in all)
        {
            if (events.Count == 0 || x - events[^1] > SameMm)
            {
                events.Add(x);
            }
        }

        return events;
    }

    private static void Sort(List<BandEdge> active)
    {
        for (var i = 1; i < active.Count; i++)
        {
            var (own, j) = (active[i], i);
            for (; j > 0 && active[j - 1].Reach.Low > own.Reach.Low; j--)
            {
                active[j] = active[j - 1];
            }

            active[j] = own;
        }
    }

    // The pieces from one on that free stretches could join somewhere in the interval; supported pieces between are taken along.
    private (int End, double Low, double High) Cluster(List<BandEdge> active, int start)
    {
        var (low, high, free) = (double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
        var end = start;
        for (; end < active.Count && (end == start || active[end].Reach.Low <= high + _calibration.MergeGapMm + Runs.SlackMm); end++)
        {
            high = Math.Max(high, active[end].Reach.High);
            if (!active[end].IsSupported)
            {
                (low, free) = (Math.Min(low, active[end].Reach.Low), Math.Max(free, active[end].Reach.High));
            }
        }

        return (end, low, free);
    }
}
