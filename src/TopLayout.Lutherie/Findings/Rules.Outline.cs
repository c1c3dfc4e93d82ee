namespace TopLayout.Lutherie.Findings;

/// <content>TL3, the outline itself.</content>
public static partial class Rules
{
    /// <summary>A measured outline that the arcs do not keep to.</summary>
    public static Rule MeasuredOutline { get; } = new("TL3050", "a measured outline", """
        The half-widths of a measured body are drawn as arcs that pass them within a stated distance (`within`). A half-width
        that no smooth run of arcs comes near, or a corner between two arcs, is nearly always a slip of the pencil: two digits
        changed over, a station left out, a width written down in place of a half-width. Measure that station again. Where the
        edge turns quickly, at the shoulders and at the tail, measure closer together, so that the arcs know which way to go.
        The report has every station: measured, drawn, and the difference.
        """);

    /// <summary>The wall of a cutaway and what stands beside it.</summary>
    public static Rule CutawayWall { get; } = new("TL3051", "the wall of a cutaway", """
        The wall of a cutaway runs beside the heel. It must leave the fretboard on the top: where the board is wider, its
        edge hangs over the side. It takes the neck block's treble side away as far as it reaches in, which is meant; but a
        block that is left narrower than the fretboard has nothing to carry the heel and the board with on that side, and the
        check fails. Less than 3 mm of block past the fretboard's edge is a remark (common practice, no source).
        """);

    /// <summary>What a ledge leaves of the rim.</summary>
    public static Rule LedgeLeaves { get; } = new("TL3052", "what a ledge leaves to glue to", """
        The ledges for binding and purfling are cut when the box is closed, through the very wood that holds the top: the side and
        the lining. A new top let in behind an old binding is glued to what its ledge left of them. 2 mm or more is usual; with
        nothing left the top drops into the body (common practice, no source). Widen the linings before the top goes on, or make
        the ledge narrower. A ledge deeper than the top also takes the ends of braces that are let into the linings, as far as it
        reaches inside the sides.
        """);

    /// <summary>A sliver of lining between two pockets.</summary>
    public static Rule LiningSliver { get; } = new("TL3053", "a sliver of lining between two pockets", """
        Brace ends are let into pockets cut in the linings. Where two braces end close to each other, the piece of lining between
        their pockets is short: it has no glue line to speak of, a kerfed lining is only one block there, and it breaks out when the
        second pocket is cut, or later with the top pulling on it. About 6 mm or more hold (common practice, no source). It is a note,
        not a fault: the braces themselves stand well, and a maker who sees it can cut one pocket for both and fit a piece of wood
        between them. Measured is the least width of what is left, from the side to the lining's inner line.
        """);

    private static Rule[] Outlines => [MeasuredOutline, CutawayWall, LedgeLeaves, LiningSliver];
}
