using System.Globalization;
using System.Text;

namespace TopLayout.Lutherie.Designs;

/// <summary>Numbers and names as this folder writes them, in the invariant culture.</summary>
internal static class ValueText
{
    /// <summary>Up to so many decimals, without trailing zeros and without a negative zero.</summary>
    public static string Number(double value, int decimals)
    {
        if (Math.Abs(value) >= 1e15)
        {
            return value.ToString("R", CultureInfo.InvariantCulture);
        }

        var text = value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>A basic TOML string.</summary>
    public static string Quoted(string text) => "\"" + text.Replace("\\", "\\\\").Replace("\"", "\\\"") + "\"";

    /// <summary>The words in backticks: `a`, `b` or `c`.</summary>
    public static string AnyOf(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "nothing",
        1 => $"`{words[0]}`",
        _ => string.Join(", ", words.Take(words.Count - 1).Select(w => $"`{w}`")) + $" or `{words[^1]}`",
    };

    /// <summary>Text from a file on one line, at most 40 characters, without backticks, fit to stand inside a message.</summary>
    public static string Quotable(string text) => Cut(Printable(text.Replace('`', '\'')), 40);

    /// <summary>The text, or its beginning and "..." when it is longer than so many characters.</summary>
    public static string Cut(string text, int longest) => text.EnumerateRunes().Count() <= longest
        ? text
        : string.Concat(text.EnumerateRunes().Take(longest - 3)) + "...";

    /// <summary>Control characters as blanks, none at the ends.</summary>
    public static string Printable(string text) =>
        string.Concat(text.EnumerateRunes().Select(r => Rune.IsControl(r) ? " " : r.ToString())).Trim();

    /// <summary>FlatSawn as flat_sawn.</summary>
    public static string SnakeCase(string name) =>
        string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? "_" : "") + char.ToLowerInvariant(c) : c.ToString()));
}
