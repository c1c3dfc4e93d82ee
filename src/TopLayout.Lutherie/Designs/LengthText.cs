using System.Globalization;
using System.Text.RegularExpressions;

namespace TopLayout.Lutherie.Designs;

/// <summary>Lengths as text with their unit: "110 mm", "11 cm", "4.25 in", "4 5/16 in", "5/16\"".</summary>
public static partial class LengthText
{
    /// <summary>One inch in mm, exactly.</summary>
    public const double MillimetresPerInch = 25.4;

    private const int Longest = 60;

    /// <summary>Reads a length. Gives its mm, or what is wrong with the text.</summary>
    public static bool TryRead(string text, out double millimetres, out string? problem)
    {
        millimetres = 0;
        problem = null;
        var match = Shape().Match(text.Length > Longest ? "" : text.Trim());
        if (!match.Success)
        {
            problem = NumberInside().IsMatch(text) ? "is not a number and a unit" : "has no number";
            return false;
        }

        if (UnitSize(match.Groups["unit"].Value) is not { } size)
        {
            problem = match.Groups["unit"].Length == 0 ? "has no unit" : $"has the unknown unit `{ValueText.Quotable(match.Groups["unit"].Value)}`";
            return false;
        }

        if (Amount(match) is not { } amount)
        {
            problem = "has a fraction over zero";
            return false;
        }

        var sign = match.Groups["sign"].Value is "-" or "−" ? -1 : 1;
        millimetres = Converted(sign * amount, size);
        return true;
    }

    /// <summary>A length as text with its unit, to nine decimals; reading it gives the length back.</summary>
    public static string Write(double millimetres, LengthUnit unit) => Amount(millimetres, unit, 9) + " " + Symbol(unit);

    /// <summary>A length as a bare number of the given unit, to so many decimals.</summary>
    internal static string Amount(double millimetres, LengthUnit unit, int decimals) => ValueText.Number(millimetres / Size(unit), decimals);

    /// <summary>One of the unit in mm.</summary>
    internal static double Size(LengthUnit unit) => unit == LengthUnit.Inch ? MillimetresPerInch : 1;

    /// <summary>"mm" or "in".</summary>
    internal static string Symbol(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <summary>So many of a unit in mm, to nine decimals, so that 4 5/16 in and 109.5375 mm are the same number.</summary>
    internal static double Converted(double amount, double size) => size == 1 ? amount : Math.Round(amount * size, 9);

    private static double? UnitSize(string unit) => unit.ToLowerInvariant() switch
    {
        "mm" => 1,
        "cm" => 10,
        "in" or "inch" or "inches" or "\"" or "″" or "''" => MillimetresPerInch,
        _ => null,
    };

    private static double? Amount(Match match)
    {
        var whole = Parse(match.Groups["whole"].Value);
        if (!match.Groups["over"].Success)
        {
            return whole;
        }

        var under = Parse(match.Groups["under"].Value);
        return under == 0 ? null : whole + (Parse(match.Groups["over"].Value) / under);
    }

    private static double Parse(string digits) =>
        digits.Length == 0 ? 0 : double.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    // A whole number and a fraction with a blank or a hyphen between, or a fraction, or a decimal number; then the unit.
    [GeneratedRegex(
        @"^(?<sign>[-+−]?)\s*" +
        @"(?:(?<whole>[0-9]+)(?:\s+|\s*-\s*)(?<over>[0-9]+)\s*/\s*(?<under>[0-9]+)" +
        @"|(?<over>[0-9]+)\s*/\s*(?<under>[0-9]+)" +
        @"|(?<whole>[0-9]+(?:\.[0-9]+)?|\.[0-9]+))" +
        @"\s*(?<unit>[^0-9\s./,-][^0-9/]*)?$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Shape();

    [GeneratedRegex("[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex NumberInside();
}
