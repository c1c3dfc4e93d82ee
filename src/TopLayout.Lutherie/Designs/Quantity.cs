using Bounds = (double Low, double High);

namespace TopLayout.Lutherie.Designs;

/// <summary>Numbers of the several kinds with their units, as messages and files show them.</summary>
internal static class Quantity
{
    public static bool Holds(Bounds range, double value) => value >= range.Low && value <= range.High;

    /// <summary>"98 mm", "3.86 in", "12°", "45 %".</summary>
    public static string Shown(ParameterKind kind, double value, LengthUnit unit) => Amount(kind, value, unit, 4) + Suffix(kind, unit);

    /// <summary>The same, with more decimals when rounding would move an impossible value into its range.</summary>
    public static string Shown(ParameterKind kind, double value, LengthUnit unit, Bounds range)
    {
        var size = Size(kind, unit);
        var hides = !Holds(range, value) && Holds(range, Math.Round(value / size, 4) * size);
        return Amount(kind, value, unit, hides ? 15 : 4) + Suffix(kind, unit);
    }

    /// <summary>The bare number in the file's unit.</summary>
    public static string Amount(ParameterKind kind, double value, LengthUnit unit, int decimals) =>
        ValueText.Number(value / Size(kind, unit), decimals);

    /// <summary>"from 10 to 200 mm"; inches are rounded to thousandths, inwards, so that both ends are allowed; "14" when there is one value.</summary>
    public static string Range(ParameterKind kind, Bounds range, LengthUnit unit)
    {
        var size = Size(kind, unit);
        var low = size == 1 ? range.Low : Math.Ceiling(Math.Round(range.Low / size * 1000, 6)) / 1000;
        var high = size == 1 ? range.High : Math.Floor(Math.Round(range.High / size * 1000, 6)) / 1000;
        return low == high ? $"{ValueText.Number(low, 4)}{Suffix(kind, unit)}" : $"from {ValueText.Number(low, 4)} to {ValueText.Number(high, 4)}{Suffix(kind, unit)}";
    }

    /// <summary>A value near the middle of a stretch with as few decimals as keep it legal, but at least so many.</summary>
    public static double Between(ParameterKind kind, Bounds stretch, Bounds legal, LengthUnit unit, int decimals)
    {
        var size = Size(kind, unit);
        var middle = (stretch.Low + stretch.High) / 2 / size;
        var rounded = Enumerable.Range(decimals, 6).Select(digits => Math.Round(middle, digits) * size);
        return kind == ParameterKind.Count ? Math.Floor(middle) : rounded.FirstOrDefault(value => Holds(legal, value), middle * size);
    }

    private static double Size(ParameterKind kind, LengthUnit unit) => kind == ParameterKind.Length ? LengthText.Size(unit) : 1;

    private static string Suffix(ParameterKind kind, LengthUnit unit) => kind switch
    {
        ParameterKind.Length => " " + LengthText.Symbol(unit),
        ParameterKind.Angle => "°",
        ParameterKind.Percent => " %",
        ParameterKind.Temperature => " °C",
        _ => "",
    };
}
