namespace TopLayout.Geometry.Arrangements;

/// <summary>Winding numbers of the cycles of an arrangement.</summary>
internal sealed class Windings
{
    private readonly Arrangement _arrangement;
    private readonly int[] _cycleOf;
    private readonly int[] _windings;
    private readonly bool[] _known;
    private readonly int[] _partOf;
    private readonly List<List<int>> _parts = [];
    private bool _consistent = true;

    private Windings(Arrangement arrangement, int[] cycleOf, int cycles)
    {
        (_arrangement, _cycleOf) = (arrangement, cycleOf);
        _windings = new int[cycles];
        _known = new bool[cycles];
        _partOf = new int[arrangement.Fragments.Length];
        FindParts();
    }

    /// <summary>The number of each cycle, and whether they agree with each other and with a drawing in the plane.</summary>
    public static (int[] Windings, bool IsConsistent) Of(Arrangement arrangement, int[] cycleOf, int cycles)
    {
        var windings = new Windings(arrangement, cycleOf, cycles);
        var areas = windings.Areas();
        var rays = windings._parts.Count > 1 ? new LeftwardRays(arrangement.Curves) : null;
        foreach (var part in windings._parts)
        {
            var outside = windings.Outside(part, areas);
            var at = arrangement.Node(arrangement.Tail(outside));
            windings.Spread(outside, rays?.Winding(at, f => windings._partOf[f] == windings._partOf[part[0]] ? 0 : arrangement.Fragments[f].Weight) ?? 0);
        }

        return (windings._windings, windings._consistent && windings.IsPlanar(cycles));
    }

    // Connected parts by nodes; each a list of fragments.
    private void FindParts()
    {
        var root = new int[_arrangement.NodeCount];
        for (var node = 0; node < root.Length; node++)
        {
            root[node] = node;
        }

        foreach (ref readonly var f in _arrangement.Fragments)
        {
            root[Root(root, f.From)] = Root(root, f.To);
        }

        var partOfRoot = new int[root.Length];
        Array.Fill(partOfRoot, -1);
        for (var f = 0; f < _partOf.Length; f++)
        {
            ref var part = ref partOfRoot[Root(root, _arrangement.Fragments[f].From)];
            if (part < 0)
            {
                part = _parts.Count;
                _parts.Add([]);
            }

            _partOf[f] = part;
            _parts[part].Add(f);
        }
    }

    private static int Root(int[] root, int node)
    {
        while (root[node] != node)
        {
            root[node] = root[root[node]];
            node = root[node];
        }

        return node;
    }

    private double[] Areas()
    {
        var areas = new double[_windings.Length];
        for (var f = 0; f < _partOf.Length; f++)
        {
            var term = _arrangement.Curves[f].AreaTerm;
            areas[_cycleOf[2 * f]] += term;
            areas[_cycleOf[(2 * f) + 1]] -= term;
        }

        return areas;
    }

    // The border of the face outside a part runs clockwise: its area is the smallest.
    private int Outside(List<int> part, double[] areas)
    {
        var best = 2 * part[0];
        foreach (var f in part)
        {
            best = areas[_cycleOf[2 * f]] < areas[_cycleOf[best]] ? 2 * f : best;
            best = areas[_cycleOf[(2 * f) + 1]] < areas[_cycleOf[best]] ? (2 * f) + 1 : best;
        }

        return best;
    }

    private void Spread(int from, int winding)
    {
        var open = new Stack<int>([from]);
        (_windings[_cycleOf[from]], _known[_cycleOf[from]]) = (winding, true);
        while (open.TryPop(out var first))
        {
            var own = _windings[_cycleOf[first]];
            var half = first;
            do
            {
                var weight = _arrangement.Fragments[half >> 1].Weight;
                var across = own - ((half & 1) == 0 ? weight : -weight);
                var cycle = _cycleOf[half ^ 1];
                if (!_known[cycle])
                {
                    (_windings[cycle], _known[cycle]) = (across, true);
                    open.Push(half ^ 1);
                }

                _consistent &= _windings[cycle] == across;
                half = _arrangement.Rotation.Clockwise(half ^ 1);
            }
            while (half != first);
        }
    }

    // Euler: nodes − fragments + cycles = 2 for each connected part drawn in the plane.
    private bool IsPlanar(int cycles)
    {
        var used = new bool[_arrangement.NodeCount];
        foreach (ref readonly var f in _arrangement.Fragments)
        {
            used[f.From] = used[f.To] = true;
        }

        return used.Count(u => u) - _partOf.Length + cycles == 2 * _parts.Count;
    }
}
