using TopLayout.Geometry;

namespace TopLayout.Drawing.Dxf;

/// <summary>
/// Writes a sheet as DXF at true size, lines and arcs as they are: by default of the R12 level (AC1009), which every reader takes, in mm and
/// sheet coordinates. The same sheet and options give the same bytes.
/// </summary>
public static class DxfWriter
{
    /// <summary>Writes the sheet; the stream stays open.</summary>
    public static void Write(Sheet sheet, Stream output) => Write(sheet, output, default);

    /// <summary>Writes the sheet; the stream stays open.</summary>
    public static void Write(Sheet sheet, Stream output, DxfOptions options)
    {
        var shift = options.Origin == DxfOrigin.Corner ? new Point2(0, 0) - sheet.Page.Min : default;

        // The header names a handle above all others, so it comes last and stands first.
        using var body = new StringWriter();
        var records = new DxfRecords(new TagWriter(body, options.Unit, shift), options);
        WriteBody(records, sheet);

        using var text = new StreamWriter(output, TagWriter.Encoding, leaveOpen: true);
        var tags = new TagWriter(text, options.Unit, shift);
        var box = sheet.Extents.IsEmpty ? sheet.Page : sheet.Extents;
        new DxfRecords(tags, options).Section("HEADER", () => DxfTables.WriteHeader(tags, options, box, records.Seed));
        text.Write(body.GetStringBuilder());
        tags.Text(0, "EOF");
    }

    private static void WriteBody(DxfRecords records, Sheet sheet)
    {
        var full = records.Options.HasHandles;
        string[] spaces = [];
        if (full)
        {
            records.Section("CLASSES", () => { });
        }

        records.Section("TABLES", () =>
        {
            DxfTables.Write(records, sheet.Layers);
            spaces = full ? DxfBlocks.WriteRecords(records) : [];
        });
        records.Section("BLOCKS", () =>
        {
            if (full)
            {
                DxfBlocks.Write(records, spaces);
            }
        });
        records.Section("ENTITIES", () =>
        {
            foreach (var layer in sheet.Layers)
            {
                var entities = new DxfEntities(records, layer);
                foreach (var shape in layer.Shapes)
                {
                    entities.Write(shape);
                }
            }
        });
        if (full)
        {
            records.Section("OBJECTS", () => DxfBlocks.WriteObjects(records));
        }
    }
}
