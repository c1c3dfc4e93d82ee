using System.Text.Encodings.Web;
using System.Text.Json;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>The report for machines: the same findings and tables, lengths in mm, areas in mm², angles in degrees, to six decimals.</summary>
public static class JsonReport
{
    /// <summary>The report as UTF-8, indented.</summary>
    public static byte[] Write(ReviewedTop top)
    {
        using var buffer = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(buffer, options))
        {
            json.WriteStartObject();
            json.WriteString("name", top.Layout.Design[Identity.Name].Value);
            json.WriteString("revision", top.Layout.Design[Identity.Revision].Value);
            json.WriteString("design", top.Hash);
            json.WriteString("lengths", "mm");
            json.WriteStartArray("findings");
            foreach (var finding in top.Findings)
            {
                Finding(json, finding);
            }

            json.WriteEndArray();
            json.WriteStartObject("numbers");
            foreach (var table in BenchNumbers.Of(top.Layout, isMerged: false).Prepend(GrainNumbers.Of(top.Grain)))
            {
                Table(json, table);
            }

            json.WriteEndObject();
            json.WriteStartArray("assumed");
            foreach (var assumption in top.Grain.Assumptions)
            {
                json.WriteStringValue(assumption);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    private static void Finding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("code", finding.Rule.Code);
        json.WriteString("severity", FindingText.Word(finding.Severity));
        json.WriteString("subject", finding.Subject);
        json.WriteString("sentence", finding.Sentence);
        if (finding.Measured is { } measured)
        {
            json.WriteNumber("measured", Rounded(measured.Value));
            json.WriteNumber("limit", Rounded(measured.Limit));
            json.WriteString("unit", measured.Unit);
        }

        if (finding.Where is { } where)
        {
            json.WritePropertyName("where");
            Stretch(json, where);
        }

        if (!finding.AlsoAt.IsEmpty)
        {
            json.WriteStartArray("also_at");
            foreach (var stretch in finding.AlsoAt)
            {
                Stretch(json, stretch);
            }

            json.WriteEndArray();
        }

        if (finding.Place is { } place)
        {
            json.WriteStartArray("places");
            foreach (var p in finding.OtherPlaces.Prepend(place))
            {
                json.WriteStringValue(FindingText.Of(p));
            }

            json.WriteEndArray();
        }

        if (finding.Cure is { } cure)
        {
            json.WriteString("cure", cure);
        }

        json.WriteEndObject();
    }

    private static void Stretch(Utf8JsonWriter json, (Point2 From, Point2 To) stretch)
    {
        json.WriteStartArray();
        Point(json, stretch.From);
        Point(json, stretch.To);
        json.WriteEndArray();
    }

    private static void Point(Utf8JsonWriter json, Point2 p)
    {
        json.WriteStartObject();
        json.WriteNumber("from_neck_edge", Rounded(-p.Y));
        json.WriteNumber("across", Rounded(p.X));
        json.WriteEndObject();
    }

    private static void Table(Utf8JsonWriter json, NumberTable table)
    {
        json.WriteStartArray(table.Key);
        foreach (var row in table.Rows)
        {
            json.WriteStartObject();
            for (var i = 0; i < table.Columns.Length; i++)
            {
                Cell(json, table.Columns[i].Key, row[i]);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Cell(Utf8JsonWriter json, string key, Cell cell)
    {
        switch (cell)
        {
            case Cell.Words w:
                json.WriteString(key, w.Text);
                break;
            case Cell.Length l:
                json.WriteNumber(key, Rounded(l.Mm));
                break;
            case Cell.Area a:
                json.WriteNumber(key, Rounded(a.SquareMm));
                break;
            case Cell.Turn t:
                json.WriteNumber(key, Rounded(t.Angle.Degrees));
                break;
            case Cell.Number n:
                json.WriteNumber(key, n.Value);
                break;
        }
    }

    // Adding zero turns −0 into 0.
    private static double Rounded(double value) => Math.Round(value, 6) + 0.0;
}
