using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>A widest or narrowest place of a body.</summary>
/// <param name="Name">In trade words.</param>
/// <param name="FromNeckEdge">Where it stands, mm.</param>
/// <param name="Half">Half-width there, mm.</param>
/// <param name="Side">"bass" or "treble" when the other half differs there; null when both are alike.</param>
public readonly record struct BodyWidth(string Name, double FromNeckEdge, double Half, string? Side);

/// <summary>The widest and narrowest places of an outline, found on its arcs, whichever way it was described.</summary>
public static class BodyWidths
{
    /// <summary>All of them from the neck on, bass before treble.</summary>
    public static IReadOnlyList<BodyWidth> Of(Contour outline)
    {
        var (bass, treble) = (Extremes(outline, "bass", -1), Extremes(outline, "treble", 1));
        bool IsAlike(BodyWidth a, BodyWidth b) =>
            a.Name == b.Name && Math.Abs(a.FromNeckEdge - b.FromNeckEdge) < Tolerances.ShortestMm && Math.Abs(a.Half - b.Half) < Tolerances.ShortestMm;
        return
        [
            .. bass.Select(b => treble.Any(t => IsAlike(b, t)) ? b with { Side = null } : b)
                .Concat(treble.Where(t => !bass.Any(b => IsAlike(b, t)))).OrderBy(w => w.FromNeckEdge),
        ];
    }

    /// <summary>The pieces of one half from the neck to the tail, at x ≥ 0 whichever half it is.</summary>
    /// <param name="outline">Counter-clockwise.</param>
    /// <param name="side">−1 for the bass half, +1 for the treble half.</param>
    public static IReadOnlyList<Segment> Half(Contour outline, int side)
    {
        var box = outline.Bounds.Grown(1);
        var ends = outline.Crossings(new Segment(new Point2(0, box.Min.Y), new Point2(0, box.Max.Y)));
        var (tail, neck) = (ends[0], ends[^1]);
        return side > 0
            ? [.. outline.Between(tail, neck).Reverse().Select(s => s.Reversed())]
            : [.. outline.Between(neck, tail).Select(s => s.Placed(Placement.MirroredAcrossY))];
    }

    private static List<BodyWidth> Extremes(Contour outline, string word, int side)
    {
        var found = new List<(bool IsWide, Point2 At, string Label)>();
        var (last, rises, label) = (default(Point2), true, "");
        foreach (var (to, name) in Half(outline, side).SelectMany(Turns))
        {
            var step = to.X - last.X;
            if (Math.Abs(step) >= Tolerances.ShortestMm)
            {
                if (step > 0 != rises)
                {
                    found.Add((rises, last, label));
                    rises = !rises;
                }

                (last, label) = (to, name);
            }
        }

        return [.. found.Select((f, n) => new BodyWidth(Name(f.IsWide, f.Label, n, found.Count), -f.At.Y, f.At.X, word))];
    }

    // The segment's end, and before it the places where it runs along the body.
    private static IEnumerable<(Point2 To, string Label)> Turns(Segment s)
    {
        var turns = s.IsArc ? new[] { s.FractionOfDirection(Vec2.UnitX), s.FractionOfDirection(-Vec2.UnitX) } : [];
        return turns.Where(f => f is > 0 and < 1).Order().Select(s.PointAt).Append(s.End).Select(p => (p, s.Label));
    }

    // Two widths with a waist between them, or one: those have names.
    private static string Name(bool isWide, string label, int number, int count) => (isWide, count) switch
    {
        _ when label is "horn" or "cutaway hollow" => "horn",
        (true, 1) => "lower bout",
        (false, 3) => "waist",
        (true, 3) => number == 0 ? "upper bout" : "lower bout",
        (true, _) => "widest place",
        _ => "narrowest place",
    };
}
