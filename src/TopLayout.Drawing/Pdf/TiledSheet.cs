using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>A sheet shared out over the pages of a print: what the tiles show, and what stands whole on the overview instead.</summary>
internal sealed class TiledSheet
{
    private const double OverFoldMm = 8;
    private readonly Sheet _sheet;

    private TiledSheet(Sheet sheet, TileGrid grid, bool isParted)
    {
        bool IsApart(Shape s) => isParted && sheet.Apart.Contains(s.Part);
        (_sheet, Grid, Apart) = (sheet, grid, [.. sheet.Shapes.Where(IsApart)]);
        Drawing = sheet.Without(s => IsApart(s) || IsIn(s, sheet.Whole.Where(w => !grid.ShowsWhole(w))));
    }

    /// <summary>The tiles.</summary>
    public TileGrid Grid { get; }

    /// <summary>
    /// The sheet as the tiles show it: without what stands apart, and without what is of use only in one piece and lies on a joint, a bar to
    /// prove the print by. The pages have bars of their own.
    /// </summary>
    public Sheet Drawing { get; }

    /// <summary>What stands on the overview, in sheet coordinates: the sheet's explaining parts, all or none of them.</summary>
    public ImmutableArray<Shape> Apart { get; }

    /// <summary>
    /// Shares out a sheet. The explaining parts leave the tiles when that takes fewer of them, or when a joint would cut one of those parts.
    /// </summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="half">One side of the sheet's centre line, x = 0; null for the whole sheet.</param>
    public static TiledSheet Of(Sheet sheet, Paper paper, SheetHalf? half = null)
    {
        TileGrid Grid(Sheet drawn) => TileGrid.Of(drawn, paper, half is { } side ? Half(TileGrid.Around(drawn), side) : null);
        var together = Grid(sheet);
        var parts = sheet.Shapes.Where(s => sheet.Apart.Contains(s.Part)).ToLookup(s => s.Part, s => s.Bounds);
        var rest = sheet.Without(s => parts.Contains(s.Part));
        if (parts.Count == 0 || rest.Shapes.IsEmpty)
        {
            return new TiledSheet(sheet, together, isParted: false);
        }

        var alone = Grid(rest);
        return parts.All(p => together.ShowsWhole(Box2.Around(p))) && together.Tiles.Length <= alone.Tiles.Length
            ? new TiledSheet(sheet, together, isParted: false)
            : new TiledSheet(sheet, alone, isParted: true);
    }

    /// <summary>Whether a shape is of use only in one piece.</summary>
    public bool IsWhole(Shape shape) => IsIn(shape, _sheet.Whole);

    private static bool IsIn(Shape shape, IEnumerable<Box2> boxes) =>
        boxes.Any(b => b.Grown(Tolerances.ShortestMm) is var box && box.Contains(shape.Bounds.Min) && box.Contains(shape.Bounds.Max));

    // A little over the centre line, so that the fold has paper on both sides.
    private static Box2 Half(Box2 page, SheetHalf half) => half == SheetHalf.Left
        ? page with { Max = new Point2(Math.Min(page.Max.X, OverFoldMm), page.Max.Y) }
        : page with { Min = new Point2(Math.Max(page.Min.X, -OverFoldMm), page.Min.Y) };
}
