using System.Collections.Immutable;
using TopLayout.Drawing;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Sheets;
using static TopLayout.Plans.Reports.ReportBlock;

namespace TopLayout.Plans.Reports;

/// <summary>What the report says, in order: verdicts worst first, then the numbers to transfer, what was assumed, and the cautions.</summary>
internal static class ReportContent
{
    /// <summary>All blocks.</summary>
    public static IEnumerable<ReportBlock> Of(ReviewedTop top)
    {
        var design = top.Layout.Design;
        yield return new Heading(1, $"{design[Identity.Name].Value}, revision {design[Identity.Revision].Value}");
        var inches = design.Units == LengthUnit.Inch ? " Inches are to the nearest sixty-fourth, thousandths in brackets; what is thinner than an eighth in thousandths alone." : "";
        yield return new Paragraph(
            $"Design {top.Hash}. Places are measured from the neck edge; lengths in {LengthText.Name(design.Units)} unless another unit stands beside them.{inches}");
        yield return new Heading(2, "Findings, worst first");
        var shown = top.Findings.Where(f => f.Severity > Severity.Pass).ToList();
        yield return shown.Count == 0
            ? new Paragraph("None: every check passed, within what the checks look at.")
            : new Bullets([.. shown.Select(f => Finding(f, FindingMarks.NumberOf(f, top), design.Units))]);
        if (Sheets.Cautions.HasFailed(top))
        {
            yield return new Paragraph(Sheets.Cautions.Withheld);
        }

        yield return new Table(GrainNumbers.Of(top.Grain));
        yield return new Paragraph(
            "Each side stands in this table as if it were the only one; the profile under the plans and the findings take all edges of both faces, or of one, together. "
            + "The profile shows the length alone; the verdict also weighs how unlike the part and the top move (the mismatch M).");
        foreach (var table in BenchNumbers.Of(top.Layout))
        {
            yield return new Table(table);
        }

        yield return new Heading(2, "What was assumed");
        yield return new Bullets([.. top.Grain.Assumptions.Select(a => new Item("", [$"{LengthText.Sentence(a, design.Units)}."]))]);
        yield return new Heading(2, "Cautions");
        yield return new Bullets([.. Cautions.Select(c => new Item("", [c]))]);
    }

    private static IEnumerable<string> Cautions =>
    [
        "Ranges here are common practice, not engineering approval. Measure the real neck before you place the bridge, and the bar on a print before you cut.",
        "Wood dust harms lungs, and some woods cause allergies: extract it, and wear a mask that seals.",
        "Routers: unplug to change bits, cut in shallow passes, clamp the work. Lasers: know the material, never leave one running alone.",
        "Write down the humidity when you glue. Where local rules or a licensed trade say otherwise, they hold.",
    ];

    private static Item Finding(Finding f, int? mark, LengthUnit units)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.Add($"{LengthText.Sentence(f.Sentence, units)}.");
        if (f.Measured is { } m)
        {
            string Said(double value) => m.Unit == "mm" ? LengthText.WithUnit(value, units) : $"{NumberFormat.Trimmed(value, 1)} {m.Unit}".TrimEnd();
            lines.Add($"Measured {Said(m.Value)}; limit {Said(m.Limit)}.");
        }

        if (f.Where is var (from, to))
        {
            var places = f.AlsoAt.Prepend((from, to)).Select(w => $"from {Place(w.Item2, units)}, to {Place(w.Item1, units)}");
            lines.Add($"On the top: {string.Join("; ", places)}.");
        }

        if (f.Place is { } place)
        {
            lines.Add($"In the design: {string.Join(", ", f.OtherPlaces.Prepend(place).Select(p => $"line {NumberFormat.Whole(p.Line)}").Distinct())}.");
        }

        if (f.Cure is { } cure)
        {
            lines.Add($"Cure: {LengthText.Sentence(cure, units)}.");
        }

        var where = mark is { } n ? $" (mark {NumberFormat.Whole(n)} on the {(n <= FindingMarks.MostOnPlan ? "plans" : "grain sheet")})" : "";
        return new Item($"{FindingText.Word(f.Severity)} {f.Rule.Code}, {f.Subject}{MarkWords.Place(f)}{where}", lines.ToImmutable());
    }

    private static string Place(Geometry.Point2 p, LengthUnit units)
    {
        var side = p.X < 0 ? "bass" : "treble";
        return $"{LengthText.OnRuleWithUnit(-p.Y, units)} from the neck edge, {LengthText.OnRuleWithUnit(Math.Abs(p.X), units)} to the {side} side";
    }
}
