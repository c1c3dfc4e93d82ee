using TopLayout.Geometry.Fitting;

namespace TopLayout.Geometry;

/// <summary>
/// Chains of few circular arcs through measured points or Bézier curves. Between corners a chain has no corner of its own, and no
/// given point lies farther from it than the tolerance. The method, in one place:
/// <list type="number">
/// <item>Corners are where the row turns by more than a threshold (<see cref="CornerSearch"/>). They, and the ends of an open row, are
/// kept as they are; what lies between is fitted row by row.</item>
/// <item>A row is cut greedily into the longest spans that single circles fit (<see cref="Spans"/>, with Taubin's fit of 1991,
/// <see cref="CircleFit"/>). The cuts are then moved to where the circles beside them fit best.</item>
/// <item>From there all arcs move together, smooth joints built in, to the least squares of the distances
/// (<see cref="ArcChain"/>, <see cref="LeastSquares"/>: Levenberg–Marquardt). A closed row closes by a biarc (<see cref="Biarc"/>:
/// Bolton 1975).</item>
/// <item>While a point lies outside the tolerance, the span that holds the farthest is halved and the step before repeated.</item>
/// <item>A row that stays outside (dozens of arcs, or hardly any smoothness) gets biarcs through its own points, as long as the
/// tolerance lets each be (<see cref="ThroughPoints"/>).</item>
/// </list>
/// Nothing fitted in step 3 is shorter than <see cref="Tolerances.ShortestMm"/>; a biarc of step 5 between near points may be.
/// </summary>
public static class ArcFit
{
    /// <summary>
    /// The chain through points in order. Points nearer to their forerunner than <see cref="Tolerances.ShortestMm"/> count as one with it.
    /// Scatter wider than the tolerance is followed, not smoothed.
    /// </summary>
    /// <param name="points">At least two that differ, three if closed; a closed row need not repeat its first.</param>
    /// <param name="isClosed">Whether the last point leads back to the first.</param>
    /// <param name="toleranceMm">The largest distance of a point from the chain, mm, &gt; 0.</param>
    /// <param name="corner">The least turn that is a corner, in (0°, 180°].</param>
    /// <param name="label">The label of every segment.</param>
    /// <exception cref="ArgumentException">Too few points, one that is not finite, or a tolerance not above zero.</exception>
    public static Contour Through(IReadOnlyList<Point2> points, bool isClosed, double toleranceMm, Angle corner, string label = "")
    {
        Demand(toleranceMm > 0, "a tolerance is above zero", nameof(toleranceMm));
        Demand(points.All(p => p.IsFinite), "a point is finite", nameof(points));
        var fewest = isClosed ? 3 : 2;
        var row = Apart(points, isClosed, Tolerances.ShortestMm);
        if (row.Count >= fewest)
        {
            // Leaving out near points must not use up the tolerance.
            var within = Math.Max(toleranceMm - (row.Count < points.Count ? Tolerances.ShortestMm : 0), toleranceMm / 2);
            var fit = Chain(row, CornerSearch.Of(row, isClosed, within, corner), isClosed, within, label);
            if (points.All(p => fit.DistanceTo(p) <= toleranceMm))
            {
                return fit;
            }
        }

        var all = Apart(points, isClosed, 0);
        Demand(all.Count >= fewest, "too few points that differ", nameof(points));
        return Chain(all, [], isClosed, toleranceMm, label);
    }

