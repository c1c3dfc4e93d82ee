namespace TopLayout.Lutherie.Findings;

/// <content>TL3060 and on: slots and holes in what stands on the top.</content>
public static partial class Rules
{
    /// <summary>Little wood round the saddle's slot.</summary>
    public static Rule BridgeWood { get; } = new("TL3060", "little wood round the saddle", """
        The strings push the saddle against the front wall of its slot all the time, and a bridge splits along the slot when
        the wood before it is thin. The slot must lie inside the bridge with about 4 mm of wood to every edge, and a tie block
        must leave a channel behind the saddle, so that the strings break over it at an angle (common practice, no source).
        The slot lies along the saddle's line; its slant comes from the compensation of the outer strings.
        """);

    /// <summary>Pin holes too near to an edge.</summary>
    public static Rule PinHoles { get; } = new("TL3061", "a pin hole near an edge", """
        A pin hole goes through bridge, top and plate. Holes near the rear edge of the bridge split it; holes beside the plate
        let the balls of the strings pull on bare top wood; a hole in a leg of the X cuts its grain. About 4 mm of bridge and
        2 mm of plate round each hole are usual (common practice, no source). The worst pin is told for each. Between two pins
        less than 1 mm of wood breaks out at the drill, 3 mm are usual; and a pin in any other brace cuts that brace's grain,
        so does a locating pin under the bridge.
        """);

    /// <summary>Little wood round the slot of the truss rod.</summary>
    public static Rule TrussRodSlot { get; } = new("TL3062", "little wood round the truss-rod slot", """
        The slot for the truss rod or its key takes wood from the neck block and from the tongue where they are to hold the
        neck's pull. What it leaves below is the tongue's thickness less the slot's depth; what it leaves beside is measured
        where the slot ends, because a tapered tongue is narrowest there. About 3 mm below and 5 mm beside are usual (common
        practice, no source). A slot that runs out past the tip leaves two prongs.
        """);

    /// <summary>A locating pin that shows.</summary>
    public static Rule PinShows { get; } = new("TL3063", "a locating pin that shows", """
        A locating pin keeps a part from sliding while the glue is wet. Its hole stays, so it must lie where a part covers it
        afterwards: under the fretboard, under the bridge; and the part it goes into must be there, the neck block or the tail
        block. The finding says which pin reaches past which part, and by how much.
        """);

    /// <summary>A saddle that the bridge does not hold.</summary>
    public static Rule SaddleHold { get; } = new("TL3064", "a saddle that the bridge does not hold", """
        The saddle stands on the floor of its slot and carries every string. A slot nearly as deep as the bridge leaves a floor
        that breaks, one as deep opens onto the top; about 2 mm are usual. A saddle shorter than the strings' spread lets the
        outer strings fall off its ends; about 2 mm beyond them are usual (common practice, no source).
        """);

    /// <summary>Little wood round the holes of a tie block.</summary>
    public static Rule TieHoleWood { get; } = new("TL3065", "little wood round the tie holes", """
        The strings are tied through holes that run along the body through the tie block, level with the top; none of them
        goes through the top itself. They weaken the block where the strings pull on it: above them it splits off, below them
        the knots find no room off the top, between two of them or beside the outer ones the wall breaks out. About 2 mm of
        wood all round each hole are usual (common practice, no source). The least is told, and where it is. `tie_hole_height`
        and `thickness` decide it above and below, `tie_holes` and `tie_spread` between.
        """);

    private static Rule[] Fittings => [BridgeWood, PinHoles, TrussRodSlot, PinShows, SaddleHold, TieHoleWood];
}
