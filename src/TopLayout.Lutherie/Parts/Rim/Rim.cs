using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>Sides and linings: the lines inside the outline.</summary>
public static class Rim
{
    /// <summary>Sides.</summary>
    public static readonly Section Sides = Section.Always("sides", "the sides");

    /// <summary>Linings.</summary>
    public static readonly Section Lining = Section.Always("lining", "the linings on the top's edge of the sides");

    /// <summary>Thickness of the sides.</summary>
    public static readonly Parameter<double> SideThickness = Parameter.Length(
        Sides, "thickness", "thickness of the sides", possible: (1, 6), usual: (1.5, 2.5), fallback: 2.1,
        byBody: BodyValues.Of(steel: (2.1, 1.8, 2.5), classical: (2, 1.8, 2.5), tenorUkulele: (1.8, 1.5, 2)));

    /// <summary>Width of the lining.</summary>
    public static readonly Parameter<double> LiningWidth = Parameter.Length(
        Lining, "width", "width of the lining on the glued edge", possible: (1.5, 15), usual: (2, 8), fallback: 6.5,
        byBody: BodyValues.Of(steel: (6.5, 5, 8), classical: (6, 5, 8), tenorUkulele: (5, 2, 6)));

    /// <summary>Height of the lining.</summary>
    public static readonly Parameter<double> LiningHeight = Parameter.Length(
        Lining, "height", "height of the lining down the side", possible: (4, 30), usual: (8, 19), fallback: 16,
        byBody: BodyValues.Of(steel: (16, 12, 19), classical: (16, 12, 19), tenorUkulele: (10, 8, 12)));

    /// <summary>Wood and sawing of the lining.</summary>
    public static readonly Stock LiningStock = new(Lining, "american_basswood", Sawing.Unknown);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [SideThickness, LiningWidth, LiningHeight, .. LiningStock.All];

    /// <summary>Inside of the sides and inner line of the linings, counter-clockwise; null, with the misfit said, when the body is too narrow for them.</summary>
    internal static (Contour InsideOfSides, Contour LiningLine)? Lines(Bench bench, Contour outline)
    {
        var (side, lining) = (bench.Design[SideThickness], bench.Design[LiningWidth]);
        return Inset.Of(bench, outline, side.Value, "inside of the sides", side.Place) is { } inside
            && Inset.Of(bench, inside, lining.Value, "lining", lining.Place) is { } line ? (inside, line) : null;
    }

    /// <summary>The two linings, from block to block.</summary>
    internal static void BuildLinings(Bench bench, Contour insideOfSides, Contour liningLine)
    {
        foreach (var (side, name) in (ReadOnlySpan<(int, string)>)[(-1, "bass lining"), (1, "treble lining")])
        {
            var footprint = LiningFootprint(bench.Design, insideOfSides, liningLine, side);
            bench.AddOrMisfit(footprint, name, bench.Design[LiningWidth].Place, region => Member(bench.Design, name, region));
        }
    }

    private static Member Member(Design design, string name, Region footprint) => new()
    {
        Name = name,
        Kind = MemberKind.Lining,
        Face = TopFace.Inside,
        Footprint = footprint,
        ThicknessMm = design[LiningHeight].Value,
        Material = LiningStock.Read(design.In(Lining)),
        Grain = Angle.Zero,
        UngluedEdges = ["outside", "block end"],
        JoinedWith = [Block.Neck.Name, Block.Tail.Name],
        ActingHalfWidthMm = design[LiningWidth].Value / 2,
        Places = [design[LiningWidth].Place],
    };

    // Between the inside of the sides and the lining's line, where no block stands: of what is left on that side the largest part.
    private static Region? LiningFootprint(Design design, Contour inside, Contour line, int side)
    {
        var ring = Region.Inside(inside.Labelled("outside")).Subtract(Region.Inside(line.Labelled("inner edge")));
        foreach (var block in (ReadOnlySpan<Block>)[Block.Neck, Block.Tail])
        {
            ring = ring.Subtract(Region.Inside(Contour.Rectangle(block.Gap(design, inside, line)).Labelled("block end")));
        }

        return ring.Parts.Where(p => p.Outer.Moments().Centroid.X * side > 0).MaxBy(p => p.Area);
    }
}
