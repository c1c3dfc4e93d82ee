using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>Which of many parts lie over each other: only parts whose boxes meet in a grid are compared.</summary>
internal sealed class OverlapSearch(IReadOnlyList<Member> members)
{
    // Braces are tens of millimetres apart; a cell holds a few.
    private const double CellMm = 25;

    private readonly Dictionary<(int, int), List<int>> _cells = [];

    /// <summary>For each part, in order, those before it that it lies over, at most so many, with a stretch of edge inside the other.</summary>
    public IEnumerable<(Member Member, IReadOnlyList<(Member Other, Segment Where)> Under)> PartsUnderEach(int most)
    {
        for (var j = 0; j < members.Count; j++)
        {
            var under = new List<(Member, Segment)>();
            foreach (var i in Near(j))
            {
                var (a, b) = (members[i], members[j]);
                if (under.Count < most && a.Face == b.Face && !AreJoined(a, b) && !ClearanceCheck.Tells(a, b) && Shared(a.Footprint, b.Footprint) is { } where)
                {
                    under.Add((a, where));
                }
            }

            if (under.Count > 0)
            {
                yield return (members[j], under);
            }

            // What lies on so many others is not looked for itself: whatever lies there too is found on those, and a pile stays quick to search.
            foreach (var cell in under.Count < most ? Cells(members[j]) : [])
            {
                (_cells.TryGetValue(cell, out var list) ? list : _cells[cell] = []).Add(j);
            }
        }
    }

    /// <summary>
    /// The least move of the second part along or across the body, to a tenth of a mm, that takes it off the first and onto no other; null when
    /// neither way does.
    /// </summary>
    public (double Mm, string Way)? LeastMove(Member first, Member second)
    {
        // What it is joined with goes along, or is cut anew.
        var rest = members.Where(m => m != first && m != second && m.Face == second.Face && !AreJoined(m, second)).ToList();
        var box = first.Footprint.Intersect(second.Footprint).Bounds;
        if (box.IsEmpty)
        {
            return null;
        }

        ReadOnlySpan<(Vec2 Way, double Mm, string Name)> moves =
        [
            (-Vec2.UnitY, box.Height, "towards the tail"), (Vec2.UnitY, box.Height, "towards the neck"),
            (-Vec2.UnitX, box.Width, "towards the bass side"), (Vec2.UnitX, box.Width, "towards the treble side"),
        ];
        (double Mm, string Way)? best = null;
        foreach (var (way, mm, name) in moves)
        {
            var least = Math.Ceiling(mm * 10) / 10;
            var moved = second.Footprint.Placed(Placement.Moved(way.X * least, way.Y * least));
            if (!(best?.Mm <= least) && Shared(first.Footprint, moved) is null && !rest.Exists(m => m.Footprint.Bounds.Overlaps(moved.Bounds) && Shared(m.Footprint, moved) is not null))
            {
                best = (least, name);
            }
        }

        return best;
    }

    private static bool AreJoined(Member a, Member b) => a.JoinedWith.Contains(b.Name) || b.JoinedWith.Contains(a.Name);

    private IEnumerable<int> Near(int j) => Cells(members[j])
        .SelectMany(c => _cells.TryGetValue(c, out var list) ? list : [])
        .Distinct()
        .Where(i => members[i].Footprint.Bounds.Overlaps(members[j].Footprint.Bounds))
        .Order();

    private static IEnumerable<(int, int)> Cells(Member member)
    {
        var box = member.Footprint.Bounds;
        for (var x = (int)Math.Floor(box.Min.X / CellMm); x <= box.Max.X / CellMm; x++)
        {
            for (var y = (int)Math.Floor(box.Min.Y / CellMm); y <= box.Max.Y / CellMm; y++)
            {
                yield return (x, y);
            }
        }
    }

    // A piece of an edge that lies in the other area. Where there is none, the areas are either apart or the same.
    private static Segment? Shared(Region a, Region b) => Within(a, b) ?? Within(b, a) ?? (AreSame(a, b) ? a.Edges.First() : null);

    private static bool AreSame(Region a, Region b)
    {
        var (p, q) = (a.Bounds, b.Bounds);
        return p.Min.DistanceTo(q.Min) <= Tolerances.ShortestMm && p.Max.DistanceTo(q.Max) <= Tolerances.ShortestMm
            && a.Intersect(b).Area > a.Area / 2;
    }

    // A piece of an edge of one area that lies inside the other, not merely along its border.
    private static Segment? Within(Region edges, Region area)
    {
        var box = area.Bounds;
        foreach (var edge in edges.Edges.Where(e => e.Bounds().Overlaps(box)))
        {
            var cuts = area.Edges.SelectMany(e => Intersections.Of(edge, e)).Select(m => m.First).Append(0).Append(1).Distinct().Order().ToList();
            foreach (var (from, to) in cuts.Zip(cuts.Skip(1)))
            {
                var middle = edge.PointAt((from + to) / 2);
                if (area.Contains(middle) && area.Loops.Min(l => l.DistanceTo(middle)) > Tolerances.ShortestMm)
                {
                    return edge.Part(from, to);
                }
            }
        }

        return null;
    }
}
