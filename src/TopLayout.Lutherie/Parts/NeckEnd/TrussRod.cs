using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The slot for the truss rod or its key: from the neck edge through the top of the neck block and some way into the tongue. Usual sizes are common practice, no source.</summary>
public static class TrussRod
{
    /// <summary>The mark's name.</summary>
    public const string Name = "truss-rod slot";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("truss_rod", "the slot for the truss rod in the upper face of neck block and tongue");

    /// <summary>Width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(Section, "width", "width of the slot", possible: (2, 30), usual: (5, 11), fallback: 6.5);

    /// <summary>Depth.</summary>
    public static readonly Parameter<double> Depth = Parameter.Length(
        Section, "depth", "depth from the glued face", possible: (1, 40), usual: (3, 12), fallback: 4);

    /// <summary>Length in the tongue.</summary>
    public static readonly Parameter<double> IntoTongue = Parameter.Length(
        Section, "into_tongue", "length from the block's face into the tongue", possible: (0, 200), usual: (0, 60), fallback: 10);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Width, Depth, IntoTongue];

    /// <summary>Where the slot ends, y in layout coordinates, mm: at the block's face where there is no tongue.</summary>
    public static double EndY(Layout layout) =>
        Block.Neck.FaceY(layout.Design, layout.InsideOfSides) - (layout.Find(Tongue.Name) is null ? 0 : layout.Design[IntoTongue].Value);

    internal static void Build(Bench bench, Contour insideOfSides)
    {
        var design = bench.Design;
        if (!design.Has(Section) || bench.Find(Block.Neck.Name) is not { } block)
        {
            return;
        }

        var (half, into) = (design[Width].Value / 2, bench.Find(Tongue.Name) is null ? 0 : design[IntoTongue].Value);
        var (from, to) = (block.Footprint.Bounds.Max.Y, Block.Neck.FaceY(design, insideOfSides) - into);
        bench.Mark(new PlanMark(Name, TopFace.Inside, Contour.Rectangle(Box2.Around(new Point2(-half, from), new Point2(half, to))), design.PlaceOf(Depth))
        {
            ThicknessMm = design[Depth].Value,
            IsCovered = true,
        });
    }
}
