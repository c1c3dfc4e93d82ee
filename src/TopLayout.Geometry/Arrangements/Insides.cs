namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Tells of many points at once whether they lie inside an area: the points wait in order of height, and each edge counts for those
/// within its own heights only.
/// </summary>
internal static class Insides
{
    /// <summary>For each point whether the area's border winds round it; points on the border may go either way.</summary>
    public static bool[] Of(Region area, Point2[] points)
    {
        var order = Enumerable.Range(0, points.Length).ToArray();
        var heights = points.Select(p => p.Y).ToArray();
        Array.Sort(heights, order);
        var windings = new int[points.Length];
        foreach (var loop in area.Loops)
        {
            foreach (var edge in loop.Segments)
            {
                Count(edge, points, heights, order, windings);
            }
        }

        return [.. windings.Select(w => w > 0)];
    }

    private static void Count(Segment edge, Point2[] points, double[] heights, int[] order, int[] windings)
    {
        var reach = Math.Abs(edge.Bulge) * (Math.Abs(edge.End.X - edge.Start.X) + Math.Abs(edge.End.Y - edge.Start.Y)) / 2;
        var (low, high) = (Math.Min(edge.Start.Y, edge.End.Y) - reach, Math.Max(edge.Start.Y, edge.End.Y) + reach);
        var left = Math.Min(edge.Start.X, edge.End.X) - reach;
        Curve? curve = null;
        for (var k = FirstAtLeast(heights, low); k < heights.Length && heights[k] <= high; k++)
        {
            if (points[order[k]].X >= left)
            {
                windings[order[k]] += LeftwardRays.Turns(curve ??= Curve.Of(edge), points[order[k]]);
            }
        }
    }

    private static int FirstAtLeast(double[] sorted, double value)
    {
        var (from, to) = (0, sorted.Length);
        while (from < to)
        {
            var middle = (from + to) / 2;
            (from, to) = sorted[middle] < value ? (middle + 1, to) : (from, middle);
        }

        return from;
    }
}
