using System.Globalization;
using TopLayout.Drawing;

namespace TopLayout.Cli;

/// <summary>What a printed bar measures against what it should: "179.6/180", mm or any unit, and the correction that follows.</summary>
internal static class MeasuredBar
{
    /// <summary>What a ruler reads to, mm: a smaller difference is none.</summary>
    public const double ReadingMm = 0.25;

    /// <summary>A difference beyond this share is a printing fault and nothing to correct.</summary>
    public const double MostShare = 0.03;

    /// <summary>The factor to stretch by, and what to say of it; the factor is null where there is nothing that can be corrected.</summary>
    public static (double? Factor, string? Said) Read(string option, string given)
    {
        var parts = given.Split('/');
        if (parts.Length != 2 || !Number(parts[0], out var measured) || !Number(parts[1], out var wanted))
        {
            return (null, $"`{option}` takes what the printed bar measures and what it should, as `179.6/180`; it is `{given}`");
        }

        var share = Math.Abs(measured - wanted) / wanted;
        if (share > MostShare)
        {
            return (null, $"`{option}`: the print is {NumberFormat.Trimmed(share * 100, 1)} % out, which no correction should mend; "
                + "print at actual size, 100 %, not fitted to the page, and measure again");
        }

        return Math.Abs(measured - wanted) < ReadingMm
            ? (1, $"`{option}`: a difference of {NumberFormat.Trimmed(Math.Abs(measured - wanted), 2)} mm is less than a ruler shows ({NumberFormat.Trimmed(ReadingMm, 2)} mm), so nothing is corrected")
            : (wanted / measured, null);
    }

    private static bool Number(string text, out double value) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out value)
        && value is > 0 and < 10_000;
}
