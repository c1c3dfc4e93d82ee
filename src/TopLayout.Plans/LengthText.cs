using System.Globalization;
using System.Text.RegularExpressions;
using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Plans;

/// <summary>
/// Lengths and angles as sheets and reports print them, in the units of the design. Inches follow one rule everywhere: a sixty-fourth, as a
/// rule shows it, and after it in brackets the thousandths of a caliper, where that matters; what is thinner than an eighth in thousandths
/// alone, always three of them. Common practice, no source.
/// </summary>
public static partial class LengthText
{
    private const double MmPerInch = 25.4;
    private const int FinestPart = 64;

    /// <summary>The finest division of a rule in inches, mm.</summary>
    public const double FinestOnRuleMm = MmPerInch / FinestPart;

    // Below an eighth nobody reads a rule.
    private const int LeastParts = FinestPart / 8;

    // What converting may leave of an exact number of inches lies far below this.
    private const int NoiseDecimals = 9;

    /// <summary>A bare length: mm to a tenth, inches as on a rule and, unless whole, in thousandths: "3 51/64 (3.791)", "4", "0.063"; halves away from zero.</summary>
    public static string Of(double mm, LengthUnit units) => units == LengthUnit.Inch
        ? IsOnRule(mm) && !Thousandths(mm).EndsWith(".000", StringComparison.Ordinal) ? $"{Fraction(mm)} ({Thousandths(mm)})" : OnRule(mm, units)
        : NumberFormat.Trimmed(Rounded(mm, 1), 1);

    /// <summary>Rounded to so many decimals, a half away from zero, whatever converting has left of the half: 293.6875 / 25.4 is 11.563.</summary>
    public static double Rounded(double value, int decimals) => Math.Round(Math.Round(value, NoiseDecimals), decimals, MidpointRounding.AwayFromZero);

    /// <summary>
    /// A tolerance either way, never looser than asked: "±0.5 mm", "±1/64 (0.016) in"; what is finer than a sixty-fourth of an inch in thousandths.
    /// </summary>
    public static string Tolerance(double mm, LengthUnit units)
    {
        if (units != LengthUnit.Inch)
        {
            return $"±{NumberFormat.Trimmed(mm, 2)} mm";
        }

        var down = Math.Floor(mm / FinestOnRuleMm) * FinestOnRuleMm;
        return down > 0 ? $"±{Fraction(down)} ({Thousandths(down)}) in" : $"±{Thousandths(mm)} in";
    }

    /// <summary>A bit or a drill as it is sold: "3 mm", "1/16 in"; one that is no sixty-fourth of an inch in thousandths.</summary>
    public static string Bit(double mm, LengthUnit units) => units != LengthUnit.Inch ? WithUnit(mm, units)
        : Math.Abs(mm - (Math.Round(mm / MmPerInch * FinestPart) * MmPerInch / FinestPart)) < Tolerances.TouchMm ? $"{Fraction(mm)} in"
        : $"{Thousandths(mm)} in";

    /// <summary>A bare length as a rule reads it: mm to a tenth, inches to the nearest sixty-fourth in lowest terms, "3 51/64", or what is too thin for one, "0.063".</summary>
    public static string OnRule(double mm, LengthUnit units) => units != LengthUnit.Inch ? Of(mm, units)
        : IsOnRule(mm) ? Fraction(mm)
        : Thousandths(mm) is var thin && thin.Trim('-', '0', '.').Length > 0 ? thin
        : "0";

    /// <summary>A length as a rule reads it, with its unit: "3 51/64 in".</summary>
    public static string OnRuleWithUnit(double mm, LengthUnit units) => $"{OnRule(mm, units)} {Word(units)}";

    /// <summary>A length with its unit: "96.3 mm", "3 51/64 (3.791) in".</summary>
    public static string WithUnit(double mm, LengthUnit units) => $"{Of(mm, units)} {Word(units)}";

    /// <summary>A sentence that speaks in mm, in the design's unit, as a rule reads it: "50 and 48 mm" is "1 31/32 and 1 57/64 in". What stands between backticks is typed and stays.</summary>
    public static string Sentence(string sentence, LengthUnit units) => units != LengthUnit.Inch
        ? sentence
        : string.Concat(sentence.Split('`').Select((part, i) => i % 2 == 0 ? InMm().Replace(part, m => Inches(m.Value)) : $"`{part}`"));

    private static string Inches(string said) =>
        $"{Number().Replace(said[..^" mm".Length], n => OnRule(double.Parse(n.Value, CultureInfo.InvariantCulture), LengthUnit.Inch))} in";

    [GeneratedRegex(@"(?<![\w.])[0-9]+(\.[0-9]+)?((, | and | to | or )[0-9]+(\.[0-9]+)?)* mm(?![\w²])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex InMm();

    [GeneratedRegex(@"[0-9]+(\.[0-9]+)?", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Number();

    /// <summary>The unit: "mm" or "in".</summary>
    public static string Word(LengthUnit units) => units == LengthUnit.Inch ? "in" : "mm";

    /// <summary>The unit as a sentence names it: "mm" or "inches".</summary>
    public static string Name(LengthUnit units) => units == LengthUnit.Inch ? "inches" : "mm";

    /// <summary>An angle to a tenth of a degree: "15°".</summary>
    public static string Of(Angle angle) => NumberFormat.Trimmed(angle.Degrees, 1) + "°";

    /// <summary>A length as it is printed, mm: in inches to a thousandth, so that what is printed of a sum is the sum of what is printed.</summary>
    public static double AsPrinted(double mm, LengthUnit units) => units == LengthUnit.Inch ? Rounded(mm / MmPerInch, 3) * MmPerInch : mm;

    // At least an eighth before it is rounded.
    private static bool IsOnRule(double mm) => Math.Round(Math.Abs(mm) / MmPerInch * FinestPart, NoiseDecimals) >= LeastParts;

    private static int Parts(double mm) => (int)Rounded(Math.Abs(mm) / MmPerInch * FinestPart, 0);

    private static string Thousandths(double mm) => NumberFormat.Fixed(Rounded(mm / MmPerInch, 3), 3);

    private static string Fraction(double mm)
    {
        var parts = Parts(mm);
        var (whole, over, under) = (parts / FinestPart, parts % FinestPart, FinestPart);
        while (over > 0 && over % 2 == 0)
        {
            (over, under) = (over / 2, under / 2);
        }

        var fraction = over == 0 ? "" : $"{NumberFormat.Whole(over)}/{NumberFormat.Whole(under)}";
        var text = (whole, over) switch
        {
            (0, > 0) => fraction,
            (_, 0) => NumberFormat.Whole(whole),
            _ => $"{NumberFormat.Whole(whole)} {fraction}",
        };
        return mm < 0 && parts > 0 ? "-" + text : text;
    }
}
