namespace TopLayout.Lutherie.Findings;

/// <content>TL2: each value is possible, but together they cannot be built.</content>
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

    private static Rule[] Construction => [PartsDoNotFit];
}
