using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The grain-line profile under a plan: for each grain line the longest unsupported stretch of glued edge along it, at true size, with the
/// two limits. It stands under the plan, so a peak lies on the grain line that causes it.
/// </summary>
internal static class ProfilePlot
{
    private const string Part = "grain profile";

    /// <summary>Draws the profile with its top below a height; returns the height of its foot, mm.</summary>
    public static double Draw(SheetBoard board, ReviewedTop top, FaceView view, Box2 body, double topY)
    {
        var (pass, fail) = (top.Grain.Calibration.PassLengthMm, top.Grain.Calibration.FailLengthMm);
        var height = Math.Max(fail + 12, top.Grain.Profile.Select(s => s.LongestMm).DefaultIfEmpty(0).Max() + 6);
        var foot = topY - height - 8;
        Point2 At(double x, double run) => new(x, foot + run);
        board.Line(Part, Role.Dimension, At(body.Min.X, 0), At(body.Max.X, 0));
        board.Line(Part, Role.Dimension, At(body.Min.X, 0), At(body.Min.X, height));
        foreach (var (limit, word) in (ReadOnlySpan<(double, string)>)[(0, "0"), (pass, $"{NumberFormat.Trimmed(pass, 0)} stops"), (fail, $"{NumberFormat.Trimmed(fail, 0)} runs on")])
        {
            if (limit > 0)
            {
                board.Line(Part, Role.Centre, At(body.Min.X, limit), At(body.Max.X, limit));
            }

            board.Write(Part, word, At(body.Max.X + 2, limit - 1.4), role: Role.Dimension);
        }

        board.Write(Part, "longest unsupported glued edge on each grain line, mm (length alone)", At(body.Min.X, height + 2.5), role: Role.Dimension);
        var points = top.Grain.Profile.Select(s => view.Map(new Point2(s.X, foot + s.LongestMm))).ToList();
        foreach (var run in Runs(points, foot))
        {
            board.Draw(Part, Role.Finding, new Contour(run.Select(p => new Vertex(p)), isClosed: false));
        }

        return foot;
    }

    // The pieces of the curve that rise off the foot line, without points on top of each other.
    private static IEnumerable<List<Point2>> Runs(IEnumerable<Point2> points, double foot)
    {
        var run = new List<Point2>();
        foreach (var p in points)
        {
            if (p.Y <= foot + Tolerances.ShortestMm)
            {
                if (run.Count > 1)
                {
                    yield return run;
                }

                run = [];
            }
            else if (run.Count == 0 || !run[^1].IsNear(p, Tolerances.ShortestMm))
            {
                run.Add(p);
            }
        }

        if (run.Count > 1)
        {
            yield return run;
        }
    }
}
