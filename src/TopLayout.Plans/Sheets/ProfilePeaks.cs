using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Plans.Sheets;

/// <summary>The peaks of the profile at or over the limit from which a crack runs on: the marks of the findings on its grain lines, or how long it is.</summary>
internal static class ProfilePeaks
{
    /// <summary>What it means when a peak has no mark.</summary>
    public const string Unmarked = "length alone; a peak without a mark passes, because its part and the top move nearly alike";

    private const double OverMm = 2.6;

    // A number and the white beside it.
    private const double ApartMm = 9;
    private const double NoteMm = 4.2;

    // Stretches nearer to each other are one peak, and heights alike within this are one top, mm.
    private const double TouchMm = 0.5;
    private const double LevelMm = 0.05;

    /// <summary>One peak.</summary>
    /// <param name="FromX">Where the profile rises over the limit, x on the sheet, mm.</param>
    /// <param name="ToX">Where it falls under it.</param>
    /// <param name="TopX">The middle of its top.</param>
    /// <param name="LengthMm">How high it is.</param>
    public readonly record struct Peak(double FromX, double ToX, double TopX, double LengthMm);

    /// <summary>The peaks of a profile in order of x: each stretch at or over a limit, by its highest top.</summary>
    /// <param name="profile">Points of the profile, x on the sheet and length, mm.</param>
    /// <param name="limitMm">The limit, mm.</param>
    public static IReadOnlyList<Peak> Of(IEnumerable<Point2> profile, double limitMm)
    {
        var stretches = new List<List<Point2>>();
        var isOver = false;
        foreach (var p in profile.OrderBy(p => p.X))
        {
            if (p.Y >= limitMm && (isOver || (stretches.Count > 0 && p.X - stretches[^1][^1].X <= TouchMm)))
            {
                stretches[^1].Add(p);
            }
            else if (p.Y >= limitMm)
            {
                stretches.Add([p]);
            }

            isOver = p.Y >= limitMm;
        }

        return [.. stretches.Select(Top)];
    }

    /// <summary>Asks for the numbers over the peaks, and says under the plot what a peak without a mark is, when there is one.</summary>
    public static void Name(SheetBoard board, string part, ReviewedTop top, FaceView view, IEnumerable<Point2> profile, Point2 foot, int highest)
    {
        var (tail, reach, isUnmarked) = (top.Layout.Outline.Bounds.Min.Y, top.Grain.Calibration.BandHalfWidthMm, false);
        var marks = Marks(top, view, tail).Where(m => m.Number <= highest).ToList();
        var named = new List<Peak>();
        foreach (var peak in Of(view.Placement.Mirrored ? profile.Reverse() : profile, top.Grain.Calibration.FailLengthMm).OrderByDescending(p => Math.Round(p.LengthMm, 3)).ThenBy(p => Math.Abs(p.TopX)))
        {
            var there = marks.Where(m => m.X >= peak.FromX - reach && m.X <= peak.ToX + reach).ToList();
            var own = there.Select(m => NumberFormat.Whole(m.Number)).Distinct().ToList();
            isUnmarked |= own.Count == 0;

            // Beside a higher one it has no room, and without a mark nothing to say that the curve does not show.
            if (own.Count == 0 && named.Exists(n => Math.Abs(n.TopX - peak.TopX) < ApartMm))
            {
                continue;
            }

            named.Add(peak);

            // The profile adds up whatever lies on a line, the list may say less of a mark: one number for a mark, or none.
            var isOwn = own.Count == 0 || there.Exists(m => Math.Abs(m.LengthMm - peak.LengthMm) <= 1);
            string[] words = [.. isOwn ? [LengthText.OnRule(Math.Round(peak.LengthMm), top.Layout.Design.Units)] : (ReadOnlySpan<string>)[], .. own.Count == 0 ? [] : (ReadOnlySpan<string>)[$"mark{(own.Count > 1 ? "s" : "")} {Say.Listed(own)}"]];
            var at = new Point2(peak.TopX, foot.Y + peak.LengthMm);
            board.Name(new LabelRequest(part, Role.Dimension, string.Join(", ", words), SheetBoard.TextMm, at) { Preferred = [at + new Vec2(0, OverMm)] });
        }

        if (isUnmarked)
        {
            board.Write(part, Unmarked, foot - new Vec2(0, NoteMm), role: Role.Dimension);
        }
    }

    private static Peak Top(List<Point2> stretch)
    {
        var most = stretch.Max(p => p.Y);
        var first = stretch.FindIndex(p => p.Y >= most - LevelMm);
        var last = stretch.FindIndex(first, p => p.Y < most - LevelMm) is >= 0 and var end ? end - 1 : stretch.Count - 1;
        return new Peak(stretch[0].X, stretch[^1].X, (stretch[first].X + stretch[last].X) / 2, most);
    }

    // Where the grain lines of the marks leave the body at the tail, x on the sheet.
    private static IEnumerable<(double X, int Number, double LengthMm)> Marks(ReviewedTop top, FaceView view, double tailY) =>
        from finding in top.Findings
        where finding.Where is not null && FindingMarks.IsRun(finding)
        from number in FindingMarks.NumberOf(finding, top) is { } n ? (int[])[n] : []
        from mark in finding.AlsoAt.Prepend(finding.Where!.Value)
        let along = (mark.From - mark.To).Unit
        select (view.Map(mark.From + (along * ((mark.From.Y - tailY) / -along.Y))).X, number, finding.Measured!.Value.Value);
}
