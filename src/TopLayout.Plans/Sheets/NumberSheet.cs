using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>All numbers a maker transfers, as tables on one sheet to pin up beside the plans.</summary>
internal static class NumberSheet
{
    private const double LineMm = 5;
    private const double GapMm = 5;
    private const double TableGapMm = 14;
    private const double ColumnMm = 420;

    /// <summary>The sheet.</summary>
    public static Sheet Draw(ReviewedTop top)
    {
        var board = new SheetBoard();
        var units = top.Layout.Design.Units;
        var (x, y, widest) = (0.0, 0.0, 0.0);
        foreach (var table in BenchNumbers.Of(top.Layout).Where(t => !t.Rows.IsEmpty))
        {
            if (y < 0 && -y + ((table.Rows.Length + 3) * LineMm) > ColumnMm)
            {
                (x, y, widest) = (x + widest + TableGapMm, 0, 0);
            }

            var (width, foot) = Table(board, table, units, new Point2(x, y));
            (widest, y) = (Math.Max(widest, width), foot - TableGapMm);
        }

        var drawn = board.Extents;
        TitleBlock.Draw(
            board, top, $"Numbers to transfer, {LengthText.Word(units)}", "from the neck edge; bass negative, treble positive", new Point2(drawn.Min.X, drawn.Min.Y - 8), drawn.Width);
        return board.Finish("numbers", $"Numbers - {top.Layout.Design[Identity.Name].Value}", "Tables of all numbers to transfer to the top.");
    }

    // Returns its width and the height of its foot.
    private static (double Width, double Foot) Table(SheetBoard board, NumberTable table, LengthUnit units, Point2 corner)
    {
        var part = table.Key.Replace('_', ' ');
        var lines = table.Rows.Select(r => r.Select(c => CellText.Of(c, units)).ToList()).Prepend([.. table.Columns.Select(c => c.Heading)]).ToList();
        var isWords = table.Columns.Select((_, i) => table.Rows.All(r => r[i] is Cell.Words)).ToList();
        var widths = table.Columns.Select((_, i) => lines.Max(l => Width(l[i]))).ToList();
        board.Write(part, table.Title, corner - new Vec2(0, LineMm), 3.5);
        var (y, left) = (corner.Y - (2.2 * LineMm), corner.X);
        foreach (var (row, line) in lines.Index())
        {
            left = corner.X;
            foreach (var (i, text) in line.Index())
            {
                if (text.Length > 0)
                {
                    var anchor = new Point2(isWords[i] ? left : left + widths[i], y);
                    board.Write(part, text, anchor, alignment: isWords[i] ? Alignment.Left : Alignment.Right);
                }

                left += widths[i] + GapMm;
            }

            if (row == 0)
            {
                board.Line(part, Role.Text, new Point2(corner.X, y - 1.6), new Point2(left - GapMm, y - 1.6));
            }

            y -= LineMm;
        }

        return (left - GapMm - corner.X, y);
    }

    private static double Width(string text) => text.Length == 0 ? 0 : Lettering.Measure(text, SheetBoard.TextMm).Width;
}
