namespace TopLayout.Lutherie.Findings;

/// <content>TL2: each value is possible, but together they cannot be built; or its part cannot read it.</content>
public static partial class Rules
{
    /// <summary>Parts that cannot both be where the design puts them.</summary>
    public static Rule PartsDoNotFit { get; } = new("TL2001", "parts do not fit", """
        Each value is possible alone, but together they cannot be drawn: two arcs do not meet, a part leaves the outline, or two parts
        want the same place. The message says which two and by how much; the places named are the lines that decide it. Change the one
        that matters less to you. A part placed from another, such as a brace below the soundhole, moves with it, so look at what it
        hangs on first.
            [soundhole]
            diameter = 150                 leaves no room for the transverse brace above it
        """);

    /// <summary>A place in trade words that cannot be read.</summary>
    public static Rule UnreadableAnchor { get; } = new("TL2002", "a place in words that cannot be read", """
        A place on the top may be said in trade words: a distance, `above` (towards the neck) or `below` (towards the tail), a
        landmark, and perhaps a distance to the bass or the treble side; without it the place lies on the centre line. The place
        in the file is the first character that does not fit. What has two edges is measured from the nearer one.

        Another bar is named as on the plan: `tone bar 1` (`tone bar` where it is the only one), `X leg, bass`, `bar 2`; the
        order of the file does not matter, but no two bars can hang on each other. `against` it, a bar butts against the side
        it comes from, at the place named on the other bar's axis; `the tail of the tone bar 1` is one of its ends.
            from = "25 mm below the soundhole edge, 60 mm to the treble"
            to = "at the lower bout, 4 5/16 in to the bass"
            from = "against the X leg, treble, 70 mm to the treble"
            to = "against the fan strut 1, 330 mm from the neck edge"
            from = "12 mm below the tail of the tone bar 1"
        """);

    private static Rule[] Construction => [PartsDoNotFit, UnreadableAnchor];
}
