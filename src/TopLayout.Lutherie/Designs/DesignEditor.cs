namespace TopLayout.Lutherie.Designs;

/// <summary>
/// Changes one value in a design's text and nothing else: comments, line ends, the way lengths are written and a byte-order mark stay.
/// The new text is read again before it is given out.
/// </summary>
public static class DesignEditor
{
    /// <summary>Sets a parameter; refused when the new text would not be read, or would say anything else differently.</summary>
    /// <param name="text">A design that is read without error.</param>
    /// <param name="table">The table it is read against.</param>
    /// <param name="setting">The value, as <c>Soundhole.Diameter.To(98)</c>.</param>
    /// <param name="number">Which of several sections alike, counted from 1 in file order.</param>
    public static DesignEdit Set(string text, ParameterTable table, Setting setting, int number = 1)
    {
        var (before, context) = DesignReader.ReadWhole(text, "design", table);
        if (before.Design is not { } design)
        {
            return DesignEdit.Refused($"the design cannot be read as it is: {before.Findings[0].Sentence}");
        }

        var section = setting.Parameter.Section;
        var raw = context.Sections.Where(s => s.Section == section).ElementAtOrDefault(number - 1);
        if (raw is null && section.Presence != SectionPresence.Always)
        {
            return DesignEdit.Refused(section.Presence == SectionPresence.Optional
                ? $"the design has no `{section.Header}`; one key of it would add the whole part"
                : $"the design has no `{section.Header}` number {ValueText.Number(number, 0)}");
        }

        var edit = Spliced(text, context, setting, raw);
        return Objection(design, context, edit.Text!, setting, number) is { } objection ? DesignEdit.Refused(objection) : edit;
    }

    private static DesignEdit Spliced(string text, ReadingContext context, Setting setting, RawSection? raw)
    {
        var mark = text.Length - context.Source.Text.Length;
        if (raw?.Entry(setting.Parameter.Key) is { } entry)
        {
            var (from, to) = entry.Span;
            var written = context.Source.Text[from..to];
            var replaced = ValueWriter.Rewritten(written, entry.Value, setting, context.Shown);
            return DesignEdit.Spliced(text, from + mark, replaced == written ? 0 : to - from, replaced == written ? "" : replaced);
        }

        var (at, inserted) = KeyInsertion.For(context.Source.Text, raw, setting.Parameter, ValueWriter.New(setting, context.Shown));
        return DesignEdit.Spliced(text, at + mark, 0, inserted);
    }

    // What is wrong with the new text; null when it says the one thing differently and all else the same.
    private static string? Objection(Design design, ReadingContext context, string text, Setting setting, int number)
    {
        var after = DesignReader.Read(text, "design", context.Table);
        if (after.Design is not { } changed)
        {
            return after.Findings[0].Sentence;
        }

        var target = NameOf(setting.Parameter, number);
        var (old, now) = (Others(design), Others(changed));
        var first = old.Except(now).Concat(now.Except(old)).FirstOrDefault();
        return first is not null ? $"it would change `{Name(first)}` too"
            : changed.Resolved.Contains($"{target} = {setting.Canonical}", StringComparer.Ordinal) ? null
            : $"`{target}` cannot be written as {setting.Canonical}";

        // The value that a group assumed goes when another of its members is written: that is the same statement.
        List<string> Others(Design of)
        {
            var assumed = context.Table.Groups.Where(g => g.Members.Contains(setting.Parameter)).Select(g => NameOf(g.Members[0], number));
            return [.. of.Resolved.Where(line => Name(line) != target && !assumed.Contains(Name(line), StringComparer.Ordinal))];
        }
    }

    private static string Name(string line) => line[..line.IndexOf(" = ", StringComparison.Ordinal)];

    private static string NameOf(Parameter parameter, int number) => DesignSection.Prefix(parameter.Section, number) + parameter.Key;
}
