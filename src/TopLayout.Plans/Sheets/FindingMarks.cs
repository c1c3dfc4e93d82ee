using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The findings on a plan: the stretch of the top between two bars across the grain line, a number beside it, and the list of numbers with
/// what was measured. Widths and dashes tell the verdicts apart without colour.
/// </summary>
internal static class FindingMarks
{
    private const string Part = "grain run";
    private const int MostListed = 6;

    /// <summary>The findings that are marked: those with a place on the top that ask for something, worst first.</summary>
    public static IReadOnlyList<Finding> Marked(ReviewedTop top) =>
        [.. top.Findings.Where(f => f.Where is not null && f.Severity is Severity.Fail or Severity.Warning).Take(MostListed)];

    /// <summary>Marks each stretch and asks for its number.</summary>
    public static void Draw(SheetBoard board, ReviewedTop top, FaceView view)
    {
        var number = 0;
        foreach (var finding in Marked(top))
        {
            number++;
            var (from, to) = (view.Map(finding.Where!.Value.From), view.Map(finding.Where.Value.To));
            var part = $"{Part} {NumberFormat.Whole(number)}";
            var emphasis = Of(finding.Severity);
            board.Line(part, Role.Finding, from, to, emphasis);
            foreach (var end in (ReadOnlySpan<Point2>)[from, to])
            {
                board.Line(part, Role.Finding, end - new Vec2(3, 0), end + new Vec2(3, 0), Emphasis.Normal);
            }

            board.Name(new LabelRequest(part, Role.Finding, NumberFormat.Whole(number), 4, from.MidpointTo(to)) { Priority = -1, Emphasis = emphasis });
        }
    }

    /// <summary>Writes the list under a height; returns the height below it, mm.</summary>
    public static double List(SheetBoard board, ReviewedTop top, Point2 topLeft)
    {
        var y = topLeft.Y;
        var number = 0;
        foreach (var finding in Marked(top))
        {
            number++;
            y -= 5;
            board.Write(
                "findings",
                $"{NumberFormat.Whole(number)} {FindingText.Word(finding.Severity)}: {finding.Subject}, {NumberFormat.Trimmed(finding.Measured!.Value.Value, 0)} mm",
                new Point2(topLeft.X, y),
                role: Role.Text,
                emphasis: Of(finding.Severity));
        }

        return y;
    }

    private static Emphasis Of(Severity severity) => severity == Severity.Fail ? Emphasis.Bad : Emphasis.Doubtful;
}
