using TopLayout.Geometry.Arrangements;

namespace TopLayout.Geometry;

/// <summary>What can be wrong with a region.</summary>
public enum RegionFaultKind
{
    /// <summary>A segment is shorter than <see cref="Tolerances.ShortestMm"/>.</summary>
    ShortSegment,

    /// <summary>Two segments cross, or one ends on the other side of the other.</summary>
    Crossing,

    /// <summary>Two segments run along each other within <see cref="Tolerances.TouchMm"/>.</summary>
    Overlap,

    /// <summary>The area does not lie to the left of a loop, or not outside it to the right: wrong sense or wrong nesting.</summary>
    Side,
}

/// <summary>A fault and where it lies.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="At">A point of it, mm.</param>
public readonly record struct RegionFault(RegionFaultKind Kind, Point2 At);

/// <summary>Tells whether a region keeps its promise: loops simple, disjoint but for single points, rightly turned and nested, without short segments.</summary>
public static class RegionValidity
{
    // Joined edges may leave their cuts by the touch distance, each of the two by as much, and so may their carriers.
    private const double SlackMm = 4 * Tolerances.TouchMm;

    // A loop is right or wrong as a whole; at single places another one may touch it.
    private const int MostSamples = 8;

    /// <summary>The first fault found, or null; time grows with the number of segments as for an operation.</summary>
    public static RegionFault? FirstFault(Region region)
    {
        ArgumentNullException.ThrowIfNull(region);
        var curves = region.Edges.Select(Curve.Of).ToArray();
        foreach (var c in curves)
        {
            if (c.ChordLength < Tolerances.ShortestMm)
            {
                return new RegionFault(RegionFaultKind.ShortSegment, c.Start);
            }
        }

        return FirstMeeting(curves) ?? FirstWrongSide(region, curves);
    }

    private static RegionFault? FirstMeeting(Curve[] curves)
    {
        var grid = new CurveGrid(curves, SlackMm);
        var near = new List<int>();
        for (var i = 0; i < curves.Length; i++)
        {
            grid.After(i, near);
            foreach (var j in near)
            {
                if (Meeting(curves[i], curves[j]) is { } fault)
                {
                    return fault;
                }
            }
        }

        return null;
    }

    private static RegionFault? Meeting(Curve a, Curve b)
    {
        var met = new List<Point2>();
        foreach (var (end, other) in (ReadOnlySpan<(Point2, Curve)>)[(a.Start, b), (a.End, b), (b.Start, a), (b.End, a)])
        {
            var isOn = end.IsNear(other.Start, SlackMm) || end.IsNear(other.End, SlackMm) || other.Passes(end, SlackMm);
            if (isOn && !met.Exists(m => m.IsNear(end, SlackMm)))
            {
                met.Add(end);
            }
        }

        for (var k = 1; k < met.Count; k++)
        {
            var (from, to, middle) = (met[k - 1], met[k], a.Between(met[k - 1], met[k]));
            if (from.DistanceTo(to) > Tolerances.ShortestMm && IsOnBoth(a, b, from) && IsOnBoth(a, b, to) && b.Passes(middle, Tolerances.TouchMm))
            {
                return new RegionFault(RegionFaultKind.Overlap, middle);
            }
        }

        var crossings = Crossings.Of(a, b, SlackMm);
        for (var k = 0; k < crossings.Count; k++)
        {
            var x = k == 0 ? crossings.First : crossings.Second;
            if (crossings.IsTouch || !a.HasFoot(x) || !b.HasFoot(x))
            {
                continue;
            }

            var (first, second) = (a, b);
            if (!met.Exists(m => m.IsNear(x, SlackMm) || Math.Abs(second.LeftDistance(first.Between(m, x))) <= SlackMm))
            {
                return new RegionFault(RegionFaultKind.Crossing, x);
            }
        }

        return null;
    }

    private static bool IsOnBoth(Curve a, Curve b, Point2 p) =>
        Math.Abs(a.LeftDistance(p)) <= Tolerances.TouchMm && Math.Abs(b.LeftDistance(p)) <= Tolerances.TouchMm;

    private static RegionFault? FirstWrongSide(Region region, Curve[] curves)
    {
        if (curves.Length == 0)
        {
            return null;
        }

        var rays = new LeftwardRays(curves);
        foreach (var loop in region.Loops)
        {
            var edges = loop.Segments.OrderByDescending(s => s.ChordLength).Take(MostSamples).ToList();
            if (!edges.Exists(e => IsRightAt(rays, Curve.Of(e)) || IsRightAt(rays, Curve.Of(e.Part(0, 0.4)))))
            {
                return new RegionFault(RegionFaultKind.Side, edges[0].PointAt(0.5));
            }
        }

        return null;
    }

    private static bool IsRightAt(LeftwardRays rays, Curve edge)
    {
        var left = edge.Along.Left * Tolerances.TouchMm;
        return rays.Winding(edge.Middle + left, _ => 1) == 1 && rays.Winding(edge.Middle - left, _ => 1) == 0;
    }
}
