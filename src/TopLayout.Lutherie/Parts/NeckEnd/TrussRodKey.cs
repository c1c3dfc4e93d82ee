using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// How the key of a truss rod comes to its nut at the end of the slot: through the soundhole, by carrying the slot on through whatever lies
/// between, or not at all, so that the nut must be at the headstock. Common practice, no source.
/// </summary>
public static class TrussRodKey
{
    /// <summary>Less wood than this left of a brace below the groove is none, mm. Common practice, no source.</summary>
    public const double LeastLeftMm = 3;

    /// <summary>From the slot's end to the hole's edge, mm, not below 0, null where the slot's line does not meet the hole; and the way in a phrase. Null without a slot.</summary>
    public static (double? FarMm, string Way)? Of(Layout layout)
    {
        if (layout.FindMark(TrussRod.Name) is not { } slot)
        {
            return null;
        }

        var end = TrussRod.EndY(layout);
        var line = new Segment(new Point2(0, 0), new Point2(0, layout.Outline.Bounds.Min.Y));
        if (layout.Hole.Edge.Crossings(line).Select(c => c.Point.Y).DefaultIfEmpty(double.NegativeInfinity).Max() is var edge && double.IsNegativeInfinity(edge))
        {
            return (null, "no soundhole lies in line with the slot: set the rod's nut at the headstock");
        }

        if (end <= edge)
        {
            return (0, "the slot reaches the soundhole: the key comes straight through it");
        }

        var between = Between(layout, edge, end);
        return (end - edge, between.Count == 0 ? "the key comes through the soundhole, and nothing is in its way" : Through(between, slot.ThicknessMm));
    }

    /// <summary>The braces whose glued face the key's way is cut into, from the slot to the hole; to be cut before they are glued.</summary>
    public static IReadOnlyList<Member> BracesInTheWay(Layout layout) =>
        layout.FindMark(TrussRod.Name) is { } slot && Between(layout, -layout.Hole.NearEdge, TrussRod.EndY(layout)) is var between && !between.Exists(m => IsLeftThin(m, slot.ThicknessMm))
            ? [.. between.Where(m => m.Kind == MemberKind.Bar)]
            : [];

    // What lies between the slot's end and the hole, from the neck on.
    private static List<Member> Between(Layout layout, double edge, double end)
    {
        if (end <= edge)
        {
            return [];
        }

        var half = layout.Design[TrussRod.Width].Value / 2;
        var way = Region.Inside(Contour.Rectangle(Box2.Around(new Point2(-half, edge), new Point2(half, end))));
        return layout.Members
            .Where(m => m.Face == TopFace.Inside && m.Kind is MemberKind.Bar or MemberKind.Plate or MemberKind.Tongue && m.Footprint.Intersect(way).Area > LeastMm2)
            .OrderByDescending(m => m.Footprint.Intersect(way).Bounds.Max.Y)
            .ToList();
    }

    private static bool IsLeftThin(Member member, double depth) => member.ThicknessMm > depth + Tolerances.TouchMm && member.ThicknessMm - depth < LeastLeftMm - Tolerances.TouchMm;

    // A touch, mm².
    private const double LeastMm2 = 0.01;

    private static string Through(List<Member> between, double depth)
    {
        var parted = between.Where(m => m.ThicknessMm <= depth + Tolerances.TouchMm).Select(m => Say.TheLast(m.Name)).ToList();
        var thin = between.Where(m => IsLeftThin(m, depth)).Select(m => Say.TheLast(m.Name)).ToList();
        if (thin.Count > 0)
        {
            return $"a groove {Say.Mm(depth)} deep on to the soundhole leaves less than {Say.Mm(LeastLeftMm)} of {Say.Listed(thin)}: set the rod's nut at the headstock";
        }

        var grooved = between.Where(m => m.ThicknessMm > depth + Tolerances.TouchMm).Select(m => $"{Say.TheLast(m.Name)} ({Say.Mm(m.ThicknessMm - depth)} left below)").ToList();
        return $"for a key through the soundhole cut a notch {Say.Mm(depth)} deep, no wider than the key, "
            + (grooved.Count > 0 ? $"in the glued face of {Say.Listed(grooved)}" : "")
            + (parted.Count > 0 ? $"{(grooved.Count > 0 ? ", and " : "")}through {Say.Listed(parted)} from face to face" : "")
            + "; else set the rod's nut at the headstock";
    }
}
