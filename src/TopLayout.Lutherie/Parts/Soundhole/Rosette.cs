using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The channel for the rosette, round the hole.</summary>
public static class Rosette
{
    /// <summary>The member's name.</summary>
    public const string Name = "rosette channel";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("rosette", "the channel for the rosette, round the hole");

    /// <summary>Hole edge to channel.</summary>
    public static readonly Parameter<double> Margin = Parameter.Length(
        Section, "margin", "from the hole's edge to the channel", possible: (0.5, 60), usual: (2, 6), fallback: 4,
        byBody: BodyValues.Of(steel: (4, 3, 6), classical: (4, 3, 6), tenorUkulele: (3, 2, 4)));

    /// <summary>Width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width of the channel", possible: (0.3, 60), usual: (1.5, 14), fallback: 8,
        byBody: BodyValues.Of(steel: (8, 1.5, 14), classical: (14, 8, 28), tenorUkulele: (4, 2, 8)));

    /// <summary>Depth.</summary>
    public static readonly Parameter<double> Depth = Parameter.Length(
        Section, "depth", "depth of the channel", possible: (0.2, 4), usual: (0.5, 1.6), fallback: 1.4,
        byBody: BodyValues.Of(steel: (1.3, 0.8, 1.6), classical: (1.2, 0.8, 1.6), tenorUkulele: (0.9, 0.5, 1)));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Margin, Width, Depth];

    internal static void Build(Bench bench, Hole hole)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var (margin, width) = (design[Margin].Value, design[Width].Value);
        bench.Add(new Member
        {
            Name = Name,
            Kind = MemberKind.Channel,
            Face = TopFace.Outside,
            Footprint = Region.Between(hole.LineOutside(margin + width, "outer wall"), hole.LineOutside(margin, "inner wall")),
            ThicknessMm = design[Depth].Value,
            Material = null,
            Grain = Angle.Zero,
            Places = [design[Width].Place, design[Margin].Place],
        });
    }
}
