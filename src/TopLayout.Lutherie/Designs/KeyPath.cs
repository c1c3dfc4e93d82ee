using System.Collections.Immutable;
using Tomlyn.Syntax;

namespace TopLayout.Lutherie.Designs;

/// <summary>A key or header name: its parts between the dots, without quotes and blanks, and the offsets it covers.</summary>
internal sealed class KeyPath
{
    private KeyPath(ImmutableArray<string> parts, int from, int to) => (Parts, From, To) = (parts, from, to);

    public ImmutableArray<string> Parts { get; }

    public int From { get; }

    /// <summary>The offset after its last character.</summary>
    public int To { get; }

    public string Last => Parts[^1];

    /// <summary>All parts but the last.</summary>
    public IEnumerable<string> Owner => Parts.SkipLast(1);

    public static KeyPath Of(KeySyntax key) => new(
        [Part(key.Key), .. key.DotKeys.Select(dotted => Part(dotted.Key))], key.Span.Start.Offset, key.Span.End.Offset + 1);

    // A bare key's text may end in blanks; a quoted key's value may not be touched.
    private static string Part(BareKeyOrStringValueSyntax? key) => key switch
    {
        StringValueSyntax quoted => quoted.Value ?? "",
        BareKeySyntax bare => bare.Key?.Text?.Trim() ?? "",
        _ => "",
    };
}
