namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// A planar arrangement of lines and arcs with winding numbers; one serves union, intersection, difference, clip, split and offset.
/// <list type="number">
/// <item>Strands are cut at all their contacts into fragments that meet in shared, numbered nodes only (<see cref="Noder"/>).</item>
/// <item>Coincident fragments become one, their weights added: topology goes by node number, never by coordinates.</item>
/// <item>Round each node the half-edges are sorted by direction, and those that leave alike by the side on which the shorter ends
/// (<see cref="Departure"/>): that is their order by curvature, told where it is greatest.</item>
/// <item>Walking each half-edge to the next one clockwise gives the cycles that bound faces. Inside a connected part the winding
/// number changes by the weight of the fragment stepped over; a ray from the part to the left gives the number outside it.</item>
/// <item>A rule says which faces are kept; their borders are walked to loops (<see cref="LoopWalk"/>).</item>
/// </list>
/// Half-edge 2f runs along fragment f, 2f + 1 against it. Before and after it:
/// <list type="bullet">
/// <item>An offset or a band is a rule too: the strands are its <see cref="RawOffset"/>, every edge moved along its normal
/// (<see cref="Parallel"/>), joined at corners, and cut short at inner ones where the parallels cross once (<see cref="InnerCorners"/>),
/// which spares most crossings. Faces round which the fronts cancel are judged by their distance (<see cref="Nearness"/>). With mitred
/// corners it is the union of all that the edges pass over (<see cref="Sweep"/>).</item>
/// <item>A path is clipped without arranging the area (<see cref="PathClip"/>): only edges near it are cut with it, and each stretch is
/// judged by the area's winding number about its middle, all middles in one pass by height (<see cref="Insides"/>).</item>
/// <item>Kept loops become edges again by <see cref="Joining"/> and lose short ones by <see cref="Shortening"/>, arranged anew where
/// that moved a border (<see cref="Outlines"/>).</item>
/// </list>
/// Sources: doubly connected edge list and overlay, de Berg et al., Computational Geometry, 3rd edition, chapter 2; winding numbers as
/// rule, Vatti 1992 and Chen and McMains 2005.
/// </summary>
internal sealed class Arrangement
{
    private readonly NodeTable _nodes;
    private readonly Fragment[] _fragments;
    private readonly Rotation _rotation;
    private readonly int[] _cycleOf;
    private readonly int[] _windings;

    private Arrangement(IReadOnlyList<Strand> strands, double touchMm)
    {
        Strands = strands;
        (_nodes, var parts, Carriers) = Noder.Cut(strands, touchMm);
        _fragments = parts.Array!;
        Curves = new Curve[Merging.Coincident(parts, strands, touchMm).Count];
        for (var f = 0; f < Curves.Length; f++)
        {
            Curves[f] = _fragments[f].Curve;
        }

        _rotation = new Rotation(Fragments, Curves, _nodes.Count);
        (_cycleOf, var cycles) = Cycles();
        (_windings, IsConsistent) = Windings.Of(this, _cycleOf, cycles);
    }

    public IReadOnlyList<Strand> Strands { get; }

    public ReadOnlySpan<Fragment> Fragments => _fragments.AsSpan(0, Curves.Length);

    public Curve[] Curves { get; }

    /// <summary>The line or circle of each strand.</summary>
    public Curve[] Carriers { get; }

    public int NodeCount => _nodes.Count;

    public Rotation Rotation => _rotation;

    public bool IsConsistent { get; }

    /// <summary>Cycles and their winding numbers; a cycle is one connected piece of a face's border.</summary>
    public ReadOnlySpan<int> WindingOfCycle => _windings;

    /// <summary>
    /// The arrangement of strands. Contradictory winding numbers mean that curves nearer than the touch distance were told apart
    /// wrongly; the work is then done again at ten times the distance.
    /// </summary>
    public static Arrangement Of(IReadOnlyList<Strand> strands)
    {
        for (var touch = Tolerances.TouchMm; ; touch *= 10)
        {
            var arrangement = new Arrangement(strands, touch);
            if (arrangement.IsConsistent || touch * 10 > Tolerances.CoarsestTouchMm)
            {
                return arrangement;
            }
        }
    }

    public Point2 Node(int node) => _nodes[node];

    public int Tail(int half) => (half & 1) == 0 ? _fragments[half >> 1].From : _fragments[half >> 1].To;

    public int Head(int half) => Tail(half ^ 1);

    /// <summary>The cycle to the left of a half-edge.</summary>
    public int Cycle(int half) => _cycleOf[half];

    /// <summary>The winding number to the left of a half-edge.</summary>
    public int Winding(int half) => _windings[_cycleOf[half]];

    /// <summary>Corrects the winding numbers of cycles, each judged by the middle of its longest fragment.</summary>
    public void Overrule(Func<int, Point2, int> judge)
    {
        var longest = new int[_windings.Length];
        Array.Fill(longest, -1);
        for (var half = 0; half < _cycleOf.Length; half++)
        {
            ref var best = ref longest[_cycleOf[half]];
            best = best < 0 || Curves[half >> 1].ChordLength > Curves[best >> 1].ChordLength ? half : best;
        }

        for (var cycle = 0; cycle < longest.Length; cycle++)
        {
            _windings[cycle] = judge(_windings[cycle], Curves[longest[cycle] >> 1].Middle);
        }
    }

    private (int[] CycleOf, int Count) Cycles()
    {
        var cycleOf = new int[Curves.Length * 2];
        Array.Fill(cycleOf, -1);
        var count = 0;
        for (var first = 0; first < cycleOf.Length; first++)
        {
            if (cycleOf[first] >= 0)
            {
                continue;
            }

            for (var half = first; cycleOf[half] < 0; half = _rotation.Clockwise(half ^ 1))
            {
                cycleOf[half] = count;
            }

            count++;
        }

        return (cycleOf, count);
    }
}
