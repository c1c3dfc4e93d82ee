using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The plate under the bridge, between the legs of the X, its long grain across the top.</summary>
public static class BridgePlate
{
    /// <summary>The member's name.</summary>
    public const string Name = "bridge plate";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("bridge_plate", "the plate under the bridge, between the legs of the X");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sugar_maple", Sawing.Quarter);

    /// <summary>Ahead of the bridge.</summary>
    public static readonly Parameter<double> Ahead = Parameter.Length(
        Section, "ahead_of_bridge", "from the bridge's front edge towards the hole", possible: (-20, 60), usual: (0, 4), fallback: 2);

    /// <summary>Behind the bridge.</summary>
    public static readonly Parameter<double> Behind = Parameter.Length(
        Section, "behind_bridge", "from the bridge's rear edge towards the tail", possible: (-20, 60), usual: (2, 6), fallback: 4);

    /// <summary>Gap to the legs.</summary>
    public static readonly Parameter<double> FitGap = Parameter.Length(
        Section, "fit_gap", "gap between plate and leg", possible: (0, 10), usual: (0, 1.5), fallback: 0.5);

    /// <summary>Thickness.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "thickness", possible: (0.8, 8), usual: (1.5, 3.2), fallback: 2.5,
        byBody: BodyValues.Of(
            steel: (2.5, 2, 3.2), classical: (2, 0.8, 2.5), tenorUkulele: (1.75, 1.5, 2),
            octaveMandolin: (2, 1.5, 2.5)));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Ahead, Behind, FitGap, Thickness];

    /// <summary>Neck edge to the plate's rear edge, mm.</summary>
    public static double RearFromNeckEdge(Design design) => Bridge.RearFromNeckEdge(design) + design[Behind].Value;

    internal static void Build(Bench bench, Hole hole)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        if (!design.Has(XBrace.Section))
        {
            bench.Misfit(Name, "the bridge plate lies between the legs of the X, and the design has no X", "add the section [x_brace]", section.Place);
            return;
        }

        var (front, rear) = (Bridge.FrontFromNeckEdge(design) - section[Ahead].Value, RearFromNeckEdge(design));
        var shoulder = ((design[XBrace.Width].Value / 2) + section[FitGap].Value) / Trig.Cos(design[XBrace.Angle].Value / 2);
        double Half(double y) => XBrace.OffsetAt(design, hole, y) - shoulder;
        if (Half(front) < 5 || rear - front < 5)
        {
            bench.Misfit(
                Name,
                $"at its front edge, {Say.Mm(front)} from the neck edge, the legs of the X leave {Say.Mm(Math.Max(0, 2 * Half(front)))} for the bridge plate",
                "cross the X nearer to the hole, open its angle, or let the plate reach less far ahead of the bridge",
                section[Ahead].Place,
                design[XBrace.BelowHole].Place,
                design[XBrace.Angle].Place);
            return;
        }

        Point2 At(int side, double y) => new(side * Half(y), -y);
        bench.Add(new Member
        {
            Name = Name,
            Kind = MemberKind.Plate,
            Face = TopFace.Inside,
            Footprint = Region.Inside(Contour.Chain(
                [
                    new Segment(At(-1, front), At(-1, rear), 0, "bass end"),
                    new Segment(At(-1, rear), At(1, rear), 0, "rear edge"),
                    new Segment(At(1, rear), At(1, front), 0, "treble end"),
                    new Segment(At(1, front), At(-1, front), 0, "front edge"),
                ],
                isClosed: true)),
            ThicknessMm = section[Thickness].Value,
            Material = Stock.Read(section),
            Grain = Angle.FromDegrees(90),
            Places = [section[Ahead].Place, section[Behind].Place],
        });
    }
}
