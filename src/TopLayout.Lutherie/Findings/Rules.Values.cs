namespace TopLayout.Lutherie.Findings;

/// <content>TL1: a value is missing, of the wrong kind, or outside its range.</content>
public static partial class Rules
{
    /// <summary>A required key is not written.</summary>
    public static Rule Missing { get; } = new("TL1001", "a required key is missing", """
        This key has no sensible default, so the design must state it. `units` is required because a number without a unit is a guess;
        the scale length is required because bridge and saddle hang on it. The place named is the header the line belongs under, or the
        first line of the file when the header is missing too. Add the line the hint shows, with your own value.
            units = "mm"
        """);

    /// <summary>Outside the possible range.</summary>
    public static Rule OutOfRange { get; } = new("TL1002", "outside the possible range", """
        The value is outside what the part can be at all, and the drawing would make no sense. The range is wide on purpose: it stops
        slips, not unusual instruments. The usual slips are the wrong unit and a misplaced decimal point; when another unit would make
        the value possible, the hint says so. A length is read in the file's `units` unless it is text with its own unit.
            wrong:  diameter = 4           right:  diameter = "4 in"
        """);

    /// <summary>Text where a number belongs, and the like.</summary>
    public static Rule WrongType { get; } = new("TL1003", "the wrong kind of value", """
        The key takes another kind of value: a number, text in quotes, or a whole number. Nothing is converted by guesswork. Numbers are
        written without quotes; words and names are written with them. Only a length may be either: a number in the file's `units`, or
        text with its unit.
            angle = 98        a number        sawn = "quarter"        a word        diameter = "4 in"        a length with its unit
        """);

    /// <summary>Text that is not a length.</summary>
    public static Rule UnreadableLength { get; } = new("TL1004", "not a length", """
        The text cannot be read as a length. A length in quotes is a number and a unit: `mm`, `cm` or `in` (or `"` after the number, in
        single quotes). Inches may be whole numbers, decimals or fractions. The decimal mark is a point. Without quotes the number is
        taken in the file's `units`.
            "110 mm"    "11 cm"    "4.25 in"    "4 5/16 in"    "4-5/16 in"    '5/16"'
        """);

    /// <summary>A word outside the list.</summary>
    public static Rule UnknownWord { get; } = new("TL1005", "an unknown word", """
        The key takes one of a few words, and this is not one of them. They are written in small letters, with `_` for a blank. The
        message lists them all; the hint gives the nearest. `toplayout parameters` says what each key takes.
            wrong:  units = "mms"          right:  units = "mm"
        """);

    /// <summary>A wood in neither table.</summary>
    public static Rule UnknownWood { get; } = new("TL1006", "an unknown wood", """
        The wood is neither in the built-in table nor described in this file. Its stiffness and its movement with humidity decide the
        checks, so a similar wood is not taken silently. `toplayout woods` lists the keys. A wood that is missing there can be described
        in the design, with the source of its numbers.
            wood = "sitka_spruce"
        """);

    /// <summary>Two answers to one question.</summary>
    public static Rule GivenTwice { get; } = new("TL1007", "one thing stated in two ways", """
        These keys are different ways to say the same thing, and the file uses more than one of them. Even if they agreed today, a later
        change to one would contradict the other. Both places are named. Keep the one you measure by and delete the other; the plan
        shows what the other one comes to.
        """);

    /// <summary>No answer to a question that needs one.</summary>
    public static Rule GivenNot { get; } = new("TL1008", "one of several keys is needed", """
        The part can be described in several ways, and the file uses none of them. None is common enough to be assumed. Add one of the
        keys named, whichever you measure by; the other follows from it.
        """);

    /// <summary>nan or inf.</summary>
    public static Rule NotFinite { get; } = new("TL1009", "not a finite number", """
        TOML allows `nan` and `inf` as numbers, and a number with a very large exponent becomes infinite. None of them is a size of
        anything. It usually comes from a program that wrote the file. Write a plain number instead.
            diameter = 98
        """);

    /// <summary>Possible, but seldom done.</summary>
    public static Rule Unusual { get; } = new("TL1010", "outside usual practice", """
        The value is possible but outside what most makers do. This is a remark, not a fault: nothing is withheld and the program still
        succeeds. It is there because a slip of a few millimetres looks just like a decision. If it was a decision, do nothing.
        """);

    /// <summary>Text that cannot stand on a plan.</summary>
    public static Rule UnusableText { get; } = new("TL1011", "text that cannot be shown", """
        The text is printed on the plan in one line of a title block or a label. It must not be empty, too long for that place, or hold
        line ends, tabs or other control characters. Shorten it; longer remarks belong in comments after `#`.
            name = "small parlour, second try"
        """);

    /// <summary>A wood of the file's own under a key that is taken.</summary>
    public static Rule WoodTaken { get; } = new("TL1012", "a wood's key is taken", """
        A wood described in the design file has the key of a built-in wood, or of another wood in the file. Which one a part means could
        not be told, and a reader of the plan would take it for the well-known one. Give it a key of its own and name that key where the
        wood is used.
            [[wood]]
            key = "loft_spruce"
            name = "spruce from the loft"
            movement_radial = 0.0014
            movement_tangential = 0.0026
            modulus_along = 11
            source = "two strips weighed and measured over a winter"
        """);

    private static Rule[] Values =>
    [
        Missing, OutOfRange, WrongType, UnreadableLength, UnknownWord, UnknownWood, GivenTwice, GivenNot, NotFinite, Unusual, UnusableText, WoodTaken,
    ];
}
