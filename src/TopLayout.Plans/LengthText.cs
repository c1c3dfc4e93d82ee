using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Plans;

/// <summary>Lengths and angles as sheets and reports print them, in the units of the design.</summary>
public static class LengthText
{
    private const double MmPerInch = 25.4;
    private const int FinestPart = 64;

    /// <summary>A bare length: mm to a tenth, inches to a thousandth.</summary>
    public static string Of(double mm, LengthUnit units) =>
        units == LengthUnit.Inch ? NumberFormat.Trimmed(mm / MmPerInch, 3) : NumberFormat.Trimmed(mm, 1);

    /// <summary>A bare length as a rule reads it: mm to a tenth, inches to the nearest sixty-fourth in lowest terms: "3 51/64".</summary>
    public static string OnRule(double mm, LengthUnit units)
    {
        if (units != LengthUnit.Inch)
        {
            return Of(mm, units);
        }

        var parts = (int)Math.Round(Math.Abs(mm) / MmPerInch * FinestPart, MidpointRounding.AwayFromZero);
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

    /// <summary>An angle to a tenth of a degree: "15°".</summary>
    public static string Of(Angle angle) => NumberFormat.Trimmed(angle.Degrees, 1) + "°";
}
