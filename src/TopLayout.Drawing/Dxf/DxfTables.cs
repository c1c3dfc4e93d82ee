using TopLayout.Geometry;

namespace TopLayout.Drawing.Dxf;

/// <summary>Writes what stands before the entities: header, line types, layers, text style, and what R2000 asks for besides.</summary>
internal static class DxfTables
{
    private const string TextStyle = "Standard";
    private const int Decimal = 2;

    /// <summary>The name of a line style as the level spells it.</summary>
    public static string LineType(DxfRecords records, LineStyle style) => records.Spelled(style switch
    {
        LineStyle.Continuous => "Continuous",
        LineStyle.Dashed => "DASHED",
        LineStyle.Chain => "CHAIN",
        LineStyle.LongDashed => "LONG_DASHED",
        _ => "DOTTED",
    });

    /// <summary>The one text style as the level spells it.</summary>
    public static string StyleName(DxfRecords records) => records.Spelled(TextStyle);

    /// <summary>Version, drawing box and units; the box counts text too.</summary>
    /// <param name="tags">Where to.</param>
    /// <param name="options">What is written.</param>
    /// <param name="box">The box, in sheet coordinates, mm.</param>
    /// <param name="seed">A handle above all others; empty where there are none.</param>
    public static void WriteHeader(TagWriter tags, DxfOptions options, Box2 box, string seed)
    {
        tags.Variable("$ACADVER");
        tags.Text(1, options.HasHandles ? "AC1015" : "AC1009");
        if (options.HasHandles)
        {
            tags.Variable("$DWGCODEPAGE");
            tags.Text(3, "ANSI_1252");
            tags.Variable("$HANDSEED");
            tags.Text(5, seed);
        }

        tags.Variable("$INSBASE");
        tags.Origin();
        tags.Variable("$EXTMIN");
        tags.Point(10, box.Min);
        tags.Variable("$EXTMAX");
        tags.Point(10, box.Max);
        tags.Variable("$LIMMIN");
        tags.Point2D(10, box.Min);
        tags.Variable("$LIMMAX");
        tags.Point2D(10, box.Max);
        tags.Variable("$LUNITS");
        tags.Whole(70, Decimal);
        tags.Variable("$LUPREC");
        tags.Whole(70, 4);
        tags.Variable("$MEASUREMENT");
        tags.Whole(70, options.Unit == DxfUnit.Mm ? 1 : 0);
        tags.Variable("$INSUNITS");
        tags.Whole(70, options.Unit == DxfUnit.Mm ? 4 : 1);
    }

    /// <summary>All tables of the level.</summary>
    public static void Write(DxfRecords records, IReadOnlyCollection<Layer> layers)
    {
        var full = records.Options.HasHandles;
        if (full)
        {
            records.Table("VPORT", 0, _ => { });
        }

        WriteLineTypes(records);
        WriteLayers(records, layers);
        WriteTextStyle(records);
        if (full)
        {
            records.Table("VIEW", 0, _ => { });
            records.Table("UCS", 0, _ => { });
            records.Table("APPID", 1, table => records.Entry("APPID", table, "AcDbRegAppTableRecord", "ACAD"));
            records.Table("DIMSTYLE", 1, table => records.Entry("DIMSTYLE", table, "AcDbDimStyleTableRecord", "Standard"));
        }
    }

    // Every line style, whether used or not.
    private static void WriteLineTypes(DxfRecords records)
    {
        var styles = Enum.GetValues<LineStyle>();
        string[] taken = records.Options.HasHandles ? ["ByBlock", "ByLayer"] : [];
        records.Table("LTYPE", taken.Length + styles.Length, table =>
        {
            foreach (var name in taken)
            {
                WriteLineType(records, table, name, "", []);
            }

            foreach (var style in styles)
            {
                WriteLineType(records, table, LineType(records, style), style.ToString(), Pen.Dashes(style));
            }
        });
    }

    private static void WriteLineType(DxfRecords records, string table, string name, string description, IReadOnlyList<double> dashes)
    {
        var tags = records.Tags;
        records.Entry("LTYPE", table, "AcDbLinetypeTableRecord", name);
        tags.Text(3, description);
        tags.Whole(72, 65);
        tags.Whole(73, dashes.Count);
        tags.Mm(40, dashes.Sum());
        foreach (var (index, dash) in dashes.Index())
        {
            tags.Mm(49, index % 2 == 0 ? dash : -dash);
            if (records.Options.HasHandles)
            {
                tags.Whole(74, 0);
            }
        }
    }

    // Layer 0, which every reader expects, and the layers of the sheet.
    private static void WriteLayers(DxfRecords records, IReadOnlyCollection<Layer> layers) => records.Table("LAYER", layers.Count + 1, table =>
    {
        WriteLayer(records, table, "0", Pen.For(Role.Text));
        foreach (var layer in layers)
        {
            WriteLayer(records, table, layer.Name, Pen.For(layer.Role));
        }
    });

    private static void WriteLayer(DxfRecords records, string table, string name, Pen pen)
    {
        records.Entry("LAYER", table, "AcDbLayerTableRecord", name);
        records.Tags.Whole(62, pen.ColourNumber);
        records.Tags.Text(6, LineType(records, pen.Style));
    }

    // The one text style, in the plain font that readers have.
    private static void WriteTextStyle(DxfRecords records) => records.Table("STYLE", 1, table =>
    {
        var tags = records.Tags;
        records.Entry("STYLE", table, "AcDbTextStyleTableRecord", StyleName(records));
        tags.Mm(40, 0);
        tags.Factor(41, 1);
        tags.Degrees(50, Angle.Zero);
        tags.Whole(71, 0);
        tags.Mm(42, 2.5);
        tags.Text(3, "txt");
        tags.Text(4, "");
    });
}
