using System.Text;

namespace TopLayout.Lutherie.Designs;

/// <summary>The table of parameters as it stands in the README.</summary>
public static class ParameterMarkdown
{
    /// <summary>A table for each section, then the values by kind of body; lines end in a line feed.</summary>
    public static string Write(ParameterTable table)
    {
        var text = new StringBuilder();
        foreach (var section in table.Sections)
        {
            text.Append(section.IsRoot ? "**The top of the file**" : $"**`{section.Header}`** {section.Meaning}").Append(": ").Append(ParameterList.Presence(section)).Append("\n\n");
            Row(text, ["key", "meaning", "kind", "possible", "usual", "default"]);
            Row(text, ["---", "---", "---", "---", "---", "---"]);
            foreach (var parameter in table.Of(section))
            {
                Row(text, Facts(parameter, table));
            }

            text.Append('\n');
        }

        ByBody(table, text);
        return text.ToString();
    }

    private static string[] Facts(Parameter parameter, ParameterTable table) =>
    [
        $"`{parameter.Key}`", parameter.Meaning, ParameterList.Kind(parameter), parameter.AllowedText(), parameter.UsualText() ?? "",
        ParameterList.Default(parameter, table),
    ];

    private static void ByBody(ParameterTable table, StringBuilder text)
    {
        text.Append("**By kind of body**: the default, and in brackets the usual range, where a `body` has its own; mm and degrees\n\n");
        Row(text, ["key", .. Body.All.Select(b => $"`{Body.Word(b)}`")]);
        Row(text, ["---", .. Body.All.Select(_ => "---")]);
        foreach (var parameter in table.Parameters.Where(p => p.ByBody is not null))
        {
            Row(text, [$"`{parameter.Path}`", .. Body.All.Select(b => Cell(parameter.ByBody!.Of(b)))]);
        }
    }

    private static string Cell(BodyValue value)
    {
        string?[] parts =
        [
            value.Default is { } fallback ? ValueText.Number(fallback, 4) : null,
            value.Usual is var (low, high) ? $"({ValueText.Number(low, 4)} to {ValueText.Number(high, 4)})" : null,
        ];
        return string.Join(' ', parts.OfType<string>());
    }

    private static void Row(StringBuilder text, string[] cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
}
