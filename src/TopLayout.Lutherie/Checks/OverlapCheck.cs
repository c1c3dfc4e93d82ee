using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>
/// Two parts glued to the same place of one face, without a lap, a notch or a butt joint between them. Pairs whose room
/// <see cref="ClearanceCheck"/> measures are told there, with the number that parts them.
/// </summary>
public static class OverlapCheck
{
    // A part over more others than this is told once, and over more than that not looked at further.
    private const int MostPairs = 3;
    private const int MostSearched = 12;

    /// <summary>The findings: one per pair that overlaps, one for a part over many others, or one pass.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var solid = layout.Members.Where(m => m.Kind != MemberKind.Channel).ToList();
        var search = new OverlapSearch(solid);
        var found = search.PartsUnderEach(MostSearched).SelectMany(p => Findings(search, p.Member, p.Under)).Concat(BridgeOnRosette(layout)).ToList();
        return found.Count > 0
            ? found
            : [new Finding(Rules.PartsOverlap, Severity.Pass, "all parts", "no two parts on one face overlap") { Measured = new Measurement(0, "", 0) }];
    }

    // A fretboard ends over the rosette on most tops; the bridge, which the strings pull at, may not stand on inlay.
    private static IEnumerable<Finding> BridgeOnRosette(Layout layout)
    {
        if (layout.Find(Bridge.Name) is not { } bridge)
        {
            yield break;
        }

        foreach (var channel in layout.Members.Where(m => m.Kind == MemberKind.Channel && m.Footprint.Bounds.Overlaps(bridge.Footprint.Bounds)))
        {
            var shared = channel.Footprint.Intersect(bridge.Footprint);
            if (shared.Area <= Tolerances.ShortestMm)
            {
                continue;
            }

            var longest = shared.Edges.MaxBy(e => e.ChordLength);
            yield return new Finding(
                Rules.PartsOverlap, Severity.Fail, $"{bridge.Name} and {channel.Name}", $"the bridge stands on {Say.TheLast(channel.Name)}, {Say.Mm(shared.Bounds.Height)} deep from its front edge")
            {
                Measured = new Measurement(shared.Bounds.Height, "mm", 0),
                Where = (longest.Start, longest.End),
                Place = channel.Places[0],
                OtherPlaces = [bridge.Places[0], layout.Design[Soundhole.Diameter].Place],
                Cure = $"the scale places the bridge: move the hole {Say.Mm(Math.Ceiling(shared.Bounds.Height * 10) / 10)} or more towards the neck, or make hole or rosette smaller",
            };
        }
    }

    private static IEnumerable<Finding> Findings(OverlapSearch search, Member member, IReadOnlyList<(Member Other, Segment Where)> under) =>
        under.Count > MostPairs ? [Pile(member, under)] : under.Select(u => Overlap(search, u.Other, member, u.Where));

    private static Finding Overlap(OverlapSearch search, Member a, Member b, Segment where) => new(
        Rules.PartsOverlap,
        Severity.Fail,
        $"{a.Name} and {b.Name}",
        $"{Say.The(b.Name)} lies over {Say.The(a.Name)} on the {Face(a)} face, {Say.Mm(-where.PointAt(0.5).Y)} from the neck edge")
    {
        Measured = new Measurement(where.Length, "mm", 0),
        Where = (where.Start, where.End),
        Place = b.Places[0],
        OtherPlaces = [a.Places[0]],
        Cure = search.LeastMove(a, b) is var (mm, way)
            ? $"move {Say.The(b.Name)} by {Say.Mm(mm)} {way}, or turn or shorten one of the two"
            : $"there is no room for it beside {Say.TheLast(a.Name)}: turn, shorten or narrow {Say.TheLast(b.Name)}, or leave one of the two out",
    };

    private static Finding Pile(Member member, IReadOnlyList<(Member Other, Segment Where)> under)
    {
        var named = string.Join(", ", under.Take(MostPairs).Select(u => Say.TheLast(u.Other.Name)));
        var rest = under.Count == MostSearched ? "and more" : $"and {Say.Count(under.Count - MostPairs)} more";
        return new Finding(
            Rules.PartsOverlap, Severity.Fail, member.Name, $"{Say.The(member.Name)} lies over {named} {rest} on the {Face(member)} face")
        {
            Measured = new Measurement(under.Sum(u => u.Where.Length), "mm", 0),
            Where = (under[0].Where.Start, under[0].Where.End),
            Place = member.Places[0],
            OtherPlaces = [.. under.Take(MostPairs).Select(u => u.Other.Places[0]).Distinct().Where(p => p != member.Places[0])],
            Cure = $"move, turn or shorten {Say.TheLast(member.Name)}",
        };
    }

    private static string Face(Member member) => member.Face == TopFace.Inside ? "inside" : "outside";
}
