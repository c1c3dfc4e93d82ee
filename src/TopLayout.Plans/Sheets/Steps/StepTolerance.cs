using TopLayout.Lutherie.Designs;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>How true each step is usually worked. All of them: common practice, no source.</summary>
internal static class StepTolerance
{
    /// <summary>Lengths and widths of the body, mm either way.</summary>
    public const double Body = 1;

    /// <summary>The body all round, to which its lengths and widths add up, mm either way.</summary>
    public const double Round = 3;

    /// <summary>One half of the body against the other, and the neck's line against the middle of the bridge, mm either way.</summary>
    public const double Halves = 0.5;

    /// <summary>How straight a centre line is over its whole length, and how square a bridge stands over its own, mm either way.</summary>
    public const double Straight = 0.25;

    /// <summary>Where the hole lies along the top, and the saddle, mm either way.</summary>
    public const double Along = 0.5;

    /// <summary>Where things lie across the top that the eye compares with the fretboard or the strings, mm either way.</summary>
    public const double Across = 0.3;

    /// <summary>The radii and the depth of a channel, and the height of a brace where it meets the rim, mm either way.</summary>
    public const double Channel = 0.1;

    /// <summary>The soundhole's size, mm either way.</summary>
    public const double HoleSize = 0.5;

    /// <summary>Where braces lie, mm either way.</summary>
    public const double Brace = 1;

    /// <summary>Where braces pass the bridge and parts meet, mm either way.</summary>
    public const double Meeting = 0.5;

    /// <summary>Side stock left over for trimming, mm.</summary>
    public static readonly (double Least, double Most) SideStock = (20, 40);

    /// <summary>Humidity while gluing, percent of relative humidity either way.</summary>
    public const string Humidity = "±3 %";

    private const double QuarterInchMm = 25.4 / 4;

    /// <summary>How much wider a pocket is than the brace in it, mm.</summary>
    public static readonly (double Least, double Most) Pocket = (0.1, 0.3);

    /// <summary>"+0.1 to 0.3 mm", in the design's unit.</summary>
    public static string PocketRoom(LengthUnit units) => $"+{LengthText.Of(Pocket.Least, units)} to {LengthText.WithUnit(Pocket.Most, units)}";

    /// <summary>"±0.5 mm", in the design's unit.</summary>
    public static string Within(double mm, LengthUnit units) => LengthText.Tolerance(mm, units);

    /// <summary>"+20 to 40 mm"; in inches down to a quarter: "+3/4 to 1 1/2 in".</summary>
    public static string Over((double Least, double Most) mm, LengthUnit units)
    {
        double Down(double length) => units == LengthUnit.Inch ? Math.Floor(length / QuarterInchMm) * QuarterInchMm : length;
        return $"+{LengthText.OnRule(Down(mm.Least), units)} to {LengthText.OnRuleWithUnit(Down(mm.Most), units)}";
    }
}
