namespace TopLayout.Lutherie.Designs;

/// <summary>Where a key that a file does not have goes, and the text that goes there.</summary>
internal static class KeyInsertion
{
    /// <summary>After its section's last line; into an inline table; in a new section at the end of the file when the section is not written.</summary>
    public static (int At, string Inserted) For(string text, RawSection? raw, Parameter parameter, string value)
    {
        var line = $"{parameter.Key} = {value}";
        if (raw is not { IsWritten: true })
        {
            var end = LineEnd(text, text.Length);
            var gap = text.EndsWith('\n') ? end : end + end;
            return (text.Length, $"{gap}{parameter.Section.Header}{end}{line}{end}");
        }

        if (raw.Inline is { } inline)
        {
            return raw.Entries.Count > 0
                ? (raw.Entries.Max(e => e.Span.To), $", {line}")
                : (inline.OpenBrace!.Span.End.Offset + 1, $" {line} ");
        }

        // A root without a key of its own cannot be: `units` is required.
        var last = raw.Entries.Count > 0 ? raw.Entries.Max(e => e.Span.To) : raw.HeaderEnd;
        var indent = raw.Entries.Count > 0 ? Indent(text, raw.Entries.MaxBy(e => e.Span.To)!) : "";
        return After(text, last, indent + (raw.IsDotted ? $"{parameter.Section.Key}." : "") + line);
    }

    private static (int At, string Inserted) After(string text, int offset, string line)
    {
        var feed = text.IndexOf('\n', offset);
        var end = LineEnd(text, feed < 0 ? text.Length : feed + 1);
        return feed < 0 ? (text.Length, end + line) : (feed + 1, line + end);
    }

    // The end of the line before an offset, or else of the file's first line.
    private static string LineEnd(string text, int offset)
    {
        var feed = offset > 0 && text[offset - 1] == '\n' ? offset - 1 : text.IndexOf('\n');
        return feed > 0 && text[feed - 1] == '\r' ? "\r\n" : "\n";
    }

    private static string Indent(string text, RawEntry entry)
    {
        var start = text.LastIndexOf('\n', Math.Max(0, entry.Span.From - 1)) + 1;
        return new string([.. text[start..].TakeWhile(c => c is ' ' or '\t')]);
    }
}
