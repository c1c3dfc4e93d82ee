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
    private readonly string _fonts;
    private readonly List<int> _layers = [];

    /// <summary>A book of a drawing; its layers can be shown and hidden in a reader.</summary>
    public PdfBook(Sheet sheet)
    {
        (Sheet, _tree, _form) = (sheet, _file.Reserve(), _file.Reserve());
        var font = _file.Reserve();
        _file.Write(font, PdfText.FontEntries);
        _fonts = $"/Font << /{PdfText.Font} {Reference(font)} >>";
        var content = new PdfContent();
        foreach (var layer in sheet.Layers)
        {
            AddLayer(layer, content);
        }

        // Thick lines may reach a little over the page's edge.
        var box = sheet.Page.Grown(1);
        var properties = string.Join(' ', _layers.Select(l => $"/{LayerName(l)} {Reference(l)}"));
        _file.WriteStream(
            _form,
            $"/Type /XObject /Subtype /Form /Resources << {_fonts} /Properties << {properties} >> >> "
            + $"/BBox [{PdfContent.Mm(box.Min.X)} {PdfContent.Mm(box.Min.Y)} {PdfContent.Mm(box.Max.X)} {PdfContent.Mm(box.Max.Y)}]",
            content.ToString());
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
            $"<< /Type /Page /Parent {Reference(_tree)} /MediaBox {box} /CropBox {box} /TrimBox {Box(trim)} "
            + $"/Resources << {_fonts} /XObject << /{Drawing} {Reference(_form)} >> >> /Contents {Reference(stream)} >>");
    }

    /// <summary>The file; printers are asked not to scale it.</summary>
    public byte[] Finish()
    {
        var (catalog, info) = (_file.Reserve(), _file.Reserve());
        _file.Write(_tree, $"<< /Type /Pages /Count {NumberFormat.Whole(_pages.Count)} /Kids [{string.Join(' ', _pages.Select(Reference))}] >>");
        var layers = string.Join(' ', _layers.Select(Reference));
        _file.Write(
            catalog,
            $"<< /Type /Catalog /Pages {Reference(_tree)} /Lang (en) /ViewerPreferences << /PrintScaling /None /PickTrayByPDFSize true /DisplayDocTitle true >> "
            + $"/OCProperties << /OCGs [{layers}] /D << /BaseState /ON /Order [{layers}] >> >> >>");
        _file.Write(info, $"<< /Title {PdfFile.Text(Sheet.Title)} /Subject {PdfFile.Text(Sheet.Description)} /Creator (toplayout) /Producer (toplayout) >>");
        return _file.Finish(catalog, info);
    }

    private void AddLayer(Layer layer, PdfContent content)
    {
        var number = _file.Reserve();
        _layers.Add(number);
        _file.Write(number, $"<< /Type /OCG /Name {PdfFile.Text(layer.Name)} >>");
        content.BeginLayer(LayerName(number));
        foreach (var shape in layer.Shapes)
        {
            content.Draw(shape);
        }

        content.EndLayer();
    }

    private static string LayerName(int number) => $"L{NumberFormat.Whole(number)}";

    private static string Reference(int number) => $"{NumberFormat.Whole(number)} 0 R";

    private static string Box(Box2 mm) => $"[{PdfContent.Points(mm.Min.X)} {PdfContent.Points(mm.Min.Y)} {PdfContent.Points(mm.Max.X)} {PdfContent.Points(mm.Max.Y)}]";
}
