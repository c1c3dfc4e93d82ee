namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Cuts strands at all their contacts until none is left: ends that lie on other curves, crossings, and touching points. A contact
/// closer to a node than the touch distance is that node. Where a cut moves a curve, the pass is repeated on the moved curves
/// (iterated snap rounding; Halperin and Packer 2002), so that in the end curves meet in nodes only.
/// </summary>
internal sealed class Noder
{
    private const int MostPasses = 8;

    private readonly double _touch;
    private readonly List<(int Curve, double Order, int Node)> _marks = [];
    private readonly Curve[] _carriers;
    private Fragment[] _fragments;
    private int _count;
    private Curve[] _curves = [];
    private bool _moved;

    private Noder(IReadOnlyList<Strand> strands, double touchMm)
    {
        _touch = touchMm;
        Nodes = new NodeTable(touchMm, strands.Count * 2);
        _carriers = new Curve[strands.Count];
        _fragments = new Fragment[strands.Count];
        for (var i = 0; i < strands.Count; i++)
        {
            var s = strands[i];
            var (from, to) = (Nodes.Snap(s.Segment.Start), Nodes.Snap(s.Segment.End));
            _carriers[i] = new Curve(Nodes[from], Nodes[to], s.Segment.Bulge);
            if (from != to)
            {
                _fragments[_count++] = new Fragment
                {
                    From = from,
                    To = to,
                    Curve = _carriers[i],
                    Weight = s.Weight,
                    With = i,
                    Against = -1,
                    NameWith = i,
                    NameAgainst = -1,
                    IsPath = s.Weight == 0,
                };
            }
        }
    }

    public NodeTable Nodes { get; }

    /// <summary>The parts between nodes, strand by strand in the sense of travel; coincident parts are still apart. The carrier of each strand.</summary>
    public static (NodeTable Nodes, ArraySegment<Fragment> Fragments, Curve[] Carriers) Cut(IReadOnlyList<Strand> strands, double touchMm)
    {
        var noder = new Noder(strands, touchMm);
        for (var pass = 0; pass < MostPasses && noder.CutOnce(); pass++)
        {
        }

        return (noder.Nodes, new ArraySegment<Fragment>(noder._fragments, 0, noder._count), noder._carriers);
    }

    // True when a curve was moved by a cut, so that new contacts may have come.
    private bool CutOnce()
    {
        _marks.Clear();
        _moved = false;
        _curves = new Curve[_count];
        for (var i = 0; i < _count; i++)
        {
            _curves[i] = _fragments[i].Curve;
        }

        var grid = new CurveGrid(_curves, _touch);
        var near = new List<int>();
        for (var i = 0; i < _curves.Length; i++)
        {
            grid.After(i, near);
            foreach (var j in near)
            {
                if (_curves[i].Bounds.Grown(_touch).Overlaps(_curves[j].Bounds))
                {
                    Meet(i, j);
                }
            }
        }

        if (_marks.Count > 0)
        {
            (_fragments, _count) = Parts();
        }

        return _moved;
    }

    private void Meet(int i, int j)
    {
        ref readonly var a = ref _fragments[i];
        ref readonly var b = ref _fragments[j];
        Span<int> met = stackalloc int[6];
        var count = 0;
        foreach (var node in (ReadOnlySpan<int>)[b.From, b.To])
        {
            if (node == a.From || node == a.To || MarkEnd(i, node))
            {
                met[count++] = node;
            }
        }

        foreach (var node in (ReadOnlySpan<int>)[a.From, a.To])
        {
            if (node != b.From && node != b.To && MarkEnd(j, node))
            {
                met[count++] = node;
            }
        }

        // Two lines that have met in a node run within the touch distance up to any crossing of theirs, or do not cross again.
        if (count > 0 && !a.Curve.IsArc && !b.Curve.IsArc)
        {
            return;
        }

        var crossings = Crossings.Of(_curves[i], _curves[j], _touch);
        if (crossings.Count > 0)
        {
            Cross(i, j, crossings.First, met[..count]);
        }

        if (crossings.Count > 1)
        {
            Cross(i, j, crossings.Second, met[..count]);
        }
    }

    private bool MarkEnd(int curve, int node)
    {
        if (!_curves[curve].Bounds.Grown(_touch).Contains(Nodes[node]) || !_curves[curve].Passes(Nodes[node], _touch))
        {
            return false;
        }

        Mark(curve, node);
        return true;
    }

    // A crossing reached from a node along which the curves stay within the touch distance is that node.
    private void Cross(int i, int j, Point2 x, ReadOnlySpan<int> met)
    {
        var a = _curves[i];
        var b = _curves[j];
        if (!a.HasFoot(x) || !b.HasFoot(x))
        {
            return;
        }

        foreach (var node in met)
        {
            if (Nodes[node].IsNear(x, _touch) || Math.Abs(b.LeftDistance(a.Between(Nodes[node], x))) <= _touch)
            {
                return;
            }
        }

        var cut = Nodes.Snap(x);
        Mark(i, cut);
        Mark(j, cut);
    }

    private void Mark(int curve, int node)
    {
        ref readonly var f = ref _fragments[curve];
        if (node != f.From && node != f.To)
        {
            _marks.Add((curve, _curves[curve].Order(Nodes[node]), node));
            _moved |= Math.Abs(_curves[curve].LeftDistance(Nodes[node])) > Tolerances.ExactMm;
        }
    }

    private (Fragment[] Parts, int Count) Parts()
    {
        _marks.Sort((m, n) => m.Curve != n.Curve ? m.Curve.CompareTo(n.Curve) : m.Order.CompareTo(n.Order));
        var parts = new Fragment[_count + _marks.Count];
        var (mark, count) = (0, 0);
        for (var i = 0; i < _count; i++)
        {
            ref readonly var f = ref _fragments[i];
            if (mark == _marks.Count || _marks[mark].Curve != i)
            {
                parts[count++] = f;
                continue;
            }

            var from = f.From;
            for (; mark < _marks.Count && _marks[mark].Curve == i; mark++)
            {
                AddPart(parts, ref count, i, from, _marks[mark].Node);
                from = _marks[mark].Node;
            }

            AddPart(parts, ref count, i, from, f.To);
        }

        return (parts, count);
    }

    private void AddPart(Fragment[] parts, ref int count, int curve, int from, int to)
    {
        if (from != to)
        {
            var bulge = _curves[curve].BulgeBetween(Nodes[from], Nodes[to]);
            parts[count++] = _fragments[curve] with { From = from, To = to, Curve = new Curve(Nodes[from], Nodes[to], bulge) };
        }
    }
}
