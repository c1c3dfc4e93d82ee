using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// A straight strip with named edges before it is cut to the rim: four corners, the sides longer than any top where the rim is to cut them.
/// </summary>
/// <param name="Left">The side to the left of the way from the start to the end, running that way.</param>
/// <param name="Right">The other side, running the same way.</param>
internal readonly record struct BarStrip(Segment Left, Segment Right)
{
    /// <summary>Label of the edges that a cut to the rim leaves, until they are named.</summary>
    public const string RimEdge = "";

    // Longer than any top, mm.
    private const double ReachMm = 2000;

    /// <summary>Two parallel sides about an axis, as long as any top needs.</summary>
    /// <param name="through">A point on the axis.</param>
    /// <param name="along">From the start to the end.</param>
    /// <param name="widthMm">Across the axis, mm, &gt; 0.</param>
    /// <param name="left">Name of the side to the left.</param>
    /// <param name="right">Name of the side to the right.</param>
    public static BarStrip About(Point2 through, Vec2 along, double widthMm, string left, string right)
    {
        var half = along.Unit.Left * (widthMm / 2);
        return new BarStrip(Line(through + half, along, left), Line(through - half, along, right));
    }

    /// <summary>A straight line through a point, longer than any top to both sides of it.</summary>
    public static Segment Line(Point2 through, Vec2 along, string label) =>
        new(through - (along.Unit * ReachMm), through + (along.Unit * ReachMm), 0, label);

    /// <summary>
    /// The strip with both ends cut straight, each along a line that crosses both sides; null where one is missed, or where the ends lie in
    /// the wrong order.
    /// </summary>
    /// <param name="start">The line of the end behind, its label the edge's; null: as far as the sides go.</param>
    /// <param name="end">The line of the end ahead.</param>
    public Region? Between(Segment? start, Segment? end)
    {
        if (Corner(Right, start, ahead: false) is not { } rs || Corner(Right, end, ahead: true) is not { } re
            || Corner(Left, end, ahead: true) is not { } le || Corner(Left, start, ahead: false) is not { } ls)
        {
            return null;
        }

        var isInOrder = (re - rs).Dot(Right.TangentAt(0)) > Tolerances.ShortestMm && (le - ls).Dot(Left.TangentAt(0)) > Tolerances.ShortestMm;
        return !isInOrder ? null : Region.Inside(new Contour(
            [
                new Vertex(rs, 0, Right.Label),
                new Vertex(re, 0, end?.Label ?? RimEdge),
                new Vertex(le, 0, Left.Label),
                new Vertex(ls, 0, start?.Label ?? RimEdge),
            ],
            isClosed: true));
    }

    /// <summary>
    /// What an area leaves of a strip between its ends: the piece that holds a place, its first edge the right side where there is one; null
    /// where the place lies outside, or where nothing is left of one of the sides and both are needed.
    /// </summary>
    /// <param name="whole">The strip between its ends.</param>
    /// <param name="area">The area it is cut to; all its edges labelled <see cref="RimEdge"/>.</param>
    /// <param name="holding">The place.</param>
    /// <param name="name">The name of an edge that the area left.</param>
    /// <param name="needsBothSides">Whether it is nothing without both of its sides, as a bar is.</param>
    public Region? Within(Region whole, Region area, Point2 holding, Func<Segment, string> name, bool needsBothSides = true)
    {
        foreach (var piece in whole.Intersect(area).Parts)
        {
            var (right, left) = (Right.Label, Left.Label);
            var edges = piece.Outer.Segments.ToList();
            var hasSides = edges.Exists(e => e.Label == right) && edges.Exists(e => e.Label == left);
            if (piece.DistanceTo(holding) <= Tolerances.TouchMm && (hasSides || !needsBothSides))
            {
                var first = Math.Max(0, edges.FindIndex(e => e.Label == right));
                return Region.Between(
                    Contour.Chain([.. edges[first..].Concat(edges[..first]).Select(e => e.Label == RimEdge ? e with { Label = name(e) } : e)], isClosed: true),
                    piece.Loops.Skip(1));
            }
        }

        return null;
    }

    private static Point2? Corner(Segment side, Segment? cut, bool ahead) =>
        cut is not { } line ? (ahead ? side.End : side.Start)
        : Intersections.Of(side, Line(line.PointAt(0.5), line.TangentAt(0), line.Label)) is [var meeting] ? meeting.Point
        : null;
}
