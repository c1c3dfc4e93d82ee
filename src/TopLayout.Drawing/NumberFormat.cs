using System.Globalization;
using System.Text;

namespace TopLayout.Drawing;

/// <summary>
/// The only place where a number becomes text: a point as decimal sign in every culture, no exponent, no minus before zero, and a
/// number that is not finite is refused. Rounded to the nearest, halves away from zero.
/// </summary>
public static class NumberFormat
{
    private const int MostDigits = 32;

    /// <summary>Up to here a scaled number has its fraction to far better than <see cref="NearHalf"/>.</summary>
    private const double LargestScaled = 1L << 43;

    /// <summary>So near a half the scaled number, itself rounded, does not tell which way the number lies.</summary>
    private const double NearHalf = 0.002;

    private static readonly long[] Powers = [1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000];

    /// <summary>A count.</summary>
    public static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Rounded to so many decimals, trailing zeros dropped: "12", "12.5".</summary>
    /// <exception cref="ArgumentException">The value is not finite.</exception>
    public static string Trimmed(double value, int decimals)
    {
        Span<char> digits = stackalloc char[MostDigits];
        return TryWrite(value, decimals, digits, out var length) ? new string(WithoutZeros(digits[..length])) : new string(WithoutZeros(Exact(value, decimals)));
    }

    /// <summary>Rounded to exactly so many decimals: "12.50".</summary>
    /// <exception cref="ArgumentException">The value is not finite.</exception>
    public static string Fixed(double value, int decimals)
    {
        Span<char> digits = stackalloc char[MostDigits];
        return TryWrite(value, decimals, digits, out var length) ? new string(digits[..length]) : Exact(value, decimals);
    }

    /// <summary>Adds <see cref="Trimmed"/> to a text.</summary>
    /// <exception cref="ArgumentException">The value is not finite.</exception>
    public static StringBuilder AppendTrimmed(this StringBuilder text, double value, int decimals)
    {
        Span<char> digits = stackalloc char[MostDigits];
        return text.Append(WithoutZeros(TryWrite(value, decimals, digits, out var length) ? digits[..length] : Exact(value, decimals)));
    }

    /// <summary>A length in mm to a nanometre, without trailing zeros.</summary>
    public static string Mm(double mm) => Trimmed(mm, 6);

    /// <summary>A real number of a tagged file, rounded to so many decimals, with at least one: "12.0".</summary>
    public static string Real(double value, int decimals)
    {
        var text = Trimmed(value, decimals);
        return text.Contains('.', StringComparison.Ordinal) ? text : text + ".0";
    }

    // By whole numbers, where these leave no doubt of the last digit: nearly always.
    private static bool TryWrite(double value, int decimals, Span<char> text, out int length)
    {
        length = 0;
        var scaled = decimals < Powers.Length ? Math.Abs(value) * Powers[decimals] : double.NaN;
        if (!(scaled < LargestScaled) || Math.Abs(scaled - Math.Floor(scaled) - 0.5) < NearHalf)
        {
            return false;
        }

        var (whole, fraction) = Math.DivRem((long)(scaled + 0.5), Powers[decimals]);
        if (value < 0 && (whole | fraction) != 0)
        {
            text[length++] = '-';
        }

        whole.TryFormat(text[length..], out var written, provider: CultureInfo.InvariantCulture);
        length += written;
        if (decimals > 0)
        {
            text[length++] = '.';
            for (var place = length + decimals - 1; place >= length; place--)
            {
                (fraction, var digit) = Math.DivRem(fraction, 10);
                text[place] = (char)('0' + digit);
            }

            length += decimals;
        }

        return true;
    }

    private static string Exact(double value, int decimals)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentException("only a finite number can be written", nameof(value));
        }

        var text = value.ToString("F" + Whole(decimals), CultureInfo.InvariantCulture);
        return text.AsSpan().ContainsAnyInRange('1', '9') ? text : text.TrimStart('-');
    }

    private static ReadOnlySpan<char> WithoutZeros(ReadOnlySpan<char> text) => text.Contains('.') ? text.TrimEnd('0').TrimEnd('.') : text;
}
