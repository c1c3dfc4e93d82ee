using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Tests.Designs;

/// <summary>A small table with one parameter of each kind, and short ways to read against it.</summary>
internal static class SampleTable
{
    public enum Sawing
    {
        Flat,
        QuarterSawn,
    }

    private static readonly string[] Woods = ["sitka_spruce", "european_spruce", "maple"];

    public static readonly Section Scale = Section.Always("scale", "strings and frets");
    public static readonly Section Soundhole = Section.Always("soundhole", "the hole");
    public static readonly Section XBrace = Section.Always("x_brace", "the X");
    public static readonly Section FlatBrace = Section.Optional("flat_brace", "a flat brace below the hole");
    public static readonly Section ToneBar = Section.Repeatable("tone_bar", "a tone bar", most: 3);
    public static readonly Section OwnWood = Section.Repeatable("wood", "a wood of one's own");
    public static readonly Section Cutaway = Section.Optional("cutaway", "a cutaway");
    public static readonly Section Season = Section.Always("season", "humidities");

    public static readonly Parameter<string> WoodKey = Parameter.NewWoodKey(OwnWood, "key", "its key", () => Woods);
    public static readonly Parameter<string> Name = Parameter.Text(Section.Root, "name", "name of the design", longest: 30, fallback: "unnamed");
    public static readonly Parameter<bool> IsLeftHanded =
        Parameter.Choice(Section.Root, "hand", "for which hand", false, ("right", false), ("left", true));

    public static readonly Parameter<double> ScaleLength = Parameter.Length(Scale, "length", "nut to saddle", possible: (300, 900), usual: (610, 660));
    public static readonly Parameter<int> BodyFret = Parameter.Count(Scale, "body_fret", "fret at the body", possible: (10, 18), usual: (12, 14), fallback: 14);
    public static readonly Parameter<double> Diameter = Parameter.Length(
        Soundhole, "diameter", "diameter of the soundhole", possible: (10, 200), usual: (80, 110), fallback: 98);

    public static readonly Parameter<double> Position = Parameter.Number(Soundhole, "position", "a fraction", possible: (0, 1), fallback: 0.25);
    public static readonly OptionalParameter<Angle> XAngle =
        Parameter.Angle(XBrace, "angle", "angle of the X", possible: (60, 130), usual: (90, 104)).Optional();

    public static readonly OptionalParameter<double> XTarget = Parameter.Length(XBrace, "target", "half spread at the bridge", possible: (10, 120)).Optional();
    public static readonly Parameter<string> XWood =
        Parameter.WoodKey(XBrace, "wood", "wood of the X", () => Woods, WoodKey, "sitka_spruce");

    public static readonly Parameter<double> FlatWidth = Parameter.Length(FlatBrace, "width", "width", possible: (2, 60), fallback: 20);
    public static readonly OptionalParameter<double> Depth = Parameter.Length(Cutaway, "depth", "depth", possible: (20, 100)).Optional();
    public static readonly OptionalParameter<double> Radius = Parameter.Length(Cutaway, "radius", "radius", possible: (20, 100)).Optional();
    public static readonly Parameter<double> BarLength = Parameter.Length(ToneBar, "length", "length", possible: (20, 300));
    public static readonly Parameter<Sawing> BarSawing = Parameter.OneOf<Sawing>(ToneBar, "sawn", "how it is sawn", Sawing.QuarterSawn);
    public static readonly Parameter<double> Humidity = Parameter.Percent(Season, "glued_at", "humidity", possible: (5, 95), usual: (40, 60), fallback: 50);
    public static readonly Parameter<double> Warmth = Parameter.Temperature(Season, "temperature", "temperature", possible: (-10, 50), fallback: 21);

    public static readonly ParameterTable Table = new(
        [Scale, Soundhole, XBrace, FlatBrace, ToneBar, OwnWood, Cutaway, Season],
        [
            Name, IsLeftHanded, ScaleLength, BodyFret, Diameter, Position, XAngle, XTarget, XWood, FlatWidth, BarLength, BarSawing, WoodKey, Humidity,
            Warmth, Depth, Radius,
        ],
        [ExactlyOneOf.Defaulted(XAngle, Angle.FromDegrees(98), XTarget), ExactlyOneOf.Required(Depth, Radius)]);

    /// <summary>The least a design says.</summary>
    public const string Least = "units = \"mm\"\nscale.length = 645\n";

    public static Reading Read(string text) => DesignReader.Read(text, "a.toml", Table);

    /// <summary>A design that must be free of errors.</summary>
    public static Design Design(string text)
    {
        var reading = Read(text);
        Assert.True(reading.Design is not null, Printed(reading));
        return reading.Design;
    }

    /// <summary>All findings as printed.</summary>
    public static string Printed(Reading reading) => string.Join("\n", reading.Findings.Select(FindingText.Of));

    /// <summary>The findings of a text that must be exactly these.</summary>
    public static void Finds(string text, string expected) => Assert.Equal(expected.ReplaceLineEndings("\n"), Printed(Read(text)));

    /// <summary>A text that must be read without any finding.</summary>
    public static void FindsNothing(string text) => Finds(text, "");
}
