namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// The runs of a cluster of pieces between two events. Their make-up changes only where a gap reaches the merging length or a supported
/// stretch passes the end of a free one; those lines are looked for where the make-up at two stations or midway differs. Between two
/// such lines lengths are smooth; straight pieces give straight slopes, arcs may rise to a top within, which is searched. Stations stand no further apart than w, so that the runs of a slanted edge overlap from one to
/// the next.
/// </summary>
internal sealed class ClusterScan(Calibration calibration)
{
    /// <summary>Lines nearer than this are one, mm.</summary>
    private const double SameMm = 1e-9;

    /// <summary>How near the top between two lines is found, mm across the grain.</summary>
    private const double TopMm = 1e-5;

    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>How near the ends a rise between two lines is looked for, besides in the middle, as a share of their distance.</summary>
    private const double NearEnd = 1 / 16.0;

    private static readonly Crossing[] Merging = [Crossing.GapFull];

    private static readonly Crossing[] PastSupport = [Crossing.LowEnds, Crossing.HighEnds];

    private readonly double _w = calibration.BandHalfWidthMm;
    private readonly Runs _runs = new(calibration.MergeGapMm);
    private readonly List<BandEdge> _edges = [];
    private readonly List<double> _marks = [];
    private readonly List<Stretch> _found = [];
    private readonly List<Stretch> _middle = [];
    private readonly List<Stretch> _probe = [];
    private readonly List<Stretch> _probed = [];
    private bool _hasArc;

    /// <summary>The settings.</summary>
    public Calibration Calibration => calibration;

    /// <summary>What makes runs of stretches; free between two calls.</summary>
    public Runs Runs => _runs;

    private readonly record struct Line(double X, double Longest, int MakeUp);

    private enum Crossing
    {
        GapFull,
        LowEnds,
        HighEnds,
    }

    /// <summary>
    /// A length that no run of the pieces from one number to another exceeds anywhere in the interval, mm: of the free ones all they
    /// reach, of the supported only what they cover throughout.
    /// </summary>
    public double Bound(List<BandEdge> active, int start, int end, double from, double to)
    {
        _runs.Clear();
        for (var i = start; i < end; i++)
        {
            var edge = active[i];
            if (edge.IsSupported)
            {
                var (a, b) = (edge.StretchAt(from, _w), edge.StretchAt(to, _w));
                _runs.Add(true, Math.Max(a.Low, b.Low), Math.Min(a.High, b.High));
            }
            else
            {
                _runs.Add(false, edge.Reach.Low, edge.Reach.High);
            }
        }

        return Longest(_found);
    }

    /// <summary>Adds the runs of the pieces from one number to another, at every station of the interval.</summary>
    public void Scan(
        List<BandEdge> active, int start, int end, (double Low, double High) free, double from, double to, RunPatches patches)
    {
        _edges.Clear();
        for (var i = start; i < end; i++)
        {
            if (!active[i].IsSupported || (active[i].Reach.High >= free.Low && active[i].Reach.Low <= free.High))
            {
                _edges.Add(active[i]);
            }
        }

        if (_edges.Count == 1)
        {
            ScanOne(_edges[0], from, to, patches);
            return;
        }

        _hasArc = _edges.Exists(e => e.Edge.IsArc);
        patches.BeginCluster();
        var last = At(from, _found);
        patches.Add(from, _found);
        var steps = (int)Math.Ceiling((to - from) / _w);
        for (var i = 1; i <= steps; i++)
        {
            last = Step(last, i == steps ? to : from + ((to - from) * i / steps), patches);
        }

        patches.EndCluster();
    }

    // The stretch of one free piece alone only grows or only shrinks between two events: its bend has one sign.
    private void ScanOne(BandEdge edge, double from, double to, RunPatches patches)
    {
        var first = edge.StretchAt(from, _w);
        if (Math.Max(first.Length, edge.StretchAt(to, _w).Length) <= patches.Floor)
        {
            return;
        }

        patches.BeginCluster();
        patches.Add(from, first);
        var steps = (int)Math.Ceiling((to - from) / _w);
        for (var i = 1; i <= steps; i++)
        {
            var x = i == steps ? to : from + ((to - from) * i / steps);
            patches.Add(x, edge.StretchAt(x, _w));
        }

        patches.EndCluster();
    }

    // From one station to the next; where the make-up changes between them, by way of the lines where it does.
    private Line Step(Line last, double x, RunPatches patches)
    {
        var (middle, end) = (At((last.X + x) / 2, _middle), At(x, _found));
        if (last.MakeUp == middle.MakeUp && middle.MakeUp == end.MakeUp)
        {
            return Across(last, middle, end, patches);
        }

        FindMarks(last.X, x);
        foreach (var mark in _marks)
        {
            if (mark - last.X > SameMm)
            {
                last = Across(last, At((last.X + mark) / 2, _middle), At(mark, _found), patches);
            }
        }

        return last;
    }

    // Between two lines of one make-up lengths are smooth. The middle's runs and the end's stand in their lists.
    private Line Across(Line last, Line middle, Line end, RunPatches patches)
    {
        if (_hasArc && Top(last, middle, end) is { } top)
        {
            At(top, _middle);
            patches.Add(top, _middle);
        }
        else
        {
            patches.Add(middle.X, _middle);
        }

        patches.Add(end.X, _found);
        return end;
    }

