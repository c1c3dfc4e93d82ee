using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>One key and its value as written.</summary>
/// <param name="Key">The key without quotes.</param>
/// <param name="KeyPlace">Where the key stands.</param>
/// <param name="Value">The value's syntax: a number, a text or something no parameter takes.</param>
/// <param name="Place">Where the value stands.</param>
internal sealed record RawEntry(string Key, SourcePlace KeyPlace, ValueSyntax Value, SourcePlace Place)
{
    /// <summary>Offsets of the value in the text without byte-order mark: its first character, and after its last.</summary>
    public (int From, int To) Span => (Value.Span.Start.Offset, Value.Span.End.Offset + 1);
}

/// <summary>One section of the table as written, with its entries in file order.</summary>
internal sealed class RawSection(Section section, SourcePlace header, bool isWritten)
{
    public Section Section { get; } = section;

    /// <summary>The header; the key of an inline table; the first dotted key; the file's first line for the root or when not written.</summary>
    public SourcePlace Header { get; } = header;

    public bool IsWritten { get; } = isWritten;

    /// <summary>Opened by a dotted key such as <c>soundhole.diameter</c>, so that further dotted keys may add to it.</summary>
    public bool IsDotted { get; init; }

    /// <summary>The inline table it is given as; null when it is not.</summary>
    public InlineTableSyntax? Inline { get; init; }

    /// <summary>The offset after its header's last character, where it has one.</summary>
    public int HeaderEnd { get; init; }

    public List<RawEntry> Entries { get; } = [];

    public RawEntry? Entry(string key) => Entries.FirstOrDefault(e => e.Key == key);
}
