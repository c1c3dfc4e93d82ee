using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Plans.Sheets;

/// <summary>What the list under a plan says of a mark: what it is about, on which side and at which wall, and how long.</summary>
internal static class MarkWords
{
    /// <summary>"rosette channel, bass side, outer wall 52 and inner wall 48 mm".</summary>
    public static string Of(Finding finding) =>
        $"{Short(finding.Subject)}{(FindingMarks.IsRun(finding) ? Side(finding) : "")}, {Lengths(finding)} mm";

    // Of many edges in line the first two; the report has them all.
    private static string Short(string subject) => subject.Split(" and ") is [var first, var second, _, .. var more]
        ? $"{first} and {second} and {NumberFormat.Whole(more.Length + 1)} more"
        : subject;

    // Where the subject does not say it.
    private static string Side(Finding finding)
    {
        if (finding.Subject.Contains("bass", StringComparison.Ordinal) || finding.Subject.Contains("treble", StringComparison.Ordinal))
        {
            return "";
        }

        return Marks(finding).Select(m => m.From.MidpointTo(m.To).X < 0 ? "bass side" : "treble side").Distinct().ToList() is [var only] ? $", {only}" : ", both sides";
    }

    // Of the marks of a run, by the edge that makes each where the subject names none; and what both faces have together where that decides.
    private static string Lengths(Finding finding)
    {
        var measured = finding.Measured!.Value.Value;
        if (!FindingMarks.IsRun(finding))
        {
            return NumberFormat.Trimmed(measured, 0);
        }

        var marks = Marks(finding).Index().Select(m => (Edge: Edge(finding, m.Index), Length: m.Item.From.DistanceTo(m.Item.To))).OrderByDescending(m => m.Length).ToList();
        var own = string.Join(" and ", marks.Select(m => $"{m.Edge}{NumberFormat.Trimmed(m.Length, 0)}").Distinct());
        return measured - marks[0].Length > 1 ? $"{own}, together {NumberFormat.Trimmed(measured, 0)}" : own;
    }

    private static string Edge(Finding finding, int mark)
    {
        var edges = finding.Traces.ElementAtOrDefault(mark) is { IsDefault: false } trace ? trace.Select(s => s.Label).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList() : [];
        return edges.Count == 0 || edges.Exists(e => finding.Subject.Contains(e, StringComparison.Ordinal)) ? "" : string.Join('/', edges) + " ";
    }

    private static IEnumerable<(Point2 From, Point2 To)> Marks(Finding finding) => finding.AlsoAt.Prepend(finding.Where!.Value);
}
