namespace TopLayout.Lutherie.Findings;

/// <content>TL3: checks of a layout.</content>
public static partial class Rules
{
    /// <summary>A glued edge stays on one grain line for too long.</summary>
    public static Rule EdgeAlongGrain { get; } = new("TL3001", "a glued edge along the grain", """
        Where a glued part ends, the top changes from stiff to thin, and when the air dries the top is pulled apart across the
        grain just beside that edge. Spruce does not split from a hot spot of a millimetre or two; it splits when a line of 25
        mm or more along the grain is hot at once. An edge that crosses the grain spreads its pull over many grain lines. An
        edge that runs with the grain puts all of it on one.

        Measured: the longest stretch of glued edge within 3 mm of one grain line that nothing supports. Below 30 mm a crack
        that pops open there stops by itself; from 60 mm on it can run on through the top. That length is weighed by how
        differently the part and the top move between the humidity at gluing and the humidity in use (woods, sawing,
        thickness): narrow spruce bars along the grain pass, a flat-sawn hardwood tongue with straight sides fails.

        What helps, most first: give the edge an angle, so that it crosses the grain (15 degrees is enough; rounding only the
        end of a straight tongue cures nothing); let a brace across the grain cross it; use quarter-sawn wood, or the wood of
        the top; make the part narrower; glue at a humidity nearer to the one in use. A crossing brace stops a crack, it does
        not relieve the top.

        Where the wood table does not know a wood's stiffness, the worst known wood stands for it (of its own kind, if one is
        known), and the finding says so. Where supports stand closer than 130 mm beside a part, the top bends more sharply at
        its edge, and that is counted. `[limits]` in the design sets the band, the lengths, what supports, and an error of the
        layout to allow for.

        Limits of the model: linear and at rest, without creep, finish, string load, knots or fatigue. It ranks edges; it does
        not promise that one lasts. The 30 and 60 mm are sound within a factor of two: they follow from the fracture energy of
        spruce (from memory, 150 to 300 J/m2) and its strength across the grain (Wood Handbook, FPL-GTR-190, Table 5-3a), not
        from tests on instruments.
        """);

    /// <summary>Edges of several parts lie on one grain line.</summary>
    public static Rule EdgesInLine { get; } = new("TL3002", "edges of several parts on one grain line", """
        Two parts may each end before a crack could run, and still leave one long weak line because their edges lie on the
        same grain line: a block and its tongue in one line, or the edge of the fretboard on the outside above the edge of a
        block on the inside. The top there is bent by both.

        Measured: the longest stretch along one grain line with an unsupported glued edge of any part within 3 mm, gaps of up
        to 5 mm counted in. The limits and the weighing are those of TL3001, with the parts' movement averaged by their share
        of the length. Of the other face an edge that crosses the line as a support does adds nothing: it holds the top there.

        What helps: make one part wider or narrower so that the lines are well apart (10 mm or more), give one of them an
        angle, or carry a brace across both.
        """);

    /// <summary>A member across the grain holds the top wide.</summary>
    public static Rule HoldsTopWide { get; } = new("TL3003", "a part across the grain holds the top wide", """
        A stiff part whose long grain crosses the top hardly shrinks along its length, so the top glued to it cannot shrink
        either and is pulled along its whole width under it. Every transverse brace and bridge plate does this; it is the
        price of holding a top together. Cracks of this kind start under the part or at its ends, whatever the angle of its
        edges.

        Measured: what share of its strength across the grain the top would be loaded to in the season of the design, after
        creep has taken its part. A value of 1 is a fully held quarter-sawn Sitka top glued at 60 % and used at 25 %: many
        instruments live with that, some crack.

        What helps: glue at a humidity nearer to the one in use, make the part thinner or narrower, keep it out of dry air.
        """);

    /// <summary>The season makes the wood no drier.</summary>
    public static Rule SeasonDoesNotDry { get; } = new("TL3004", "a season that does not dry the top", """
        The grain check asks what happens when a top gets drier than it was at gluing, because that is when tops crack. In
        this design the air in use is as humid as the air at gluing, or more so. A top that takes up moisture is pressed, not
        pulled: it may buckle, and glue lines are sheared, but it does not split. The finding says how far the top would grow
        and which part would curl it most; there is no mismatch for it. Write the driest air the instrument will meet for
        weeks as `used_humidity` to have its edges judged.
        """);

    /// <summary>Two parts in one place.</summary>
    public static Rule PartsOverlap { get; } = new("TL3010", "two parts in one place", """
        Two parts are glued to the same place of one face, and no lap, notch or butt joint is meant between them. One of them
        would stand on the other, and neither would fit its drawing. The finding names both, and the line of the design that
        places each. Move, turn or shorten one of them. A bridge on the rosette counts too: it would be glued to inlay over a
        thin floor, where the strings pull most.

        Allowed are the lap of the X, a tone bar butted against a leg, a tongue that grows from its block, and braces let into
        the linings.
        """);

    /// <summary>A brace at the hole's edge.</summary>
    public static Rule HoleClearance { get; } = new("TL3011", "a part near the edge of the hole", """
        A brace that reaches over the edge of the hole is cut away when the hole is cut, and its end then stands free just
        where the top is weakest. A brace that passes nearer than about 6 mm leaves no room for reinforcement, and its edge
        prints through beside the hole. Forward crossings of an X run at 2 to 3 mm on purpose, so less than 6 mm is only a
        remark. The same is asked of a neck block, of the cap of the X and of the bridge: over the hole nothing holds them.
        A fretboard may end a little over the hole's edge, up to 6 mm. The limits are common practice, no source.
        """);

    /// <summary>A thin floor under a channel.</summary>
    public static Rule ChannelFloor { get; } = new("TL3012", "a thin floor under a channel", """
        A channel for a rosette leaves a thin floor of top wood along two long walls, and cracks like to run along it. About
        1.2 mm is usual on tops for steel strings, 1.0 mm on tops for nylon (a classical body, or a bridge with a tie block)
        and 0.8 mm on ukuleles; below 0.8 mm the floor may give way when the inlay is pressed in. The limits are common
        practice, no source. Make the channel shallower and the inlay thinner, or leave the top thicker there.
        """);

    /// <summary>Sides that must bend too tightly.</summary>
    public static Rule BendRadius { get; } = new("TL3013", "a tight bend of the sides", """
        The sides follow the outline, and wood breaks when it is bent too tightly. Plain sides 2 mm thick bend to a radius of
        40 mm without trouble, to 25 mm with skill, and not below 15 mm; thinner sides bend tighter in proportion, figured and
        brittle woods need more. The limits are common practice, no source.
        """);

    /// <summary>The saddle lies unusually on the body.</summary>
    public static Rule SaddlePlace { get; } = new("TL3014", "an unusual place of the saddle", """
        The scale and the join fret place the saddle, wherever the body happens to be. It falls between 53 % and 69 % of the
        body's length on most instruments: near the lower end on fourteen-fret bodies, near the upper end on twelve-fret ones.
        Elsewhere the bridge comes to stand too near to the hole or to the tail. The range follows from usual scales and
        bodies; common practice, no source.
        """);

    private static Rule[] Checks => [EdgeAlongGrain, EdgesInLine, HoldsTopWide, SeasonDoesNotDry, PartsOverlap, HoleClearance, ChannelFloor, BendRadius, SaddlePlace];
}
