namespace TopLayout.Lutherie.Designs;

/// <summary>One stretch of a design's text replaced by another, or the reason why not.</summary>
public sealed class DesignEdit
{
    private DesignEdit(string? text, int from, int removed, string inserted, string? refusal) =>
        (Text, From, Removed, Inserted, Refusal) = (text, from, removed, inserted, refusal);

    /// <summary>The new text; null when the edit is refused.</summary>
    public string? Text { get; }

    /// <summary>Where the stretch begins, an offset in UTF-16 units; a byte-order mark counts.</summary>
    public int From { get; }

    /// <summary>How long the stretch was.</summary>
    public int Removed { get; }

    /// <summary>What stands there now.</summary>
    public string Inserted { get; }

    /// <summary>Why the text is left as it is, a sentence in lower case without a full stop; null when it is not.</summary>
    public string? Refusal { get; }

    internal static DesignEdit Spliced(string text, int from, int removed, string inserted) =>
        new(text.Remove(from, removed).Insert(from, inserted), from, removed, inserted, null);

    internal static DesignEdit Refused(string why) => new(null, 0, 0, "", why);
}
