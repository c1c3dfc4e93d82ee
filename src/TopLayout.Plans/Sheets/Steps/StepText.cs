using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>Sentences in a column.</summary>
internal static class StepText
{
    /// <summary>From one line to the next, mm.</summary>
    public const double LineMm = 4.6;

    /// <summary>The lines of a text, broken so that each fits; none of an empty one.</summary>
    public static IReadOnlyList<string> Lines(string text, double widthMm) => text.Length == 0 ? [] : WrappedText.Lines(text, widthMm);

    /// <summary>Writes a text into a column below a place; returns the height of its foot, mm.</summary>
    public static double Write(SheetBoard board, string part, string text, Point2 topLeft, double widthMm)
    {
        var y = topLeft.Y;
        foreach (var line in Lines(text, widthMm))
        {
            board.Write(part, line, new Point2(topLeft.X, y - SheetBoard.TextMm - 0.4));
            y -= LineMm;
        }

        return y;
    }
}
