using System.Text;

namespace TopLayout.Lutherie.Designs;

/// <summary>The table of parameters in words: what help prints, what the README shows.</summary>
public static class ParameterList
{
    /// <summary>How often a section may stand in a file, in words.</summary>
    public static string Presence(Section section) => section switch
    {
        { IsRoot: true } => "the lines before the first header",
        { Presence: SectionPresence.Always } => "always there; what is left out has its default",
        { Presence: SectionPresence.Optional } => "only when its header is written",
        _ => $"as often as its header is written, at most {ValueText.Number(section.Most, 0)} times",
    };

    /// <summary>What a parameter's value is, in a word.</summary>
    public static string Kind(Parameter parameter) => parameter.Kind.ToString().ToLowerInvariant();

    /// <summary>The unit of <see cref="Parameter.Possible"/>: "mm", "°", "%", "°C"; empty for words and bare numbers.</summary>
    public static string Unit(Parameter parameter) => parameter.Kind switch
    {
        ParameterKind.Length or ParameterKind.Lengths => "mm",
        ParameterKind.Angle => "°",
        ParameterKind.Percent => "%",
        ParameterKind.Temperature => "°C",
        _ => "",
    };

    /// <summary>The default in general; "required" or "none" where there is none.</summary>
    public static string Default(Parameter parameter, ParameterTable table) =>
        Assumed(parameter, table)?.Shown ?? (parameter.Need == ParameterNeed.Required ? "required" : "none");

    /// <summary>One section for a terminal: a line for its header, then for each key its facts and its meaning.</summary>
    public static string Text(ParameterTable table, Section section)
    {
        var text = new StringBuilder();
        text.Append(section.IsRoot ? "(top of the file)" : section.Header).Append("  ").Append(section.Meaning).Append("; ").Append(Presence(section)).Append('\n');
        foreach (var parameter in table.Of(section))
        {
            var usual = parameter.UsualText() is { } range ? $"; usual {range}" : "";
            text.Append("  ").Append(parameter.Key).Append(": ").Append(parameter.Meaning).Append('\n');
            text.Append("      ").Append(Kind(parameter)).Append(", ").Append(parameter.AllowedText()).Append(usual).Append("; default: ")
                .Append(Default(parameter, table)).Append('\n');
            foreach (var body in Body.All.Where(b => OfBody(parameter, b).Length > 0))
            {
                text.Append("      ").Append(Body.Word(body)).Append(": ").Append(OfBody(parameter, body)).Append('\n');
            }
        }

        foreach (var group in table.Groups.Where(g => g.Section == section))
        {
            text.Append("  exactly one of ").Append(ValueText.AnyOf([.. group.Members.Select(m => m.Key)])).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>What a kind of body has for a parameter, as in "86 mm, usual from 82 to 90 mm"; empty where it has nothing of its own.</summary>
    public static string OfBody(Parameter parameter, BodyType body)
    {
        var (fallback, usual) = parameter.ByBody?.Of(body) ?? default;
        string?[] facts =
        [
            fallback is { } value ? Quantity.Shown(parameter.Kind, value, LengthUnit.Millimetre) : null,
            usual is { } range ? $"usual {Quantity.Range(parameter.Kind, range, LengthUnit.Millimetre)}" : null,
        ];
        return string.Join(", ", facts.OfType<string>());
    }

    /// <summary>The default in mm, degrees, % or °C, or as its word; null where there is none.</summary>
    internal static string? CanonicalDefault(Parameter parameter, ParameterTable table) => Assumed(parameter, table)?.Canonical;

    /// <summary>The default of a parameter without regard to a body: its own, or the one its group assumes.</summary>
    private static Bound? Assumed(Parameter parameter, ParameterTable table) =>
        parameter.Default(default, body: null) ?? table.Groups.FirstOrDefault(g => g.Members[0] == parameter)?.Default(default, body: null);
}