    /// <summary>
    /// The chain along Bézier curves, each of which starts where the one before ended; it is closed when the last ends at the start
    /// of the first. Corners are sought at the joints of the curves only: a cusp within one is rounded. The bound holds for the curve,
    /// not its samples alone: it is checked on samples four times as dense as those fitted, and these are refined up to sixteenfold.
    /// Null when it does not hold even then; no curve is known that comes to that.
    /// </summary>
    /// <param name="curves">At least one.</param>
    /// <param name="toleranceMm">The largest distance of a point of the curves from the chain, mm, &gt; 0.</param>
    /// <param name="corner">The least turn between two curves that is a corner, in (0°, 180°].</param>
    /// <param name="label">The label of every segment.</param>
    /// <exception cref="ArgumentException">No curve, a gap between two, a coordinate that is not finite, or a tolerance not above zero.</exception>
    public static Contour? Along(IReadOnlyList<CubicBezier> curves, double toleranceMm, Angle corner, string label = "")
    {
        Demand(toleranceMm > 0, "a tolerance is above zero", nameof(toleranceMm));
        Demand(curves.Count > 0 && curves.All(c => c.IsFinite), "curves are finite", nameof(curves));
        Demand(curves.Zip(curves.Skip(1)).All(c => c.First.End.IsNear(c.Second.Start)), "a curve starts where the one before ends", nameof(curves));
        const int Finest = 16;
        for (var refined = 1; refined <= Finest; refined *= 2)
        {
            var fit = Sampled(curves, toleranceMm, refined, corner, label);
            if (curves.All(c => Samples(c, toleranceMm, 4 * refined).All(p => fit.DistanceTo(p) <= toleranceMm)))
            {
                return fit;
            }
        }

        return null;
    }

    private static Contour Sampled(IReadOnlyList<CubicBezier> curves, double toleranceMm, int refined, Angle corner, string label)
    {
        var isClosed = curves[^1].End.IsNear(curves[0].Start);
        var (row, corners) = (new List<Point2>(), new List<int>());
        for (var i = 0; i < curves.Count; i++)
        {
            var turn = Trig.Turn(curves[(i + curves.Count - 1) % curves.Count].EndDirection, curves[i].StartDirection);
            if ((isClosed || i > 0) && Math.Abs(turn.Degrees) > corner.Degrees)
            {
                corners.Add(row.Count);
            }

            row.AddRange(Samples(curves[i], toleranceMm, refined).SkipLast(1));
        }

        return Chain(isClosed ? row : [.. row, curves[^1].End], corners, isClosed, 0.9 * toleranceMm, label);
    }

    private static IEnumerable<Point2> Samples(CubicBezier curve, double toleranceMm, int refined)
    {
        var steps = Math.Max(12, curve.StepsFor(toleranceMm / 4)) * refined;
        return Enumerable.Range(0, steps + 1).Select(i => curve.PointAt((double)i / steps));
    }

    // Row by row between the corners; a closed row with corners begins at one.
    private static Contour Chain(List<Point2> row, List<int> corners, bool isClosed, double toleranceMm, string label)
    {
        if (isClosed && corners.Count == 0)
        {
            return new Contour(SpanFit.Of([.. row], true, toleranceMm, label), isClosed: true);
        }

        if (isClosed)
        {
            List<Point2> turned = [.. row.Skip(corners[0]), .. row.Take(corners[0] + 1)];
            return new Contour(Rows(turned, [.. corners.Skip(1).Select(c => c - corners[0])], toleranceMm, label), isClosed: true);
        }

        return new Contour([.. Rows(row, corners, toleranceMm, label), new Vertex(row[^1])], isClosed: false);
    }

    private static List<Vertex> Rows(List<Point2> row, List<int> corners, double toleranceMm, string label)
    {
        List<int> marks = [0, .. corners, row.Count - 1];
        return [.. marks.Zip(marks.Skip(1)).SelectMany(m => SpanFit.Of([.. row[m.First..(m.Second + 1)]], false, toleranceMm, label))];
    }

    // Each point farther than so much from the one kept before; of a closed row the last is that far from the first too, of an open one it is kept.
    private static List<Point2> Apart(IReadOnlyList<Point2> points, bool isClosed, double mm)
    {
        var row = new List<Point2>(points.Count);
        foreach (var p in points)
        {
            if (row.Count == 0 || !row[^1].IsNear(p, mm))
            {
                row.Add(p);
            }
        }

        while (isClosed && row.Count > 1 && row[^1].IsNear(row[0], mm))
        {
            row.RemoveAt(row.Count - 1);
        }

        if (!isClosed && row.Count > 1 && !row[^2].IsNear(points[^1]))
        {
            row[^1] = points[^1];
        }

        return row;
    }

    private static void Demand(bool holds, string rule, string parameter)
    {
        if (!holds)
        {
            throw new ArgumentException(rule, parameter);
        }
    }
}
