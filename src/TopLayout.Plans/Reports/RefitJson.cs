using System.Text.Encodings.Web;
using System.Text.Json;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Plans.Reports;

/// <summary>The ways to refit a rosette for machines; lengths in mm to six decimals.</summary>
public static class RefitJson
{
    /// <summary>The report as UTF-8, indented.</summary>
    public static byte[] Write(RefitReport report)
    {
        using var buffer = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(buffer, options))
        {
            json.WriteStartObject();
            json.WriteString("lengths", "mm");
            Number(json, "old_diameter", report.OldDiameterMm);
            Number(json, "new_diameter", report.NewDiameterMm);
            Number(json, "ring_inner_radius", report.Ring.InnerMm);
            Number(json, "ring_outer_radius", report.Ring.OuterMm);
            Number(json, "floor", report.FloorMm);
            if (report.AirBeforeHz is { } before && report.AirAfterHz is { } after)
            {
                Number(json, "air_ratio", after / before);
                Number(json, "air_before_hz", before);
                Number(json, "air_after_hz", after);
            }

            if (report.Remark is { } remark)
            {
                json.WriteString("remark", remark);
            }

            json.WriteStartArray("ways");
            foreach (var tried in report.Options)
            {
                Way(json, tried);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    private static void Way(Utf8JsonWriter json, TriedOption tried)
    {
        var option = tried.Option;
        json.WriteStartObject();
        json.WriteString("key", option.Key);
        json.WriteString("verdict", RefitText.Word(option.Verdict));
        json.WriteString("reason", option.Reason);
        json.WriteString("cost", option.Cost);
        Number(json, "inner_radius", option.InnerMm);
        Number(json, "outer_radius", option.OuterMm);
        Number(json, "margin", option.MarginMm);
        Number(json, "residue", option.ResidueMm);
        json.WriteString("residue_where", option.ResidueWhere);
        json.WriteNumber("fillers", option.Fillers);
        Findings(json, "new_findings", tried.NewFindings);
        Findings(json, "gone_findings", tried.GoneFindings);
        json.WriteEndObject();
    }

    private static void Findings(Utf8JsonWriter json, string key, IEnumerable<Finding> findings)
    {
        json.WriteStartArray(key);
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Rule.Code);
            json.WriteString("severity", FindingText.Word(finding.Severity));
            json.WriteString("sentence", finding.Sentence);
            json.WriteString("cure", finding.Cure ?? "");
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string key, double value) => json.WriteNumber(key, Math.Round(value, 6) + 0.0);
}
