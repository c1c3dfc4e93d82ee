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

    private readonly List<(EdgePiece Piece, MonotoneEdge Edge)> _pieces =
        [.. pieces.Where(p => p.Side != EdgeSide.Neither).Select(p => (p, new MonotoneEdge(p.Edge)))];

    private readonly double _w = calibration.BandHalfWidthMm;

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
        yield return At(a, active);
        foreach (var (from, to) in marks.Zip(marks.Skip(1)).Where(m => m.Second - m.First > SameMm))
        {
            yield return At(hasArc ? Top(from, to, active) : (from + to) / 2, active);
            yield return At(to, active);
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

    // Golden section on the longest run (Kiefer 1953). On two tops between the same events the better of those it meets is taken.
    private double Top(double from, double to, List<(bool IsSupported, MonotoneEdge Edge)> active)
    {
        var golden = (Math.Sqrt(5) - 1) / 2;
        var (c, d) = (to - (golden * (to - from)), from + (golden * (to - from)));
        var (atC, atD) = (At(c, active).Longest, At(d, active).Longest);
        while (to - from > TopMm)
        {
            if (atC > atD)
            {
                (to, d, atD) = (d, c, atC);
                c = to - (golden * (to - from));
                atC = At(c, active).Longest;
            }
            else
            {
                (from, c, atC) = (c, d, atD);
                d = from + (golden * (to - from));
                atD = At(d, active).Longest;
            }
        }

        return (from + to) / 2;
    }

    // The x in (a, b) at which a gap between two free stretches reaches the merging length, or the end of a supported stretch passes
    // that of a free one.
    private IEnumerable<double> Crossings(double a, double b, List<(bool IsSupported, MonotoneEdge Edge)> active)
    {
        double[] probes = [a, (a + b) / 2, b];
        var stretches = active.Select(p => probes.Select(x => StretchOf(p.Edge, x)).ToArray()).ToList();
        for (var i = 0; i < active.Count; i++)
        {
            for (var j = 0; j < active.Count; j++)
            {
                if (i == j || active[i].IsSupported)
                {
                    continue;
                }

                var (first, second, isSupported) = (active[i].Edge, active[j].Edge, active[j].IsSupported);
                foreach (var difference in Differences(isSupported))
                {
                    foreach (var k in (int[])[0, 1])
                    {
                        if ((difference(stretches[i][k], stretches[j][k]) > 0) != (difference(stretches[i][k + 1], stretches[j][k + 1]) > 0))
                        {
                            yield return Root(x => difference(StretchOf(first, x), StretchOf(second, x)), probes[k], probes[k + 1]);
                        }
                    }
                }
            }
        }
    }

    private IEnumerable<Func<Stretch, Stretch, double>> Differences(bool isSecondSupported)
    {
        if (isSecondSupported)
        {
            yield return (free, supported) => supported.Low - free.Low;
            yield return (free, supported) => supported.High - free.High;
        }
        else
        {
            yield return (free, other) => other.Low - free.High - calibration.MergeGapMm;
        }
    }

    // Bisection: the sign differs at the ends.
    private static double Root(Func<double, double> f, double from, double to)
    {
        var isUp = f(from) > 0;
        for (var i = 0; i < 60; i++)
        {
            var middle = (from + to) / 2;
            (from, to) = f(middle) > 0 == isUp ? (middle, to) : (from, middle);
        }

        return (from + to) / 2;
    }
}
