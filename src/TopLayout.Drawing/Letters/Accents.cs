namespace TopLayout.Drawing.Letters;

/// <summary>Letters with a mark above, put together from the plain letter and the mark.</summary>
internal static class Accents
{
    /// <summary>How much higher a mark stands over a capital, in hundredths of its height.</summary>
    public const double CapitalLift = 32;

    // Marks round x = 0, at the height for a small letter.
    private static readonly (string Letters, string Mark)[] Marks =
    [
        ("áéíóúýćńśźÁÉÍÓÚÝĆŃŚŹ", "-4,80 8,96"),
        ("àèìòùÀÈÌÒÙ", "4,80 -8,96"),
        ("äëïöüÿÄËÏÖÜŸ", "*-11,88 | *11,88"),
        ("âêîôûÂÊÎÔÛ", "-13,80 0,94 13,80"),
        ("čěňřšžČĚŇŘŠŽ", "-13,94 0,80 13,94"),
        ("ãñõÃÑÕ", "-16,82 )-7,91 ~0,87 ~7,83 (16,92"),
        ("åůÅŮ", "0,98 (-9,89 (0,80 (9,89 (0,98"),
    ];

    /// <summary>Each accented letter, its plain letter, and the strokes of its mark.</summary>
    public static IEnumerable<(char Character, char Plain, string Mark)> All() =>
        from row in Marks from letter in row.Letters select (letter, PlainAscii.Of(letter.ToString())[0], row.Mark);
}
