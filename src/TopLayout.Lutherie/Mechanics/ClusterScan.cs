namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// The runs of a cluster of pieces between two events. Their make-up changes only where a gap reaches the merging length or a supported
/// stretch passes the end of a free one. Between two such lines lengths are smooth; straight pieces give straight slopes, arcs may rise
/// to a top within, which is searched. Stations stand no further apart than w, so that the runs of a slanted edge overlap from one to
/// the next.
/// </summary>
internal sealed class ClusterScan(Calibration calibration)
{
    /// <summary>Lines nearer than this are one, mm.</summary>
    private const double SameMm = 1e-9;

    /// <summary>How near the top between two lines is found, mm across the grain.</summary>
    private const double TopMm = 1e-5;

    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>Where a rise between two stations is looked for, as shares of their distance.</summary>
    private static readonly double[] Probes = [1 / 16.0, 0.5, 15 / 16.0];

    private static readonly Crossing[] Merging = [Crossing.GapFull];

    private static readonly Crossing[] PastSupport = [Crossing.LowEnds, Crossing.HighEnds];

    private readonly double _w = calibration.BandHalfWidthMm;
    private readonly Runs _runs = new(calibration.MergeGapMm);
    private readonly List<BandEdge> _edges = [];
    private readonly List<double> _marks = [];
    private readonly List<Stretch> _found = [];
    private readonly List<Stretch> _probed = [];

    /// <summary>The settings.</summary>
    public Calibration Calibration => calibration;

    /// <summary>What makes runs of stretches; free between two calls.</summary>
    public Runs Runs => _runs;

    private enum Crossing
    {
        GapFull,
        LowEnds,
        HighEnds,
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

        // The stretch of one piece alone only grows or only shrinks between two events: its bend has one sign.
        var isAlone = _edges.Count == 1;
        var hasArc = !isAlone && _edges.Exists(e => e.Edge.IsArc);
        if (isAlone && Math.Max(Longest(from), Longest(to)) <= patches.Floor)
        {
            return;
        }

        FindMarks(from, to);
        patches.BeginCluster();
        var last = Longest(from);
        patches.Add(from, _found);
        for (var i = 1; i < _marks.Count; i++)
        {
            var (a, b) = (_marks[i - 1], _marks[i]);
            if (b - a <= SameMm)
            {
                continue;
            }

            if (!isAlone)
            {
                var middle = hasArc ? Top(a, last, b, Longest(b)) : (a + b) / 2;
                Longest(middle);
                patches.Add(middle, _found);
            }

            last = Longest(b);
            patches.Add(b, _found);
        }

        patches.EndCluster();
    }

    private void FindMarks(double from, double to)
    {
        _marks.Clear();
        var steps = (int)Math.Ceiling((to - from) / _w);
        for (var i = 1; i < steps; i++)
        {
            _marks.Add(from + ((to - from) * i / steps));
        }

        AddCrossings(from, to);
        _marks.Sort();
        _marks.Insert(0, from);
        _marks.Add(to);
    }

    // The longest run at an x; all of them stand in the list after.
    private double Longest(double x)
    {
        _runs.Clear();
        foreach (var edge in _edges)
        {
            var s = edge.StretchAt(x, _w);
            _runs.Add(edge.IsSupported, s.Low, s.High);
        }

        _runs.Into(_found);
        var longest = 0.0;
        foreach (var run in _found)
        {
            longest = Math.Max(longest, run.Length);
        }

        return longest;
    }

    // The middle of two stations, or the top of the longest run between them when a probe near either end or in the middle rises over both.
    private double Top(double a, double atA, double b, double atB)
    {
        var (best, height) = (1, double.NegativeInfinity);
        for (var i = 0; i < Probes.Length; i++)
        {
            var found = Longest(a + ((b - a) * Probes[i]));
            (best, height) = found > height ? (i, found) : (best, height);
        }

        return height <= Math.Max(atA, atB) + Runs.SlackMm
            ? a + ((b - a) * Probes[1])
            : Search(best == 0 ? a : a + ((b - a) * Probes[best - 1]), best == 2 ? b : a + ((b - a) * Probes[best + 1]));
    }

    // Golden section on the longest run (Kiefer 1953).
    private double Search(double from, double to)
    {
        var (c, d) = (to - (Golden * (to - from)), from + (Golden * (to - from)));
        var (atC, atD) = (Longest(c), Longest(d));
        while (to - from > TopMm)
        {
            if (atC > atD)
            {
                (to, d, atD) = (d, c, atC);
                c = to - (Golden * (to - from));
                atC = Longest(c);
            }
            else
            {
                (from, c, atC) = (c, d, atD);
                d = from + (Golden * (to - from));
                atD = Longest(d);
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
        var before = IsUp(kind, _probed[3 * free], _probed[3 * other]);
        for (var k = 1; k < 3; k++)
        {
            var isUp = IsUp(kind, _probed[(3 * free) + k], _probed[(3 * other) + k]);
            if (isUp != before)
            {
                _marks.Add(Root(kind, _edges[free], _edges[other], probes[k - 1], probes[k], isUp));
            }

            before = isUp;
        }
    }

    private bool IsUp(Crossing kind, Stretch free, Stretch other) => kind switch
    {
        Crossing.GapFull => other.Low - free.High > calibration.MergeGapMm,
        Crossing.LowEnds => other.Low > free.Low,
        _ => other.High > free.High,
    };

    // Bisection: the sign differs at the ends.
    private double Root(Crossing kind, BandEdge free, BandEdge other, double from, double to, bool isUpAtEnd)
    {
        while (to - from > SameMm / 10)
        {
            var middle = (from + to) / 2;
            (from, to) = IsUp(kind, free.StretchAt(middle, _w), other.StretchAt(middle, _w)) == isUpAtEnd ? (from, middle) : (middle, to);
        }

        return (from + to) / 2;
    }
}
