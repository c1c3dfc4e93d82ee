namespace TopLayout.Geometry;

/// <summary>A meeting of two segments: the place, and how far along each it lies (fraction of the length, 0 to 1).</summary>
/// <param name="Point">Where they meet, mm.</param>
/// <param name="First">Fraction along the first segment.</param>
/// <param name="Second">Fraction along the second segment.</param>
public readonly record struct Meeting(Point2 Point, double First, double Second);

/// <summary>
/// Where two segments meet, in closed form: line with line, line with circle, circle with circle. Tangency is decided by the gap:
/// nearer than <see cref="Tolerances.TouchMm"/> is one touching point on the common normal. Segments that lie on each other give none.
/// </summary>
public static class Intersections
{
    /// <summary>The meetings of two segments, ends included, in the order of travel along the first.</summary>
    public static IReadOnlyList<Meeting> Of(Segment a, Segment b)
    {
        if (!a.Bounds().Grown(Tolerances.TouchMm).Overlaps(b.Bounds()))
        {
            return [];
        }

        var points = (a.IsArc, b.IsArc) switch
        {
            (false, false) => LineLine(a, b),
            (false, true) => LineCircle(a, b),
            (true, false) => LineCircle(b, a),
            (true, true) => CircleCircle(a, b),
        };
        var meetings = new List<Meeting>(2);
        var reach = Tolerances.TouchMm + Math.Max(CentreRounding(a), CentreRounding(b));
        foreach (var p in points)
        {
            if (a.DistanceTo(p) <= reach && b.DistanceTo(p) <= reach)
            {
                meetings.Add(new Meeting(p, a.NearestFraction(p), b.NearestFraction(p)));
            }
        }

        meetings.Sort((m, n) => m.First.CompareTo(n.First));
        return meetings;
    }

    // The centre of an almost flat arc lies millions of mm away and is rounded there, and so is every point found from it.
    private static double CentreRounding(Segment s) => s.IsArc ? Tolerances.RoundingShare * s.Radius : 0;

    private static Point2[] LineLine(Segment a, Segment b)
    {
        var (u, v) = (a.End - a.Start, b.End - b.Start);
        var cross = u.Cross(v);
        if (Math.Abs(cross) <= Tolerances.SmoothRadians * u.Length * v.Length)
        {
            return [];
        }

        return [a.Start + (u * ((b.Start - a.Start).Cross(v) / cross))];
    }

    private static Point2[] LineCircle(Segment line, Segment arc)
    {
        var (center, radius) = (arc.Center, arc.Radius);
        var along = (line.End - line.Start).Unit;
        var foot = line.Start + (along * (center - line.Start).Dot(along));
        return OnNormal(foot, along, center.DistanceTo(foot), radius, foot);
    }

    private static Point2[] CircleCircle(Segment a, Segment b)
    {
        var (ca, ra, cb, rb) = (a.Center, a.Radius, b.Center, b.Radius);
        var d = ca.DistanceTo(cb);
        if (d <= Tolerances.TouchMm)
        {
            return [];
        }

        var toward = (cb - ca) / d;
        var reach = ((d * d) + (ra * ra) - (rb * rb)) / (2 * d);
        var gap = Math.Min(Math.Abs(d - ra - rb), Math.Abs(d - Math.Abs(ra - rb)));
        var touch = ca + (toward * (ra * Math.Sign(reach)));
        return gap <= Tolerances.TouchMm ? [touch] : OnNormal(ca + (toward * reach), toward.Left, Math.Abs(reach), ra, touch);
    }

    // The points at distance `radius` from a centre that lies `offset` from `foot`, along a line through `foot`.
    private static Point2[] OnNormal(Point2 foot, Vec2 along, double offset, double radius, Point2 touch)
    {
        if (Math.Abs(offset - radius) <= Tolerances.TouchMm)
        {
            return [touch];
        }

        if (offset > radius)
        {
            return [];
        }

        var half = Math.Sqrt((radius - offset) * (radius + offset));
        return [foot - (along * half), foot + (along * half)];
    }
}
