using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>The fractions of an edge at which something about it changes. Each method adds to a list; a cut too many does no harm.</summary>
internal static class Cuts
{
    /// <summary>Cuts nearer than this share of the edge are one.</summary>
    public const double Smallest = 1e-10;

    /// <summary>Brings cuts that hold 0 and 1 into order, each once.</summary>
    public static void Order(List<double> cuts)
    {
        cuts.Sort();
        var kept = 0;
        for (var i = 0; i < cuts.Count; i++)
        {
            var f = cuts[i];
            if (f is >= 0 and <= 1 && (kept == 0 || f - cuts[kept - 1] > Smallest))
            {
                cuts[kept++] = f;
            }
        }

        cuts.RemoveRange(kept, cuts.Count - kept);
        cuts[^1] = 1;
    }

    /// <summary>Where the tangent runs along the grain or square to it.</summary>
    public static void AtTurns(Segment edge, Angle grain, List<double> cuts)
    {
        if (!edge.IsArc)
        {
            return;
        }

        var along = GrainAngle.Direction(grain);
        foreach (var direction in (ReadOnlySpan<Vec2>)[along, along.Left, -along, -along.Left])
        {
            AddAlong(edge, direction, cuts);
        }
    }

    /// <summary>Where the edge meets the centre joint.</summary>
    public static void AtCenter(Segment edge, List<double> cuts) =>
        OnLine(edge, default, Vec2.UnitY, double.NegativeInfinity, double.PositiveInfinity, cuts);

    /// <summary>
    /// Where the edge may enter or leave the band of a reach round some edges: their parallels on both sides, and circles round their
    /// corners. Not every cut is on the band's border; the parts between are each wholly inside or outside.
    /// </summary>
    public static void AtReach(Segment edge, EdgeSet others, double reachMm, List<double> cuts)
    {
        var near = edge.Bounds().Grown(reachMm + Tolerances.TouchMm);
        if (!near.Overlaps(others.Bounds))
        {
            return;
        }

        for (var i = 0; i < others.Edges.Length; i++)
        {
            if (near.Overlaps(others.Boxes[i]))
            {
                var isCorner = i > 0 && others.Edges[i - 1].End == others.Edges[i].Start;
                AtCorner(edge, isCorner ? null : others.Edges[i].Start, near, reachMm, cuts);
                AtCorner(edge, others.Edges[i].End, near, reachMm, cuts);
                AtParallels(edge, others.Edges[i], reachMm, cuts);
            }
        }
    }

    private static void AtCorner(Segment edge, Point2? corner, Box2 near, double reachMm, List<double> cuts)
    {
        if (corner is { } p && near.Contains(p))
        {
            OnCircle(edge, p, reachMm, null, cuts);
        }
    }

    private static void AtParallels(Segment edge, Segment other, double reachMm, List<double> cuts)
    {
        foreach (var d in (ReadOnlySpan<double>)[reachMm, -reachMm])
        {
            if (other.IsArc)
            {
                OnCircle(edge, other.Center, other.Radius + d, other, cuts);
            }
            else
            {
                var (chord, along) = (other.End - other.Start, (other.End - other.Start).Unit);
                OnLine(edge, other.Start + (along.Left * d), along, 0, chord.Length, cuts);
            }
        }
    }

    // On the line through a point, between two lengths along it. A line beside the edge, and parallel to it, never meets it.
    private static void OnLine(Segment edge, Point2 from, Vec2 along, double low, double high, List<double> cuts)
    {
        void Add(Point2 p)
        {
            var length = (p - from).Dot(along);
            if (length >= low - Tolerances.TouchMm && length <= high + Tolerances.TouchMm)
            {
                AddAt(edge, p, cuts);
            }
        }

        if (!edge.IsArc)
        {
            var chord = edge.End - edge.Start;
            var cross = chord.Cross(along);
            var fraction = cross == 0 ? -1 : (from - edge.Start).Cross(along) / cross;
            if (fraction is >= 0 and <= 1)
            {
                Add(edge.Start + (chord * fraction));
            }

            return;
        }

        var (center, radius) = (edge.Center, edge.Radius);
        var foot = from + (along * (center - from).Dot(along));
        var offset = center.DistanceTo(foot);
        if (offset <= radius)
        {
            var half = along * Math.Sqrt((radius - offset) * (radius + offset));
            Add(foot + half);
            Add(foot - half);
        }
    }

    // On a circle, or on the parallel of an arc, which stands as far round as the arc itself.
    private static void OnCircle(Segment edge, Point2 center, double radius, Segment? arc, List<double> cuts)
    {
        if (radius <= Tolerances.ShortestMm)
        {
            return;
        }

        Vec2 along;
        double half;
        Point2 foot;
        if (!edge.IsArc)
        {
            along = (edge.End - edge.Start).Unit;
            foot = edge.Start + (along * (center - edge.Start).Dot(along));
            var offset = center.DistanceTo(foot);
            half = (radius - offset) * (radius + offset);
        }
        else
        {
            var (own, r) = (edge.Center, edge.Radius);
            var distance = own.DistanceTo(center);
            if (distance <= Tolerances.TouchMm)
            {
                return;
            }

            var toward = (center - own) / distance;
            var reach = ((distance * distance) + ((r - radius) * (r + radius))) / (2 * distance);
            (along, foot, half) = (toward.Left, own + (toward * reach), (r - reach) * (r + reach));
        }

        if (half >= 0)
        {
            var step = along * Math.Sqrt(half);
            AddOn(edge, foot + step, center, radius, arc, cuts);
            AddOn(edge, foot - step, center, radius, arc, cuts);
        }
    }

    private static void AddOn(Segment edge, Point2 p, Point2 center, double radius, Segment? arc, List<double> cuts)
    {
        if (arc is { } a)
        {
            // Back on the arc's own circle: an arc of at most half a turn lies on one side of its chord.
            var chord = a.End - a.Start;
            var own = center + ((p - center) * (a.Radius / radius));
            if (chord.Cross(own - a.Start) * Math.Sign(a.Bulge) > Tolerances.TouchMm * chord.Length)
            {
                return;
            }
        }

        AddAt(edge, p, cuts);
    }

    // A point on the circle or line of an edge; beyond its ends there is nothing to cut.
    private static void AddAt(Segment edge, Point2 p, List<double> cuts)
    {
        if (edge.IsArc)
        {
            AddAlong(edge, p - edge.Center, cuts);
        }
        else
        {
            var line = edge.End - edge.Start;
            cuts.Add((p - edge.Start).Dot(line) / line.Dot(line));
        }
    }

    private static void AddAlong(Segment arc, Vec2 fromCenter, List<double> cuts)
    {
        if (arc.Holds(fromCenter))
        {
            cuts.Add(arc.FractionOfDirection(fromCenter));
        }
    }
}
