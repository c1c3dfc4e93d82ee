namespace TopLayout.Geometry.Fitting;

/// <summary>Fits one row of points without corners: the vertices of its chain, the last point of an open one left out.</summary>
internal static class SpanFit
{
    // Beyond so many arcs more than single circles would need, or so many in all, the biarcs through the points themselves are taken.
    private const int MostExtra = 12;
    private const int MostArcs = 40;

    /// <summary>The chain of least squares with the fewest arcs that stays within the tolerance, or else biarcs.</summary>
    public static List<Vertex> Of(Point2[] points, bool isClosed, double toleranceMm, string label)
    {
        if (isClosed && CircleFit.Of(points) is { A: not 0 } circle && circle.Largest(points) <= toleranceMm)
        {
            return Whole(circle, points, label);
        }

        var row = isClosed ? [.. points, points[0]] : points;
        if (row.Length == 2)
        {
            return [new Vertex(row[0], 0, label)];
        }

        var marks = Spans.Longest(row, toleranceMm);
        if (isClosed)
        {
            // The start of a closed row is no joint: begin where the first span ends, and cut anew.
            var first = marks[1] % (row.Length - 1);
            row = [.. row[first..^1], .. row[..(first + 1)]];
            marks = Spans.Longest(row, toleranceMm);
        }

        return Fitted(row, marks, isClosed, toleranceMm, label) ?? ThroughPoints.Of(row, isClosed, toleranceMm, label);
    }

    private static List<Vertex>? Fitted(Point2[] row, List<int> marks, bool isClosed, double toleranceMm, string label)
    {
        // A closed chain of two arcs is a circle: it takes three.
        var most = Math.Min(marks.Count + MostExtra, MostArcs);
        for (var hasRoom = true; hasRoom && marks.Count - 1 <= most;)
        {
            Spans.Settle(row, marks);
            var farthest = -1;
            if ((!isClosed || marks.Count > 3) && Try(row, marks, isClosed, toleranceMm, label, out farthest) is { } vertices)
            {
                return vertices;
            }

            hasRoom = Spans.Split(row, marks, farthest);
        }

        return null;
    }

    private static List<Vertex>? Try(Point2[] row, List<int> marks, bool isClosed, double toleranceMm, string label, out int farthest)
    {
        var chain = new ArcChain(row, isClosed, marks.Count - 1);
        var numbers = LeastSquares.Minimise(chain.Distances, chain.Start(marks), chain.Steps());
        farthest = -1;
        if (chain.Distances(numbers) is not { } distances)
        {
            return null;
        }

        farthest = Enumerable.Range(0, row.Length).MaxBy(k => Math.Abs(distances[k]));
        if (!(Math.Abs(distances[farthest]) <= toleranceMm))
        {
            return null;
        }

        var vertices = chain.Vertices(chain.Pieces(numbers)!, label).ToList();
        return IsWithin(vertices, row, isClosed, toleranceMm) ? vertices : null;
    }

    // The distances of the search are to whole circles; what counts is the distance to the chain.
    private static bool IsWithin(List<Vertex> vertices, Point2[] row, bool isClosed, double toleranceMm)
    {
        if (!vertices.TrueForAll(v => v.Position.IsFinite && Math.Abs(v.Bulge) <= 1))
        {
            return false;
        }

        var contour = new Contour(isClosed ? vertices : vertices.Append(new Vertex(row[^1])), isClosed);
        return Array.TrueForAll(row, p => contour.DistanceTo(p) <= toleranceMm);
    }

    private static List<Vertex> Whole(CircleFit fit, Point2[] points, string label)
    {
        var center = fit.Mean - (fit.B / (2 * fit.A));
        var area = points.Zip([.. points.Skip(1), points[0]], (a, b) => (a - center).Cross(b - center)).Sum();
        var circle = Contour.Circle(center, 1 / fit.Curvature, label);
        return [.. (area < 0 ? circle.Reversed() : circle).Vertices];
    }
}
