using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The top itself: wood, thickness, and how the grain of each half leans.</summary>
public static class Plate
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("top", "the plate itself");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Thickness under the braces.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "final thickness", possible: (1, 8), usual: (1.6, 3.3), fallback: 2.8,
        byBody: BodyValues.Of(
            parlour: (2.6, 2.4, 2.8), classical: (2.3, 2, 2.5), concert: (2.7, 2.6, 2.9), auditorium: (2.8, 2.6, 3),
            squareShouldered: (2.9, 2.7, 3.1), jumbo: (3, 2.8, 3.2), tenorUkulele: (1.9, 1.6, 2.2),
            octaveMandolin: (2.9, 2.6, 3.3)));

    /// <summary>Lean of the bass half's grain.</summary>
    public static readonly Parameter<Angle> SkewBass = Parameter.Angle(
        Section, "skew_bass", "lean of the bass half's grain, + outward towards the tail", possible: (-10, 10), usual: (-2, 2), fallback: 0);

    /// <summary>Lean of the treble half's grain.</summary>
    public static readonly Parameter<Angle> SkewTreble = Parameter.Angle(
        Section, "skew_treble", "lean of the treble half's grain, + outward towards the tail", possible: (-10, 10), usual: (-2, 2), fallback: 0);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Thickness, SkewBass, SkewTreble];

    /// <summary>The plate as read.</summary>
    public static TopPlate Read(Design design) => new(
        new WoodShelf(design)[design[Stock.Wood]], design[Thickness].Value, design.Get(Stock.Sawing).Value);
}
