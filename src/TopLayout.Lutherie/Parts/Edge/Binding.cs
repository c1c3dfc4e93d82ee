using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The two ledges cut round the edge of the closed box: for the binding through the top into the sides, and further in and shallower for the
/// purfling. They are cut after the top is glued on, so they are no members; the outside plan shows their inner lines. Usual sizes are common
/// practice, no source.
/// </summary>
public static class Binding
{
    /// <summary>The binding's mark.</summary>
    public const string LedgeName = "binding ledge";

    /// <summary>The purfling's mark.</summary>
    public const string PurflingName = "purfling ledge";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("binding", "the ledges for binding and purfling round the edge");

    /// <summary>Width of the binding in plan.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width of the binding seen from the front", possible: (0.3, 8), usual: (1.2, 2.5), fallback: 2);

    /// <summary>Depth of the binding.</summary>
    public static readonly Parameter<double> Depth = Parameter.Length(
        Section, "depth", "depth of the binding down the side", possible: (1, 15), usual: (4, 7.5), fallback: 6);

    /// <summary>Width of the purfling.</summary>
    public static readonly Parameter<double> PurflingWidth = Parameter.Length(
        Section, "purfling_width", "width of the purfling inside the binding; 0 for none", possible: (0, 12), usual: (0, 4), fallback: 0);

    /// <summary>Depth of the purfling.</summary>
    public static readonly Parameter<double> PurflingDepth = Parameter.Length(
        Section, "purfling_depth", "depth of the purfling's ledge from the top's face", possible: (0.3, 10), usual: (1, 2.2), fallback: 1.6);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Width, Depth, PurflingWidth, PurflingDepth];

    /// <summary>From the outline to the inner line of the widest ledge, mm.</summary>
    public static double LedgeWidth(Design design) => design[Width].Value + design[PurflingWidth].Value;

    /// <summary>True for the inner lines of the ledges, which run all round the rim.</summary>
    public static bool IsLedge(PlanMark mark) => mark.Name is LedgeName or PurflingName;

    internal static void Build(Bench bench, Contour outline)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        Ledge(bench, outline, LedgeName, design[Width].Value, design[Depth].Value, design.PlaceOf(Width));
        if (design[PurflingWidth].Value > 0)
        {
            Ledge(bench, outline, PurflingName, LedgeWidth(design), design[PurflingDepth].Value, design.PlaceOf(PurflingWidth));
        }
    }

    private static void Ledge(Bench bench, Contour outline, string name, double width, double depth, Findings.SourcePlace place)
    {
        if (Region.Inside(outline).Offset(-width) is { Loops: [var line] })
        {
            bench.Mark(new PlanMark(name, TopFace.Outside, line, place) { ThicknessMm = depth });
        }
        else
        {
            bench.LeaveOut(name, $"a corner of the outline is too tight for {Findings.Say.TheLast(name)}, {Findings.Say.Mm(width)} from the edge", "make the ledge narrower, or the corner rounder", place);
        }
    }
}
