using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The bridge: a rectangle across the top, placed from the saddle.</summary>
public static class Bridge
{
    /// <summary>The member's name.</summary>
    public const string Name = "bridge";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("bridge", "the bridge, placed from the saddle");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "rosewood_indian", Sawing.Unknown);

    /// <summary>Length across the top.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "length across the top", possible: (30, 300), usual: (75, 185), fallback: 154,
        byBody: BodyValues.Of(
            steel: (154, 146, 160), classical: (184, 175, 190), tenorUkulele: (85, 75, 95), octaveMandolin: 110));

    /// <summary>Depth along the body.</summary>
    public static readonly Parameter<double> Depth = Parameter.Length(
        Section, "depth", "front edge to rear edge", possible: (8, 80), usual: (20, 40), fallback: 34,
        byBody: BodyValues.Of(
            steel: (34, 28, 40), classical: (29, 26, 32), tenorUkulele: (22, 20, 32), octaveMandolin: 28));

    /// <summary>Front edge to saddle.</summary>
    public static readonly Parameter<double> FrontToSaddle = Parameter.Length(
        Section, "front_to_saddle", "front edge to the saddle on the centre line", possible: (1, 60), usual: (6, 14), fallback: 10);

    /// <summary>Thickness.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "thickness", possible: (2, 20), usual: (6, 10), fallback: 9,
        byBody: BodyValues.Of(classical: 8, tenorUkulele: 7, octaveMandolin: 8));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Length, Depth, FrontToSaddle, Thickness, .. BridgePins.All];

    /// <summary>Neck edge to the bridge's front edge, mm.</summary>
    public static double FrontFromNeckEdge(Design design) => -Scale.Saddle(design).Middle.Y - design[FrontToSaddle].Value;

    /// <summary>Neck edge to the bridge's rear edge, mm.</summary>
    public static double RearFromNeckEdge(Design design) => FrontFromNeckEdge(design) + design[Depth].Value;

    internal static void Build(Bench bench, Contour liningLine)
    {
        var design = bench.Design;
        var (half, front, rear) = (design[Length].Value / 2, -FrontFromNeckEdge(design), -RearFromNeckEdge(design));
        var footprint = Region.Inside(Contour.Chain(
            [
                new Segment(new Point2(-half, front), new Point2(-half, rear), 0, "bass end"),
                new Segment(new Point2(-half, rear), new Point2(half, rear), 0, "rear edge"),
                new Segment(new Point2(half, rear), new Point2(half, front), 0, "treble end"),
                new Segment(new Point2(half, front), new Point2(-half, front), 0, "front edge"),
            ],
            isClosed: true));
        if (!liningLine.Contains(new Point2(0, (front + rear) / 2)))
        {
            bench.LeaveOut(
                Name,
                $"the bridge, from {Say.Mm(-front)} to {Say.Mm(-rear)} behind the neck edge, does not lie on the body",
                "check the scale length and the join fret against the body",
                design[Scale.Length].Place,
                design[Scale.JoinFret].Place);
            return;
        }

        bench.Add(new Member
        {
            Name = Name,
            Kind = MemberKind.Bridge,
            Face = TopFace.Outside,
            Footprint = footprint,
            ThicknessMm = design[Thickness].Value,
            Material = Stock.Read(design.In(Section)),
            Grain = Angle.FromDegrees(90),
            Places = [design[Depth].Place, design[Length].Place, design[Scale.Length].Place],
        });
    }
}
