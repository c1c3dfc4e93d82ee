namespace TopLayout.Geometry;

/// <summary>A meeting of two segments: the place, and how far along each it lies (fraction of the length, 0 to 1).</summary>
/// <param name="Point">Where they meet, mm.</param>
/// <param name="First">Fraction along the first segment.</param>
/// <param name="Second">Fraction along the second segment.</param>
public readonly record struct Meeting(Point2 Point, double First, double Second);

/// <summary>
/// Where two segments meet, in closed form: line with line, line with circle, circle with circle. Tangency is decided by the gap:
/// nearer than <see cref="Tolerances.TouchMm"/> is one touching point on the common normal. An end that lies on the other segment
/// is a meeting too, unless a meeting already found touches the same stretch. Segments that lie on each other give none but the
/// ends at which one goes on where the other stops.
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
            (true, true) => a.Radius < b.Radius ? CircleCircle(a, b) : CircleCircle(b, a),
        };
        var meetings = new List<Meeting>(4);
        foreach (var p in points ?? EndToEnd(a, b))
        {
            AddOnBoth(meetings, a, b, Polished(a, b, p));
        }

        foreach (var end in points is null ? default : (ReadOnlySpan<Point2>)[a.Start, a.End, b.Start, b.End])
        {
            AddOnBoth(meetings, a, b, end);
        }

        meetings.Sort((m, n) => m.First.CompareTo(n.First));
        return meetings;
    }

    private static void AddOnBoth(List<Meeting> meetings, Segment a, Segment b, Point2 p)
    {
        if (a.DistanceTo(p) <= Reach(a) && b.DistanceTo(p) <= Reach(b))
        {
            var (onA, onB) = (a.NearestFraction(p), b.NearestFraction(p));
            foreach (var m in meetings)
            {
                if (b.DistanceTo(a.PointAt((m.First + onA) / 2)) <= 2 * Reach(b))
                {
                    return;
                }
            }

            meetings.Add(new Meeting(p, onA, onB));
        }
    }

    // The centre of an almost flat arc lies so far away that its rounding alone exceeds the touch distance.
    private static double Reach(Segment s) => s.IsArc ? Tolerances.TouchMm + (Tolerances.RoundingShare * s.Radius) : Tolerances.TouchMm;

    // Null where one lies along the other: both its ends within touch of the other's line.
    private static Point2[]? LineLine(Segment a, Segment b)
    {
        var (u, v) = (a.End - a.Start, b.End - b.Start);
        var cross = u.Cross(v);
        if (Along(a, b) || Along(b, a))
        {
            return null;
        }

        return cross == 0 ? [] : [a.Start + (u * ((b.Start - a.Start).Cross(v) / cross))];
    }

    private static bool Along(Segment line, Segment other)
    {
        var u = line.End - line.Start;
        var reach = Tolerances.TouchMm * u.Length;
        return Math.Abs(u.Cross(other.Start - line.Start)) <= reach && Math.Abs(u.Cross(other.End - line.Start)) <= reach;
    }

    private static Point2[] LineCircle(Segment line, Segment arc)
    {
        var (center, radius) = (arc.Center, arc.Radius);
        var along = (line.End - line.Start).Unit;
        var foot = line.Start + (along * (center - line.Start).Dot(along));
        var offset = center.DistanceTo(foot);
        return Math.Abs(offset - radius) <= Tolerances.TouchMm ? [foot] : OnNormal(foot, along, offset, radius);
    }

    // Null for one and the same circle. The smaller circle comes first: its half chord keeps more digits.
    private static Point2[]? CircleCircle(Segment a, Segment b)
    {
        var (ca, ra, cb, rb) = (a.Center, a.Radius, b.Center, b.Radius);
        var d = ca.DistanceTo(cb);
        if (d <= Tolerances.TouchMm)
        {
            return rb - ra <= Tolerances.TouchMm ? null : [];
        }

        var toward = (cb - ca) / d;
        var reach = ((d * d) + ((ra - rb) * (ra + rb))) / (2 * d);
        var gap = Math.Min(Math.Abs(d - ra - rb), Math.Abs(d - Math.Abs(ra - rb)));
        return gap <= Tolerances.TouchMm
            ? [ca + (toward * (ra * Math.Sign(reach)))]
            : OnNormal(ca + (toward * reach), toward.Left, Math.Abs(reach), ra);
    }

    // The points at distance `radius` from a centre that lies `offset` from `foot`, along a line through `foot`.
    private static Point2[] OnNormal(Point2 foot, Vec2 along, double offset, double radius)
    {
        if (offset > radius)
        {
            return [];
        }

        var half = Math.Sqrt((radius - offset) * (radius + offset));
        return [foot - (along * half), foot + (along * half)];
    }

    // Shared ends from which two segments on one carrier run apart.
    private static Point2[] EndToEnd(Segment a, Segment b)
    {
        var ends = new List<Point2>(2);
        foreach (var (p, from) in (ReadOnlySpan<(Point2, Vec2)>)[(a.Start, a.TangentAt(0)), (a.End, -a.TangentAt(1))])
        {
            if ((p.IsNear(b.Start) && from.Dot(b.TangentAt(0)) < 0) || (p.IsNear(b.End) && from.Dot(b.TangentAt(1)) > 0))
            {
                ends.Add(p);
            }
        }

        return [.. ends];
    }

    // A centre far off costs digits: two steps to the crossing of the tangents (Newton) win them back.
    private static Point2 Polished(Segment a, Segment b, Point2 p)
    {
        if (!(a.IsArc && a.Radius > Tolerances.FarCenterMm) && !(b.IsArc && b.Radius > Tolerances.FarCenterMm))
        {
            return p;
        }

        for (var step = 0; step < 2; step++)
        {
            var (onA, onB) = (a.NearestFraction(p), b.NearestFraction(p));
            var (u, v) = (a.TangentAt(onA), b.TangentAt(onB));
            if (Math.Abs(u.Cross(v)) <= Tolerances.SmoothRadians)
            {
                return p;
            }

            p = a.PointAt(onA) + (u * ((b.PointAt(onB) - a.PointAt(onA)).Cross(v) / u.Cross(v)));
        }

        return p;
    }
}
