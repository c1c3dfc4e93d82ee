namespace TopLayout.Geometry;

/// <summary>
/// Least distances between segments and contours, in closed form. Where two segments do not meet, the shortest way between them starts
/// at an end of one of them or stands square to both: on the foot of an arc's centre on a line, or on the line through two arcs' centres.
/// </summary>
public static class Distances
{
    /// <summary>The least distance between two segments, mm; 0 where they meet.</summary>
    public static double Between(Segment a, Segment b)
    {
        if (Intersections.Of(a, b).Count > 0)
        {
            return 0;
        }

        var least = Math.Min(Math.Min(b.DistanceTo(a.Start), b.DistanceTo(a.End)), Math.Min(a.DistanceTo(b.Start), a.DistanceTo(b.End)));
        foreach (var (one, other) in (ReadOnlySpan<(Segment, Segment)>)[(a, b), (b, a)])
        {
            if (!one.IsArc)
            {
                continue;
            }

            var way = other.IsArc ? other.Center - one.Center : (other.End - other.Start).Left;
            if (way.Length <= Tolerances.TouchMm)
            {
                continue;
            }

            var outward = way.Unit * one.Radius;
            foreach (var foot in (ReadOnlySpan<Vec2>)[outward, -outward])
            {
                least = one.FractionOfDirection(foot) is >= 0 and <= 1 ? Math.Min(least, other.DistanceTo(one.Center + foot)) : least;
            }
        }

        return least;
    }

    /// <summary>The least distance between two contours, mm; 0 where they meet. Areas do not count: a contour inside another has a distance to it.</summary>
    public static double Between(Contour a, Contour b)
    {
        var least = double.PositiveInfinity;
        foreach (var s in a.Segments)
        {
            var reach = s.Bounds();
            foreach (var t in b.Segments)
            {
                if (least == double.PositiveInfinity || reach.Grown(least).Overlaps(t.Bounds()))
                {
                    least = Math.Min(least, Between(s, t));
                }
            }
        }

        return least;
    }

    /// <summary>The least distance between two areas, mm; 0 where they meet or one holds the other; infinite to the empty region.</summary>
    public static double Between(Region a, Region b) =>
        a.IsEmpty || b.IsEmpty ? double.PositiveInfinity
        : a.Contains(b.Outer.Vertices[0].Position) || b.Contains(a.Outer.Vertices[0].Position) ? 0
        : a.Loops.Min(l => b.Loops.Min(m => Between(l, m)));
}
