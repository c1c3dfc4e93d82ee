using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>Sentences in a column.</summary>
internal static class StepText
{
    /// <summary>From one line to the next, mm.</summary>
    public const double LineMm = 4.6;

    /// <summary>The lines of a text, broken at blanks so that each fits, never between a number and its unit; a word that is wider stands alone.</summary>
    public static IReadOnlyList<string> Lines(string text, double widthMm)
    {
        var lines = new List<string>();
        foreach (var word in Words(text))
        {
            if (lines.Count > 0 && Lettering.Measure($"{lines[^1]} {word}", SheetBoard.TextMm).Width <= widthMm)
            {
                lines[^1] += $" {word}";
            }
            else
            {
                lines.Add(word);
            }
        }

        return lines;
    }

    private static List<string> Words(string text)
    {
        var words = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            // A unit after a number, and a fraction after its inches.
            var isUnit = word.TrimEnd(',', ';', '.', ':') is "mm" or "in" or "%" || word.Contains('/', StringComparison.Ordinal);
            if (isUnit && words.Count > 0 && char.IsAsciiDigit(words[^1][^1]))
            {
                words[^1] += $" {word}";
            }
            else
            {
                words.Add(word);
            }
        }

        return words;
    }

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
