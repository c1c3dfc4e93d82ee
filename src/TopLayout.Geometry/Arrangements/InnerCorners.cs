namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Cuts the raw offset short at inner corners. There both parallels run on past their crossing and come back over the join, a loop that
/// lies where the front has passed twice: without it the front has passed once, and the arrangement has one crossing and two ends less.
/// A parallel that keeps its sense is nowhere nearer to the corner than the offset, so that the join meets it at its end only and the loop
/// is simple; hence the loop may go where the parallels cross once. Where an edge would be cut from both ends past itself it stays whole.
/// </summary>
internal static class InnerCorners
{
    /// <summary>Where each parallel is cut to meet the next; null where it is not.</summary>
    public static Point2?[] Cuts(Parallel[] sides, double rightMm, Func<int, bool> isEnd)
    {
        var cuts = new Point2?[sides.Length];
        for (var i = 0; i < sides.Length; i++)
        {
            cuts[i] = isEnd(i) ? null : Cut(sides[i], sides[(i + 1) % sides.Length], rightMm);
        }

        var kept = (Point2?[])cuts.Clone();
        for (var i = 0; i < sides.Length; i++)
        {
            var before = (i + sides.Length - 1) % sides.Length;
            if (cuts[before] is { } from && cuts[i] is { } to && !(sides[i].Curve!.Order(from) < sides[i].Curve!.Order(to)))
            {
                (kept[before], kept[i]) = (null, null);
            }
        }

        return kept;
    }

    /// <summary>
    /// Two curves that turn back on each other are told apart by the side on which the shorter lies, as round a node; one that runs back
    /// on itself turns left.
    /// </summary>
    public static bool TurnsLeft(Curve curve, Curve next)
    {
        var cross = curve.EndTangent.Cross(next.StartTangent);
        return curve.EndTangent.Dot(next.StartTangent) < 0 && Math.Abs(cross) <= Tolerances.AlikeRadians
            ? !new Departure(1, curve).IsClockwiseOf(new Departure(0, next))
            : cross > 0;
    }

    private static Point2? Cut(Parallel side, Parallel next, double rightMm)
    {
        var cross = side.Base.EndTangent.Cross(next.Base.StartTangent);
        if (Math.Abs(cross) <= Tolerances.SmoothRadians || cross > 0 == rightMm > 0 || side.Curve is not { } a || next.Curve is not { } b)
        {
            return null;
        }

        var crossings = Crossings.Of(a, b, Tolerances.ExactMm);
        var (first, second) = (crossings.Count > 0 && IsOnBoth(crossings.First), crossings.Count > 1 && IsOnBoth(crossings.Second));
        return crossings.IsTouch || first == second ? null : first ? crossings.First : crossings.Second;

        bool IsOnBoth(Point2 p) => a.HasFoot(p) && b.HasFoot(p);
    }
}
