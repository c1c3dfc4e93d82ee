using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>All numbers a maker transfers, as tables on one sheet to pin up beside the plans.</summary>
internal static class NumberSheet
{
    private const double TableGapMm = 14;
    private const double ColumnMm = 420;

    /// <summary>The sheet.</summary>
    public static Sheet Draw(ReviewedTop top)
    {
        var board = new SheetBoard();
        var units = top.Layout.Design.Units;
        var tables = BenchNumbers.Of(top.Layout).Where(t => !t.Rows.IsEmpty).Select(t => new NumberGrid(t, units)).ToList();
        var (x, y, width) = (0.0, 0.0, tables.Max(t => t.WidthMm));
        foreach (var table in tables)
        {
            if (y < 0 && table.HeightMm - y > ColumnMm)
            {
                (x, y) = (x + width + TableGapMm, 0);
            }

            y = table.Draw(board, new Point2(x, y)) - TableGapMm;
        }

        var drawn = board.Extents;
        TitleBlock.Draw(
            board, top, $"Numbers to transfer, {LengthText.Word(units)}", "from the neck edge; bass negative, treble positive", new Point2(drawn.Min.X, drawn.Min.Y - 8), drawn.Width);
        return board.Finish("numbers", $"Numbers - {top.Layout.Design[Identity.Name].Value}", "Tables of all numbers to transfer to the top.");
    }
}
