namespace TopLayout.Lutherie.Mechanics;

/// <summary>A closed stretch of a grain line, mm.</summary>
/// <param name="Low">Tail end.</param>
/// <param name="High">Neck end.</param>
internal readonly record struct Stretch(double Low, double High)
{
    public double Length => High - Low;

    public bool Overlaps(Stretch other) => Low < other.High && other.Low < High;
}

/// <summary>
/// From stretches of unsupported and supported edge on one grain line to the runs they make: what is free and not supported at the same
/// place, joined over gaps that are short and hold no support. One instance serves many lines, one after the other.
/// </summary>
internal sealed class Runs(double mergeGapMm)
{
    /// <summary>Stretches and gaps are compared to this, mm.</summary>
    public const double SlackMm = 1e-6;

    private static readonly List<Stretch> NoBlocks = [];

    private readonly List<Stretch> _free = [];
    private readonly List<Stretch> _blocks = [];
    private readonly List<Stretch> _parts = [];

    /// <summary>
    /// A number for how the runs found last are made up: of how many free parts each, and which parts a support cuts. Where it differs
    /// from one line to another, runs have joined or parted between them, or a support has passed the end of an edge.
    /// </summary>
    public int MakeUp { get; private set; }

    /// <summary>Begins a new line.</summary>
    public void Clear()
    {
        _free.Clear();
        _blocks.Clear();
    }

    /// <summary>Adds a stretch of edge.</summary>
    public void Add(bool isSupported, double low, double high)
    {
        if (!isSupported || high - low > SlackMm)
        {
            (isSupported ? _blocks : _free).Add(new Stretch(low, high));
        }
    }

    /// <summary>The runs in order, in a list that the caller brings.</summary>
    public void Into(List<Stretch> runs)
    {
        runs.Clear();
        MakeUp = 0;
        Sort(_free);
        if (_blocks.Count == 0)
        {
            Join(_free, mergeGapMm + SlackMm, runs, NoBlocks);
            return;
        }

        Sort(_blocks);
        Join(_blocks, 0, runs, NoBlocks);
        _blocks.Clear();
        _blocks.AddRange(runs);
        runs.Clear();
        _parts.Clear();
        MakeUp = 0;
        foreach (var free in _free)
        {
            AddWithoutBlocks(free);
        }

        Sort(_parts);
        Join(_parts, mergeGapMm + SlackMm, runs, _blocks);
    }

    // Few and nearly in order: by insertion.
    private static void Sort(List<Stretch> stretches)
    {
        for (var i = 1; i < stretches.Count; i++)
        {
            var (own, j) = (stretches[i], i);
            for (; j > 0 && stretches[j - 1].Low > own.Low; j--)
            {
                stretches[j] = stretches[j - 1];
            }

            stretches[j] = own;
        }
    }

    // Stretches joined over gaps up to a length that hold no block.
    private void Join(List<Stretch> stretches, double gapMm, List<Stretch> joined, List<Stretch> blocks)
    {
        foreach (var next in stretches)
        {
            if (joined.Count > 0 && next.Low - joined[^1].High <= gapMm && !IsBlocked(joined[^1].High, next.Low, blocks))
            {
                joined[^1] = joined[^1] with { High = Math.Max(joined[^1].High, next.High) };
                Mix(1);
            }
            else
            {
                joined.Add(next);
                Mix(2);
            }
        }
    }

    private static bool IsBlocked(double from, double to, List<Stretch> blocks)
    {
        foreach (var b in blocks)
        {
            if (b.High > from + SlackMm && b.Low < to - SlackMm)
            {
                return true;
            }
        }

        return false;
    }

    private void AddWithoutBlocks(Stretch stretch)
    {
        var low = stretch.Low;
        foreach (var b in _blocks)
        {
            if (b.Overlaps(stretch))
            {
                if (b.Low > low)
                {
                    _parts.Add(new Stretch(low, b.Low));
                    Mix(3);
                }

                low = Math.Max(low, b.High);
                Mix(4);
            }
        }

        if (low < stretch.High || low == stretch.Low)
        {
            _parts.Add(new Stretch(low, stretch.High));
            Mix(5);
        }
    }

    private void Mix(int what) => MakeUp = unchecked((MakeUp * 31) + what);
}
