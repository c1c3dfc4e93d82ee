namespace TopLayout.Geometry.Fitting;

/// <summary>
/// Points cut into spans that single circles fit: the first guess of where one arc ends and the next begins. A span runs from its mark
/// up to the point before the next mark, so a joint lies somewhere between two points; the last mark is the number of points.
/// </summary>
internal static class Spans
{
    // A circle takes three points; one bound to its neighbours by smooth joints is told by two.
    private const int Fewest = 3;
    private const int FewestSmooth = 2;

    /// <summary>
    /// Greedy: each span is the longest whose circle stays within the tolerance, found by doubling and halving. Without a demand on
    /// the joints no cut needs fewer spans, but where a longer span fits again that a shorter one did not.
    /// </summary>
    public static List<int> Longest(Point2[] points, double toleranceMm)
    {
        List<int> marks = [0];
        while (marks[^1] < points.Length)
        {
            var from = marks[^1];
            var (count, step) = (Math.Min(Fewest, points.Length - from), 2);
            while (Fits(count + step))
            {
                count += step;
                step *= 2;
            }

            for (; step > 0; step /= 2)
            {
                count += Fits(count + step) ? step : 0;
            }

            marks.Add(from + count);

            bool Fits(int more) => from + more <= points.Length && CircleFit.Of(points.AsSpan(from, more)).Largest(points.AsSpan(from, more)) <= toleranceMm;
        }

        // What is left at the end must hold a circle too.
        if (marks.Count > 2 && points.Length - marks[^2] < Fewest)
        {
            marks[^2] = points.Length - Fewest;
        }

        return marks.Count > 2 && marks[^2] - marks[^3] < Fewest ? [.. marks[..^2], points.Length] : marks;
    }

    /// <summary>Moves each inner mark to where the two circles beside it fit best together (least squares), in a few rounds.</summary>
    public static void Settle(Point2[] points, List<int> marks)
    {
        for (var round = 0; round < 4; round++)
        {
            for (var i = 1; i < marks.Count - 1; i++)
            {
                Settle(points, marks, i);
            }
        }
    }

    /// <summary>Halves the span that holds a point, or else the one that its circle fits worst; false when none has room.</summary>
    public static bool Split(Point2[] points, List<int> marks, int point)
    {
        var at = marks.FindIndex(m => m > point);
        if (at <= 0 || !HasRoom(at))
        {
            at = Enumerable.Range(1, marks.Count - 1).Where(HasRoom).OrderByDescending(i => Squares(points, marks[i - 1], marks[i])).FirstOrDefault();
        }

        if (at > 0)
        {
            marks.Insert(at, (marks[at - 1] + marks[at]) / 2);
        }

        return at > 0;

        bool HasRoom(int i) => marks[i] - marks[i - 1] >= 2 * FewestSmooth;
    }

    private static void Settle(Point2[] points, List<int> marks, int i)
    {
        var (low, high) = (marks[i - 1] + FewestSmooth, marks[i + 1] - FewestSmooth);
        var best = Both(marks[i]);
        for (var step = Math.Max(1, (high - low) / 4); step > 0; step /= 2)
        {
            foreach (var mark in (ReadOnlySpan<int>)[marks[i] - step, marks[i] + step])
            {
                var both = mark >= low && mark <= high ? Both(mark) : double.PositiveInfinity;
                if (both < best)
                {
                    (marks[i], best) = (mark, both);
                }
            }
        }

        double Both(int mark) => Squares(points, marks[i - 1], mark) + Squares(points, mark, marks[i + 1]);
    }

    private static double Squares(Point2[] points, int from, int to)
    {
        var span = points.AsSpan(from, to - from);
        return CircleFit.Of(span).Squares(span);
    }
}
