using System.Globalization;
using TopLayout.Geometry;

namespace TopLayout.Lutherie.Findings;

/// <summary>Numbers as sentences print them, the same in every culture.</summary>
public static class Say
{
    /// <summary>A length to a tenth of a mm: "12.5 mm", "12 mm".</summary>
    public static string Mm(double mm) => Number(mm, "0.#") + " mm";

    /// <summary>A number to a tenth: "12.5".</summary>
    public static string Tenth(double value) => Number(value, "0.#");

    /// <summary>A share as a whole percentage: 0.575 is "58 %".</summary>
    public static string Percent(double share) => Number(share * 100, "0") + " %";

    /// <summary>An angle to a tenth of a degree: "15°".</summary>
    public static string Degrees(Angle angle) => Number(angle.Degrees, "0.#") + "°";

    /// <summary>A whole number.</summary>
    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>A value to two significant digits: as many as the crack model carries.</summary>
    public static string TwoDigits(double value)
    {
        if (value == 0)
        {
            return "0";
        }

        var decimals = Math.Max(0, 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))));
        return Number(value, decimals == 0 ? "0" : "0." + new string('0', decimals));
    }

    /// <summary>Words in a row: "a", "a and b", "a, b and c".</summary>
    public static string Listed(IReadOnlyList<string> words) => words.Count < 2 ? words[0] : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";

    /// <summary>A part's name inside a sentence: "the tongue", "fan strut 1", and with its closing comma "the X leg, bass,".</summary>
    public static string The(string name) => name.Contains(',', StringComparison.Ordinal) ? TheLast(name) + "," : TheLast(name);

    /// <summary>The same where the sentence pauses or ends after it: "the X leg, bass".</summary>
    public static string TheLast(string name) => IsNumbered(name) ? name : $"the {name}";

    // "fan strut 1", "finger brace 1, bass".
    private static bool IsNumbered(string name) => name.Split(',')[0] is { Length: > 0 } own && char.IsAsciiDigit(own[^1]);

    private static string Number(double value, string format)
    {
        var text = value.ToString(format, CultureInfo.InvariantCulture);
        return text is "-0" ? "0" : text;
    }
}
