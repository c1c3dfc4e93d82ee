using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// Writes a sheet as PDF at true size on pages that a printer at home takes: an overview first where there are several, then the tiles, row by row, without empty ones.
/// The same sheet, paper and correction give the same bytes.
/// </summary>
public static class TiledPdfWriter
{
    private const double LineMm = 5;
    private const double TextMm = 2.8;
    private const double OverFoldMm = 8;

    /// <summary>Writes the sheet; the stream stays open.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="output">Where to.</param>
    /// <param name="paper">The paper of all pages; it lies or stands, whichever needs fewer.</param>
    /// <param name="correction">How the printer is corrected; the whole page is stretched round its middle, bars and all.</param>
    /// <param name="half">One side of the sheet's centre line, x = 0, with a fold line on it; null for the whole sheet.</param>
    public static void Write(Sheet sheet, Stream output, Paper paper, ScaleCorrection correction, SheetHalf? half = null)
    {
        var grid = TileGrid.Of(sheet, paper, half is { } side ? Half(sheet.Page, side) : null);
        var book = new PdfBook(Uncut(sheet, grid));
        if (grid.Tiles.Length > 1)
        {
            AddOverview(book, grid, paper, correction);
        }

        var furniture = new TileFurniture(grid, sheet.Title, Corrected(correction), isHalf: half is not null);
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

    /// <summary>The sheet without what is of use only in one piece and lies on a joint: a bar to prove the print by. The pages have bars of their own.</summary>
    internal static Sheet Uncut(Sheet sheet, TileGrid grid)
    {
        var cut = sheet.Whole.Where(w => !grid.Tiles.Any(t => grid.Trim(t) is var trim && trim.Contains(w.Min) && trim.Contains(w.Max)))
            .Select(w => w.Grown(Tolerances.ShortestMm)).ToList();
        return cut.Count == 0 ? sheet : new Sheet(
            sheet.Name, sheet.Title, sheet.Description, sheet.Page, sheet.Shapes.Where(s => !cut.Exists(w => w.Contains(s.Bounds.Min) && w.Contains(s.Bounds.Max))));
    }

    // A little over the centre line, so that the fold has paper on both sides.
    private static Box2 Half(Box2 page, SheetHalf half) => half == SheetHalf.Left
        ? page with { Max = new Point2(Math.Min(page.Max.X, OverFoldMm), page.Max.Y) }
        : page with { Min = new Point2(Math.Max(page.Min.X, -OverFoldMm), page.Min.Y) };

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

    // The whole drawing small, the tiles over it with their names, and what to do.
    private static void AddOverview(PdfBook book, TileGrid grid, Paper paper, ScaleCorrection correction)
    {
        string[] lines =
        [
            book.Sheet.Title,
            $"{NumberFormat.Whole(grid.Tiles.Length)} pages of {paper.Name}. This map is not to scale; its two bars are.",
            "Print at actual size, 100 %, not fitted to the page, on one side only.",
            $"Check with a ruler that the bars measure {Bar(grid.WidthMm)} and {Bar(grid.HeightMm)} mm, on this page and the last.",
            "Cut along a joint, lay it over its neighbour, cross on cross; tape, and measure the whole again.",
            $"{char.ToUpperInvariant(Corrected(correction)[0])}{Corrected(correction)[1..]}.",
        ];
        const double Margin = TileGrid.MarginMm;
        var head = grid.HeightMm - Margin - (lines.Length * LineMm) - 2;
        var (wide, high) = (grid.WidthMm - (2 * Margin), head - Margin);
        var scale = Math.Min(wide / grid.Bounds.Width, high / grid.Bounds.Height);
        var shift = new Vec2(Margin + ((wide - (scale * grid.Bounds.Width)) / 2) - (scale * grid.Bounds.Min.X), head - (scale * grid.Bounds.Max.Y));
        Point2 At(Point2 p) => new((p.X * scale) + shift.X, (p.Y * scale) + shift.Y);

        var furniture = new List<Shape>(ScaleBars.Of(grid.WidthMm, grid.HeightMm));
        furniture.AddRange(lines.Select((line, i) =>
            new LabelShape("overview", Role.Text, line, new Point2(Margin, grid.HeightMm - Margin - ((i + 1) * LineMm) + 2), TextMm)));
        foreach (var tile in grid.Tiles)
        {
            var trim = grid.Trim(tile);
            var (a, b) = (At(trim.Min), At(trim.Max));
            furniture.Add(new ContourShape("overview", Role.Dimension, Contour.Rectangle(new Box2(a, b))));
            furniture.Add(new LabelShape("overview", Role.Dimension, tile.Name, a.MidpointTo(b) - new Vec2(0, 3), 6, Alignment.Centre));
        }

        var content = Page(grid, correction).Save().Place(shift, scale, scale).Clip(grid.Shown).Draw(PdfBook.Drawing).Restore();
        Finish(book, grid, content, furniture, new Box2(new Point2(0, 0), new Point2(grid.WidthMm, grid.HeightMm)));
    }

    private static string Bar(double sideMm) => NumberFormat.Trimmed(ScaleBars.LengthOn(sideMm), 0);

    private static string Percent(double factor) => $"{(factor > 1 ? "+" : "")}{NumberFormat.Trimmed((factor - 1) * 100, 2)} %";
}
