using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// Writes a sheet as PDF at true size on one page, with bars and a right triangle to prove the print by. All of it is lines, letters too. The
/// same sheet gives the same bytes.
/// </summary>
public static class PdfWriter
{
    // From the edge of the page to the bars, mm.
    private const double WholeFromEdgeMm = 13;

    // From the edges of the page to the corner of the triangle, mm.
    private const double TriangleFromEdgeMm = 8;

    /// <summary>Writes the sheet; the stream stays open.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="output">Where to.</param>
    /// <param name="format">The page; a sheet too large for it gets one that fits.</param>
    /// <param name="ruler">What the bars are whole on.</param>
    public static void Write(Sheet sheet, Stream output, PageFormat format, Ruler ruler = Ruler.Millimetres)
    {
        var page = format.Around(sheet) ?? PageFormat.Fitted.Around(sheet)!.Value;
        var book = new PdfBook(sheet);
        var shift = new Point2(0, 0) - page.Min;
        var content = new PdfContent().InMillimetres().Save().Place(shift).Draw(PdfBook.Drawing).Restore();
        foreach (var shape in Proof(page.Width, page.Height, ruler))
        {
            content.Draw(shape);
        }

        book.AddPage(page.Width, page.Height, new Box2(sheet.Page.Min + shift, sheet.Page.Max + shift), content);
        output.Write(book.Finish());
    }

    /// <summary>The bars and the triangle on a page of a size, mm.</summary>
    internal static IEnumerable<Shape> Proof(double widthMm, double heightMm, Ruler ruler) =>
        ScaleBars.Of(widthMm, heightMm, ruler, WholeFromEdgeMm).Concat(ScaleBars.Triangle(widthMm, heightMm, TriangleFromEdgeMm, ruler));
}
