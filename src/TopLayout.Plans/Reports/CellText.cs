using TopLayout.Drawing;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Plans.Reports;

/// <summary>Cells as they are printed, in the units of the design.</summary>
internal static class CellText
{
    private const double SquareMmPerSquareInch = 25.4 * 25.4;

    /// <summary>The text of a cell: lengths to a hundredth of a mm, or as a rule and a caliper read inches; of no area nothing.</summary>
    public static string Of(Cell cell, LengthUnit units) => cell switch
    {
        Cell.Words w => w.Text,
        Cell.Length l => units == LengthUnit.Inch ? LengthText.Of(l.Mm, units) : NumberFormat.Fixed(LengthText.Rounded(l.Mm, 2), 2),
        Cell.Area { SquareMm: 0 } => "",
        Cell.Area a when units == LengthUnit.Inch => NumberFormat.Trimmed(a.SquareMm / SquareMmPerSquareInch, 1) + " in²",
        Cell.Area a => NumberFormat.Trimmed(a.SquareMm / 100, 1) + " cm²",
        Cell.Turn t => LengthText.Of(t.Angle),
        Cell.Number n => NumberFormat.Whole(n.Value),
        _ => throw new ArgumentOutOfRangeException(nameof(cell)),
    };
}
