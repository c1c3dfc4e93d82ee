using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>All numbers a maker transfers, as tables on one sheet to pin up beside the plans.</summary>
internal static class NumberSheet
{
    private const double TableGapMm = 14;
    private const int Columns = 4;

    /// <summary>The sheet.</summary>
    public static Sheet Draw(ReviewedTop top)
    {
        var board = new SheetBoard();
        var units = top.Layout.Design.Units;
        var tables = BenchNumbers.Of(top.Layout).Where(t => !t.Rows.IsEmpty).Select(t => new NumberGrid(t, units)).ToList();
        var width = (tables.Max(t => t.WidthMm) - TableGapMm) / 2;
        var feet = new double[Columns];
        foreach (var table in tables)
        {
            // A wide table takes two columns; each goes where it hangs highest, the leftmost of equals.
            var span = table.WidthMm <= width ? 1 : 2;
            double Head(int first) => feet.Skip(first).Take(span).Min();
            var column = Enumerable.Range(0, Columns - span + 1).MaxBy(Head);
            var foot = table.Draw(board, new Point2(column * (width + TableGapMm), Head(column))) - TableGapMm;
            Array.Fill(feet, foot, column, span);
        }

        var drawn = board.Extents;
        TitleBlock.Draw(
            board, top, $"Numbers to transfer, {LengthText.Name(units)}", "from the neck edge; bass negative, treble positive", new Point2(drawn.Min.X, drawn.Min.Y - 8), drawn.Width,
            isFullSize: false, elseScale: "");
        return board.Finish("numbers", $"Numbers - {top.Layout.Design[Identity.Name].Value}", "Tables of all numbers to transfer to the top.");
    }
}
