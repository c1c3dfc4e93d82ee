namespace TopLayout.Drawing.Dxf;

/// <summary>
/// Writes a sheet as DXF of the R12 level (AC1009), which every reader takes: mm, sheet coordinates, lines and arcs as they are.
/// The same sheet gives the same bytes.
/// </summary>
public static class DxfWriter
{
    /// <summary>Writes the sheet; the stream stays open.</summary>
    public static void Write(Sheet sheet, Stream output)
    {
        using var text = new StreamWriter(output, TagWriter.Encoding, leaveOpen: true);
        var tags = new TagWriter(text);
        var box = sheet.Extents.IsEmpty ? sheet.Page : sheet.Extents;
        Section(tags, "HEADER", () => DxfTables.WriteHeader(tags, box));
        Section(tags, "TABLES", () =>
        {
            DxfTables.WriteLineTypes(tags);
            DxfTables.WriteLayers(tags, sheet.Layers);
            DxfTables.WriteTextStyle(tags);
        });
        Section(tags, "BLOCKS", () => { });
        Section(tags, "ENTITIES", () => WriteEntities(tags, sheet));
        tags.Text(0, "EOF");
    }

    private static void WriteEntities(TagWriter tags, Sheet sheet)
    {
        foreach (var layer in sheet.Layers)
        {
            var entities = new DxfEntities(tags, layer);
            foreach (var shape in layer.Shapes)
            {
                entities.Write(shape);
            }
        }
    }

    private static void Section(TagWriter tags, string name, Action content)
    {
        tags.Text(0, "SECTION");
        tags.Text(2, name);
        content();
        tags.Text(0, "ENDSEC");
    }
}
