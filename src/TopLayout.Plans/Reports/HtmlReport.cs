using System.Net;
using System.Text;
using TopLayout.Drawing;
using TopLayout.Drawing.Svg;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using static TopLayout.Plans.Reports.ReportBlock;

namespace TopLayout.Plans.Reports;

/// <summary>The report as one HTML file that needs nothing beside it: the drawings stand in it. It reads and prints without a network or a script.</summary>
public static class HtmlReport
{
    // Plain, and black on white paper.
    private const string Style =
        "body{font:16px/1.5 sans-serif;max-width:60em;margin:2em auto;padding:0 1em;color:#111;background:#fff}"
        + "table{border-collapse:collapse;margin:1em 0}th,td{border-bottom:1px solid #999;padding:.2em .7em;text-align:left}"
        + "td.number{text-align:right;font-variant-numeric:tabular-nums}figure{margin:1em 0}img{max-width:100%;height:auto}"
        + "td.number,th{white-space:nowrap}li{margin:.4em 0}"

        // On paper a drawing and its caption stay on one page, a heading with its table, and a table's head on every page of it.
        + "@media print{body{max-width:none;margin:0;font-size:11pt}figure,li,tr{break-inside:avoid}h2{break-after:avoid}"
        + "img{max-height:85vh;max-width:100%;width:auto}th{white-space:normal}}";

    /// <summary>The report as UTF-8.</summary>
    /// <param name="top">What it reports.</param>
    /// <param name="drawings">Sheets to show in it, in order.</param>
    public static byte[] Write(ReviewedTop top, IEnumerable<Sheet> drawings)
    {
        var text = new StringBuilder();
        var title = Encoded(top.Layout.Design[Identity.Name].Value);
        text.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        text.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        Line(text, $"<title>{title}</title>\n<style>{Style}</style>\n</head>\n<body>");
        var blocks = ReportContent.Of(top).ToList();

        // The drawings follow the findings: before the first table.
        var numbers = blocks.FindIndex(b => b is Table);
        Append(text, blocks[..numbers], top.Layout.Design.Units);
        foreach (var sheet in drawings)
        {
            Append(text, sheet);
        }

        Append(text, blocks[numbers..], top.Layout.Design.Units);
        text.Append("</body>\n</html>\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Append(StringBuilder text, IEnumerable<ReportBlock> blocks, LengthUnit units)
    {
        foreach (var block in blocks)
        {
            text.Append(block switch
            {
                Heading h => $"<h{NumberFormat.Whole(h.Level)}>{Marked(h.Text)}</h{NumberFormat.Whole(h.Level)}>\n",
                Paragraph p => $"<p>{Marked(p.Text)}</p>\n",
                Bullets b => $"<ul>\n{string.Concat(b.Items.Select(Text))}</ul>\n",
                Table t => Text(t.Numbers, units),
                _ => throw new ArgumentOutOfRangeException(nameof(blocks)),
            });
        }
    }

    // As a picture of its own, so that names inside drawings cannot clash. On paper it is not at true size, and says so.
    private static void Append(StringBuilder text, Sheet sheet)
    {
        using var svg = new MemoryStream();
        SvgWriter.Write(sheet, svg);
        Line(text, $"<figure>\n<img alt=\"{Encoded(sheet.Description)}\" src=\"data:image/svg+xml;base64,{Convert.ToBase64String(svg.ToArray())}\">");
        Line(text, $"<figcaption>{Encoded(sheet.Title)}. Not to scale here: print the sheet itself to work from.</figcaption>\n</figure>");
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');

    private static string Text(Item item) =>
        $"<li>{(item.Strong.Length > 0 ? $"<strong>{Marked(item.Strong)}</strong>: " : "")}{string.Join("<br>\n", item.Lines.Select(Marked))}</li>\n";

    private static string Text(NumberTable table, LengthUnit units)
    {
        if (table.Rows.IsEmpty)
        {
            return "";
        }

        var head = string.Concat(table.Columns.Select(c => $"<th>{Encoded(c.Heading)}</th>"));
        var rows = table.Rows.Select(r => $"<tr>{string.Concat(r.Select(c => Text(c, units)))}</tr>\n");
        return $"<h2>{Encoded(table.Title)}</h2>\n<table>\n<thead><tr>{head}</tr></thead>\n<tbody>\n{string.Concat(rows)}</tbody>\n</table>\n";
    }

    private static string Text(Cell cell, LengthUnit units) =>
        $"<td{(cell is Cell.Words ? "" : " class=\"number\"")}>{Encoded(CellText.Of(cell, units))}</td>";

    // What stands between backticks is typed as it is.
    private static string Marked(string text) => string.Concat(text.Split('`').Select((part, i) => i % 2 == 0 ? Encoded(part) : $"<code>{Encoded(part)}</code>"));

    private static string Encoded(string text) => WebUtility.HtmlEncode(text);
}
