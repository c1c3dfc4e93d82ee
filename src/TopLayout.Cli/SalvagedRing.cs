using System.Globalization;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Cli;

/// <summary>A salvaged ring as a command line says it: "110,128,60", an oval one "111x110.2,128x127,60".</summary>
internal static class SalvagedRing
{
    private const double MostMm = 400;

    /// <summary>The ring; null when the text is none.</summary>
    public static OldRing? Read(string text)
    {
        var parts = text.Split(',');
        if (parts.Length is not (2 or 3) || Diameter(parts[0]) is not var (inner, innerOval) || Diameter(parts[1]) is not var (outer, outerOval) || outer <= inner)
        {
            return null;
        }

        var ring = new OldRing(inner / 2, outer / 2) { OvalMm = Math.Max(innerOval, outerOval) };
        return parts.Length == 2 ? ring
            : int.TryParse(parts[2], NumberStyles.None, CultureInfo.InvariantCulture, out var tiles) && tiles is >= 3 and <= 400
                ? ring with { Tiles = new OldTiles(tiles, 0, ring.WidthMm) }
                : null;
    }

    /// <summary>A length in mm; a bare number is mm. Null when the text is no length of a ring or a hole.</summary>
    public static double? Length(string text)
    {
        var isNumber = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm) || LengthText.TryRead(text, out mm, out _);
        return isNumber && mm is > 0 and <= MostMm ? mm : null;
    }

    private static (double Mean, double Oval)? Diameter(string text)
    {
        var read = text.Split('x').Select(Length).ToList();
        return read switch
        {
            [{ } one] => (one, 0),
            [{ } along, { } across] => ((along + across) / 2, Math.Abs(along - across)),
            _ => null,
        };
    }
}
