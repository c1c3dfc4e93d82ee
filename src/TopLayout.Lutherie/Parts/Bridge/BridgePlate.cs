using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The plate under the bridge, its long grain across the top: between the legs of the X, or of a length of its own where there is no X.</summary>
public static class BridgePlate
{
    /// <summary>The member's name.</summary>
    public const string Name = "bridge plate";

    // Less than this is no plate, mm.
    private const double LeastMm = 5;

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("bridge_plate", "the plate under the bridge, between the legs of the X or of a length of its own");

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

    /// <summary>Length across the top.</summary>
    public static readonly OptionalParameter<double> Length = Parameter.Length(
        Section, "length", "length across the top; from leg to leg of the X when left out", possible: (20, 350), usual: (75, 200)).Optional();

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Ahead, Behind, FitGap, Thickness, Length];

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
        var (front, rear) = (Bridge.FrontFromNeckEdge(design) - section[Ahead].Value, RearFromNeckEdge(design));
        if (HalfWidths(bench, section, hole, front, rear) is not var (halfFront, halfRear))
        {
            return;
        }

        Point2 At(int side, double half, double y) => new(side * half, -y);
        bench.Add(new Member
        {
            Name = Name,
            Kind = MemberKind.Plate,
            Face = TopFace.Inside,
            Footprint = Region.Inside(Contour.Chain(
                [
                    new Segment(At(-1, halfFront, front), At(-1, halfRear, rear), 0, "bass end"),
                    new Segment(At(-1, halfRear, rear), At(1, halfRear, rear), 0, "rear edge"),
                    new Segment(At(1, halfRear, rear), At(1, halfFront, front), 0, "treble end"),
                    new Segment(At(1, halfFront, front), At(-1, halfFront, front), 0, "front edge"),
                ],
                isClosed: true)),
            ThicknessMm = section[Thickness].Value,
            Material = Stock.Read(section),
            Grain = Angle.FromDegrees(90),
            Places = [section[Ahead].Place, section[Behind].Place],
        });
    }

    // Half the width at the front and the rear edge, from the legs of the X or from the length; null, with the reason said.
    private static (double Front, double Rear)? HalfWidths(Bench bench, DesignSection section, Hole hole, double front, double rear)
    {
        var design = bench.Design;
        var length = section.Find(Length);
        if (length is null && !design.Has(XBrace.Section))
        {
            bench.LeaveOut(
                Name,
                "nothing says how wide the bridge plate is: the design has no X, and the plate no length",
                "add `length` to the bridge plate, or the section [x_brace]",
                section.Place);
            return null;
        }

        if (rear - front < LeastMm)
        {
            bench.LeaveOut(
                Name,
                $"the bridge plate is {Say.Mm(Math.Max(0, rear - front))} from its front to its rear edge",
                "let it reach further ahead of the bridge, or behind it",
                section[Ahead].Place,
                section[Behind].Place);
            return null;
        }

        return length is { } given ? (given.Value / 2, given.Value / 2) : BetweenLegs(bench, section, hole, front, rear);
    }

    private static (double Front, double Rear)? BetweenLegs(Bench bench, DesignSection section, Hole hole, double front, double rear)
    {
        var design = bench.Design;
        var shoulder = ((design[XBrace.Width].Value / 2) + section[FitGap].Value) / Trig.Cos(design[XBrace.Angle].Value / 2);
        double Half(double y) => XBrace.OffsetAt(design, hole, y) - shoulder;
        if (Half(front) < LeastMm)
        {
            bench.LeaveOut(
                Name,
                $"at its front edge, {Say.Mm(front)} from the neck edge, the legs of the X leave {Say.Mm(Math.Max(0, 2 * Half(front)))} for the bridge plate",
                "cross the X nearer to the hole, open its angle, or let the plate reach less far ahead of the bridge",
                section[Ahead].Place,
                XBrace.PositionPlace(design),
                design[XBrace.Angle].Place);
            return null;
        }

        return (Half(front), Half(rear));
    }
}
