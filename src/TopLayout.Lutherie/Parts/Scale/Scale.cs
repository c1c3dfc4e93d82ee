using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The string length and where the body meets it: everything else hangs on this.</summary>
public static class Scale
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("scale", "string length, body join and saddle");

    /// <summary>Nut to theoretical saddle.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "nut to theoretical saddle", possible: (200, 900), usual: (340, 660),
        byBody: BodyValues.Of(
            parlour: (600, 635), classical: (640, 660), concert: (620, 645), auditorium: (630, 650),
            squareShouldered: (640, 650), jumbo: (640, 655), tenorUkulele: (425, 440), octaveMandolin: (510, 580)));

    /// <summary>Fret at the neck edge.</summary>
    public static readonly Parameter<int> JoinFret = Parameter.Count(
        Section, "join_fret", "fret at the neck edge of the body", possible: (7, 20), usual: (12, 16), fallback: 14,
        byBody: BodyValues.Of(
            parlour: (12, 12, 12), classical: (12, 12, 12), concert: (14, 12, 14), auditorium: (14, 12, 14),
            squareShouldered: (14, 12, 14), jumbo: (14, 14, 14), tenorUkulele: (14, 12, 14),
            octaveMandolin: (14, 12, 16)));

    /// <summary>Last fret.</summary>
    public static readonly Parameter<int> LastFret = Parameter.Count(
        Section, "last_fret", "last fret on the board", possible: (10, 30), usual: (17, 22), fallback: 20,
        byBody: BodyValues.Of(
            parlour: (18, 18, 19), classical: (19, 19, 20), concert: (20, 19, 20), auditorium: (20, 20, 21),
            squareShouldered: (20, 20, 20), jumbo: (20, 20, 21), tenorUkulele: (18, 17, 20),
            octaveMandolin: (20, 18, 22)));

    /// <summary>Saddle set back on the bass side.</summary>
    public static readonly Parameter<double> CompensationBass = Parameter.Length(
        Section, "compensation_bass", "saddle set back at the outer bass string", possible: (-2, 12), usual: (1, 5.5), fallback: 4.5,
        byBody: BodyValues.Of(
            steel: (4.5, 4, 5.5), classical: (2, 1, 2.5), tenorUkulele: (2, 1, 2.5), octaveMandolin: (3, 2, 4)));

    /// <summary>Saddle set back on the treble side.</summary>
    public static readonly Parameter<double> CompensationTreble = Parameter.Length(
        Section, "compensation_treble", "saddle set back at the outer treble string", possible: (-2, 12), usual: (1, 2.5), fallback: 2,
        byBody: BodyValues.Of(
            steel: (2, 1.5, 2.5), classical: (1.5, 1, 2.5), tenorUkulele: (1.5, 1, 2.5), octaveMandolin: (2, 2, 4)));

    /// <summary>Outer strings at the saddle.</summary>
    public static readonly Parameter<double> StringSpread = Parameter.Length(
        Section, "string_spread", "outer string to outer string at the saddle", possible: (20, 90), usual: (40, 61), fallback: 55,
        byBody: BodyValues.Of(steel: (55, 53, 58), classical: (59, 57, 61), tenorUkulele: 41, octaveMandolin: 42));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Length, JoinFret, LastFret, CompensationBass, CompensationTreble, StringSpread];

    /// <summary>The fret positions as read.</summary>
    public static Frets Frets(Design design) => new(design[Length].Value, design[JoinFret].Value);

    /// <summary>The line the saddle's crown follows, between the outer strings.</summary>
    public static SaddleLine Saddle(Design design)
    {
        var (half, theory) = (design[StringSpread].Value / 2, Frets(design).SaddleFromNeckEdge);
        return new SaddleLine(
            new Point2(-half, -(theory + design[CompensationBass].Value)), new Point2(half, -(theory + design[CompensationTreble].Value)));
    }
}

/// <summary>The saddle between the outer strings, in layout coordinates.</summary>
/// <param name="Bass">Under the outer bass string.</param>
/// <param name="Treble">Under the outer treble string.</param>
public readonly record struct SaddleLine(Point2 Bass, Point2 Treble)
{
    /// <summary>Where the saddle crosses the centre line.</summary>
    public Point2 Middle => Bass.MidpointTo(Treble);
}
