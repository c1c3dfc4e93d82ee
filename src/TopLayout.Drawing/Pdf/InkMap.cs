using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>Which square mm of a drawing may have ink, so that many windows are asked quickly; it may say yes too often, never no but for a line on the window's very edge.</summary>
internal sealed class InkMap
{
    private const double StepMm = 0.5;

    private readonly Box2 _box;
    private readonly int _columns;
    private readonly int _rows;

    // By cell: how many have ink below and to the left of its upper right corner.
    private readonly int[,] _sums;

    /// <param name="sheet">The drawing.</param>
    /// <param name="box">The part of it that counts, in sheet coordinates, mm.</param>
    public InkMap(Sheet sheet, Box2 box)
    {
        (_box, _columns, _rows) = (box, (int)Math.Ceiling(box.Width), (int)Math.Ceiling(box.Height));
        _sums = new int[_columns + 1, _rows + 1];
        foreach (var segment in sheet.Shapes.Where(s => s.Bounds.Overlaps(box)).SelectMany(s => s.Lines).SelectMany(c => c.Segments))
        {
            var steps = (int)Math.Ceiling(segment.Length / StepMm);
            for (var i = 0; i <= steps; i++)
            {
                Mark(segment.PointAt((double)i / Math.Max(1, steps)));
            }
        }

        for (var x = 1; x <= _columns; x++)
        {
            for (var y = 1; y <= _rows; y++)
            {
                _sums[x, y] += _sums[x - 1, y] + _sums[x, y - 1] - _sums[x - 1, y - 1];
            }
        }
    }

    /// <summary>Whether a window, in sheet coordinates, mm, may show ink.</summary>
    public bool Any(Box2 window)
    {
        var (left, right) = (Cell(window.Min.X - _box.Min.X, _columns), Cell(Math.Ceiling(window.Max.X - _box.Min.X), _columns));
        var (foot, head) = (Cell(window.Min.Y - _box.Min.Y, _rows), Cell(Math.Ceiling(window.Max.Y - _box.Min.Y), _rows));
        return _sums[right, head] - _sums[left, head] - _sums[right, foot] + _sums[left, foot] > 0;
    }

    private static int Cell(double mm, int count) => Math.Clamp((int)Math.Floor(mm), 0, count);

    // All cells within half a step: a line passes no other between two of its points.
    private void Mark(Point2 p)
    {
        foreach (var dx in (ReadOnlySpan<double>)[-StepMm / 2, StepMm / 2])
        {
            foreach (var dy in (ReadOnlySpan<double>)[-StepMm / 2, StepMm / 2])
            {
                var (x, y) = ((int)Math.Floor(p.X + dx - _box.Min.X), (int)Math.Floor(p.Y + dy - _box.Min.Y));
                if (x >= 0 && x < _columns && y >= 0 && y < _rows)
                {
                    _sums[x + 1, y + 1] = 1;
                }
            }
        }
    }
}
