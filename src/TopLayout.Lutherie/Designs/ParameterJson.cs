using System.Text.Encodings.Web;
using System.Text.Json;

namespace TopLayout.Lutherie.Designs;

/// <summary>The table of parameters for machines: lengths in mm, angles in degrees.</summary>
public static class ParameterJson
{
    /// <summary>The sections given, as UTF-8, indented.</summary>
    public static byte[] Write(ParameterTable table, IEnumerable<Section> sections)
    {
        using var buffer = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(buffer, options))
        {
            json.WriteStartObject();
            json.WriteStartArray("sections");
            foreach (var section in sections)
            {
                Write(json, table, section);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    private static void Write(Utf8JsonWriter json, ParameterTable table, Section section)
    {
        json.WriteStartObject();
        json.WriteString("section", section.Key);
        json.WriteString("header", section.Header);
        json.WriteString("meaning", section.Meaning);
        json.WriteString("presence", section.Presence.ToString().ToLowerInvariant());
        json.WriteNumber("most", section.Most);
        json.WriteStartArray("keys");
        foreach (var parameter in table.Of(section))
        {
            Write(json, table, parameter);
        }

        json.WriteEndArray();
        json.WriteStartArray("exactly_one_of");
        foreach (var group in table.Groups.Where(g => g.Section == section))
        {
            Words(json, null, group.Members.Select(m => m.Key));
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ParameterTable table, Parameter parameter)
    {
        json.WriteStartObject();
        json.WriteString("key", parameter.Key);
        json.WriteString("meaning", parameter.Meaning);
        json.WriteString("kind", ParameterList.Kind(parameter));
        json.WriteString("unit", ParameterList.Unit(parameter));
        json.WriteString("need", parameter.Need.ToString().ToLowerInvariant());
        Range(json, "possible", parameter.Possible);
        Range(json, "usual", parameter.Usual);
        if (parameter.Words.Count > 0)
        {
            Words(json, "words", parameter.Words);
        }

        if (ParameterList.CanonicalDefault(parameter, table) is { } fallback)
        {
            Value(json, "default", parameter, fallback);
        }

        if (parameter.ByBody is { } byBody)
        {
            json.WriteStartObject("by_body");
            foreach (var body in Body.All.Where(b => byBody.Of(b) != default))
            {
                OfBody(json, Body.Word(body), byBody.Of(body));
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void OfBody(Utf8JsonWriter json, string body, BodyValue value)
    {
        json.WriteStartObject(body);
        if (value.Default is { } fallback)
        {
            json.WriteNumber("default", fallback);
        }

        Range(json, "usual", value.Usual);
        json.WriteEndObject();
    }

    private static void Range(Utf8JsonWriter json, string name, (double Low, double High)? range)
    {
        if (range is var (low, high))
        {
            json.WriteStartArray(name);
            json.WriteNumberValue(low);
            json.WriteNumberValue(high);
            json.WriteEndArray();
        }
    }

    private static void Words(Utf8JsonWriter json, string? name, IEnumerable<string> words)
    {
        if (name is not null)
        {
            json.WritePropertyName(name);
        }

        json.WriteStartArray();
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }

    private static void Value(Utf8JsonWriter json, string name, Parameter parameter, string canonical)
    {
        json.WritePropertyName(name);
        if (parameter.Possible is null)
        {
            json.WriteStringValue(canonical);
        }
        else
        {
            json.WriteRawValue(canonical);
        }
    }
}
