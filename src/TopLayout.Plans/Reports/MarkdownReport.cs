using System.Text;
using TopLayout.Lutherie.Designs;
using static TopLayout.Plans.Reports.ReportBlock;

namespace TopLayout.Plans.Reports;

/// <summary>The report as Markdown, to read and pin up.</summary>
public static class MarkdownReport
{
    /// <summary>The report as UTF-8.</summary>
    public static byte[] Write(ReviewedTop top)
    {
        var parts = ReportContent.Of(top).Select(b => Text(b, top.Layout.Design.Units)).Where(t => t.Length > 0);
        return Encoding.UTF8.GetBytes(string.Join('\n', parts));
    }

    private static string Text(ReportBlock block, LengthUnit units) => block switch
    {
        Heading h => $"{new string('#', h.Level)} {h.Text}\n",
        Paragraph p => $"{p.Text}\n",
        Bullets b => string.Concat(b.Items.Select(i => $"- {(i.Strong.Length > 0 ? $"**{i.Strong}**: " : "")}{string.Join("\n  ", i.Lines)}\n")),
        Table t => Text(t.Numbers, units),
        _ => throw new ArgumentOutOfRangeException(nameof(block)),
    };

    private static string Text(NumberTable table, LengthUnit units)
    {
        if (table.Rows.IsEmpty)
        {
            return "";
        }

        var text = new StringBuilder();
        text.Append("## ").Append(table.Title).Append("\n\n");
        Row(text, table.Columns.Select(c => c.Heading));
        text.Append('|').Append(string.Concat(table.Columns.Select(_ => " --- |"))).Append('\n');
        foreach (var row in table.Rows)
        {
            Row(text, row.Select(c => CellText.Of(c, units)));
        }

        return text.ToString();
    }

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
}
