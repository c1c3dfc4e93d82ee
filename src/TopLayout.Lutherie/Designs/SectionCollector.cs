using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>
/// Sorts what a file says under the sections of the table, whether it is written under a header, as a dotted key or as an inline table,
/// and names whatever belongs to none.
/// </summary>
internal sealed class SectionCollector(ReadingContext context)
{
    private const int MostFindings = 200;

    private readonly Dictionary<string, Section> _sections = context.Table.Sections.ToDictionary(s => s.Key, StringComparer.Ordinal);
    private readonly CollectorProblems _problems = new(context);
    private readonly Dictionary<Section, (RawSection First, int Count)> _opened = [];

    public void Collect(DocumentSyntax document)
    {
        var root = new RawSection(Section.Root, context.Source.Start, isWritten: true);
        context.Sections.Add(root);
        AddAll(document.KeyValues, "", root);
        foreach (var table in document.Tables)
        {
            if (context.Findings.Count < MostFindings)
            {
                AddTable(table);
            }
        }
    }

    private void AddTable(TableSyntaxBase table)
    {
        var name = string.Join('.', KeyPath.Of(table.Name!).Parts);
        var header = context.Source.Place(table.OpenBracket!.Span.Start.Offset, table.CloseBracket!.Span.End.Offset + 1);
        if (!_sections.TryGetValue(name, out var section) || section.IsRoot)
        {
            _problems.AddUnknownHeader(name, table is TableArraySyntax, header);
            return;
        }

        var isRepeated = table is TableArraySyntax;
        if (isRepeated != (section.Presence == SectionPresence.Repeatable))
        {
            _problems.AddBrackets(section, isRepeated ? $"[[{name}]]" : $"[{name}]", header);
        }

        if (Opened(section, header, headerEnd: table.CloseBracket!.Span.End.Offset + 1) is { } raw)
        {
            AddAll(table.Items, name, raw);
        }
    }

    private void AddAll(IEnumerable<KeyValueSyntax> entries, string prefix, RawSection owner)
    {
        foreach (var entry in entries.Where(e => e.Key is not null && e.Value is not null))
        {
            if (context.Findings.Count < MostFindings)
            {
                Add(entry, prefix, owner);
            }
        }
    }

    private void Add(KeyValueSyntax entry, string prefix, RawSection owner)
    {
        var path = KeyPath.Of(entry.Key!);
        var place = context.Source.Place(path.From, path.To);
        if (_sections.TryGetValue(Joined(prefix, path.Parts), out var section) && !section.IsRoot)
        {
            AddWholeSection(section, entry.Value!, place);
        }
        else if (Owner(prefix, path, place, owner) is { } raw)
        {
            AddEntry(raw, path.Last, place, entry.Value!);
        }
    }

    /// <summary>The section a key belongs to: the one it stands in, or for a dotted key the one it names.</summary>
    private RawSection? Owner(string prefix, KeyPath path, SourcePlace place, RawSection standing)
    {
        if (path.Parts.Length == 1)
        {
            return standing;
        }

        var name = Joined(prefix, path.Owner);
        if (!_sections.TryGetValue(name, out var section) || section.IsRoot)
        {
            _problems.AddUnknownHeader(name, isRepeated: false, place);
            return null;
        }

        if (section.Presence == SectionPresence.Repeatable)
        {
            _problems.AddBrackets(section, string.Join('.', path.Parts), place);
            return null;
        }

        var open = context.Sections.Find(s => s.Section == section);
        return open is { IsDotted: true } ? open : Opened(section, place, isDotted: true);
    }

    /// <summary>A section given as a value: an inline table, or a list of them for a repeatable one.</summary>
    private void AddWholeSection(Section section, ValueSyntax value, SourcePlace place)
    {
        var isRepeatable = section.Presence == SectionPresence.Repeatable;
        switch (value)
        {
            case InlineTableSyntax table when !isRepeatable:
                AddInline(section, table, place);
                break;
            case InlineTableSyntax:
                _problems.AddBrackets(section, $"{section.Key} = {{ ... }}", place);
                break;
            case ArraySyntax list when isRepeatable && list.Items.All(i => i.Value is InlineTableSyntax):
                foreach (var table in list.Items.Take(section.Most + 1).Select(i => (InlineTableSyntax)i.Value!))
                {
                    AddInline(section, table, PlaceOf(table));
                }

                break;
            default:
                _problems.AddValueForSection(section, value, place);
                break;
        }
    }

    private void AddInline(Section section, InlineTableSyntax table, SourcePlace place)
    {
        if (Opened(section, place, inline: table) is { } raw)
        {
            AddAll(table.Items.Select(i => i.KeyValue!), section.Key, raw);
        }
    }

    private void AddEntry(RawSection raw, string key, SourcePlace keyPlace, ValueSyntax value)
    {
        if (context.Table.Of(raw.Section).All(p => p.Key != key))
        {
            _problems.AddUnknownKey(raw.Section, key, keyPlace);
        }
        else if (raw.Entry(key) is { } earlier)
        {
            _problems.AddTwice($"`{key}`", keyPlace, earlier.KeyPlace);
        }
        else
        {
            raw.Entries.Add(new RawEntry(key, keyPlace, value, PlaceOf(value)));
        }
    }

    /// <summary>A new section, or the earlier one with a finding when there may be only one; null beyond the most there may be.</summary>
    private RawSection? Opened(Section section, SourcePlace header, bool isDotted = false, InlineTableSyntax? inline = null, int headerEnd = 0)
    {
        var (first, count) = _opened.GetValueOrDefault(section);
        if (section.Presence == SectionPresence.Repeatable ? count >= section.Most : count == 1)
        {
            return Repeated(section, header, first);
        }

        var raw = new RawSection(section, header, isWritten: true) { IsDotted = isDotted, Inline = inline, HeaderEnd = headerEnd };
        context.Sections.Add(raw);
        _opened[section] = (first ?? raw, count + 1);
        return raw;
    }

    private RawSection? Repeated(Section section, SourcePlace header, RawSection earlier)
    {
        if (section.Presence == SectionPresence.Repeatable)
        {
            _problems.AddTooMany(section, header);
            return null;
        }

        _problems.AddTwice($"`{section.Header}`", header, earlier.Header);
        return earlier;
    }

    private SourcePlace PlaceOf(SyntaxNode node) => context.Source.Place(node.Span.Start.Offset, node.Span.End.Offset + 1);

    private static string Joined(string prefix, IEnumerable<string> parts) =>
        prefix.Length == 0 ? string.Join('.', parts) : $"{prefix}.{string.Join('.', parts)}";
}
