using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The outline a tongue may have.</summary>
public enum TongueShape
{
    /// <summary>Flanks at an angle, hollow root, round tip.</summary>
    Tapered,

    /// <summary>Sides along the centre line, square end.</summary>
    Straight,

    /// <summary>Sides along the centre line, round tip.</summary>
    StraightRound,
}

/// <summary>The tongue: the neck block's extension under the fretboard.</summary>
public static class Tongue
{
    /// <summary>The member's name.</summary>
    public const string Name = "tongue";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("tongue", "the neck block's extension under the fretboard");

    /// <summary>Which outline.</summary>
    public static readonly Parameter<TongueShape> Shape = Parameter.Choice(
        Section, "shape", "tapered with a round tip; straight with a square end; or straight-round: straight with a round tip", TongueShape.Tapered,
        ("tapered", TongueShape.Tapered), ("straight", TongueShape.Straight), ("straight-round", TongueShape.StraightRound));

    /// <summary>Width at the root.</summary>
    public static readonly Parameter<double> RootWidth = Parameter.Length(
        Section, "root_width", "width where the sides meet the block's face, the hollows left out", possible: (8, 160), usual: (30, 90), fallback: 50,
        byBody: BodyValues.Of(steel: 36, tenorUkulele: 30, octaveMandolin: 30));

    /// <summary>Length from the block's face.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "from the block's face to the tip", possible: (5, 200), usual: (15, 80), fallback: 40,
        byBody: BodyValues.Of(steel: 18, classical: 36, tenorUkulele: 16, octaveMandolin: 16));

    /// <summary>Least angle of any edge to the centre line.</summary>
    public static readonly Parameter<Angle> EdgeAngle = Parameter.Angle(
        Section, "edge_angle", "least angle between any edge of a tapered tongue and the centre line", possible: (1, 60), usual: (12, 30), fallback: 15);

    /// <summary>Hollow at the root.</summary>
    public static readonly Parameter<double> RootHollow = Parameter.Length(
        Section, "root_hollow", "radius of the hollow at each side of a tapered tongue's root", possible: (0, 40), usual: (3, 12), fallback: 6,
        byBody: BodyValues.Of(tenorUkulele: 4));

    /// <summary>Thickness.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "thickness", possible: (1, 40), usual: (4, 15), fallback: 8);

    /// <summary>Wood, when it is not the block's.</summary>
    public static readonly OptionalParameter<string> Wood = Parameter.WoodKey(
        Section, "wood", "wood, a key of the wood table or of a [[wood]] in this file; the block's when left out", () => WoodTable.Keys, OwnWood.Key).Optional();

    /// <summary>How the grain lies.</summary>
    public static readonly Parameter<GrainChoice> Grain = Stock.GrainParameter(Section, GrainChoice.Along);

    /// <summary>How it is sawn.</summary>
    public static readonly Parameter<Sawing> Sawing = Stock.SawingParameter(Section, Woods.Sawing.Unknown);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Shape, RootWidth, Length, EdgeAngle, RootHollow, Thickness, Wood, Grain, Sawing];

    /// <summary>The tapered outline as read.</summary>
    public static TongueRecipe Said(Design design) => new(
        design[RootWidth].Value / 2, design[Length].Value, design[EdgeAngle].Value, design[RootHollow].Value);

    /// <summary>The tapered outline as drawn: as read, or the nearest that has a shape.</summary>
    public static TongueRecipe Recipe(Design design) => Said(design).Nearest();

    internal static void Build(Bench bench, Contour insideOfSides)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var face = Block.Neck.FaceY(design, insideOfSides);
        var shape = design.Get(Shape).Value;
        var (said, drawn) = (Said(design), Recipe(design));
        if (shape == TongueShape.Tapered)
        {
            SayHowDrawn(bench, said, drawn);
        }

        var footprint = shape switch
        {
            TongueShape.Tapered => drawn.Build(face),
            TongueShape.Straight => TongueRecipe.Straight(said.RootHalf, said.Length, face),
            _ => TongueRecipe.StraightRound(said.RootHalf, said.Length, face),
        };
        bench.Add(Member(design, footprint, shape == TongueShape.Tapered));
    }

    // Too long, the flanks meet before the tip; too short, the tip runs into the hollows, and what is left is only blunter.
    private static void SayHowDrawn(Bench bench, TongueRecipe said, TongueRecipe drawn)
    {
        if (drawn == said)
        {
            return;
        }

        var design = bench.Design;
        var isShorter = drawn.Length < said.Length;
        var instead = isShorter ? $"drawn {Say.Mm(drawn.Length)} long"
            : drawn.Fillet > 0 ? $"drawn with hollows of {Say.Mm(drawn.Fillet)}"
            : drawn.IsRound ? "drawn round, without hollows" : "drawn without hollows";
        bench.Fault(
            Rules.DrawnOtherwise,
            isShorter ? Severity.Fail : Severity.Warning,
            Name,
            $"a tongue {Say.Mm(2 * said.RootHalf)} wide and {Say.Mm(said.Length)} long leaves no flank at {Say.Degrees(said.Flank)}; it is {instead}",
            CureOf(said),
            isShorter ? new Measurement(drawn.Length, "mm", said.Length) : new Measurement(drawn.Fillet, "mm", said.Fillet),
            null,
            design.PlaceOf(EdgeAngle),
            design.PlaceOf(RootWidth),
            design.PlaceOf(Length));
    }

    private static string CureOf(TongueRecipe recipe)
    {
        if (recipe.Length < recipe.LeastLength)
        {
            return $"make it {Say.Mm(Math.Ceiling(recipe.LeastLength))} or longer, narrow its root, or make `root_hollow` smaller";
        }

        var largest = Angle.FromDegrees(Math.Max(1, Math.Floor(recipe.LargestFlank(2).Degrees)));
        return $"shorten it, widen its root, or set `edge_angle` to {Say.Degrees(largest)} or less";
    }

    private static Member Member(Design design, Region footprint, bool isTapered)
    {
        var section = design.In(Section);
        var wood = section.Find(Wood) ?? design[Block.Neck.Stock.Wood];
        var (lie, grain) = Stock.Lying(section.Get(Grain).Value);
        ReadOnlySpan<SourcePlace> first = isTapered ? [section[EdgeAngle].Place] : [section.Get(Shape).Place];
        return new Member
        {
            Name = Name,
            Kind = MemberKind.Tongue,
            Face = TopFace.Inside,
            Footprint = footprint,
            ThicknessMm = section[Thickness].Value,
            Material = new Material(new WoodShelf(design)[wood], lie, section.Get(Sawing).Value),
            Grain = grain,
            UngluedEdges = [TongueRecipe.Root],
            JoinedWith = [Block.Neck.Name],
            Places = [.. first, section[RootWidth].Place, section[Length].Place, section.Get(Grain).Place, section.Get(Sawing).Place],
        };
    }
}
