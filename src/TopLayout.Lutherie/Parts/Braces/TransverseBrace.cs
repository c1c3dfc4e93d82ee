using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The upper transverse brace: straight across the grain above the hole, let into the linings.</summary>
public static class TransverseBrace
{
    /// <summary>The member's name.</summary>
    public const string Name = "upper transverse brace";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("transverse_brace", "straight across above the hole");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Centre line above the hole.</summary>
    public static readonly Parameter<double> AboveHole = Parameter.Length(
        Section, "above_hole", "from the hole's edge to the brace's centre line", possible: (5, 150), usual: (10, 25), fallback: 22,
        byBody: BodyValues.Of(
            steel: (20, 14, 24), classical: (23, 15, 25), tenorUkulele: (14, 10, 18), octaveMandolin: (17, 12, 22)));

    /// <summary>Width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width along the body", possible: (3, 30), usual: (5, 13), fallback: 10,
        byBody: BodyValues.Of(
            steel: (11, 10, 13), classical: (6, 5, 7), tenorUkulele: (7, 6, 8), octaveMandolin: (10, 9, 12)));

    /// <summary>Height.</summary>
    public static readonly Parameter<double> Height = Parameter.Length(
        Section, "height", "height", possible: (3, 30), usual: (9, 20), fallback: 16,
        byBody: BodyValues.Of(
            steel: (17, 15, 20), classical: (16, 14, 18), tenorUkulele: (10, 9, 12), octaveMandolin: (15, 13, 17)));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, AboveHole, Width, Height];

    /// <summary>Neck edge to the brace's centre line, mm.</summary>
    public static double FromNeckEdge(Design design, Hole hole) => hole.NearEdge - design[AboveHole].Value;

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        new Bar
        {
            Name = Name,
            Through = new Point2(0, -FromNeckEdge(design, room.Hole)),
            Along = Vec2.UnitX,
            Start = BarEnd.InLining("bass end"),
            End = BarEnd.InLining("treble end"),
            Places = [section[AboveHole].Place, section[Width].Place],
        }.Add(bench, room, section, new BarStock(Stock, Width, Height));
    }
}
