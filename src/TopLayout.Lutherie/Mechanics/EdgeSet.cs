using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>Edges with their boxes worked out once, to be asked many times whether something is near.</summary>
internal sealed class EdgeSet
{
    public EdgeSet(IEnumerable<Segment> edges)
    {
        Edges = [.. edges];
        Boxes = Array.ConvertAll(Edges, e => e.Bounds());
        Bounds = Box2.Around(Boxes);
    }

    public Segment[] Edges { get; }

    public Box2[] Boxes { get; }

    public Box2 Bounds { get; }

    /// <summary>True when an edge passes a point within a reach, mm.</summary>
    public bool IsWithin(Point2 p, double reachMm)
    {
        for (var i = 0; i < Edges.Length; i++)
        {
            if (Boxes[i].Grown(reachMm).Contains(p) && Edges[i].DistanceTo(p) <= reachMm)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when an edge meets a segment.</summary>
    public bool Meets(Segment segment)
    {
        var box = segment.Bounds().Grown(Tolerances.TouchMm);
        for (var i = 0; i < Edges.Length; i++)
        {
            if (box.Overlaps(Boxes[i]) && !LiesInside(segment, Edges[i]) && Intersections.Of(Edges[i], segment).Count > 0)
            {
                return true;
            }
        }

        return false;
    }

    // A line between two points inside an arc's circle never meets it.
    private static bool LiesInside(Segment line, Segment arc)
    {
        if (line.IsArc || !arc.IsArc)
        {
            return false;
        }

        var (center, least) = (arc.Center, arc.Radius * (1 - Tolerances.RoundingShare) - Tolerances.TouchMm);
        return line.Start.DistanceTo(center) < least && line.End.DistanceTo(center) < least;
    }

    /// <summary>True when one of some edges starts on, or meets, one of these.</summary>
    public bool Touches(EdgeSet others)
    {
        if (!Bounds.Grown(Tolerances.ShortestMm).Overlaps(others.Bounds))
        {
            return false;
        }

        return Array.Exists(others.Edges, e => IsWithin(e.Start, Tolerances.ShortestMm) || Meets(e));
    }
}
