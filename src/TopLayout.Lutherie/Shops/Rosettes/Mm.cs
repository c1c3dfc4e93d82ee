using System.Globalization;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>Lengths of the rosette's size in sentences.</summary>
internal static class Mm
{
    /// <summary>To a hundredth of a mm: "0.38 mm".</summary>
    public static string Fine(double mm) => mm.ToString("0.##", CultureInfo.InvariantCulture) is var text && text == "-0" ? "0 mm" : text + " mm";

    /// <summary>A length to a thousandth, where it is compared with hundredths: "0.101 mm".</summary>
    public static string Thousandths(double mm) => mm.ToString("0.###", CultureInfo.InvariantCulture) + " mm";

    /// <summary>A share as a percentage to a hundredth: "0.07 %".</summary>
    public static string Percent(double share) => (share * 100).ToString("0.##", CultureInfo.InvariantCulture) + " %";
}
