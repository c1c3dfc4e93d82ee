namespace TopLayout.Geometry.Arrangements;

/// <summary>The half-edges that leave each node, counter-clockwise.</summary>
internal sealed class Rotation
{
    private static readonly Comparison<Departure> ByHeading = (a, b) => a.Heading.CompareTo(b.Heading);

    private readonly int[] _starts;
    private readonly int[] _halves;
    private readonly int[] _places;
    private readonly int[] _tails;

    public Rotation(ReadOnlySpan<Fragment> fragments, Curve[] curves, int nodes)
    {
        _starts = new int[nodes + 1];
        _halves = new int[fragments.Length * 2];
        _places = new int[fragments.Length * 2];
        _tails = new int[fragments.Length * 2];
        for (var half = 0; half < _tails.Length; half++)
        {
            ref readonly var f = ref fragments[half >> 1];
            _tails[half] = (half & 1) == 0 ? f.From : f.To;
            _starts[_tails[half] + 1]++;
        }

        for (var node = 0; node < nodes; node++)
        {
            _starts[node + 1] += _starts[node];
        }

        var fill = _starts.AsSpan(0, nodes).ToArray();
        for (var half = 0; half < _tails.Length; half++)
        {
            _halves[fill[_tails[half]]++] = half;
        }

        var scratch = Array.Empty<Departure>();
        for (var node = 0; node < nodes; node++)
        {
            Sort(_halves.AsSpan(_starts[node], _starts[node + 1] - _starts[node]), curves, ref scratch);
        }

        for (var place = 0; place < _halves.Length; place++)
        {
            _places[_halves[place]] = place;
        }
    }

    /// <summary>The half-edge next clockwise of one round the node they leave.</summary>
    public int Clockwise(int half)
    {
        var node = _tails[half];
        var place = _places[half];
        return _halves[place == _starts[node] ? _starts[node + 1] - 1 : place - 1];
    }

    // Sorted by heading first; then, from the widest gap on, by insertion with the exact comparison, which need not agree with itself.
    private static void Sort(Span<int> halves, Curve[] curves, ref Departure[] scratch)
    {
        if (halves.Length < 3)
        {
            return;
        }

        if (scratch.Length < halves.Length)
        {
            scratch = new Departure[halves.Length * 2];
        }

        var departures = scratch.AsSpan(0, halves.Length);
        for (var i = 0; i < halves.Length; i++)
        {
            departures[i] = new Departure(halves[i], curves[halves[i] >> 1]);
        }

        departures.Sort(ByHeading);
        FromWidestGap(departures);
        for (var i = 1; i < departures.Length; i++)
        {
            var moving = departures[i];
            var j = i - 1;
            for (; j >= 0 && moving.IsClockwiseOf(departures[j]); j--)
            {
                departures[j + 1] = departures[j];
            }

            departures[j + 1] = moving;
        }

        for (var i = 0; i < halves.Length; i++)
        {
            halves[i] = departures[i].Half;
        }
    }

    // So that no two which leave alike stand at opposite ends. Both ends turned round, then the whole, is the whole turned.
    private static void FromWidestGap(Span<Departure> sorted)
    {
        var first = 0;
        var widest = sorted[0].Heading + Departure.FullTurn - sorted[^1].Heading;
        for (var i = 1; i < sorted.Length; i++)
        {
            if (sorted[i].Heading - sorted[i - 1].Heading > widest)
            {
                (first, widest) = (i, sorted[i].Heading - sorted[i - 1].Heading);
            }
        }

        for (var i = 0; i < first; i++)
        {
            sorted[i] = sorted[i].AfterFullTurn();
        }

        sorted[..first].Reverse();
        sorted[first..].Reverse();
        sorted.Reverse();
    }
}
