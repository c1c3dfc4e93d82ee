using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The slot of the saddle in the bridge. The saddle's line, slanted by what the outer strings are compensated, runs along its middle; so the
/// place of its front wall follows from the saddle and is told, not asked. Usual sizes are common practice, no source.
/// </summary>
public static class SaddleSlot
{
    /// <summary>The mark's name.</summary>
    public const string Name = "saddle slot";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("saddle_slot", "the slot of the saddle in the bridge, its middle along the saddle's line");

    /// <summary>Width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width", possible: (0.5, 12), usual: (2.2, 3.5), fallback: 3, byBody: BodyValues.Of(classical: (2.5, 2, 3)));

    /// <summary>Length.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "length along the saddle", possible: (20, 200), usual: (50, 86), fallback: 74,
        byBody: BodyValues.Of(steel: (74, 70, 80), classical: (80, 76, 86), tenorUkulele: (56, 50, 65), octaveMandolin: 58));

    /// <summary>Depth.</summary>
    public static readonly Parameter<double> Depth = Parameter.Length(
        Section, "depth", "depth into the bridge", possible: (1, 15), usual: (4, 7.5), fallback: 5);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Width, Length, Depth];

    /// <summary>The slot's four corners: front bass, rear bass, rear treble, front treble.</summary>
    public static Contour Outline(Design design)
    {
        var saddle = Scale.Saddle(design);
        var along = (saddle.Treble - saddle.Bass).Unit;
        var (half, aside) = (along * (design[Length].Value / 2), along.Left * (design[Width].Value / 2));
        return Contour.Polygon(
            saddle.Middle - half + aside, saddle.Middle - half - aside, saddle.Middle + half - aside, saddle.Middle + half + aside);
    }

    /// <summary>From the bridge's front edge to the slot's front wall on the centre line, along the body, mm.</summary>
    public static double WallFromFront(Design design)
    {
        var saddle = Scale.Saddle(design);
        var slant = (saddle.Treble - saddle.Bass).Unit;
        return design[Bridge.FrontToSaddle].Value - (design[Width].Value / 2 / Math.Abs(slant.X));
    }

    internal static void Build(Bench bench)
    {
        var design = bench.Design;
        if (design.Has(Section) && bench.Find(Bridge.Name) is not null)
        {
            bench.Mark(new PlanMark(Name, TopFace.Outside, Outline(design), design.PlaceOf(Width)) { ThicknessMm = design[Depth].Value });
        }
    }
}
