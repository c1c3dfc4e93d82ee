namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// A uniform grid over curves: which curves pass near which. Each curve is entered in the cells that its halves, quarters, … bound,
/// so a long diagonal does not fill its whole box. Cells are as wide as curves are long on average, and share about twice as many
/// buckets as there are curves (spatial hashing; Teschner et al. 2003): entries, and time, grow with the number of curves however
/// they are spread.
/// </summary>
internal sealed class CurveGrid
{
    private const int MostHalvings = 12;

    private readonly double _margin;
    private readonly double _cell;
    private readonly Box2 _box;
    private readonly int _mask;

    // Entries by curve and by cell: those of k are the values from _…Starts[k] up to _…Starts[k + 1].
    private readonly int[] _curveStarts;
    private readonly int[] _cellStarts;
    private readonly int[] _curveOfEntry;
    private readonly int[] _lastOfCell;
    private readonly int[] _seen;
    private readonly List<int> _cellOfEntry;
    private int _stamp;

    public CurveGrid(Curve[] curves, double marginMm)
    {
        _margin = marginMm;
        var box = Box2.Empty;
        var length = 0.0;
        foreach (var c in curves)
        {
            box = box.Union(c.Bounds);
            length += c.ChordLength;
        }

        var count = Math.Max(1, curves.Length);
        _box = box.IsEmpty ? default : box;
        _cell = Math.Max(2 * length / count, Math.Max(_box.Width, _box.Height) / int.MaxValue * 4) + marginMm + Tolerances.TouchMm;
        _mask = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)count * 2) - 1;
        _curveStarts = new int[curves.Length + 1];
        _cellOfEntry = new List<int>(curves.Length * 3);
        _lastOfCell = new int[_mask + 1];
        _cellStarts = new int[_mask + 2];
        for (var i = 0; i < curves.Length; i++)
        {
            _curveStarts[i] = _cellOfEntry.Count;
            Enter(i, curves[i].Start, curves[i].End, curves[i].Bulge, 0);
        }

        _curveStarts[^1] = _cellOfEntry.Count;
        _curveOfEntry = SortedByCell(curves.Length);
        _seen = new int[curves.Length];
    }

    /// <summary>The curves of higher number that share a cell with curve <paramref name="i"/>, each once.</summary>
    public void After(int i, List<int> found)
    {
        found.Clear();
        _stamp++;
        for (var entry = _curveStarts[i]; entry < _curveStarts[i + 1]; entry++)
        {
            Collect(_cellOfEntry[entry], i, found);
        }
    }

    /// <summary>The curves that may pass through a box, each once.</summary>
    public void Within(Box2 box, List<int> found)
    {
        found.Clear();
        _stamp++;
        if (!box.Overlaps(_box))
        {
            return;
        }

        var (left, right, bottom, top) = Cells(new Box2(
            new Point2(Math.Max(box.Min.X, _box.Min.X), Math.Max(box.Min.Y, _box.Min.Y)),
            new Point2(Math.Min(box.Max.X, _box.Max.X), Math.Min(box.Max.Y, _box.Max.Y))));
        if ((double)(right - left + 1) * (top - bottom + 1) > _seen.Length)
        {
            found.AddRange(Enumerable.Range(0, _seen.Length));
            return;
        }

        for (var row = bottom; row <= top; row++)
        {
            for (var column = left; column <= right; column++)
            {
                Collect(Bucket(column, row), -1, found);
            }
        }
    }

    private void Collect(int cell, int above, List<int> found)
    {
        for (var k = _cellStarts[cell]; k < _cellStarts[cell + 1]; k++)
        {
            var j = _curveOfEntry[k];
            if (j > above && _seen[j] != _stamp)
            {
                _seen[j] = _stamp;
                found.Add(j);
            }
        }
    }

    private void Enter(int curve, Point2 start, Point2 end, double bulge, int depth)
    {
        var chord = end - start;
        var sagitta = Math.Abs(bulge) * chord.Length / 2;
        var (left, right, bottom, top) = Cells(Box2.Around(start, end).Grown(sagitta + _margin));
        if (depth < MostHalvings && (right > left + 1 || top > bottom + 1))
        {
            var middle = start.MidpointTo(end) - (chord.Left * (bulge / 2));
            var half = bulge / (1 + Math.Sqrt(1 + (bulge * bulge)));
            Enter(curve, start, middle, half, depth + 1);
            Enter(curve, middle, end, half, depth + 1);
            return;
        }

        for (var row = bottom; row <= top; row++)
        {
            for (var column = left; column <= right; column++)
            {
                var cell = Bucket(column, row);
                if (_lastOfCell[cell] != curve + 1)
                {
                    _lastOfCell[cell] = curve + 1;
                    _cellOfEntry.Add(cell);
                    _cellStarts[cell + 1]++;
                }
            }
        }
    }

    private int[] SortedByCell(int curves)
    {
        for (var cell = 1; cell < _cellStarts.Length; cell++)
        {
            _cellStarts[cell] += _cellStarts[cell - 1];
        }

        var fill = _cellStarts.AsSpan(0, _cellStarts.Length - 1).ToArray();
        var sorted = new int[_cellOfEntry.Count];
        for (var i = 0; i < curves; i++)
        {
            for (var entry = _curveStarts[i]; entry < _curveStarts[i + 1]; entry++)
            {
                sorted[fill[_cellOfEntry[entry]]++] = i;
            }
        }

        return sorted;
    }

    private (int Left, int Right, int Bottom, int Top) Cells(Box2 box) => (
        Cell(box.Min.X - _box.Min.X), Cell(box.Max.X - _box.Min.X), Cell(box.Min.Y - _box.Min.Y), Cell(box.Max.Y - _box.Min.Y));

    private int Cell(double along) => (int)Math.Floor(along / _cell);

    // Cells lie in blocks of eight by eight whose buckets are neighbours in memory, as neighbouring curves are asked for one after the
    // other; blocks beside each other must not share their buckets: two odd factors without a small relation.
    private int Bucket(int column, int row) =>
        unchecked((((column >> 3) * 73856093) ^ ((row >> 3) * 19349663)) << 6 | ((row & 7) << 3) | (column & 7)) & _mask;
}
