using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The flat brace: a thin wide piece across the grain under the fretboard, between block and upper transverse brace. As wide as that room it is
/// the plate that stands in for a tongue; its long sides cross the grain.
/// </summary>
public static class FlatBrace
{
    /// <summary>The member's name.</summary>
    public const string Name = "flat brace";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("flat_brace", "a thin wide piece across the grain under the fretboard; as wide as the room between block and transverse brace it is the plate that stands in for a tongue");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Length across the top.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "length across the top", possible: (20, 400), usual: (90, 200), fallback: 120);

    /// <summary>Width along the top.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width along the top", possible: (5, 80), usual: (12, 32), fallback: 20, byBody: BodyValues.Of(steel: (20, 20, 32)));

    /// <summary>Thickness.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "thickness", possible: (1, 10), usual: (1.5, 4), fallback: 3,
        byBody: BodyValues.Of(
            steel: (3, 2.5, 4), classical: (2, 1.5, 2.5), tenorUkulele: (1.75, 1.5, 2), octaveMandolin: (2.5, 2, 3)));

    /// <summary>Centre from the neck edge.</summary>
    public static readonly OptionalParameter<double> FromNeckEdge = Parameter.Length(
        Section, "from_neck_edge", "from the neck edge to its centre line; midway between the block and the transverse brace, or the hole where there is none, when left out", possible: (10, 300)).Optional();

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Length, Width, Thickness, FromNeckEdge];

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        var (half, at) = (section[Length].Value / 2, CentreFromNeckEdge(design, room));
        new Bar
        {
            Name = Name,
            Kind = MemberKind.Plate,
            Through = new Point2(0, -at),
            Along = Vec2.UnitX,
            Start = BarEnd.Free(new Point2(-half, -at), Vec2.UnitX, "bass end"),
            End = TrebleEnd(design, room, new Point2(half, -at)),
            Places = [section[Length].Place, section[Width].Place],
        }.Add(bench, room, section, new BarStock(Stock, Width, Thickness));
    }

    // Where a cutaway's wall or hollow stands in its way it is let into the lining there.
    private static BarEnd TrebleEnd(Design design, BarRoom room, Point2 end) =>
        design.Has(Cutaway.Section) && room.LiningLine.Contains(new Point2(-end.X, end.Y)) && !room.LiningLine.Contains(end)
        ? BarEnd.InLining("treble end")
        : BarEnd.Free(end, Vec2.UnitX, "treble end");

    // As said, or midway between the block's face and the next thing towards the hole.
    private static double CentreFromNeckEdge(Design design, BarRoom room)
    {
        var next = design.Has(TransverseBrace.Section)
            ? TransverseBrace.FromNeckEdge(design, room.Hole) - (design[TransverseBrace.Width].Value / 2)
            : room.Hole.NearEdge;
        return design.Find(FromNeckEdge)?.Value ?? ((next - Block.Neck.FaceY(design, room.InsideOfSides)) / 2);
    }
}
