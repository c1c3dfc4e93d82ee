using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>A run found on a grain line.</summary>
/// <param name="X">The grain line in the grain's frame, mm.</param>
/// <param name="Run">The run.</param>
/// <param name="Interval">Which of the intervals between events it lies in: runs of one interval that overlap are of the same edges.</param>
/// <param name="IsOfOne">True when one piece alone makes it: its length only grows or only shrinks within the interval.</param>
internal readonly record struct RunAt(double X, Stretch Run, int Interval = 0, bool IsOfOne = false)
{
    /// <summary>True when between two lines of one interval the run of the same one piece is no shorter than the shorter of them.</summary>
    public bool GoesOnTo(RunAt next) => IsOfOne && next.IsOfOne && Interval == next.Interval && Run.Overlaps(next.Run);
}

/// <summary>
/// A band of half-width w swept across pieces that share one frame. Which pieces it holds changes only at events: where the band's edge
/// meets the end of a piece. Between two events the pieces fall into clusters that no gap in reach could join; only a cluster whose
/// stretches over the whole interval are longer than the floor is looked at closely (<see cref="ClusterScan"/>). One instance serves many
/// scans, one after the other, and keeps its lists.
/// </summary>
internal sealed class BandScan
{
    /// <summary>Events nearer than this are one, mm.</summary>
    private const double SameMm = 1e-9;

    private static readonly Comparison<BandEdge> ByMinX = (a, b) => a.Edge.MinX.CompareTo(b.Edge.MinX);

    private readonly List<BandEdge> _edges = [];
    private readonly List<BandEdge> _active = [];
    private readonly List<BandEdge> _inBand = [];
    private readonly List<double> _events = [];
    private readonly List<Stretch> _found = [];
    private readonly ClusterScan _cluster;
    private readonly RunPatches _patches = new();
    private readonly double _w;
    private double _longest;

    public BandScan(Calibration calibration) => (_cluster, _w) = (new(calibration), calibration.BandHalfWidthMm);

    /// <summary>The settings.</summary>
    public Calibration Calibration => _cluster.Calibration;

    /// <summary>Begins with other pieces.</summary>
    public void Take(IEnumerable<EdgePiece> pieces)
    {
        _longest = 0;
        _edges.Clear();
        foreach (var piece in pieces)
        {
            if (piece.Side != EdgeSide.Neither)
            {
                var edge = new BandEdge(piece);
                _edges.Add(edge);
                _longest = Math.Max(_longest, edge.Edge.MaxX - edge.Edge.MinX);
            }
        }

        _edges.Sort(ByMinX);
    }

    /// <summary>The pieces that reach into the band of a grain line, in a list that the next call fills anew.</summary>
    public List<BandEdge> InBand(double x)
    {
        _inBand.Clear();
        for (var i = FirstFrom(x - _w - SameMm - _longest); i < _edges.Count && _edges[i].Edge.MinX <= x + _w + SameMm; i++)
        {
            if (_edges[i].Edge.MaxX >= x - _w - SameMm)
            {
                _inBand.Add(_edges[i]);
            }
        }

        return _inBand;
    }

    /// <summary>The run on the grain line at an x that overlaps another and has a length at least; null when there is none.</summary>
    public Stretch? Find(double x, Stretch near, double leastMm)
    {
        _cluster.Runs.Clear();
        foreach (var edge in InBand(x))
        {
            var stretch = edge.StretchAt(x, _w);
            _cluster.Runs.Add(edge.IsSupported, stretch.Low, stretch.High);
        }

        _cluster.Runs.Into(_found);
        foreach (var run in _found)
        {
            if (run.Overlaps(near) && run.Length >= leastMm)
            {
                return run;
            }
        }

        return null;
    }

    /// <summary>
    /// The runs longer than a floor at every station, in patches: runs on neighbouring stations that overlap along the grain belong to one.
    /// They stand until the next call.
    /// </summary>
    /// <param name="floorMm">Shorter runs are left out, mm.</param>
    /// <param name="onlyLongest">True to leave out also what is shorter than the longest found so far.</param>
    /// <param name="floorAt">Where none longer than this can lie, in a box, none is looked for, mm; the floor itself when left out.</param>
    public RunPatches Patches(double floorMm, bool onlyLongest, Func<Box2, double>? floorAt = null)
    {
        _patches.Begin(floorMm, onlyLongest);
        foreach (var (from, to, active) in Intervals())
        {
            _patches.BeginInterval();
            var start = 0;
            while (start < active.Count)
            {
                var (end, low, high) = Cluster(active, start);
                var isLong = high - low > _patches.Floor;
                var floor = isLong && floorAt is not null
                    ? Math.Max(_patches.Floor, floorAt(new Box2(new Point2(from - _w, low), new Point2(to + _w, high))))
                    : _patches.Floor;
                if (isLong && high - low > floor && _cluster.Bound(active, start, end, from, to) > floor)
                {
                    _cluster.Scan(active, start, end, (low, high), from, to, _patches);
                }

                start = end;
            }
        }

        _patches.End();
        return _patches;
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
                _cluster.Runs.Clear();
                foreach (var edge in active)
                {
                    var s = edge.StretchAt(x, _w);
                    _cluster.Runs.Add(edge.IsSupported, s.Low, s.High);
                }

                _cluster.Runs.Into(runs);
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
        FindEvents();
        _active.Clear();
        var next = 0;
        for (var i = 0; i + 1 < _events.Count; i++)
        {
            var (from, to) = (_events[i], _events[i + 1]);
            RemovePassed(_active, to - SameMm - _w);
            for (; next < _edges.Count && _edges[next].Edge.MinX - _w <= from + SameMm; next++)
            {
                if (_edges[next].Edge.MaxX + _w >= to - SameMm)
                {
                    _active.Add(_edges[next]);
                }
            }

            foreach (var edge in _active)
            {
                edge.Reach = edge.StretchOver(from - _w, to + _w);
            }

            Sort(_active);
            yield return (from, to, _active);
        }
    }

    private static void RemovePassed(List<BandEdge> active, double x)
    {
        var kept = 0;
        for (var i = 0; i < active.Count; i++)
        {
            if (active[i].Edge.MaxX >= x)
            {
                active[kept++] = active[i];
            }
        }

        active.RemoveRange(kept, active.Count - kept);
    }

    // The first piece that begins no further left than an x.
    private int FirstFrom(double x)
    {
        var (low, high) = (0, _edges.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _edges[middle].Edge.MinX < x ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private void FindEvents()
    {
        _events.Clear();
        foreach (var band in _edges)
        {
            ref readonly var edge = ref band.Edge;
            _events.AddRange((ReadOnlySpan<double>)[edge.MinX - _w, edge.MinX + _w, edge.MaxX - _w, edge.MaxX + _w]);
        }

        _events.Sort();
        var count = 0;
        for (var i = 0; i < _events.Count; i++)
        {
            if (count == 0 || _events[i] - _events[count - 1] > SameMm)
            {
                _events[count++] = _events[i];
            }
        }

        _events.RemoveRange(count, _events.Count - count);
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
        for (; end < active.Count && (end == start || active[end].Reach.Low <= high + _cluster.Calibration.MergeGapMm + Runs.SlackMm); end++)
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
