using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>The table of brace ends and their pockets.</summary>
internal static class BraceEndTable
{
    /// <summary>The table; without rows when no brace reaches the linings.</summary>
    public static NumberTable Of(Layout layout) => new(
        "brace_ends",
        "Brace ends and their pockets in the linings",
        [
            new("name", "brace"), new("side", "rim"), new("from", "inside the sides from the tail seam, from"), new("to", "to"), new("to_rim", "to the rim"),
            new("width", "width, square to the brace"), new("height", "end's height, pocket's depth"),
        ],
        BraceEnds.Of(layout).Select(e => (IReadOnlyList<Cell>)[e.Bar.Name, e.Side, e.FromMm, e.ToMm, e.ToRim, e.WidthMm, e.HeightMm]));
}
