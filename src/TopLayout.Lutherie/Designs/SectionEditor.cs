using System.Collections.Immutable;

namespace TopLayout.Lutherie.Designs;

/// <summary>
/// Writes a section of several alike into a design's text, or takes one out, and nothing else; takes out a key. Like
/// <see cref="DesignEditor"/>, it reads the new text again before it gives it out.
/// </summary>
public static class SectionEditor
{
    /// <summary>Writes a section before the first of its kind; or, when there is none, behind another one.</summary>
    /// <param name="text">A design that is read without error.</param>
    /// <param name="table">The table it is read against.</param>
    /// <param name="settings">Its values in the order they are written, at least one, all of one section.</param>
    /// <param name="behind">The section it goes behind when it is the first of its kind.</param>
    public static DesignEdit Insert(string text, ParameterTable table, IReadOnlyList<Setting> settings, Section behind)
    {
        var (reading, context) = DesignReader.ReadWhole(text, "design", table);
        if (reading.Design is not { } design)
        {
            return Unreadable(reading);
        }

        var section = settings[0].Parameter.Section;
        var first = context.Sections.Find(s => s.Section == section);
        if (first is { HeaderEnd: 0 })
        {
            return DesignEdit.Refused($"the design writes its `{section.Key}` as a list of inline tables; write each as `{section.Header}`");
        }

        var source = context.Source.Text;
        var end = source.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var lines = string.Concat(settings.Select(s => $"{s.Parameter.Key} = {ValueWriter.New(s, context.Shown)}{end}").Prepend(section.Header + end));
        var (at, inserted) = first is not null
            ? (LineStart(source, first.HeaderEnd), lines + end)
            : Behind(source, context.Sections.Find(s => s.Section == behind), lines, end);
        var edit = DesignEdit.Spliced(text, at + text.Length - source.Length, 0, inserted);
        string[] own = [.. settings.Select(s => $"{s.Parameter.Key} = {s.Canonical}")];
        return Objection(design, table, edit.Text!, section, (old, now) =>
            now.Length == old.Length + 1 && own.All(now[0].Contains) && now.Skip(1).Zip(old, Enumerable.SequenceEqual).All(same => same)) ?? edit;
    }

    /// <summary>Takes out the first section of a kind, with the empty lines behind it; lines that are comments alone stay.</summary>
    /// <param name="text">A design that is read without error.</param>
    /// <param name="table">The table it is read against.</param>
    /// <param name="section">The kind; the design has at least one, written under its header.</param>
    public static DesignEdit RemoveFirst(string text, ParameterTable table, Section section)
    {
        var (reading, context) = DesignReader.ReadWhole(text, "design", table);
        if (reading.Design is not { } design)
        {
            return Unreadable(reading);
        }

        var source = context.Source.Text;
        if (context.Sections.Find(s => s.Section == section) is not { HeaderEnd: > 0 } raw)
        {
            return DesignEdit.Refused($"the design has no `{section.Header}` that could be taken out");
        }

        var from = LineStart(source, raw.HeaderEnd);
        var to = NextLine(source, raw.Entries.Select(e => e.Span.To).Append(raw.HeaderEnd).Max());
        var kept = string.Concat(Lines(source[from..to]).Where(l => l.TrimStart().StartsWith('#')));
        while (to < source.Length && NextLine(source, to) is var next && string.IsNullOrWhiteSpace(source[to..next]))
        {
            to = next;
        }

        var edit = DesignEdit.Spliced(text, from + text.Length - source.Length, to - from, kept);
        return Objection(design, table, edit.Text!, section, (old, now) =>
            now.Length == old.Length - 1 && now.Zip(old.Skip(1), Enumerable.SequenceEqual).All(same => same)) ?? edit;
    }

    /// <summary>Takes out the line of a key; the text as it is when the key is not written.</summary>
    /// <param name="text">A design that is read without error.</param>
    /// <param name="table">The table it is read against.</param>
    /// <param name="parameter">A parameter of a section that stands once.</param>
    public static DesignEdit RemoveKey(string text, ParameterTable table, Parameter parameter)
    {
        var (reading, context) = DesignReader.ReadWhole(text, "design", table);
        if (reading.Design is not { } design)
        {
            return Unreadable(reading);
        }

        var source = context.Source.Text;
        if (context.Sections.Find(s => s.Section == parameter.Section) is not { } raw || raw.Entry(parameter.Key) is not { } entry)
        {
            return DesignEdit.Spliced(text, 0, 0, "");
        }

        if (raw.Inline is not null)
        {
            return DesignEdit.Refused($"`{parameter.Key}` stands in an inline table; write its section under a header, or take it out");
        }

        var from = LineStart(source, entry.Span.From);
        var edit = DesignEdit.Spliced(text, from + text.Length - source.Length, NextLine(source, entry.Span.To) - from, "");
        return Objection(design, table, edit.Text!, parameter.Section, (old, now) =>
            old.Zip(now, (a, b) => a.Except(b).Concat(b.Except(a)).All(l => KeyOf(l) == parameter.Key)).All(same => same)) ?? edit;
    }

    private static (int At, string Inserted) Behind(string source, RawSection? behind, string lines, string end)
    {
        if (behind is not { HeaderEnd: > 0 })
        {
            return (source.Length, (source.EndsWith('\n') ? end : end + end) + lines);
        }

        var at = NextLine(source, behind.Entries.Select(e => e.Span.To).Append(behind.HeaderEnd).Max());
        return (at, (source[..at].EndsWith('\n') ? end : end + end) + lines);
    }

    // What is wrong with the new text; null when the kind's sections are as they should be and all else is as it was.
    private static DesignEdit? Objection(
        Design before, ParameterTable table, string text, Section section, Func<ImmutableArray<string[]>, ImmutableArray<string[]>, bool> isMeant)
    {
        var reading = DesignReader.Read(text, "design", table);
        if (reading.Design is not { } after)
        {
            return Unreadable(reading);
        }

        var prefix = section.Key + ".";
        IEnumerable<string> Others(Design of) => of.Resolved.Where(l => !l.StartsWith(prefix, StringComparison.Ordinal));
        return !Others(before).SequenceEqual(Others(after)) ? DesignEdit.Refused($"it would change more than `{section.Header}`")
            : isMeant(Each(before), Each(after)) ? null
            : DesignEdit.Refused($"`{section.Header}` cannot be written so");

        string[] Said(DesignSection one) => [.. one.Resolved().Select(l => l[DesignSection.Prefix(section, one.Number).Length..]).Order(StringComparer.Ordinal)];
        ImmutableArray<string[]> Each(Design of) => [.. of.Each(section).Select(Said)];
    }

    private static string KeyOf(string line) => line[..line.IndexOf(" = ", StringComparison.Ordinal)];

    private static DesignEdit Unreadable(Reading reading) => DesignEdit.Refused($"the design cannot be read: {reading.Findings[0].Sentence}");

    private static int LineStart(string source, int offset) => source.LastIndexOf('\n', Math.Max(0, offset - 1)) + 1;

    private static int NextLine(string source, int offset) => source.IndexOf('\n', offset) is var feed and >= 0 ? feed + 1 : source.Length;

    private static IEnumerable<string> Lines(string text)
    {
        for (var from = 0; from < text.Length; from = NextLine(text, from))
        {
            yield return text[from..NextLine(text, from)];
        }
    }
}
