namespace TopLayout.Lutherie.Designs;

/// <summary>How often a section may stand in a design file.</summary>
public enum SectionPresence
{
    /// <summary>The part is always there; leaving its section out means every default.</summary>
    Always,

    /// <summary>The part is there only when its section is.</summary>
    Optional,

    /// <summary>Any number of times, up to <see cref="Section.Most"/>, written <c>[[key]]</c>.</summary>
    Repeatable,
}

/// <summary>A section of the design file: one part, or one kind of part.</summary>
public sealed class Section
{
    private Section(string key, string meaning, SectionPresence presence, int most) =>
        (Key, Meaning, Presence, Most) = (key, meaning, presence, most);

    /// <summary>The lines before the first section header.</summary>
    public static Section Root { get; } = new("", "the design as a whole", SectionPresence.Always, 1);

    /// <summary>The key between the brackets; empty for the root.</summary>
    public string Key { get; }

    /// <summary>What it describes, in one line.</summary>
    public string Meaning { get; }

    /// <summary>How often it may stand in a file.</summary>
    public SectionPresence Presence { get; }

    /// <summary>The most times it may stand in a file, ≥ 1.</summary>
    public int Most { get; }

    /// <summary>Whether this is the root.</summary>
    public bool IsRoot => Key.Length == 0;

    /// <summary>The header as it is written: <c>[soundhole]</c> or <c>[[tone_bar]]</c>; empty for the root.</summary>
    public string Header => IsRoot ? "" : Presence == SectionPresence.Repeatable ? $"[[{Key}]]" : $"[{Key}]";

    /// <summary>A part every design has.</summary>
    public static Section Always(string key, string meaning) => new(key, meaning, SectionPresence.Always, 1);

    /// <summary>A part a design may do without.</summary>
    public static Section Optional(string key, string meaning) => new(key, meaning, SectionPresence.Optional, 1);

    /// <summary>A part a design may have none of, or several, in file order.</summary>
    public static Section Repeatable(string key, string meaning, int most = 24) =>
        new(key, meaning, SectionPresence.Repeatable, most);

    /// <summary>The header, or "the top of the file".</summary>
    public override string ToString() => IsRoot ? "the top of the file" : Header;
}
