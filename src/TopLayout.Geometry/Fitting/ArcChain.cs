namespace TopLayout.Geometry.Fitting;

/// <summary>
/// A chain of arcs without corners, written in as many numbers as it has freedoms, so that least squares can move it: the heading at
/// the start and, arc by arc, curvature and length. Open: the first point is fixed and the last arc is the one that reaches the last
/// point. Closed: the start moves as well, and the last two arcs are the biarc back to it, with one freedom, its first handle.
/// </summary>
internal sealed class ArcChain(Point2[] points, bool isClosed, int count)
{
    // A fitted arc turns by less than this, radians: short of a whole turn.
    private const double MostTurn = 6;

    private readonly double[] _along = Along(points);

    // An arc much shorter than the points lie apart is none they speak for.
    private readonly double _shortest = Math.Max(Tolerances.ShortestMm, Along(points)[^1] / (2 * points.Length));

    // Arcs written as curvature and length; the others follow from the end.
    private int Free => count - (isClosed ? 2 : 1);

    /// <summary>The numbers of the chain that follows the circles fitted to the spans between marks.</summary>
    public double[] Start(List<int> marks)
    {
        var spans = marks.Zip(marks.Skip(1), (a, b) => OnCircle(points.AsSpan(a, b - a), points[Math.Min(b, points.Length - 1)])).ToList();
        List<double> numbers = isClosed ? [spans[0].Start.X, spans[0].Start.Y] : [];
        numbers.Add(Trig.Heading(spans[0].Tangent).Radians);
        foreach (var s in spans.Take(Free))
        {
            numbers.AddRange([s.Curvature, s.Length]);
        }

        if (isClosed)
        {
            // The handle of an arc is tan(turn/2)/κ, half its length where it is flat.
            var half = Angle.FromRadians(Math.Clamp(spans[^2].Turn / 2, -1.2, 1.2));
            numbers.Add(Math.Abs(half.Radians) < Tolerances.StraightRadians ? spans[^2].Length / 2 : Math.Abs(Trig.Tan(half) / spans[^2].Curvature));
        }

        return [.. numbers];
    }

    /// <summary>Differences to take the slopes by: <see cref="Tolerances.DifferenceMm"/> at the far end of the chain, roughly.</summary>
    public double[] Steps()
    {
        const double Step = Tolerances.DifferenceMm;
        var length = Math.Max(1, _along[^1]);
        List<double> steps = isClosed ? [Step, Step, Step / length] : [Step / length];
        for (var i = 0; i < Free; i++)
        {
            steps.AddRange([Step / (length * length), Step]);
        }

        return isClosed ? [.. steps, Step] : [.. steps];
    }

    /// <summary>The arcs from the numbers; null where one would be shorter than half the distance of the points, or turn round whole.</summary>
    public ArcPiece[]? Pieces(double[] numbers)
    {
        var pieces = new ArcPiece[count];
        var next = isClosed ? 3 : 1;
        var at = isClosed ? new Point2(numbers[0], numbers[1]) : points[0];
        var (start, first) = (at, Trig.Direction(Angle.FromRadians(numbers[next - 1])));
        var tangent = first;
        for (var i = 0; i < Free; i++, next += 2)
        {
            pieces[i] = new ArcPiece(at, tangent, numbers[next], numbers[next + 1]);
            (at, tangent) = pieces[i].End();
        }

        if (isClosed)
        {
            if (Biarc.Joint(at, tangent, start, first, numbers[next]) is not { } joint)
            {
                return null;
            }

            pieces[^2] = ArcPiece.Reaching(at, tangent, joint);
            (at, tangent) = pieces[^2].End();
        }

        pieces[^1] = ArcPiece.Reaching(at, tangent, isClosed ? start : points[^1]);
        return Array.TrueForAll(pieces, p => p.Length >= _shortest && Math.Abs(p.Turn) < MostTurn) ? pieces : null;
    }

    /// <summary>
    /// The distance of each point to the arc it lies beside, null for no chain. A point has passed a joint when it lies ahead of its
    /// normal, and is by its length along the points not still in the first half of the arc before.
    /// </summary>
    public double[]? Distances(double[] numbers)
    {
        if (Pieces(numbers) is not { } pieces)
        {
            return null;
        }

        var scale = pieces.Sum(p => p.Length) / Math.Max(_along[^1], Tolerances.ShortestMm);
        var distances = new double[points.Length];
        var (on, before) = (0, 0.0);
        for (var k = 0; k < points.Length; k++)
        {
            while (on + 1 < count && (points[k] - pieces[on + 1].Start).Dot(pieces[on + 1].Tangent) > 0 && _along[k] * scale > before + (pieces[on].Length / 2))
            {
                before += pieces[on].Length;
                on++;
            }

            distances[k] = pieces[on].Distance(points[k]);
        }

        return distances;
    }

    /// <summary>The chain's vertices; the last point of an open one is left out.</summary>
    public IEnumerable<Vertex> Vertices(ArcPiece[] pieces, string label) => pieces.SelectMany((piece, i) =>
    {
        var end = i + 1 < pieces.Length ? pieces[i + 1].Start : isClosed ? pieces[0].Start : points[^1];
        return Arcs.Halves(piece.Start, end, Trig.Tan(Angle.FromRadians(piece.Turn / 4)), label);
    });

    // The stretch of the fitted circle beside a span of points and up to the next; its length in two halves, so that it may pass half a turn.
    private static ArcPiece OnCircle(ReadOnlySpan<Point2> span, Point2 next)
    {
        var fit = CircleFit.Of(span);
        var (a, m, b) = (fit.Nearest(span[0]), fit.Nearest(span[span.Length / 2]), fit.Nearest(next));
        var turn = span.Length > 2 && (m - a).Length > 0 && (b - m).Length > 0 ? Math.Sign((m - a).Cross(b - m)) : 0;
        var normal = fit.NormalAt(a);
        var tangent = normal.Left.Dot(m - a) >= 0 ? normal.Left : -normal.Left;
        return new ArcPiece(a, tangent, turn * fit.Curvature, ArcLength(a.DistanceTo(m), fit.Curvature) + ArcLength(m.DistanceTo(b), fit.Curvature));
    }

    private static double ArcLength(double chord, double curvature) =>
        chord * curvature < Tolerances.StraightRadians ? chord : 2 * Trig.Asin(chord * curvature / 2).Radians / curvature;

    private static double[] Along(Point2[] points)
    {
        var along = new double[points.Length];
        for (var k = 1; k < points.Length; k++)
        {
            along[k] = along[k - 1] + points[k].DistanceTo(points[k - 1]);
        }

        return along;
    }
}
