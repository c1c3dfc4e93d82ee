using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Plans;

/// <summary>Lengths and angles as sheets and reports print them, in the units of the design.</summary>
public static class LengthText
{
    private const double MmPerInch = 25.4;

    /// <summary>A bare length: mm to a tenth, inches to a thousandth.</summary>
    public static string Of(double mm, LengthUnit units) =>
        units == LengthUnit.Inch ? NumberFormat.Trimmed(mm / MmPerInch, 3) : NumberFormat.Trimmed(mm, 1);

    /// <summary>A length with its unit: "96.3 mm", "3.791 in".</summary>
    public static string WithUnit(double mm, LengthUnit units) => $"{Of(mm, units)} {Word(units)}";

    /// <summary>The unit: "mm" or "in".</summary>
    public static string Word(LengthUnit units) => units == LengthUnit.Inch ? "in" : "mm";

    /// <summary>An angle to a tenth of a degree: "15°".</summary>
    public static string Of(Angle angle) => NumberFormat.Trimmed(angle.Degrees, 1) + "°";
}
