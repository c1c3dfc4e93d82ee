using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The cap over the crossing of the X: a thin square that ties the two halves of the lap together. It is glued to the legs, never to the
/// top, so it is no member and no check of the top's edges sees it; the plan shows its outline and the list of parts its stock. Its edges run
/// along and across the body, the shape a maker cuts from a strip (common practice, no source).
/// </summary>
public static class XCap
{
    /// <summary>The mark's name.</summary>
    public const string Name = "X cap";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("x_cap", "a thin square over the crossing of the X, glued to the legs");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Its side.</summary>
    public static readonly Parameter<double> Side = Parameter.Length(Section, "side", "side of the square", possible: (8, 80), usual: (18, 40), fallback: 25);

    /// <summary>Thickness.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(Section, "thickness", "thickness", possible: (0.3, 6), usual: (1, 2), fallback: 1.5);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Side, Thickness];

    internal static void Build(Bench bench, Hole hole)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        if (bench.Find(XBrace.BassLeg) is null || bench.Find(XBrace.TrebleLeg) is null)
        {
            bench.LeaveOut(
                Name, "the X cap lies on the crossing of two legs, and the top has not both", "add the section [x_brace], or leave [x_cap] out", section.Place);
            return;
        }

        var (half, at) = (new Vec2(section[Side].Value / 2, section[Side].Value / 2), XBrace.Crossing(design, hole));
        bench.Mark(new PlanMark(Name, TopFace.Inside, Contour.Rectangle(Box2.Around(at - half, at + half)), section[Side].Place)
        {
            Material = Stock.Read(section),
            ThicknessMm = section[Thickness].Value,
        });
    }
}
