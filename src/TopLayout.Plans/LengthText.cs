using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Plans;

/// <summary>Lengths and angles as sheets and reports print them, in the units of the design.</summary>
public static class LengthText
{
    private const double MmPerInch = 25.4;
    private const int FinestPart = 64;

    // What converting may leave of an exact number of inches lies far below this.
    private const int NoiseDecimals = 9;

    /// <summary>A bare length: mm to a tenth, inches to a thousandth, halves away from zero.</summary>
    public static string Of(double mm, LengthUnit units) =>
        units == LengthUnit.Inch ? NumberFormat.Trimmed(Rounded(mm / MmPerInch, 3), 3) : NumberFormat.Trimmed(Rounded(mm, 1), 1);

    /// <summary>Rounded to so many decimals, a half away from zero, whatever converting has left of the half: 293.6875 / 25.4 is 11.563.</summary>
    public static double Rounded(double value, int decimals) => Math.Round(Math.Round(value, NoiseDecimals), decimals, MidpointRounding.AwayFromZero);

    /// <summary>
    /// A tolerance either way, never looser than asked: "±0.5 mm", "±1/64 in (0.016)"; what is finer than a sixty-fourth of an inch in thousandths.
    /// </summary>
    public static string Tolerance(double mm, LengthUnit units)
    {
        if (units != LengthUnit.Inch)
        {
            return $"±{NumberFormat.Trimmed(mm, 2)} mm";
        }

        const double Part = MmPerInch / FinestPart;
        var down = Math.Floor(mm / Part) * Part;
        string Thousandths(double length) => NumberFormat.Fixed(Rounded(length / MmPerInch, 3), 3);
        return down > 0 ? $"±{OnRule(down, units)} in ({Thousandths(down)})" : $"±{Thousandths(mm)} in";
    }

    /// <summary>A bit or a drill as it is sold: "3 mm", "1/8 in"; one that is no sixty-fourth of an inch in thousandths.</summary>
    public static string Bit(double mm, LengthUnit units) =>
        units == LengthUnit.Inch && Math.Abs(mm - (Math.Round(mm / MmPerInch * FinestPart) * MmPerInch / FinestPart)) < Tolerances.TouchMm ? OnRuleWithUnit(mm, units) : WithUnit(mm, units);

    /// <summary>A bare length as a rule reads it: mm to a tenth, inches to the nearest sixty-fourth in lowest terms: "3 51/64".</summary>
    public static string OnRule(double mm, LengthUnit units)
    {
        if (units != LengthUnit.Inch)
        {
            return Of(mm, units);
        }

        var parts = (int)Rounded(Math.Abs(mm) / MmPerInch * FinestPart, 0);
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

    /// <summary>A length as a rule reads it, with its unit: "3 51/64 in".</summary>
    public static string OnRuleWithUnit(double mm, LengthUnit units) => $"{OnRule(mm, units)} {Word(units)}";

    /// <summary>A length with its unit: "96.3 mm", "3.791 in".</summary>
    public static string WithUnit(double mm, LengthUnit units) => $"{Of(mm, units)} {Word(units)}";

    /// <summary>The unit: "mm" or "in".</summary>
    public static string Word(LengthUnit units) => units == LengthUnit.Inch ? "in" : "mm";

    /// <summary>The unit as a sentence names it: "mm" or "inches".</summary>
    public static string Name(LengthUnit units) => units == LengthUnit.Inch ? "inches" : "mm";

    /// <summary>An angle to a tenth of a degree: "15°".</summary>
    public static string Of(Angle angle) => NumberFormat.Trimmed(angle.Degrees, 1) + "°";
}
