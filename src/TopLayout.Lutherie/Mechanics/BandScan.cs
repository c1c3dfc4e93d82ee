namespace TopLayout.Lutherie.Mechanics;

/// <summary>One grain line and the runs on it.</summary>
/// <param name="X">The grain line in the grain's frame, mm.</param>
/// <param name="Runs">Its runs, tail end first.</param>
internal readonly record struct Station(double X, List<Stretch> Runs)
{
    public double Longest => Runs.Count == 0 ? 0 : Runs.Max(r => r.Length);
}

/// <summary>
/// A band of half-width w swept across pieces that share one frame. Runs change their make-up only at events: where the band's edge
/// meets the end of a piece, where a gap reaches the merging length, where a supported stretch passes the end of a free one. Between
/// two events their lengths are smooth; lines give straight slopes, arcs may rise to a top within, which is searched. Stations stand
/// no further apart than w, so that the runs of a slanted edge overlap from one to the next.
/// </summary>
internal sealed class BandScan(IEnumerable<EdgePiece> pieces, Calibration calibration)
{
    /// <summary>Events nearer than this are one, mm.</summary>
    private const double SameMm = 1e-9;

    /// <summary>How near the top between two events is found, mm across the grain.</summary>
    private const double TopMm = 1e-5;

    /// <summary>Where a rise between two stations is looked for, as shares of their distance.</summary>
    private static readonly double[] Probes = [1 / 16.0, 0.5, 15 / 16.0];

    private static readonly Crossing[] Merging = [Crossing.GapFull];

    private static readonly Crossing[] PastSupport = [Crossing.LowEnds, Crossing.HighEnds];

    private readonly List<(EdgePiece Piece, MonotoneEdge Edge)> _pieces =
        [.. pieces.Where(p => p.Side != EdgeSide.Neither).Select(p => (p, new MonotoneEdge(p.Edge)))];

    private readonly double _w = calibration.BandHalfWidthMm;

    private enum Crossing
    {
        GapFull,
        LowEnds,
        HighEnds,
    }

    /// <summary>The pieces that reach into the band of a grain line, with the stretch of each and its x range there.</summary>
    public IEnumerable<(EdgePiece Piece, MonotoneEdge Edge, Stretch Stretch)> InBand(double x) => _pieces
        .Where(p => p.Edge.MinX <= x + _w + SameMm && p.Edge.MaxX >= x - _w - SameMm)
        .Select(p => (p.Piece, p.Edge, StretchOf(p.Edge, x)));

    /// <summary>The grain line at an x.</summary>
    public Station At(double x) => At(x, InBand(x).Select(p => (p.Piece.IsSupported, p.Edge)));

    /// <summary>The stations at which the runs were worked out, in order of x; groups of them are parted by stretches without an edge.</summary>
    public IEnumerable<Station> Stations()
    {
        var ends = Events();
        foreach (var (a, b) in ends.Zip(ends.Skip(1)))
        {
            var active = _pieces
                .Where(p => p.Edge.MinX - _w <= a + SameMm && p.Edge.MaxX + _w >= b - SameMm)
                .Select(p => (p.Piece.IsSupported, p.Edge))
                .ToList();
            if (active.Count > 0)
            {
                foreach (var station in Between(a, b, active))
                {
                    yield return station;
                }
            }
            else
            {
                yield return new Station(a, []);
                yield return new Station(b, []);
            }
        }
    }

    private List<double> Events()
    {
        var events = new List<double>();
        foreach (var x in _pieces
            .SelectMany(p => (double[])[p.Edge.MinX - _w, p.Edge.MinX + _w, p.Edge.MaxX - _w, p.Edge.MaxX + _w]).Order())
        {
            if (events.Count == 0 || x - events[^1] > SameMm)
            {
                events.Add(x);
            }
        }

        return events;
    }

    private IEnumerable<Station> Between(double a, double b, List<(bool IsSupported, MonotoneEdge Edge)> active)
    {
        var hasArc = active.Any(p => p.Edge.IsArc);
        var steps = (int)Math.Ceiling((b - a) / _w);
        var between = Enumerable.Range(1, steps - 1).Select(i => a + ((b - a) * i / steps));
        List<double> marks = [a, .. Crossings(a, b, active).Concat(between).Order(), b];
        var last = At(a, active);
        yield return last;
        foreach (var (from, to) in marks.Zip(marks.Skip(1)).Where(m => m.Second - m.First > SameMm))
        {
            var next = At(to, active);
            yield return hasArc ? Top(last, next, active) : At((from + to) / 2, active);
            yield return next;
            last = next;
        }
    }

