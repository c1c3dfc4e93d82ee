using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>A table of numbers set out in lines: long remarks broken into several, numbers against the right of their column.</summary>
internal sealed class NumberGrid
{
    private const double LineMm = 5;
    private const double GapMm = 5;
    private const double TitleMm = 3.5;
    private const double UnderMm = 1.6;
    private const double WordsMm = 90;
    private const double HeadingMm = 24;

    private readonly string _part;
    private readonly string _title;
    private readonly List<bool> _isWords;
    private readonly List<List<IReadOnlyList<string>>> _rows;
    private readonly List<double> _widths;

    /// <summary>A table in the unit of a design, its headings first.</summary>
    public NumberGrid(NumberTable table, LengthUnit units)
    {
        (_part, _title) = (table.Key.Replace('_', ' '), table.Title);
        _isWords = [.. table.Columns.Select((_, i) => table.Rows.All(r => r[i] is Cell.Words))];
        var cells = table.Rows.Select(r => r.Select((c, i) => Lines(CellText.Of(c, units), _isWords[i])).ToList()).ToList();
        double Below(int column) => cells.Max(r => r[column].Max(Width));
        _rows = [[.. table.Columns.Select((c, i) => WrappedText.Lines(c.Heading, Math.Max(HeadingMm, Below(i))))], .. cells];
        _widths = [.. table.Columns.Select((_, i) => _rows.Max(r => r[i].Max(Width)))];
    }

    /// <summary>Its width, mm.</summary>
    public double WidthMm => _widths.Sum() + (GapMm * (_widths.Count - 1));

    /// <summary>Its height with its title, mm.</summary>
    public double HeightMm => (1.2 + _rows.Sum(Height)) * LineMm;

    /// <summary>Draws it below and right of a corner; returns the height of its foot, mm.</summary>
    public double Draw(SheetBoard board, Point2 corner)
    {
        board.Write(_part, _title, corner - new Vec2(0, LineMm), TitleMm);
        var y = corner.Y - (2.2 * LineMm);
        foreach (var (number, row) in _rows.Index())
        {
            var left = corner.X;
            foreach (var (i, lines) in row.Index())
            {
                foreach (var (n, text) in lines.Index().Where(l => l.Item.Length > 0))
                {
                    // Headings stand on the line below them.
                    var down = number == 0 ? Height(row) - lines.Count + n : n;
                    var anchor = new Point2(_isWords[i] ? left : left + _widths[i], y - (down * LineMm));
                    board.Write(_part, text, anchor, alignment: _isWords[i] ? Alignment.Left : Alignment.Right);
                }

                left += _widths[i] + GapMm;
            }

            if (number == 0)
            {
                var under = y - ((Height(row) - 1) * LineMm) - UnderMm;
                board.Line(_part, Role.Text, new Point2(corner.X, under), new Point2(left - GapMm, under));
            }

            y -= Height(row) * LineMm;
        }

        return y;
    }

    private static IReadOnlyList<string> Lines(string text, bool isWords) => isWords && text.Length > 0 ? WrappedText.Lines(text, WordsMm) : [text];

    private static int Height(List<IReadOnlyList<string>> row) => row.Max(l => l.Count);

    private static double Width(string text) => text.Length == 0 ? 0 : Lettering.Measure(text, SheetBoard.TextMm).Width;
}
