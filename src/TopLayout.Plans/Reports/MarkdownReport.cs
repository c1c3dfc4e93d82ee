using System.Text;
using TopLayout.Drawing;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>The report to read and pin up: verdicts worst first, then the numbers to transfer, what was assumed, and the cautions.</summary>
public static class MarkdownReport
{
    /// <summary>The report as UTF-8.</summary>
    public static byte[] Write(ReviewedTop top)
    {
        var text = new StringBuilder();
        var design = top.Layout.Design;
        Line(text, $"# {design[Identity.Name].Value}, revision {design[Identity.Revision].Value}");
        Line(text, "");
        Line(text, $"Design {top.Hash}. Places are measured from the neck edge; lengths in {LengthText.Word(design.Units)} unless another unit stands beside them.");
        Line(text, "");
        Verdicts(text, top);
        Grain(text, top);
        foreach (var table in BenchNumbers.Of(top.Layout))
        {
            Table(text, table, design.Units);
        }

        Assumptions(text, top);
        Cautions(text);
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Verdicts(StringBuilder text, ReviewedTop top)
    {
        Line(text, "## Findings, worst first");
        Line(text, "");
        var shown = top.Findings.Where(f => f.Severity > Severity.Pass).ToList();
        if (shown.Count == 0)
        {
            Line(text, "None: every check passed, within what the checks look at.");
        }

        foreach (var f in shown)
        {
            Line(text, $"- **{FindingText.Word(f.Severity)} {f.Rule.Code}, {f.Subject}**: {f.Sentence}.");
            if (f.Measured is { } m)
            {
                Line(text, $"  Measured {NumberFormat.Trimmed(m.Value, 1)} {m.Unit}; limit {NumberFormat.Trimmed(m.Limit, 1)} {m.Unit}.");
            }

            if (f.Where is var (from, to))
            {
                Line(text, $"  On the top: from {Place(to)}, to {Place(from)}.");
            }

            if (f.Place is { } place)
            {
                Line(text, $"  In the design: {string.Join(", ", f.OtherPlaces.Prepend(place).Select(p => $"line {NumberFormat.Whole(p.Line)}").Distinct())}.");
            }

            if (f.Cure is { } cure)
            {
                Line(text, $"  Cure: {cure}.");
            }
        }

        Line(text, "");
    }

    private static void Grain(StringBuilder text, ReviewedTop top)
    {
        Table(text, GrainNumbers.Of(top.Grain), top.Layout.Design.Units);
        Line(text, "The profile under the plans shows the length alone; the verdict also weighs how unlike the part and the top move (the mismatch M).");
        Line(text, "");
    }

    private static void Table(StringBuilder text, NumberTable table, LengthUnit units)
    {
        if (table.Rows.IsEmpty)
        {
            return;
        }

        Line(text, $"## {table.Title}");
        Line(text, "");
        Line(text, "| " + string.Join(" | ", table.Columns.Select(c => c.Heading)) + " |");
        Line(text, "|" + string.Concat(table.Columns.Select(_ => " --- |")));
        foreach (var row in table.Rows)
        {
            Line(text, "| " + string.Join(" | ", row.Select(c => CellText.Of(c, units))) + " |");
        }

        Line(text, "");
    }

    private static void Assumptions(StringBuilder text, ReviewedTop top)
    {
        Line(text, "## What was assumed");
        Line(text, "");
        foreach (var assumption in top.Grain.Assumptions)
        {
            Line(text, $"- {assumption}.");
        }

        Line(text, "");
    }

    private static void Cautions(StringBuilder text)
    {
        Line(text, "## Cautions");
        Line(text, "");
        Line(text, "- Ranges here are common practice, not engineering approval. Measure the real neck before you place the bridge, and the bar on a print before you cut.");
        Line(text, "- Wood dust harms lungs, and some woods cause allergies: extract it, and wear a mask that seals.");
        Line(text, "- Routers: unplug to change bits, cut in shallow passes, clamp the work. Lasers: know the material, never leave one running alone.");
        Line(text, "- Write down the humidity when you glue. Where local rules or a licensed trade say otherwise, they hold.");
    }

    private static string Place(Geometry.Point2 p)
    {
        var side = p.X < 0 ? "bass" : "treble";
        return $"{NumberFormat.Trimmed(-p.Y, 1)} mm from the neck edge, {NumberFormat.Trimmed(Math.Abs(p.X), 1)} mm to the {side} side";
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
