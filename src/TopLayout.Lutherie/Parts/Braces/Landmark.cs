using System.Collections.Immutable;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// A line across the body that an anchor may start from, by its name in trade words. What has two edges is measured from the nearer one:
/// above it from the edge towards the neck, below it from the edge towards the tail. All of them are built before the first free bar; other bars are
/// named by <see cref="NamedBar"/>.
/// </summary>
/// <param name="Name">Its name.</param>
/// <param name="Needs">The section without which there is no such line; null when every top has it.</param>
/// <param name="Edges">Neck edge to the line's upper and lower edge, mm; null when the part was left out.</param>
internal sealed record Landmark(string Name, Section? Needs, Func<Bench, BarRoom, (double Upper, double Lower)?> Edges)
{
    /// <summary>All of them, in order from the neck.</summary>
    public static ImmutableArray<Landmark> All { get; } =
    [
        At("neck edge", (_, _) => 0),
        OfMember("neck block", Block.Neck.Name, null),
        OfMember("flat brace", FlatBrace.Name, FlatBrace.Section),
        OfMember("transverse brace", TransverseBrace.Name, TransverseBrace.Section),
        At("fretboard end", (bench, _) => Fretboard.EndFromNeckEdge(bench.Design)),
        new("soundhole edge", null, (_, room) => (room.Hole.NearEdge, room.Hole.FarEdge)),
        At("soundhole centre", (_, room) => -room.Hole.Center.Y),
        new("crossing", XBrace.Section, (bench, room) => Twice(-XBrace.Crossing(bench.Design, room.Hole).Y)),
        OfWidth("upper bout"),
        OfWidth("waist"),
        OfWidth("lower bout"),
        At("bridge front", (bench, _) => Bridge.FrontFromNeckEdge(bench.Design)),
        At("saddle", (bench, _) => -Scale.Saddle(bench.Design).Middle.Y),
        At("bridge back", (bench, _) => Bridge.RearFromNeckEdge(bench.Design)),
        OfMember("bridge plate", BridgePlate.Name, BridgePlate.Section),
        OfMember("tail block", Block.Tail.Name, null),
        At("tail edge", (_, room) => -room.Outline.Bounds.Min.Y),
    ];

    private static Landmark At(string name, Func<Bench, BarRoom, double> at) => new(name, null, (bench, room) => Twice(at(bench, room)));

    // A teardrop has no waist; of two halves that differ the bass side's stands.
    private static Landmark OfWidth(string name) => new(name, null, (_, room) =>
        BodyWidths.Of(room.Outline).Where(w => w.Name == name).Select(w => Twice(w.FromNeckEdge)).FirstOrDefault());

    private static Landmark OfMember(string name, string member, Section? needs) => new(
        name, needs, (bench, _) => bench.Find(member) is { } found ? (-found.Footprint.Bounds.Max.Y, -found.Footprint.Bounds.Min.Y) : null);

    private static (double Upper, double Lower)? Twice(double at) => (at, at);
}
