using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>The fractions of an edge at which something about it changes.</summary>
internal static class Cuts
{
    /// <summary>Cuts nearer than this share of the edge are one.</summary>
    private const double Smallest = 1e-10;

    /// <summary>The cuts in order, each once; 0 and 1 stay.</summary>
    public static List<double> Ordered(IEnumerable<double> fractions)
    {
        var kept = new List<double>();
        foreach (var f in fractions.Where(f => f is >= 0 and <= 1).Order())
        {
            if (kept.Count == 0 || f - kept[^1] > Smallest)
            {
                kept.Add(f);
            }
        }

        kept[^1] = 1;
        return kept;
    }

    /// <summary>Where the tangent runs along the grain or square to it.</summary>
    public static IEnumerable<double> AtTurns(Segment edge, Angle grain)
    {
        if (!edge.IsArc)
        {
            return [];
        }

        var along = GrainAngle.Direction(grain);
        return ((ReadOnlySpan<Vec2>)[along, along.Left, -along, -along.Left]).ToArray().Select(edge.FractionOfDirection);
    }

    /// <summary>Where the edge meets the centre joint.</summary>
    public static IEnumerable<double> AtCenter(Segment edge)
    {
        var bounds = edge.Bounds();
        var joint = new Segment(new Point2(0, bounds.Min.Y - 1), new Point2(0, bounds.Max.Y + 1));
        return Intersections.Of(edge, joint).Select(m => m.First);
    }

    /// <summary>
    /// Where the edge may enter or leave the band of a reach round some edges: their parallels on both sides, and circles round their
    /// corners. Not every cut is on the band's border; the parts between are each wholly inside or outside.
    /// </summary>
    public static IEnumerable<double> AtReach(Segment edge, IEnumerable<Segment> edges, double reachMm)
    {
        var near = edge.Bounds().Grown(reachMm + Tolerances.TouchMm);
        return edges.Where(e => near.Overlaps(e.Bounds()))
            .SelectMany(e => Parallels(e, reachMm))
            .SelectMany(b => Intersections.Of(edge, b))
            .Select(m => m.First);
    }

    private static IEnumerable<Segment> Parallels(Segment edge, double reachMm)
    {
        foreach (var corner in Contour.Circle(edge.Start, reachMm).Segments.Concat(Contour.Circle(edge.End, reachMm).Segments))
        {
            yield return corner;
        }

        foreach (var d in (double[])[reachMm, -reachMm])
        {
            if (!edge.IsArc)
            {
                var shift = (edge.End - edge.Start).Unit.Left * d;
                yield return new Segment(edge.Start + shift, edge.End + shift);
            }
            else if (edge.Radius + d > Tolerances.ShortestMm)
            {
                var (center, scale) = (edge.Center, (edge.Radius + d) / edge.Radius);
                yield return edge with { Start = center + ((edge.Start - center) * scale), End = center + ((edge.End - center) * scale) };
            }
        }
    }
}
