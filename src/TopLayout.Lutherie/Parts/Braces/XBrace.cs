using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The X: two legs that cross on the centre line below the hole, let into the linings.</summary>
public static class XBrace
{
    /// <summary>The leg whose tail end is on the bass side.</summary>
    public const string BassLeg = "X leg, bass";

    /// <summary>The leg whose tail end is on the treble side.</summary>
    public const string TrebleLeg = "X leg, treble";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("x_brace", "two legs that cross below the hole");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Crossing below the hole.</summary>
    public static readonly OptionalParameter<double> BelowHole = Parameter.Length(
        Section, "below_hole", "from the hole's edge to the crossing", possible: (5, 150), usual: (20, 50),
        byBody: BodyValues.Of(steel: (33, 25, 48), parlour: (40, 35, 50), octaveMandolin: (27, 20, 35))).Optional();

    /// <summary>Where the legs pass the bridge.</summary>
    public static readonly OptionalParameter<double> AtBridgeFront = Parameter.Length(
        Section, "at_bridge_front", "from the centre line to a leg's axis at the bridge's front edge; the crossing follows", possible: (10, 150), usual: (35, 60)).Optional();

    /// <summary>The two ways to place the crossing.</summary>
    public static readonly ExactlyOneOf Position = ExactlyOneOf.Defaulted(BelowHole, 33, AtBridgeFront);

    /// <summary>Angle between the legs.</summary>
    public static readonly Parameter<Angle> Angle = Parameter.Angle(
        Section, "angle", "angle between the legs, facing the tail", possible: (50, 150), usual: (84, 104), fallback: 97,
        byBody: BodyValues.Of(steel: (97, 90, 104), parlour: (91, 84, 95), octaveMandolin: (93, 85, 100)));

    /// <summary>Width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width of a leg", possible: (3, 20), usual: (7, 9), fallback: 8,
        byBody: BodyValues.Of(steel: (8, 7, 9), octaveMandolin: (7.5, 7, 8)));

    /// <summary>Height.</summary>
    public static readonly Parameter<double> Height = Parameter.Length(
        Section, "height", "height of a leg at the crossing", possible: (3, 30), usual: (12, 17), fallback: 15,
        byBody: BodyValues.Of(steel: (15, 13, 17), octaveMandolin: (14, 12, 16)));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, BelowHole, AtBridgeFront, Angle, Width, Height];

    /// <summary>
    /// Where the legs cross, in layout coordinates. From a target t at the bridge's front edge f: the legs part by tan(a/2) to each side
    /// for every mm below the crossing, so it lies t/tan(a/2) before f.
    /// </summary>
    public static Point2 Crossing(Design design, Hole hole) => new(0, design.Find(BelowHole) is { } below
        ? -(hole.FarEdge + below.Value)
        : (design.Find(AtBridgeFront)!.Value.Value / Trig.Tan(design[Angle].Value / 2)) - Bridge.FrontFromNeckEdge(design));

    /// <summary>What places the crossing, in the design.</summary>
    public static SourcePlace PositionPlace(Design design) => design.Find(BelowHole)?.Place ?? design.Find(AtBridgeFront)!.Value.Place;

    /// <summary>From the crossing towards the tail end of a leg: side −1 is the bass leg, +1 the treble leg.</summary>
    public static Vec2 Direction(Design design, int side)
    {
        var half = design[Angle].Value / 2;
        return new Vec2(side * Trig.Sin(half), -Trig.Cos(half));
    }

    /// <summary>Distance of a leg's axis from the centre line at a distance from the neck edge, mm; negative above the crossing.</summary>
    public static double OffsetAt(Design design, Hole hole, double fromNeckEdge) =>
        (fromNeckEdge + Crossing(design, hole).Y) * Trig.Tan(design[Angle].Value / 2);

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        foreach (var (side, name, other) in (ReadOnlySpan<(int, string, string)>)[(-1, BassLeg, TrebleLeg), (1, TrebleLeg, BassLeg)])
        {
            new Bar
            {
                Name = name,
                HasNeckSide = true,
                Through = Crossing(design, room.Hole),
                Along = Direction(design, side),
                Start = BarEnd.InLining("upper end"),
                End = BarEnd.InLining("lower end"),
                NotchedOver = [other],
                Places = [section[Angle].Place, PositionPlace(design), section[Width].Place],
            }.Add(bench, room, section, new BarStock(Stock, Width, Height));
        }
    }
}
