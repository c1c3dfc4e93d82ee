using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Plans.Sheets;

/// <summary>What the list under a plan says of a mark: what it is about, on which side and at which wall, and how long.</summary>
internal static class MarkWords
{
    /// <summary>"rosette channel, bass side, outer wall 52 and hole-side wall 48 mm".</summary>
    public static string Of(Finding finding, LengthUnit units) =>
        $"{Short(finding.Subject)}{Side(finding)}, {Lengths(finding, units)}";

    /// <summary>", bass side, hole-side wall": what the subject of a run does not say, for a heading.</summary>
    public static string Place(Finding finding)
    {
        var edges = FindingMarks.IsRun(finding) && finding.Where is not null
            ? Marks(finding).SelectMany((_, i) => Edge(finding, i).TrimEnd().Split('/')).Where(e => e.Length > 0).Distinct(StringComparer.Ordinal).ToList()
            : [];
        return Side(finding) + (edges.Count == 0 ? "" : $", {Say.Listed(edges)}");
    }

    // Of many edges in line the first two; the report has them all.
    private static string Short(string subject) => subject.Split(" and ") is [var first, var second, _, .. var more]
        ? $"{first} and {second} and {NumberFormat.Whole(more.Length + 1)} more"
        : subject;

    // Where the subject does not say it.
    private static string Side(Finding finding)
    {
        var isSaid = finding.Subject.Contains("bass", StringComparison.Ordinal) || finding.Subject.Contains("treble", StringComparison.Ordinal);
        if (isSaid || finding.Where is null || !FindingMarks.IsRun(finding))
        {
            return "";
        }

        return Marks(finding).Select(m => m.From.MidpointTo(m.To).X < 0 ? "bass side" : "treble side").Distinct().ToList() is [var only] ? $", {only}" : ", both sides";
    }

    // Of the marks of a run, by the edge that makes each where the subject names none; and what both faces have together where that decides.
    private static string Lengths(Finding finding, LengthUnit units)
    {
        // In inches too as the report says them: of whole mm.
        string Said(double mm) => units == LengthUnit.Inch ? LengthText.OnRule(Math.Round(mm), units) : NumberFormat.Trimmed(mm, 0);
        var unit = LengthText.Word(units);
        var measured = finding.Measured!.Value.Value;
        if (!FindingMarks.IsRun(finding))
        {
            // Room below nothing is what is missing.
            return (finding.Measured.Value.Unit, measured < 0) switch
            {
                ("mm", true) => $"{Said(-measured)} {unit} short",
                ("mm", false) => $"{Said(measured)} {unit}",
                var (other, _) => $"{NumberFormat.Trimmed(measured, 1)}{other}",
            };
        }

        var marks = Marks(finding).Index().Select(m => (Edge: Edge(finding, m.Index), Length: m.Item.From.DistanceTo(m.Item.To))).OrderByDescending(m => m.Length).ToList();
        var own = string.Join(" and ", marks.Select(m => $"{m.Edge}{Said(m.Length)}").Distinct());
        return measured - marks[0].Length > 1 ? $"{own}, together {Said(measured)} {unit}" : $"{own} {unit}";
    }

    private static string Edge(Finding finding, int mark)
    {
        var edges = finding.Traces.ElementAtOrDefault(mark) is { IsDefault: false } trace ? trace.Select(s => s.Label).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList() : [];
        return edges.Count == 0 || edges.Exists(e => finding.Subject.Contains(e, StringComparison.Ordinal)) ? "" : string.Join('/', edges) + " ";
    }

    private static IEnumerable<(Point2 From, Point2 To)> Marks(Finding finding) => finding.AlsoAt.Prepend(finding.Where!.Value);
}