    private void FindMarks(double from, double to)
    {
        _marks.Clear();
        AddCrossings(from, to);
        _marks.Sort();
        _marks.Add(to);
    }

    // The line at an x; all its runs stand in the list after.
    private Line At(double x, List<Stretch> found)
    {
        _runs.Clear();
        foreach (var edge in _edges)
        {
            var s = edge.StretchAt(x, _w);
            _runs.Add(edge.IsSupported, s.Low, s.High);
        }

        var longest = Longest(found);
        return new Line(x, longest, _runs.MakeUp);
    }

    // All runs stand in the list after.
    private double Longest(List<Stretch> found)
    {
        _runs.Into(found);
        var longest = 0.0;
        foreach (var run in found)
        {
            longest = Math.Max(longest, run.Length);
        }

        return longest;
    }

    // The top of the longest run between two lines when the middle or a probe near either end rises over both; null when none does.
    private double? Top(Line a, Line middle, Line b)
    {
        var (width, highest) = (b.X - a.X, Math.Max(a.Longest, b.Longest) + Runs.SlackMm);
        var (near, far) = (a.X + (width * NearEnd), b.X - (width * NearEnd));
        var (atNear, atFar) = (At(near, _probe).Longest, At(far, _probe).Longest);
        if (Math.Max(middle.Longest, Math.Max(atNear, atFar)) <= highest)
        {
            return null;
        }

        return middle.Longest >= atNear && middle.Longest >= atFar ? Search(near, far)
            : atNear > atFar ? Search(a.X, middle.X)
            : Search(middle.X, b.X);
    }

    // Golden section on the longest run (Kiefer 1953).
    private double Search(double from, double to)
    {
        var (c, d) = (to - (Golden * (to - from)), from + (Golden * (to - from)));
        var (atC, atD) = (At(c, _probe).Longest, At(d, _probe).Longest);
        while (to - from > TopMm)
        {
            if (atC > atD)
            {
                (to, d, atD) = (d, c, atC);
                c = to - (Golden * (to - from));
                atC = At(c, _probe).Longest;
            }
            else
            {
                (from, c, atC) = (c, d, atD);
                d = from + (Golden * (to - from));
                atD = At(d, _probe).Longest;
            }
        }

        return atC > atD ? c : d;
    }

    // The lines between two at which a gap between two free stretches reaches the merging length, or the end of a supported stretch passes
    // that of a free one.
    private void AddCrossings(double from, double to)
    {
        ReadOnlySpan<double> probes = [from, (from + to) / 2, to];
        _probed.Clear();
        foreach (var edge in _edges)
        {
            foreach (var x in probes)
            {
                _probed.Add(edge.StretchAt(x, _w));
            }
        }

        for (var i = 0; i < _edges.Count; i++)
        {
            for (var j = 0; j < _edges.Count && !_edges[i].IsSupported; j++)
            {
                if (i != j && MayMeet(_edges[i].Reach, _edges[j].Reach))
                {
                    foreach (var kind in _edges[j].IsSupported ? PastSupport : Merging)
                    {
                        AddCrossings(kind, i, j, probes);
                    }
                }
            }
        }
    }

    private bool MayMeet(Stretch a, Stretch b) =>
        a.Low - b.High <= calibration.MergeGapMm + Runs.SlackMm && b.Low - a.High <= calibration.MergeGapMm + Runs.SlackMm;

    private void AddCrossings(Crossing kind, int free, int other, ReadOnlySpan<double> probes)
    {
        var before = Lead(kind, _probed[3 * free], _probed[3 * other]);
        for (var k = 1; k < 3; k++)
        {
            var lead = Lead(kind, _probed[(3 * free) + k], _probed[(3 * other) + k]);
            if (lead > 0 != before > 0)
            {
                _marks.Add(Root(kind, _edges[free], _edges[other], (probes[k - 1], before), (probes[k], lead)));
            }

            before = lead;
        }
    }

    private double Lead(Crossing kind, Stretch free, Stretch other) => kind switch
    {
        Crossing.GapFull => other.Low - free.High - calibration.MergeGapMm,
        Crossing.LowEnds => other.Low - free.Low,
        _ => other.High - free.High,
    };

    // Ridders 1979 (from memory): the sign differs at the ends, and halves at least with each step.
    private double Root(Crossing kind, BandEdge free, BandEdge other, (double X, double Lead) from, (double X, double Lead) to)
    {
        (double X, double Lead) At(double x) => (x, Lead(kind, free.StretchAt(x, _w), other.StretchAt(x, _w)));
        var found = double.NaN;
        while (to.X - from.X > SameMm / 10)
        {
            var middle = At((from.X + to.X) / 2);
            var size = Math.Sqrt((middle.Lead * middle.Lead) - (from.Lead * to.Lead));
            if (size == 0)
            {
                return middle.X;
            }

            var next = At(middle.X + ((middle.X - from.X) * Math.Sign(from.Lead - to.Lead) * middle.Lead / size));
            if (Math.Abs(next.X - found) <= SameMm / 10)
            {
                return next.X;
            }

            found = next.X;
            var (low, high) = next.X < middle.X ? (next, middle) : (middle, next);
            (from, to) = low.Lead > 0 != from.Lead > 0 ? (from, low) : high.Lead > 0 != low.Lead > 0 ? (low, high) : (high, to);
        }

        return (from.X + to.X) / 2;
    }
}
