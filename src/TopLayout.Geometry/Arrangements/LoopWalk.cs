namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Walks the half-edges that bound kept faces, area to the left, to loops. At a node the walk keeps to its own sector of area; a loop
/// that comes back to one of its nodes is cut there, so that every loop is simple.
/// </summary>
internal sealed class LoopWalk
{
    private readonly Arrangement _arrangement;
    private readonly bool[] _isKept;
    private readonly int[] _stepOfNode;
    private readonly List<int> _path = [];
    private readonly List<List<int>> _loops = [];

    private LoopWalk(Arrangement arrangement, Func<int, bool> isInside)
    {
        _arrangement = arrangement;
        _isKept = new bool[arrangement.Fragments.Length * 2];
        _stepOfNode = new int[arrangement.NodeCount];
        for (var half = 0; half < _isKept.Length; half++)
        {
            _isKept[half] = isInside(arrangement.Winding(half)) && Divides(half, isInside);
        }
    }

    /// <summary>The loops round all faces whose winding number the rule keeps; a path through a kept face divides it.</summary>
    public static List<List<int>> Of(Arrangement arrangement, Func<int, bool> isInside)
    {
        var walk = new LoopWalk(arrangement, isInside);
        for (var half = 0; half < walk._isKept.Length; half++)
        {
            if (walk._isKept[half])
            {
                walk.From(half);
            }
        }

        return walk._loops;
    }

    private bool Divides(int half, Func<int, bool> isInside) =>
        !isInside(_arrangement.Winding(half ^ 1))
        || (_arrangement.Fragments[half >> 1].IsPath && _arrangement.Cycle(half) != _arrangement.Cycle(half ^ 1));

    private void From(int first)
    {
        var half = first;
        do
        {
            _isKept[half] = false;
            _path.Add(half);
            _stepOfNode[_arrangement.Tail(half)] = _path.Count;
            CutLoop(_arrangement.Head(half));
            half = Next(half);
        }
        while (half >= 0);

        foreach (var left in _path)
        {
            _stepOfNode[_arrangement.Tail(left)] = 0;
        }

        _path.Clear();
    }

    // Takes the loop that ends at a node already passed off the path.
    private void CutLoop(int node)
    {
        var step = _stepOfNode[node] - 1;
        if (step < 0)
        {
            return;
        }

        var loop = _path.GetRange(step, _path.Count - step);
        _path.RemoveRange(step, _path.Count - step);
        foreach (var half in loop)
        {
            _stepOfNode[_arrangement.Tail(half)] = 0;
        }

        _loops.Add(loop);
    }

    private int Next(int half)
    {
        var twin = half ^ 1;
        for (var next = _arrangement.Rotation.Clockwise(twin); next != twin; next = _arrangement.Rotation.Clockwise(next))
        {
            if (_isKept[next])
            {
                return next;
            }
        }

        return -1;
    }
}
