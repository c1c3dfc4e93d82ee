using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// Writes a sheet as PDF at true size on pages that a printer at home takes: an overview first where there are several, then the tiles, row by row, without empty ones.
/// The same sheet, paper and correction give the same bytes.
/// </summary>
public static class TiledPdfWriter
{
    /// <summary>Writes the sheet; the stream stays open.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="output">Where to.</param>
    /// <param name="paper">The paper of all pages; it lies or stands, whichever needs fewer.</param>
    /// <param name="correction">How the printer is corrected; the whole page is stretched round its middle, bars and all.</param>
    /// <param name="half">One side of the sheet's centre line, x = 0, with a fold line on it; null for the whole sheet.</param>
    /// <param name="ruler">What the bars are whole on.</param>
    public static void Write(Sheet sheet, Stream output, Paper paper, ScaleCorrection correction, SheetHalf? half = null, Ruler ruler = Ruler.Millimetres)
    {
        var tiled = TiledSheet.Of(sheet, paper, half);
        var (grid, book) = (tiled.Grid, new PdfBook(tiled.Drawing));
        if (grid.Tiles.Length > 1 || !tiled.Apart.IsEmpty)
        {
            var overview = new Overview(tiled, paper, ruler, Corrected(correction));
            var content = Page(grid, correction).Save().Place(overview.MapShift, overview.MapScale, overview.MapScale).Clip(grid.Shown).Draw(PdfBook.Drawing).Restore();
            overview.DrawApart(content);
            Finish(book, grid, content, overview.Furniture(), new Box2(new Point2(0, 0), new Point2(grid.WidthMm, grid.HeightMm)));
        }

        var furniture = new TileFurniture(grid, sheet.Title, Corrected(correction), isHalf: half is not null, ruler);
        foreach (var tile in grid.Tiles)
        {
            var content = Page(grid, correction)
                .Save()
                .Clip(new Box2(new Point2(TileGrid.MarginMm, TileGrid.MarginMm), new Point2(grid.WidthMm - TileGrid.MarginMm, grid.HeightMm - TileGrid.MarginMm)))
                .Place(TileFurniture.Shift(tile))
                .Clip(grid.Shown)
                .Draw(PdfBook.Drawing)
                .Restore();
            var trim = grid.Trim(tile);
            Finish(book, grid, content, furniture.Of(tile), new Box2(trim.Min + TileFurniture.Shift(tile), trim.Max + TileFurniture.Shift(tile)));
        }

        output.Write(book.Finish());
    }

    private static string Corrected(ScaleCorrection correction) => correction.IsNone
        ? "printed without correction"
        : $"corrected: x by {Percent(correction.X)}, y by {Percent(correction.Y)}";

    private static PdfContent Page(TileGrid grid, ScaleCorrection correction)
    {
        var content = new PdfContent().InMillimetres();
        return correction.IsNone
            ? content
            : content.Place(new Vec2(grid.WidthMm / 2 * (1 - correction.X), grid.HeightMm / 2 * (1 - correction.Y)), correction.X, correction.Y);
    }

    private static void Finish(PdfBook book, TileGrid grid, PdfContent content, IEnumerable<Shape> furniture, Box2 trim)
    {
        foreach (var shape in furniture)
        {
            content.Draw(shape);
        }

        book.AddPage(grid.WidthMm, grid.HeightMm, trim, content);
    }

    private static string Percent(double factor) => $"{(factor > 1 ? "+" : "")}{NumberFormat.Trimmed((factor - 1) * 100, 2)} %";
}
