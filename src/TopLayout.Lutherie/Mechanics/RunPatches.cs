namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// Runs at stations, collected from one grain line to the next. Those that overlap along the grain from one station to the next belong
/// to one patch.
/// </summary>
internal sealed class RunPatches(double floorMm, bool onlyLongest)
{
    /// <summary>Runs that differ by less are equally long, mm.</summary>
    public const double EqualMm = 1e-6;

    private readonly List<RunAt> _found = [];
    private readonly List<int> _leaders = [];
    private readonly List<int> _before = [];
    private readonly List<int> _border = [];
    private readonly List<int> _last = [];
    private readonly List<int> _own = [];

    /// <summary>Runs up to this length are of no interest, mm.</summary>
    public double Floor { get; private set; } = floorMm;

    /// <summary>Begins an interval: what stood on the last line of the one before stands on the first line of this.</summary>
    public void BeginInterval()
    {
        _before.Clear();
        _before.AddRange(_border);
        _border.Clear();
    }

    /// <summary>Begins a cluster in the interval.</summary>
    public void BeginCluster()
    {
        _last.Clear();
        _last.AddRange(_before);
    }

    /// <summary>Takes the runs of the cluster on its next line.</summary>
    public void Add(double x, List<Stretch> runs)
    {
        _own.Clear();
        foreach (var run in runs)
        {
            if (run.Length > Floor)
            {
                if (onlyLongest)
                {
                    Raise(run.Length);
                }

                Add(new RunAt(x, run));
            }
        }

        _last.Clear();
        _last.AddRange(_own);
    }

    /// <summary>Ends the cluster: its last line is the border to the next interval.</summary>
    public void EndCluster() => _border.AddRange(_last);

    /// <summary>The patches, each in order of x.</summary>
    public IReadOnlyList<List<RunAt>> All()
    {
        var patches = new List<List<RunAt>>();
        var patchOf = new int[_found.Count];
        for (var i = 0; i < _found.Count; i++)
        {
            ref var patch = ref patchOf[Lead(i)];
            if (patch == 0)
            {
                patches.Add([]);
                patch = patches.Count;
            }

            patches[patch - 1].Add(_found[i]);
        }

        return patches;
    }

    // Of the longest only those as long as it are of interest; the shorter ones that led up to it are not.
    private void Raise(double length)
    {
        if (length > Floor + (2 * EqualMm))
        {
            foreach (var list in (ReadOnlySpan<List<int>>)[_leaders, _before, _border, _last, _own])
            {
                list.Clear();
            }

            _found.Clear();
        }

        Floor = Math.Max(Floor, length - EqualMm);
    }

    private void Add(RunAt found)
    {
        var own = _found.Count;
        _found.Add(found);
        _leaders.Add(own);
        _own.Add(own);
        foreach (var i in _last)
        {
            if (_found[i].Run.Overlaps(found.Run))
            {
                _leaders[Lead(i)] = Lead(own);
            }
        }
    }

    private int Lead(int i)
    {
        while (_leaders[i] != i)
        {
            i = _leaders[i] = _leaders[_leaders[i]];
        }

        return i;
    }
}
