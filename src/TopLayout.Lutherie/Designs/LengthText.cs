using System.Globalization;
using System.Numerics;
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

    /// <summary>A length in the style of another text: its unit, its blanks, a fraction where that is exact, else a decimal number.</summary>
    internal static string Restyled(string pattern, double millimetres, (double Low, double High) possible)
    {
        pattern = pattern.Trim();
        var match = Shape().Match(pattern);
        if (!match.Success || UnitSize(match.Groups["unit"].Value) is not { } size)
        {
            return Shortest(millimetres, 1, possible) + " mm";
        }

        var tail = pattern[Math.Max(match.Groups["under"].Index + match.Groups["under"].Length, match.Groups["whole"].Index + match.Groups["whole"].Length)..];
        var (whole, over) = (match.Groups["whole"], match.Groups["over"]);
        var between = whole.Success && over.Success ? pattern[(whole.Index + whole.Length)..over.Index] : " ";
        var number = over.Success ? Fraction(millimetres, size, match.Groups["under"].Value, between) : null;
        return (number ?? Shortest(millimetres, size, possible)) + tail;
    }

    /// <summary>
    /// A length in a unit of so many mm, with as few decimals as give it back to a millionth of a mm, and not past the end of a range
    /// that holds it.
    /// </summary>
    internal static string Shortest(double millimetres, double size, (double Low, double High) possible)
    {
        var forms = Enumerable.Range(0, 13).Select(decimals => ValueText.Number(millimetres / size, decimals));
        return forms.FirstOrDefault(IsGood) ?? (millimetres / size).ToString("R", CultureInfo.InvariantCulture);

        bool IsGood(string form)
        {
            var back = Converted(double.Parse(form, CultureInfo.InvariantCulture), size);
            return IsSame(back, millimetres) && (Quantity.Holds(possible, back) || !Quantity.Holds(possible, millimetres));
        }
    }

    /// <summary>Whether two values are the same to the six decimals that a design keeps.</summary>
    internal static bool IsSame(double a, double b) => ValueText.Number(a, 6) == ValueText.Number(b, 6);

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

    // Over 64ths, or over what was written before; null when neither is exact.
    private static string? Fraction(double millimetres, double size, string under, string between)
    {
        foreach (var parts in (ReadOnlySpan<long>)[64, Math.Clamp((long)Parse(under), 1, 1000)])
        {
            var count = (long)Math.Round(Math.Abs(millimetres) / size * parts);
            if (!IsSame(Converted(Math.CopySign((double)count / parts, millimetres), size), millimetres))
            {
                continue;
            }

            var divisor = (long)BigInteger.GreatestCommonDivisor(count, parts);
            var (whole, rest, of) = (count / parts, count % parts / divisor, parts / divisor);
            var number = rest == 0 ? Digits(whole) : whole == 0 ? $"{Digits(rest)}/{Digits(of)}" : $"{Digits(whole)}{between}{Digits(rest)}/{Digits(of)}";
            return (millimetres < 0 && count > 0 ? "-" : "") + number;
        }

        return null;
    }

    private static string Digits(long value) => value.ToString(CultureInfo.InvariantCulture);

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
