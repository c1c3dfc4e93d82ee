using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>Sentences broken into lines of a width.</summary>
internal static class WrappedText
{
    private const double PitchPerHeight = 1.65;

    /// <summary>The lines, none wider than asked unless a word alone is, mm; never broken between a number and its unit.</summary>
    public static IReadOnlyList<string> Lines(string text, double widthMm, double heightMm = SheetBoard.TextMm)
    {
        var lines = new List<string>();
        foreach (var word in Words(text))
        {
            if (lines.Count > 0 && Lettering.Measure($"{lines[^1]} {word}", heightMm).Width <= widthMm)
            {
                lines[^1] += " " + word;
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
        foreach (var word in text.Split(' '))
        {
            // A unit after a number, and a fraction after its inches.
            var isUnit = word.TrimEnd(',', ';', '.', ':') is "mm" or "in" or "%" || word.Contains('/', StringComparison.Ordinal);
            if (isUnit && words.Count > 0 && EndsInNumber(words[^1]))
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

    // "3.5", and in brackets "(3.500)".
    private static bool EndsInNumber(string word) => word.TrimEnd(')') is [.., var last] && char.IsAsciiDigit(last);

    /// <summary>Writes the lines from a first baseline down; returns the baseline that comes next, mm.</summary>
    public static double Write(SheetBoard board, string part, string text, Point2 at, double widthMm)
    {
        foreach (var line in Lines(text, widthMm))
        {
            board.Write(part, line, at);
            at -= new Vec2(0, PitchPerHeight * SheetBoard.TextMm);
        }

        return at.Y;
    }
}
