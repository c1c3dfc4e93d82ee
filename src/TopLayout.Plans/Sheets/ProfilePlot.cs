using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The grain-line profile under a plan: for each grain line the longest unsupported stretch of glued edge along it, at true size, with the
/// two limits, and all such stretches together at a quarter of the size. It stands under the plan: a peak lies where the grain line that
/// causes it leaves the body at the tail.
/// </summary>
internal static class ProfilePlot
{
    private const string Part = "grain profile";
    private const string SumPart = "grain profile sum";
    private const double TotalScale = 0.25;
    private const double UnseenMm = 1e-3;
    private const double TickMm = 30;
    private const double InchTickMm = 25.4;
    private const double RowMm = 5;

    /// <summary>Draws the profile with its top below a height; returns the height of its foot, mm. Peaks tell the numbers of the marks up to the highest on the sheet.</summary>
    public static double Draw(SheetBoard board, ReviewedTop top, FaceView view, Box2 body, double topY, int marks)
    {
        var units = top.Layout.Design.Units;
        var (pass, fail) = (top.Grain.Calibration.PassLengthMm, top.Grain.Calibration.FailLengthMm);
        var height = Math.Max(fail + 12, top.Grain.Profile.Select(s => s.LongestMm).DefaultIfEmpty(0).Max() + 6);
        var foot = topY - height - 8;
        Point2 At(double x, double run) => new(x, foot + run);
        board.Line(Part, Role.Dimension, At(body.Min.X, 0), At(body.Max.X, 0));
        board.Line(Part, Role.Dimension, At(body.Min.X, 0), At(body.Min.X, height));
        foreach (var (limit, word) in (ReadOnlySpan<(double, string)>)[(pass, "and less: a crack stops"), (fail, "and more: it runs on")])
        {
            board.Line(Part, Role.Centre, At(body.Min.X, limit), At(body.Max.X, limit));
            board.Write(Part, $"{Said(limit, units)} {word}", At(body.Max.X + 2, limit - 1.4), role: Role.Dimension);
        }

        for (var tick = 0.0; tick <= height; tick += units == LengthUnit.Inch ? InchTickMm : TickMm)
        {
            if (Math.Abs(tick - pass) >= RowMm && Math.Abs(tick - fail) >= RowMm)
            {
                board.Line(Part, Role.Dimension, At(body.Min.X - 1, tick), At(body.Min.X, tick));
                board.Write(Part, Said(tick, units), At(body.Max.X + 2, tick - 1.4), role: Role.Dimension);
            }
        }

        board.Write(
            Part,
            $"thick: the longest unsupported glued edge on each grain line, both faces together, {LengthText.Name(units)}; dashed: all on that line, a quarter as high",
            At(body.Min.X, height + 2.5),
            role: Role.Dimension);
        var longest = Points(top, view, s => foot + s.LongestMm).ToList();
        Curve(board, SumPart, Points(top, view, s => foot + (s.TotalMm * TotalScale)).Zip(longest, (sum, edge) => (sum, Math.Min(sum.Y, edge.Y))), foot, Emphasis.Faint);
        Curve(board, Part, longest.Select(p => (p, foot)), foot, Emphasis.Normal);
        ProfilePeaks.Name(board, Part, top, view, Points(top, view, s => s.LongestMm), At(body.Min.X, 0), marks);

        return foot;
    }

    private static string Said(double mm, LengthUnit units) => units == LengthUnit.Inch ? LengthText.OnRule(mm, units) : NumberFormat.Trimmed(mm, 0);

    // Each point of a curve with the height down to which it is drawn where the curve begins and ends: the other curve is there below it.
    private static void Curve(SheetBoard board, string part, IEnumerable<(Point2 At, double Down)> points, double foot, Emphasis emphasis)
    {
        foreach (var run in Runs(points, foot))
        {
            board.Draw(part, Role.Finding, new Contour(run.Select(p => new Vertex(p)), isClosed: false), emphasis);
        }
    }

    // Where each grain line leaves the body at the tail.
    private static IEnumerable<Point2> Points(ReviewedTop top, FaceView view, Func<ProfileSample, double> height)
    {
        var (tail, left, right) = (top.Layout.Outline.Bounds.Min.Y, new Placement(default, -top.Layout.SkewBass, false), new Placement(default, top.Layout.SkewTreble, false));
        return top.Grain.Profile.Select(s => view.Map(new Point2(AtHeight(s.X, s.Half == TopHalf.Left ? left : right, tail), height(s))));
    }

    // Where a grain line passes a height of the top.
    private static double AtHeight(double x, Placement grain, double y)
    {
        var (on, along) = (grain.Apply(new Point2(x, 0)), grain.Apply(Vec2.UnitY));
        return on.X + (along.X * ((y - on.Y) / along.Y));
    }

    // The pieces of the curve that rise off the foot line, without points on top of each other or on the way straight on.
    private static IEnumerable<List<Point2>> Runs(IEnumerable<(Point2 At, double Down)> points, double foot)
    {
        var (run, down) = (new List<Point2>(), foot);
        foreach (var (p, low) in points.Append((new Point2(0, foot), foot)))
        {
            if (p.Y <= foot + Tolerances.ShortestMm)
            {
                Add(run, new Point2(run.LastOrDefault().X, down));
                if (run.Count > 2)
                {
                    yield return run;
                }

                run = [];
                continue;
            }

            if (run.Count == 0)
            {
                run.Add(new Point2(p.X, low));
            }

            Add(run, p);
            down = low;
        }
    }

    private static void Add(List<Point2> run, Point2 p)
    {
        if (run.Count > 1 && IsStraightOn(run[^2], run[^1], p))
        {
            run[^1] = p;
        }
        else if (run.Count > 0 && !run[^1].IsNear(p, Tolerances.ShortestMm))
        {
            run.Add(p);
        }
    }

    // A point on the straight way to the next says nothing; leaving it out moves the chart by some thousandths of a millimetre at most.
    private static bool IsStraightOn(Point2 from, Point2 by, Point2 to)
    {
        var along = to - from;
        return (by - from).Dot(along) > 0 && (to - by).Dot(along) > 0 && Math.Abs((by - from).Cross(along)) <= UnseenMm * along.Length;
    }
}
