using System.Runtime.InteropServices;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// Runs at stations, collected from one grain line to the next. Those that overlap along the grain from one station to the next belong
/// to one patch. One instance serves many scans, one after the other, and keeps its lists.
/// </summary>
internal sealed class RunPatches
{
    /// <summary>Runs that differ by less are equally long, mm.</summary>
    public const double EqualMm = 1e-6;

    private static readonly Comparison<RunAt> ByPlace = (a, b) => a.X != b.X ? a.X.CompareTo(b.X) : a.Run.Low.CompareTo(b.Run.Low);

    private readonly List<RunAt> _found = [];
    private readonly List<int> _leaders = [];
    private List<int> _before = [];
    private List<int> _border = [];
    private List<int> _last = [];
    private List<int> _own = [];
    private readonly List<RunAt> _byPatch = [];
    private readonly List<int> _starts = [];
    private readonly List<int> _patchOf = [];
    private bool _onlyLongest;
    private int _interval;

    /// <summary>Runs up to this length are of no interest, mm.</summary>
    public double Floor { get; private set; }

    /// <summary>How many patches there are; after <see cref="End"/>.</summary>
    public int Count => _starts.Count - 1;

    /// <summary>The runs of a patch in order of x; after <see cref="End"/>.</summary>
    public ReadOnlySpan<RunAt> this[int patch] =>
        CollectionsMarshal.AsSpan(_byPatch)[_starts[patch].._starts[patch + 1]];

    /// <summary>Begins a scan.</summary>
    /// <param name="floorMm">Runs up to this length are of no interest, mm.</param>
    /// <param name="onlyLongest">True when only those as long as the longest are.</param>
    public void Begin(double floorMm, bool onlyLongest)
    {
        (Floor, _onlyLongest, _interval) = (floorMm, onlyLongest, 0);
        Clear();
    }

    /// <summary>Begins an interval: what stood on the last line of the one before stands on the first line of this.</summary>
    public void BeginInterval()
    {
        _interval++;
        (_before, _border) = (_border, _before);
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
            Take(new RunAt(x, run, _interval));
        }

        (_last, _own) = (_own, _last);
    }

    /// <summary>Takes the run that one piece alone makes on its next line.</summary>
    public void Add(double x, Stretch run)
    {
        _own.Clear();
        Take(new RunAt(x, run, _interval, IsOfOne: true));
        (_last, _own) = (_own, _last);
    }

    /// <summary>Ends the cluster: its last line is the border to the next interval.</summary>
    public void EndCluster() => _border.AddRange(_last);

    /// <summary>Ends the scan: sorts what was found by patches.</summary>
    public void End()
    {
        _starts.Clear();
        _patchOf.Clear();
        CollectionsMarshal.SetCount(_patchOf, _found.Count);
        CollectionsMarshal.AsSpan(_patchOf).Fill(-1);
        for (var i = 0; i < _found.Count; i++)
        {
            var lead = Lead(i);
            if (_patchOf[lead] < 0)
            {
                _patchOf[lead] = _starts.Count;
                _starts.Add(0);
            }

            _starts[_patchOf[lead]]++;
        }

        // From counts to the places behind each patch, from which it is filled backwards.
        var end = 0;
        for (var patch = 0; patch < _starts.Count; patch++)
        {
            _starts[patch] = end += _starts[patch];
        }

        _starts.Add(end);
        _byPatch.Clear();
        _byPatch.AddRange(_found);
        for (var i = _found.Count - 1; i >= 0; i--)
        {
            _byPatch[--CollectionsMarshal.AsSpan(_starts)[_patchOf[Lead(i)]]] = _found[i];
        }

        for (var patch = 0; patch < Count; patch++)
        {
            Order(CollectionsMarshal.AsSpan(_byPatch)[_starts[patch].._starts[patch + 1]]);
        }
    }

    // Clusters that join within an interval come one after the other; nearly all patches are in order as found.
    private static void Order(Span<RunAt> patch)
    {
        for (var i = 1; i < patch.Length; i++)
        {
            if (ByPlace(patch[i - 1], patch[i]) > 0)
            {
                patch.Sort(ByPlace);
                return;
            }
        }
    }

    // Of the longest only those as long as it are of interest; the shorter ones that led up to it are not.
    private void Raise(double length)
    {
        if (length > Floor + (2 * EqualMm))
        {
            Clear();
        }

        Floor = Math.Max(Floor, length - EqualMm);
    }

    private void Clear()
    {
        _found.Clear();
        _leaders.Clear();
        _before.Clear();
        _border.Clear();
        _last.Clear();
        _own.Clear();
    }

    private void Take(RunAt found)
    {
        if (found.Run.Length <= Floor)
        {
            return;
        }

        if (_onlyLongest)
        {
            Raise(found.Run.Length);
        }

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
