using System.Text;
using System.Xml;

namespace TopLayout.Drawing.Svg;

/// <summary>
/// Writes a sheet as SVG at true size: one unit is one mm, a titled group per layer, text as strokes, no transforms, no style
/// sheet, no font. The same sheet gives the same bytes.
/// </summary>
public static class SvgWriter
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>Writes the sheet; the stream stays open.</summary>
    public static void Write(Sheet sheet, Stream output)
    {
        var settings = new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" };
        using var xml = XmlWriter.Create(output, settings);
        xml.WriteStartElement("svg", Namespace);
        WriteRootAttributes(xml, sheet);
        WriteText(xml, "title", sheet.Title, "title");
        WriteText(xml, "desc", sheet.Description, "desc");
        var paths = (new SvgPath(sheet.Page, SvgPath.ToWorkTo), new SvgPath(sheet.Page, SvgPath.ToRead));
        foreach (var layer in sheet.Layers)
        {
            WriteLayer(xml, layer, paths);
        }

        xml.WriteEndElement();
        xml.WriteWhitespace("\n");
    }

    private static void WriteRootAttributes(XmlWriter xml, Sheet sheet)
    {
        var (width, height) = (NumberFormat.Mm(sheet.Page.Width), NumberFormat.Mm(sheet.Page.Height));
        xml.WriteAttributeString("width", width + "mm");
        xml.WriteAttributeString("height", height + "mm");
        xml.WriteAttributeString("viewBox", $"0 0 {width} {height}");
        xml.WriteAttributeString("role", "img");
        xml.WriteAttributeString("aria-labelledby", "title desc");
    }

    private static void WriteLayer(XmlWriter xml, Layer layer, (SvgPath ToWorkTo, SvgPath ToRead) paths)
    {
        var usual = Pen.For(layer.Role);
        xml.WriteStartElement("g", Namespace);
        xml.WriteAttributeString("id", layer.Name.ToLowerInvariant().Replace('_', '-'));
        xml.WriteAttributeString("fill", "none");
        xml.WriteAttributeString("stroke-linecap", "round");
        xml.WriteAttributeString("stroke-linejoin", "round");
        WritePen(xml, usual, null);
        WriteText(xml, "title", layer.Title);
        foreach (var shape in layer.Shapes)
        {
            WriteShape(xml, shape, usual, shape.IsOnlyRead ? paths.ToRead : paths.ToWorkTo);
        }

        xml.WriteEndElement();
    }

    private static void WriteShape(XmlWriter xml, Shape shape, Pen usual, SvgPath path)
    {
        if (shape is ContourShape { Contour: var contour } && FullCircle.Of(contour) is { } circle)
        {
            xml.WriteStartElement("circle", Namespace);
            xml.WriteAttributeString("cx", path.X(circle.Center));
            xml.WriteAttributeString("cy", path.Y(circle.Center));
            xml.WriteAttributeString("r", NumberFormat.Mm(circle.RadiusMm));
        }
        else
        {
            xml.WriteStartElement("path", Namespace);
            xml.WriteAttributeString("d", path.Data(shape.Lines));
        }

        WritePen(xml, Pen.For(shape), usual);
        if (shape is LabelShape label)
        {
            WriteText(xml, "title", label.Text);
        }

        xml.WriteEndElement();
    }

    // Only what differs from the pen of the group.
    private static void WritePen(XmlWriter xml, Pen pen, Pen? usual)
    {
        if (pen.Colour != usual?.Colour)
        {
            xml.WriteAttributeString("stroke", pen.Colour);
        }

        if (pen.WidthMm != usual?.WidthMm)
        {
            xml.WriteAttributeString("stroke-width", NumberFormat.Mm(pen.WidthMm));
        }

        if (pen.Style != (usual?.Style ?? LineStyle.Continuous))
        {
            var dashes = Pen.Dashes(pen.Style).Select(d => NumberFormat.Mm(d));
            xml.WriteAttributeString("stroke-dasharray", pen.Style == LineStyle.Continuous ? "none" : string.Join(' ', dashes));
        }
    }

    private static void WriteText(XmlWriter xml, string element, string text, string? id = null)
    {
        xml.WriteStartElement(element, Namespace);
        if (id is not null)
        {
            xml.WriteAttributeString("id", id);
        }

        xml.WriteString(text);
        xml.WriteEndElement();
    }
}
