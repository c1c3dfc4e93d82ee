using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

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

    internal static void Build(Bench bench, Hole hole, Contour liningLine)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var (margin, width) = (design[Margin].Value, design[Width].Value);
        var reach = Distances.Between(liningLine, hole.Edge);
        if (reach <= margin + width)
        {
            bench.Misfit(
                Name,
                $"the channel ends {Say.Mm(margin + width)} outside the hole's edge, and the lining lies {Say.Mm(reach)} from it",
                "narrow the channel or its margin, or make the hole smaller",
                design[Width].Place,
                design[Margin].Place,
                design[Soundhole.Diameter].Place);
        }

        if (design[Depth].Value >= design[Plate.Thickness].Value)
        {
            bench.Misfit(
                Name,
                $"a channel {Say.Mm(design[Depth].Value)} deep goes through a top {Say.Mm(design[Plate.Thickness].Value)} thick",
                "make the channel shallower: a floor of 1.2 mm is usual",
                design[Depth].Place,
                design[Plate.Thickness].Place);
        }

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
