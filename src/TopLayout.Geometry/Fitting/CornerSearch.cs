namespace TopLayout.Geometry.Fitting;

/// <summary>Corners in a row of measured points.</summary>
internal static class CornerSearch
{
    /// <summary>
    /// The indices at which the row turns by more than <paramref name="least"/>, in order. The turn is taken between chords of at
    /// least ten tolerances, so that scatter turns each by a tenth of a radian at most; of near ones the sharpest counts.
    /// </summary>
    public static List<int> Of(IReadOnlyList<Point2> points, bool isClosed, double toleranceMm, Angle least)
    {
        var reach = 10 * toleranceMm;
        var turns = Enumerable.Range(0, points.Count).Select(i => Turn(points, isClosed, i, reach)).ToList();
        return [.. Enumerable.Range(0, points.Count).Where(i => turns[i] > least && IsSharpest(i))];

        bool IsSharpest(int i) => Enumerable.Range(0, points.Count).All(j =>
            j == i || points[j].DistanceTo(points[i]) >= reach || turns[j] < turns[i] || (turns[j] == turns[i] && j > i));
    }

    private static Angle Turn(IReadOnlyList<Point2> points, bool isClosed, int i, double reach)
    {
        if (Away(-1) is not { } before || Away(1) is not { } after)
        {
            return Angle.Zero;
        }

        var turn = Trig.Turn(points[i] - before, after - points[i]);
        return turn < Angle.Zero ? -turn : turn;

        Point2? Away(int step)
        {
            for (var n = 1; n < points.Count; n++)
            {
                var j = i + (n * step);
                if (!isClosed && (j < 0 || j >= points.Count))
                {
                    return null;
                }

                var p = points[((j % points.Count) + points.Count) % points.Count];
                if (p.DistanceTo(points[i]) >= reach)
                {
                    return p;
                }
            }

            return null;
        }
    }
}
