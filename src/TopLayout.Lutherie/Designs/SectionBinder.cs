using System.Collections.Immutable;
using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>Sections as written to sections of a design: values read, defaults filled in, what is missing named.</summary>
internal static class SectionBinder
{
    public static IEnumerable<DesignSection> Bind(Section section, ReadingContext context)
    {
        var written = context.Sections.Where(s => s.Section == section).ToList();
        if (written.Count == 0 && section.Presence == SectionPresence.Always)
        {
            written.Add(new RawSection(section, context.Source.Start, isWritten: false));
        }

        return written.Select((raw, index) => Bind(raw, index + 1, context)).ToList();
    }

    private static DesignSection Bind(RawSection raw, int number, ReadingContext context)
    {
        var values = ImmutableDictionary.CreateBuilder<Parameter, Bound>();
        foreach (var parameter in context.Table.Of(raw.Section))
        {
            if (Value(parameter, raw, context) is { } bound)
            {
                values[parameter] = bound;
            }
        }

        foreach (var group in context.Table.Groups.Where(g => g.Section == raw.Section))
        {
            if (OfGroup(group, raw, context) is { } assumed)
            {
                values[group.Members[0]] = assumed;
            }
        }

        return new DesignSection(raw.Section, number, raw.Header, values.ToImmutable());
    }

    private static Bound? Value(Parameter parameter, RawSection raw, ReadingContext context)
    {
        if (raw.Entry(parameter.Key) is not { } entry)
        {
            if (parameter.Need == ParameterNeed.Required)
            {
                AddMissing(parameter, raw, context);
            }

            return parameter.Default(raw.Header, context.Body);
        }

        if (entry.Value is InlineTableSyntax)
        {
            context.SectionForValue(parameter, entry.KeyPlace);
            return null;
        }

        var bound = parameter.Read(entry, context);
        if (parameter == ParameterTable.Units)
        {
            context.Units = (bound as Bound<LengthUnit>)?.Sourced.Value;
        }
        else if (parameter == Body.Type)
        {
            context.Body = (bound as Bound<BodyType>)?.Sourced.Value;
        }

        return bound;
    }

    private static void AddMissing(Parameter parameter, RawSection raw, ReadingContext context)
    {
        var line = $"`{context.Example(parameter)}`";
        context.Error(
            Rules.Missing,
            parameter.Path,
            $"`{parameter.Key}` is missing from {Name(raw.Section)}",
            raw.Header,
            raw.Section.IsRoot ? $"add a line such as {line} before the first section"
            : raw.IsWritten ? $"add a line such as {line} below {Name(raw.Section)}"
            : $"add {Name(raw.Section)}, and below it a line such as {line}");
    }

    /// <summary>The assumed value of a group's first member when none is written; findings when several are, or one is needed.</summary>
    private static Bound? OfGroup(ExactlyOneOf group, RawSection raw, ReadingContext context)
    {
        var given = group.Members.Select(m => raw.Entry(m.Key)).OfType<RawEntry>().OrderBy(e => (e.KeyPlace.Line, e.KeyPlace.Column)).ToList();
        if (given.Count == 0 && !group.HasDefault)
        {
            context.Error(
                Rules.GivenNot,
                group.Members[0].Path,
                $"{Name(raw.Section)} needs {ValueText.AnyOf([.. group.Members.Select(m => m.Key)])}",
                raw.Header,
                $"add one line, such as `{context.Example(group.Members[0])}`");
        }
        else if (given.Count > 1)
        {
            var keys = given.Select(e => $"`{e.Key}`").ToList();
            context.Error(
                Rules.GivenTwice,
                $"{group.Section.Key}.{given[^1].Key}",
                $"{Say.Listed(keys)} say the same thing in different ways; only one may be written",
                given[^1].KeyPlace,
                $"delete all but one of these lines",
                [.. given.SkipLast(1).Select(e => e.KeyPlace)]);
        }

        return given.Count == 0 ? group.Default(raw.Header, context.Body) : null;
    }

    private static string Name(Section section) => section.IsRoot ? section.ToString() : $"`{section.Header}`";
}
