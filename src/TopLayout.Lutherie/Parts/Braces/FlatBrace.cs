using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The flat brace: a thin wide piece across the grain under the fretboard, between block and upper transverse brace.</summary>
public static class FlatBrace
{
    /// <summary>The member's name.</summary>
    public const string Name = "flat brace";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("flat_brace", "a thin wide piece across the grain under the fretboard");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Length across the top.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "length across the top", possible: (20, 400), usual: (90, 200), fallback: 120);

    /// <summary>Width along the top.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width along the top", possible: (5, 80), usual: (12, 32), fallback: 20, byBody: BodyValues.Of(steel: (20, 20, 32)));

    /// <summary>Thickness.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "thickness", possible: (1, 10), usual: (1.5, 4), fallback: 3,
        byBody: BodyValues.Of(
            steel: (3, 2.5, 4), classical: (2, 1.5, 2.5), tenorUkulele: (1.75, 1.5, 2), octaveMandolin: (2.5, 2, 3)));

    /// <summary>Centre from the neck edge.</summary>
    public static readonly OptionalParameter<double> FromNeckEdge = Parameter.Length(
        Section, "from_neck_edge", "from the neck edge to its centre line; midway between block and transverse brace when left out", possible: (10, 300)).Optional();

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Length, Width, Thickness, FromNeckEdge];

    internal static void Build(Bench bench, Hole hole, Contour insideOfSides)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        var blockFace = -Block.Neck.FaceY(design, insideOfSides);
        var hasTransverse = design.Has(TransverseBrace.Section);
        if (section.Find(FromNeckEdge) is null && !hasTransverse)
        {
            bench.Misfit(
                Name,
                "without an upper transverse brace nothing says where the flat brace lies",
                "add `from_neck_edge` to the flat brace, or the section [transverse_brace]",
                section.Place);
            return;
        }

        var farLimit = hasTransverse
            ? TransverseBrace.FromNeckEdge(design, hole) - (design[TransverseBrace.Width].Value / 2)
            : hole.NearEdge;
        var at = section.Find(FromNeckEdge)?.Value ?? ((blockFace + farLimit) / 2);
        var room = 2 * Math.Min(at - blockFace, farLimit - at);
        if (section[Width].Value > room + Tolerances.TouchMm)
        {
            bench.Misfit(
                Name,
                $"the flat brace is {Say.Mm(section[Width].Value)} wide and only {Say.Mm(Math.Max(0, room))} fit between the neck block's face and {(hasTransverse ? "the upper transverse brace" : "the hole")}",
                "narrow the flat brace, shorten the neck block, or move the transverse brace towards the hole",
                section[Width].Place,
                design[Block.Neck.Length].Place);
            return;
        }

        Contour End(int side) => Batten.Square(new Point2(side * section[Length].Value / 2, -at), Vec2.UnitX);
        var footprint = Batten.Parallel(
            new Point2(0, -at), Vec2.UnitX, section[Width].Value, "neck side", "tail side", new BattenEnd(End(-1), "bass end"), new BattenEnd(End(1), "treble end"));
        bench.AddOrMisfit(footprint, Name, section[Length].Place, region => new Member
        {
            Name = Name,
            Kind = MemberKind.Plate,
            Face = TopFace.Inside,
            Footprint = region,
            ThicknessMm = section[Thickness].Value,
            Material = Stock.Read(section),
            Grain = Geometry.Angle.FromDegrees(90),
            Places = [section[Length].Place, section[Width].Place],
        });
    }
}
