using System.Text;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// Words for a reader to find and copy. What is seen are strokes; over them lies the same text in no ink at all (rendering mode 3), in one of the
/// fourteen fonts that every reader has, so that none is embedded and none is missed. Its letters are all alike wide: stretched, it is as long as
/// the strokes.
/// </summary>
internal static class PdfText
{
    /// <summary>The font's name in the resources of whatever has text.</summary>
    public const string Font = "Words";

    /// <summary>The font.</summary>
    public const string FontEntries = "<< /Type /Font /Subtype /Type1 /BaseFont /Courier /Encoding /WinAnsiEncoding >>";

    // Courier's metrics, shares of its size: every letter's advance, and the height of a capital. From memory.
    private const double Advance = 0.6;
    private const double CapitalHeight = 0.562;

    /// <summary>The operators that write a label's words over it.</summary>
    public static string Unseen(LabelShape label)
    {
        var text = Encoded(label.Text);
        var (along, up) = (Lettering.Measure(label.Text, label.HeightMm).Width / (Advance * text.Length), label.HeightMm / CapitalHeight);
        var (u, at) = (Trig.Direction(label.Rotation), label.BaselineStart);
        string[] matrix = [.. ((double[])[along * u.X, along * u.Y, -up * u.Y, up * u.X, at.X, at.Y]).Select(PdfContent.Mm)];
        return $"BT 3 Tr /{Font} 1 Tf {string.Join(' ', matrix)} Tm ({Escaped(text)}) Tj ET";
    }

    // The encoding has the letters of Western Europe where Latin-1 has them; the rest is spelled out.
    private static string Encoded(string text) => string.Concat(text.Select(c => c is (>= ' ' and <= '~') or (> '\u00a0' and <= '\u00ff') ? c.ToString() : PlainAscii.Spelled(c)));

    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            escaped.Append(c switch
            {
                '(' or ')' or '\\' => $"\\{c}",
                > '~' => $"\\{Convert.ToString((int)c, 8)}",
                _ => c.ToString(),
            });
        }

        return escaped.ToString();
    }
}
