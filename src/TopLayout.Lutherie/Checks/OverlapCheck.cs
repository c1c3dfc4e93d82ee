using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>Two parts glued to the same place of one face, without a lap, a notch or a butt joint between them.</summary>
public static class OverlapCheck
{
    /// <summary>The findings: one per pair that overlaps, or one pass.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var solid = layout.Members.Where(m => m.Kind != MemberKind.Channel).ToList();
        var found = (
            from i in Enumerable.Range(0, solid.Count)
            from j in Enumerable.Range(i + 1, solid.Count - i - 1)
            let pair = (First: solid[i], Second: solid[j])
            where pair.First.Face == pair.Second.Face && !AreJoined(pair.First, pair.Second)
            let within = Within(pair.First, pair.Second) ?? Within(pair.Second, pair.First)
            where within is not null
            select Overlap(pair.First, pair.Second, within.Value)).ToList();
        return found.Count > 0
            ? found
            : [new Finding(Rules.PartsOverlap, Severity.Pass, "all parts", "no two parts on one face overlap") { Measured = new Measurement(0, "", 0) }];
    }

    private static bool AreJoined(Member a, Member b) => a.JoinedWith.Contains(b.Name) || b.JoinedWith.Contains(a.Name);

    // A piece of an edge of one member that lies inside the other, not merely along its border.
    private static Segment? Within(Member edges, Member area)
    {
        if (!edges.Footprint.Bounds.Overlaps(area.Footprint.Bounds))
        {
            return null;
        }

        foreach (var edge in edges.Footprint.Edges)
        {
            var cuts = area.Footprint.Edges.SelectMany(e => Intersections.Of(edge, e)).Select(m => m.First).Append(0).Append(1).Distinct().Order().ToList();
            foreach (var (from, to) in cuts.Zip(cuts.Skip(1)))
            {
                var middle = edge.PointAt((from + to) / 2);
                if (area.Footprint.Contains(middle) && area.Footprint.Loops.Min(l => l.DistanceTo(middle)) > Tolerances.ShortestMm)
                {
                    return edge.Part(from, to);
                }
            }
        }

        return null;
    }

    private static Finding Overlap(Member a, Member b, Segment where) => new(
        Rules.PartsOverlap,
        Severity.Fail,
        $"{a.Name} and {b.Name}",
        $"the {b.Name} lies over the {a.Name} on the {(a.Face == TopFace.Inside ? "inside" : "outside")} face, {Say.Mm(-where.PointAt(0.5).Y)} from the neck edge")
    {
        Measured = new Measurement(where.Length, "mm", 0),
        Where = (where.Start, where.End),
        Place = b.Places[0],
        OtherPlaces = [a.Places[0]],
        Cure = $"move, turn or shorten the {b.Name} or the {a.Name}",
    };
}
