namespace TopLayout.Lutherie.Findings;

/// <content>TL3, how parts fit: what could not be drawn as the design says, and the room between parts.</content>
public static partial class Rules
{
    /// <summary>A part that has no shape where the design puts it.</summary>
    public static Rule PartLeftOut { get; } = new("TL3030", "a part without a shape", """
        The design asks for a part that cannot be drawn where it is put: what it hangs on is missing, no room is left for it,
        or two lines of its section contradict each other. The rest of the top stands, so it is drawn without that part, and
        the check fails: the plan shows what room there is. The places named are the lines that decide it. Nothing is moved or
        made smaller to fit by itself.
        """);

    /// <summary>A part that is drawn otherwise than the design says.</summary>
    public static Rule DrawnOtherwise { get; } = new("TL3031", "a part drawn otherwise than it is said", """
        The design's numbers for this part cannot all hold, and the plan shows the nearest thing that can be drawn: a bar cut
        off at the sides it would run through, a tongue as long as its angle allows. The finding says what was drawn instead,
        by how much it differs, and which number brings the two together. Templates are not written until they agree.
        """);

    /// <summary>A part that leaves the room it needs.</summary>
    public static Rule OutsideItsRoom { get; } = new("TL3032", "a part outside the room it needs", """
        The part lies partly where there is nothing for it to lie on, or where something else is: a bridge on the linings, a
        hole or a channel that reaches the rim, a tongue wider than its block. It is drawn where the design puts it, so that
        the plan shows by how much it is out. The finding names both, and the number that brings the one inside the other.
        """);

    /// <summary>Too little room between two parts.</summary>
    public static Rule LittleRoom { get; } = new("TL3033", "little room between two parts", """
        Two parts that are not joined stand so near to each other that the glue of one cannot be cleaned, a caul cannot reach,
        or the top between them is left as a narrow strip. Nothing left is a failure where the parts must not meet; less than
        usual is a remark. The usual gaps are common practice, no source: 3 mm from a tongue to the transverse brace, 2 mm
        from the reinforcement of the hole to a brace, half a millimetre from the bridge plate to the legs of the X, so that
        both glue lines can be seen.
        """);

    /// <summary>The centre joint is bridged by nothing.</summary>
    public static Rule SeamNotBridged { get; } = new("TL3034", "a long piece of the centre joint without a bridge", """
        The two halves of a top meet in one glue line along the grain, the weakest line of the whole plate. Every brace,
        plate, patch and cleat that crosses it holds it together when the glue lets go. Where more than 90 mm of it lies open,
        cleats are usual, their grain across the joint, one every 40 to 70 mm (common practice, no source). The hole takes its
        part of the joint away and is not counted.
        """);

    private static Rule[] Fitting => [PartLeftOut, DrawnOtherwise, OutsideItsRoom, LittleRoom, SeamNotBridged];
}
