using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>Where a strip ends: a contour it is cut to, and the name of the edge left there.</summary>
/// <param name="Stop">The contour; the strip's two sides must both cross it.</param>
/// <param name="Label">Name of the end edge.</param>
public readonly record struct BattenEnd(Contour Stop, string Label);

/// <summary>A long piece with two straight sides, each end cut to a contour: braces, blocks, bars.</summary>
public static class Batten
{
    // Longer than any top; the sides are drawn this far each way before they are cut.
    private const double ReachMm = 2000;

    /// <summary>
    /// The footprint between two parallel sides, cut where they first meet each end's contour on their way from
    /// <paramref name="through"/>. Null when a side meets no contour there.
    /// </summary>
    /// <param name="through">A point on the axis, between the ends.</param>
    /// <param name="direction">From the start to the end.</param>
    /// <param name="widthMm">Across the axis, mm, &gt; 0.</param>
    /// <param name="left">Name of the side to the left of the direction.</param>
    /// <param name="right">Name of the side to the right of it.</param>
    /// <param name="start">The end behind.</param>
    /// <param name="end">The end ahead.</param>
    public static Region? Parallel(
        Point2 through, Vec2 direction, double widthMm, string left, string right, BattenEnd start, BattenEnd end)
    {
        var along = direction.Unit;
        var half = along.Left * (widthMm / 2);
        return Between(SideLine(through + half, along, left), SideLine(through - half, along, right), start, end);
    }

    /// <summary>
    /// The footprint between two side lines that run the same way, each long enough to cross both ends' contours; the cut nearest
    /// to the middle of a line counts. Null when a side meets no contour there.
    /// </summary>
    public static Region? Between(Segment left, Segment right, BattenEnd start, BattenEnd end)
    {
        var (leftStart, rightStart) = (Cut(left, start.Stop, ahead: false), Cut(right, start.Stop, ahead: false));
        var (leftEnd, rightEnd) = (Cut(left, end.Stop, ahead: true), Cut(right, end.Stop, ahead: true));
        if (leftStart is not { } ls || rightStart is not { } rs || leftEnd is not { } le || rightEnd is not { } re)
        {
            return null;
        }

        return Region.Inside(Contour.Chain(
            [
                new Segment(rs.Point, re.Point, 0, right.Label),
                .. end.Stop.ShorterWay(re, le).Select(s => s with { Label = end.Label }),
                new Segment(le.Point, ls.Point, 0, left.Label),
                .. start.Stop.ShorterWay(ls, rs).Select(s => s with { Label = start.Label }),
            ],
            isClosed: true));
    }

    /// <summary>A straight side through a point, long enough for any top.</summary>
    public static Segment SideLine(Point2 through, Vec2 along, string label) =>
        new(through - (along * ReachMm), through + (along * ReachMm), 0, label);

    /// <summary>A straight stop across a strip at a point.</summary>
    public static Contour Square(Point2 at, Vec2 direction)
    {
        var across = direction.Unit.Left * ReachMm;
        return new Contour([new Vertex(at - across), new Vertex(at + across)], isClosed: false);
    }

    private static Location? Cut(Segment side, Contour stop, bool ahead)
    {
        var middle = side.PointAt(0.5);
        var along = side.TangentAt(0);
        Location? nearest = null;
        foreach (var place in stop.Crossings(side))
        {
            if ((place.Point - middle).Dot(along) > 0 == ahead && (!ahead || nearest is null))
            {
                nearest = place;
            }
        }

        return nearest;
    }
}
