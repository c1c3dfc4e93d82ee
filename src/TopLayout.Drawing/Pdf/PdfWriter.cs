using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>Writes a sheet as PDF at true size on one page as large as the sheet. All of it is lines, letters too. The same sheet gives the same bytes.</summary>
public static class PdfWriter
{
    /// <summary>Writes the sheet; the stream stays open.</summary>
    public static void Write(Sheet sheet, Stream output)
    {
        var book = new PdfBook(sheet);
        var content = new PdfContent().InMillimetres().Place(new Point2(0, 0) - sheet.Page.Min).Draw(PdfBook.Drawing);
        book.AddPage(sheet.Page.Width, sheet.Page.Height, new Box2(new Point2(0, 0), new Point2(sheet.Page.Width, sheet.Page.Height)), content);
        output.Write(book.Finish());
    }
}
