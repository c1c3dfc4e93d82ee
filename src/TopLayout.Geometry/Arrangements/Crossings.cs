namespace TopLayout.Geometry.Arrangements;

/// <summary>Up to two points where carriers meet; a touch when they meet without crossing.</summary>
internal readonly record struct Crossings(int Count, Point2 First, Point2 Second, bool IsTouch = false)
{
    private static Crossings None => default;

    /// <summary>
    /// Where the carriers of two curves cross, in closed form. Where they miss or overlap by no more than <paramref name="touch"/>
    /// they meet in one point, midway on the common normal. Carriers that coincide meet nowhere: ends decide there.
    /// </summary>
    public static Crossings Of(Curve a, Curve b, double touch)
    {
        var found = (a.IsArc, b.IsArc) switch
        {
            (false, false) => LineLine(a, b),
            (false, true) => LineCircle(a, b, touch),
            (true, false) => LineCircle(b, a, touch),
            (true, true) => CircleCircle(a, b, touch),
        };
        var isFar = (a.IsArc && a.Radius > Tolerances.FarCenterMm) || (b.IsArc && b.Radius > Tolerances.FarCenterMm);
        return isFar && found is { Count: > 0, IsTouch: false }
            ? found with { First = Refined(a, b, found.First), Second = Refined(a, b, found.Second) }
            : found;
    }

    // Newton's method on both carriers' equations about the curves' starts: a far centre has lost the digits that these keep.
    private static Point2 Refined(Curve a, Curve b, Point2 p)
    {
        const int Steps = 3;
        for (var step = 0; step < Steps && p.DistanceTo(a.Start) < Tolerances.FarCenterMm; step++)
        {
            var ((f, u), (g, v)) = (a.Implicit(p), b.Implicit(p));
            var cross = u.Cross(v);
            if (Math.Abs(cross) <= Tolerances.SmoothRadians)
            {
                break;
            }

            p += new Vec2((g * u.Y) - (f * v.Y), (f * v.X) - (g * u.X)) / cross;
        }

        return p;
    }

    private static Crossings LineLine(Curve a, Curve b)
    {
        var cross = a.Along.Cross(b.Along);
        return Math.Abs(cross) <= Tolerances.ParallelRadians
            ? None
            : One(a.Start + (a.Along * ((b.Start - a.Start).Cross(b.Along) / cross)));
    }

    private static Crossings LineCircle(Curve line, Curve arc, double touch)
    {
        var left = line.LeftDistance(arc.Center);
        var foot = arc.Center - (line.Along.Left * left);
        var gap = Math.Abs(left) - arc.Radius;
        if (Math.Abs(gap) <= touch)
        {
            return Touch(foot + (line.Along.Left * (Math.Sign(left) * gap / 2)));
        }

        return gap > 0 ? None : Two(foot, line.Along * Math.Sqrt(-gap * (arc.Radius + Math.Abs(left))));
    }

    private static Crossings CircleCircle(Curve a, Curve b, double touch)
    {
        var d = a.Center.DistanceTo(b.Center);
        if (d + Math.Abs(a.Radius - b.Radius) <= touch || d == 0)
        {
            return None;
        }

        var toward = (b.Center - a.Center) / d;
        var reach = (d + ((a.Radius - b.Radius) * (a.Radius + b.Radius) / d)) / 2;
        var (outer, inner) = (d - a.Radius - b.Radius, Math.Abs(a.Radius - b.Radius) - d);
        if (Math.Abs(outer) <= touch)
        {
            return Touch(a.Center + (toward * (a.Radius + (outer / 2))));
        }

        if (Math.Abs(inner) <= touch)
        {
            var larger = a.Radius > b.Radius;
            return Touch(a.Center + (toward * (larger ? a.Radius - (inner / 2) : -a.Radius - (inner / 2))));
        }

        return outer > 0 || inner > 0
            ? None
            : Two(a.Center + (toward * reach), toward.Left * Math.Sqrt(Math.Max(0, (a.Radius - reach) * (a.Radius + reach))));
    }

    private static Crossings One(Point2 p) => new(1, p, p);

    private static Crossings Touch(Point2 p) => new(1, p, p, IsTouch: true);

    private static Crossings Two(Point2 middle, Vec2 half) => new(2, middle - half, middle + half);
}
