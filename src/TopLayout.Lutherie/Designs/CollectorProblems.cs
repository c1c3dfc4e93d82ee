using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>The findings about sections and keys that are unknown, doubled or of the wrong form.</summary>
internal sealed class CollectorProblems(ReadingContext context)
{
    private readonly HashSet<Section> _tooMany = [];

    public void AddUnknownHeader(string name, bool isRepeated, SourcePlace place)
    {
        if (context.Table.Parameters.FirstOrDefault(p => p.Path == name) is { } parameter)
        {
            context.SectionForValue(parameter, place);
            return;
        }

        var headers = context.Table.Sections.Where(s => !s.IsRoot).ToList();
        var near = Spelling.Nearest(name, headers.Select(s => s.Key));
        var shown = ValueText.Quotable(name);
        context.Error(
            Rules.UnknownSection,
            shown,
            $"there is no section `{(isRepeated ? $"[[{shown}]]" : $"[{shown}]")}`",
            place,
            near is not null
                ? $"did you mean `{headers.First(s => s.Key == near).Header}`?"
                : $"the sections are {string.Join(", ", headers.Select(s => $"`{s.Header}`"))}");
    }

    public void AddUnknownKey(Section section, string key, SourcePlace place)
    {
        var name = section.IsRoot ? section.ToString() : $"`{section.Header}`";
        var shown = ValueText.Quotable(key);
        context.Error(
            Rules.UnknownKey,
            section.IsRoot ? shown : $"{section.Key}.{shown}",
            $"{name} has no key `{shown}`",
            place,
            KeyHint(section, key, name));
    }

    public void AddTwice(string what, SourcePlace place, SourcePlace earlier) =>
        context.Error(Rules.WrittenTwice, what.Trim('`'), $"{what} is written twice", place, "delete one of the two", earlier);

    public void AddBrackets(Section section, string written, SourcePlace place) => context.Error(
        Rules.Brackets,
        section.Key,
        section.Presence == SectionPresence.Repeatable
            ? $"`{section.Key}` may stand several times, so it needs double brackets; it is written `{written}`"
            : $"there is only one `{section.Key}`, so it needs single brackets; it is written `{written}`",
        place,
        $"write `{section.Header}`");

    public void AddValueForSection(Section section, ValueSyntax value, SourcePlace place) => context.Error(
        Rules.SectionOrValue,
        section.Key,
        $"`{section.Key}` is a section; it is given {ValueSyntaxName.Of(value)}",
        place,
        context.Table.Of(section).FirstOrDefault() is { } first
            ? $"write `{section.Header}`, and below it keys such as `{context.Example(first)}`"
            : $"write `{section.Header}`");

    /// <summary>Said once for each kind of part.</summary>
    public void AddTooMany(Section section, SourcePlace place)
    {
        if (_tooMany.Add(section))
        {
            context.Error(
                Rules.TooMany,
                section.Key,
                $"`{section.Header}` may stand at most {ValueText.Number(section.Most, 0)} times; this is one more",
                place,
                "delete the ones that are not meant");
        }
    }

    private string KeyHint(Section section, string key, string name)
    {
        var elsewhere = context.Table.Parameters.Where(p => p.Key == key).Select(p => p.Section).ToList();
        var keys = context.Table.Of(section).Select(p => p.Key).ToList();
        var names = section.IsRoot ? keys.Concat(context.Table.Sections.Where(s => !s.IsRoot).Select(s => s.Key)) : keys;
        if (Spelling.Nearest(key, names) is { } near)
        {
            return $"did you mean `{near}`?";
        }

        return elsewhere.Count is > 0 and <= 3
            ? $"it belongs under {ValueText.AnyOf([.. elsewhere.Select(s => s.IsRoot ? s.ToString() : s.Header)])}"
            : $"the keys of {name} are {string.Join(", ", keys.Select(k => $"`{k}`"))}";
    }
}
