using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>Pages of one size over one drawing, which stands in the file once as a form and is placed by each page.</summary>
internal sealed class PdfBook
{
    /// <summary>The name of the drawing on every page.</summary>
    public const string Drawing = "Sheet";

    private readonly PdfFile _file = new();
    private readonly List<int> _pages = [];
    private readonly int _tree;
    private readonly int _form;

    /// <summary>A book of a drawing.</summary>
    public PdfBook(Sheet sheet)
    {
        (Sheet, _tree, _form) = (sheet, _file.Reserve(), _file.Reserve());
        var content = new PdfContent();
        foreach (var shape in sheet.Layers.SelectMany(l => l.Shapes))
        {
            content.Draw(shape);
        }

        // Thick lines may reach a little over the page's edge.
        var box = sheet.Page.Grown(1);
        _file.WriteStream(
            _form, $"/Type /XObject /Subtype /Form /Resources << >> /BBox [{PdfContent.Mm(box.Min.X)} {PdfContent.Mm(box.Min.Y)} {PdfContent.Mm(box.Max.X)} {PdfContent.Mm(box.Max.Y)}]", content.ToString());
    }

    /// <summary>The drawing.</summary>
    public Sheet Sheet { get; }

    /// <summary>Adds a page of a size, mm; its content is in mm from the lower left corner.</summary>
    public void AddPage(double widthMm, double heightMm, Box2 trim, PdfContent content)
    {
        var (page, stream) = (_file.Reserve(), _file.Reserve());
        _pages.Add(page);
        _file.WriteStream(stream, "", content.ToString());
        var box = Box(new Box2(new Point2(0, 0), new Point2(widthMm, heightMm)));
        _file.Write(
            page,
            $"<< /Type /Page /Parent {NumberFormat.Whole(_tree)} 0 R /MediaBox {box} /CropBox {box} /TrimBox {Box(trim)} "
            + $"/Resources << /XObject << /{Drawing} {NumberFormat.Whole(_form)} 0 R >> >> /Contents {NumberFormat.Whole(stream)} 0 R >>");
    }

    /// <summary>The file; printers are asked not to scale it.</summary>
    public byte[] Finish()
    {
        var (catalog, info) = (_file.Reserve(), _file.Reserve());
        _file.Write(_tree, $"<< /Type /Pages /Count {NumberFormat.Whole(_pages.Count)} /Kids [{string.Join(' ', _pages.Select(p => $"{NumberFormat.Whole(p)} 0 R"))}] >>");
        _file.Write(
            catalog,
            $"<< /Type /Catalog /Pages {NumberFormat.Whole(_tree)} 0 R /Lang (en) /ViewerPreferences << /PrintScaling /None /PickTrayByPDFSize true /DisplayDocTitle true >> >>");
        _file.Write(info, $"<< /Title {PdfFile.Text(Sheet.Title)} /Subject {PdfFile.Text(Sheet.Description)} /Creator (toplayout) /Producer (toplayout) >>");
        return _file.Finish(catalog, info);
    }

    private static string Box(Box2 mm) => $"[{PdfContent.Points(mm.Min.X)} {PdfContent.Points(mm.Min.Y)} {PdfContent.Points(mm.Max.X)} {PdfContent.Points(mm.Max.Y)}]";
}
