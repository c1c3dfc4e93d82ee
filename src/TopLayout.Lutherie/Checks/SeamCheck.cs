using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>The longest piece of the centre joint that nothing on the inside crosses.</summary>
public static class SeamCheck
{
    /// <summary>The longest open piece usual without a cleat, mm. Common practice, no source.</summary>
    public const double UsualMm = 90;

    /// <summary>One finding: the longest open piece; none where the design tells of no bracing.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var ends = layout.InsideOfSides.Crossings(Line(layout.Outline.Bounds)).Select(c => c.Point.Y).ToList();
        if (ends.Count < 2 || !layout.Members.Any(m => m.Face == TopFace.Inside && m.Kind is MemberKind.Bar or MemberKind.Plate))
        {
            yield break;
        }

        var covered = Covered(layout).OrderBy(c => c.From).Append((From: ends[^1], To: ends[^1], By: "the rim at the neck"));
        var (from, to, below, above) = (ends[0], ends[0], "the rim at the tail", "");
        var (reached, by) = (ends[0], "the rim at the tail");
        foreach (var next in covered)
        {
            if (next.From - reached > to - from)
            {
                (from, to, below, above) = (reached, next.From, by, next.By);
            }

            (reached, by) = next.To > reached ? (next.To, next.By) : (reached, by);
        }

        yield return Finding(layout, from, to, below, above);
    }

    private static Finding Finding(Layout layout, double from, double to, string below, string above)
    {
        var isLong = to - from > UsualMm + Tolerances.TouchMm;
        var cleats = Math.Max(1, Math.Ceiling((to - from) / UsualMm) - 1);
        return new Finding(
            Rules.SeamNotBridged,
            isLong ? Severity.Remark : Severity.Pass,
            "centre joint",
            $"the longest open piece of the centre joint, {Say.Mm(to - from)}, lies between {above} and {below}; up to {Say.Mm(UsualMm)} is usual")
        {
            Measured = new Measurement(to - from, "mm", UsualMm),
            Where = (new Point2(0, to), new Point2(0, from)),
            Place = layout.Design.PlaceOf(Cleats.Section),
            Cure = isLong ? $"put {(cleats == 1 ? "a cleat" : $"{Say.Tenth(cleats)} cleats")} there: [cleats] with `row_from = {Say.Tenth(Math.Ceiling(-to))}` and `row_to = {Say.Tenth(Math.Floor(-from))}`" : null,
        };
    }

    private static IEnumerable<(double From, double To, string By)> Covered(Layout layout)
    {
        var pieces = layout.Members.Where(m => m.Face == TopFace.Inside).Select(m => (Footprint: m.Footprint, Name: Say.TheLast(m.Name)))
            .Append((Footprint: Region.Inside(layout.Hole.Edge), Name: "the hole"));
        foreach (var (footprint, name) in pieces.Where(p => p.Footprint.Bounds is { Min.X: <= 0, Max.X: >= 0 }))
        {
            foreach (var part in footprint.Clip(new Contour([new Vertex(Line(footprint.Bounds).Start), new Vertex(Line(footprint.Bounds).End)], isClosed: false)))
            {
                yield return (part.Bounds.Min.Y, part.Bounds.Max.Y, name);
            }
        }
    }

    private static Segment Line(Box2 box) => new(new Point2(0, box.Min.Y - 1), new Point2(0, box.Max.Y + 1));
}