    private Station At(double x, IEnumerable<(bool IsSupported, MonotoneEdge Edge)> active)
    {
        var (free, supported) = (new List<Stretch>(), new List<Stretch>());
        foreach (var (isSupported, edge) in active)
        {
            (isSupported ? supported : free).Add(StretchOf(edge, x));
        }

        return new Station(x, Runs.Of(free, supported, calibration.MergeGapMm));
    }

    private Stretch StretchOf(MonotoneEdge edge, double x)
    {
        var (low, high) = edge.Within(x - _w, x + _w);
        return new Stretch(low, high);
    }

    // The middle of two stations, or the top of the longest run between them when a probe near either end or in the middle rises over both.
    private Station Top(Station from, Station to, List<(bool IsSupported, MonotoneEdge Edge)> active)
    {
        var width = to.X - from.X;
        var probes = Probes.Select(f => At(from.X + (f * width), active)).ToArray();
        var best = Array.IndexOf(probes, probes.MaxBy(p => p.Longest));
        if (probes[best].Longest <= Math.Max(from.Longest, to.Longest) + Runs.SlackMm)
        {
            return probes[1];
        }

        return Golden(best == 0 ? from.X : probes[best - 1].X, best == 2 ? to.X : probes[best + 1].X, active);
    }

    // Golden section on the longest run (Kiefer 1953).
    private Station Golden(double from, double to, List<(bool IsSupported, MonotoneEdge Edge)> active)
    {
        var golden = (Math.Sqrt(5) - 1) / 2;
        var (c, d) = (At(to - (golden * (to - from)), active), At(from + (golden * (to - from)), active));
        while (to - from > TopMm)
        {
            if (c.Longest > d.Longest)
            {
                (to, d) = (d.X, c);
                c = At(to - (golden * (to - from)), active);
            }
            else
            {
                (from, c) = (c.X, d);
                d = At(from + (golden * (to - from)), active);
            }
        }

        return c.Longest > d.Longest ? c : d;
    }

    // The x in (a, b) at which a gap between two free stretches reaches the merging length, or the end of a supported stretch passes
    // that of a free one.
    private List<double> Crossings(double a, double b, List<(bool IsSupported, MonotoneEdge Edge)> active)
    {
        double[] probes = [a, (a + b) / 2, b];
        var stretches = active.Select(p => probes.Select(x => StretchOf(p.Edge, x)).ToArray()).ToArray();
        var roots = new List<double>();
        for (var i = 0; i < stretches.Length; i++)
        {
            for (var j = 0; j < stretches.Length && !active[i].IsSupported; j++)
            {
                foreach (var kind in active[j].IsSupported ? PastSupport : Merging)
                {
                    for (var k = 0; k < 2 && i != j; k++)
                    {
                        var isUp = Difference(kind, stretches[i][k + 1], stretches[j][k + 1]) > 0;
                        if ((Difference(kind, stretches[i][k], stretches[j][k]) > 0) != isUp)
                        {
                            roots.Add(Root(kind, active[i].Edge, active[j].Edge, probes[k], probes[k + 1], isUp));
                        }
                    }
                }
            }
        }

        return roots;
    }

    private double Difference(Crossing kind, Stretch free, Stretch other) => kind switch
    {
        Crossing.GapFull => other.Low - free.High - calibration.MergeGapMm,
        Crossing.LowEnds => other.Low - free.Low,
        _ => other.High - free.High,
    };

    // Bisection: the sign differs at the ends.
    private double Root(Crossing kind, MonotoneEdge free, MonotoneEdge other, double from, double to, bool isUpAtEnd)
    {
        for (var i = 0; i < 60 && to - from > 0; i++)
        {
            var middle = (from + to) / 2;
            var isUp = Difference(kind, StretchOf(free, middle), StretchOf(other, middle)) > 0;
            (from, to) = isUp == isUpAtEnd ? (from, middle) : (middle, to);
        }

        return (from + to) / 2;
    }
}
