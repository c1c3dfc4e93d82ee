namespace TopLayout.Lutherie.Findings;

/// <content>TL0: the text of a design file does not have the form of one.</content>
public static partial class Rules
{
    /// <summary>The text breaks the rules of TOML.</summary>
    public static Rule Syntax { get; } = new("TL0001", "the file is not TOML", """
        A design file is TOML: lines of `key = value` under headers in brackets. This line is written in another way, so nothing after
        it can be trusted and the design is not read any further. Usual causes are text without quotes, a comma as the decimal mark, a
        missing `=`, or a unit written outside quotes. Correct the first line named; the later ones often disappear with it.
            wrong:  diameter = 10,5        right:  diameter = 10.5
            wrong:  diameter = 4 in        right:  diameter = "4 in"
        """);

    /// <summary>Nothing but blanks and comments.</summary>
    public static Rule EmptyFile { get; } = new("TL0002", "the file is empty", """
        The file holds no key at all, only blanks or comments. Perhaps an editor has not saved it yet, or the wrong file is named. A
        design needs at least `units` and the scale length; everything else has a default. `toplayout new` writes a complete commented
        design to start from.
            units = "mm"
            [scale]
            length = 650
        """);

    /// <summary>Longer than any design.</summary>
    public static Rule TooLarge { get; } = new("TL0003", "the file is too large", """
        A design file is a few hundred lines. This one is longer than a million characters, so it is most likely a drawing, a picture or
        a log that was named by mistake, and it is refused before it is read. Name the design file, which usually ends in `.toml`.
            toplayout check my-guitar.toml
        """);

    /// <summary>A header no part answers to.</summary>
    public static Rule UnknownSection { get; } = new("TL0004", "unknown section", """
        The header in brackets is not the name of a part. It is refused rather than skipped, because a part that is silently left out of
        a plan is found only at the bench. Look for a typing error; the hint gives the nearest name, or all of them.
        `toplayout parameters` lists every section with its keys.
            wrong:  [sondhole]             right:  [soundhole]
        """);

    /// <summary>A key the section does not have.</summary>
    public static Rule UnknownKey { get; } = new("TL0005", "unknown key", """
        The section has no such key. It is refused rather than skipped, because otherwise the default would be used while the file seems
        to say something else. Look for a typing error, or a key that stands under the wrong header: a key belongs to the last header
        above it. The hint gives the nearest key, the section that has it, or all keys of this section.
            wrong:  diametr = 98           right:  diameter = 98
        """);

    /// <summary>The same key or section twice.</summary>
    public static Rule WrittenTwice { get; } = new("TL0006", "written twice", """
        The same key, or the same section, stands twice in the file. Which of the two is meant cannot be known, so neither is taken. Both
        places are named: keep one and delete the other, or put a `#` before it to keep it as a note. Several parts alike, such as tone
        bars, are written with double brackets, once for each.
            diameter = 98
            # diameter = 100               the earlier choice, kept as a comment
        """);

    /// <summary>A section where a value belongs, or a value where a section belongs.</summary>
    public static Rule SectionOrValue { get; } = new("TL0007", "a section and a value confused", """
        A name that stands for a whole part was given a single value, or a key that takes a single value was made into a section with
        keys of its own. A part is a header with its keys below it. A key is one line with `=` and one value.
            wrong:  soundhole = 98         right:  [soundhole]
                                                   diameter = 98
        """);

    /// <summary>Single brackets where double ones belong, or the other way round.</summary>
    public static Rule Brackets { get; } = new("TL0008", "single and double brackets confused", """
        Double brackets mark parts of which there may be several, one header for each, such as `[[tone_bar]]`. Single brackets mark parts
        of which there is only one, such as `[soundhole]`. The header uses the other kind. A repeatable part needs double brackets even
        when there is only one of it, so that adding a second changes nothing in the first.
            wrong:  [tone_bar]             right:  [[tone_bar]]
        """);

    /// <summary>More repeated sections than the part allows.</summary>
    public static Rule TooMany { get; } = new("TL0009", "too many of one part", """
        The file describes more parts of one kind than any top carries. The limit is far above practice; passing it usually means that a
        stretch of the file was pasted more than once. Delete the headers that are not meant, with the lines below them.
        """);

    private static Rule[] Reading =>
        [Syntax, EmptyFile, TooLarge, UnknownSection, UnknownKey, WrittenTwice, SectionOrValue, Brackets, TooMany];
}
