using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// The page of a sheet printed whole: as large as the sheet needs, a standard sheet, or a piece of a roll. Sources: ISO 216 (A2 841/√2 … A0);
/// ANSI/ASME Y14.1 (C = 17 × 22 in, D = 22 × 34 in, E = 34 × 44 in); rolls of 24 and 36 in are 610 and 914 mm.
/// </summary>
/// <param name="Name">Its name: "A1".</param>
/// <param name="ShortMm">Shorter side, or the roll's width, mm; 0 where it is fitted.</param>
/// <param name="LongMm">Longer side, mm; 0 where it is cut to length.</param>
public sealed record PageFormat(string Name, double ShortMm, double LongMm)
{
    /// <summary>From the edge of the page to the sheet, mm: room for the bars.</summary>
    public const double MarginMm = 20;

    /// <summary>The sheet and its margins.</summary>
    public static PageFormat Fitted { get; } = new("fitted", 0, 0);

    /// <summary>What print shops and plotters take.</summary>
    public static IReadOnlyList<PageFormat> All { get; } =
    [
        Fitted,
        new("A3", 297, 420), new("A2", 420, 594), new("A1", 594, 841), new("A0", 841, 1189),
        new("ansi-C", 431.8, 558.8), new("ansi-D", 558.8, 863.6), new("ansi-E", 863.6, 1117.6),
        new("roll-610", 610, 0), new("roll-914", 914, 0),
    ];

    /// <summary>The page round a sheet, in sheet coordinates, mm, the sheet in its middle; null when it is too small. It lies or stands as the sheet does, if that fits.</summary>
    public Box2? Around(Sheet sheet)
    {
        var (width, height) = (sheet.Page.Width + (2 * MarginMm), sheet.Page.Height + (2 * MarginMm));
        (double Width, double Height)[] ways = (ShortMm, LongMm) switch
        {
            (0, _) => [(width, height)],
            (_, 0) => width <= height ? [(ShortMm, height), (width, ShortMm)] : [(width, ShortMm), (ShortMm, height)],
            _ => width <= height ? [(ShortMm, LongMm), (LongMm, ShortMm)] : [(LongMm, ShortMm), (ShortMm, LongMm)],
        };
        foreach (var (w, h) in ways)
        {
            if (w >= width - Tolerances.TouchMm && h >= height - Tolerances.TouchMm)
            {
                var half = new Vec2(w / 2, h / 2);
                return new Box2(sheet.Page.Center - half, sheet.Page.Center + half);
            }
        }

        return null;
    }
}
