namespace TopLayout.Drawing.Pdf;

/// <summary>A size of paper, upright. Sources: ISO 216 (A sizes, mm); ANSI/ASME Y14.1 (A = 8.5 × 11 in, B = 11 × 17 in).</summary>
/// <param name="Name">Its name: "A4".</param>
/// <param name="ShortMm">Shorter side, mm.</param>
/// <param name="LongMm">Longer side, mm.</param>
public sealed record Paper(string Name, double ShortMm, double LongMm)
{
    /// <summary>ISO A4.</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>ISO A3.</summary>
    public static Paper A3 { get; } = new("A3", 297, 420);

    /// <summary>US letter.</summary>
    public static Paper Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>US tabloid.</summary>
    public static Paper Tabloid { get; } = new("Tabloid", 279.4, 431.8);

    /// <summary>What a printer at home takes.</summary>
    public static IReadOnlyList<Paper> All { get; } = [A4, A3, Letter, Tabloid];
}
