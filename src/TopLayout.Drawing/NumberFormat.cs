using System.Globalization;

namespace TopLayout.Drawing;

/// <summary>
/// The only place where a number becomes text: a point as decimal sign in every culture, no exponent, no minus before zero, and a
/// number that is not finite is refused.
/// </summary>
public static class NumberFormat
{
    /// <summary>A count.</summary>
    public static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Rounded to so many decimals, trailing zeros dropped: "12", "12.5".</summary>
    public static string Trimmed(double value, int decimals)
    {
        var text = Fixed(value, decimals);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    /// <summary>Rounded to exactly so many decimals: "12.50".</summary>
    /// <exception cref="ArgumentException">The value is not finite.</exception>
    public static string Fixed(double value, int decimals)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentException("only a finite number can be written", nameof(value));
        }

        var text = value.ToString("F" + Whole(decimals), CultureInfo.InvariantCulture);
        return text.AsSpan().ContainsAnyInRange('1', '9') ? text : text.TrimStart('-');
    }

    /// <summary>A length in mm to a nanometre, without trailing zeros.</summary>
    public static string Mm(double mm) => Trimmed(mm, 6);

    /// <summary>A real number of a tagged file, rounded to so many decimals, with at least one: "12.0".</summary>
    public static string Real(double value, int decimals)
    {
        var text = Trimmed(value, decimals);
        return text.Contains('.', StringComparison.Ordinal) ? text : text + ".0";
    }
}
