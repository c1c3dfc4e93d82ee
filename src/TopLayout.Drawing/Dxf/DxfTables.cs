using TopLayout.Geometry;

namespace TopLayout.Drawing.Dxf;

/// <summary>Writes what stands before the entities: header, line types, layers, text style.</summary>
internal static class DxfTables
{
    /// <summary>The one text style.</summary>
    public const string TextStyle = "STANDARD";

    private const int Metric = 1;
    private const int Millimetres = 4;
    private const int Decimal = 2;

    /// <summary>The name of a line style.</summary>
    public static string LineType(LineStyle style) => style switch
    {
        LineStyle.Continuous => "CONTINUOUS",
        LineStyle.Dashed => "DASHED",
        LineStyle.Chain => "CHAIN",
        _ => "LONG_DASHED",
    };

    /// <summary>Version, drawing box and units; the box counts text too.</summary>
    public static void WriteHeader(TagWriter tags, Box2 box)
    {
        tags.Variable("$ACADVER");
        tags.Text(1, "AC1009");
        tags.Variable("$INSBASE");
        tags.Point(10, new Point2(0, 0));
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
        tags.Whole(70, Metric);
        tags.Variable("$INSUNITS");
        tags.Whole(70, Millimetres);
    }

    /// <summary>Every line style, whether used or not.</summary>
    public static void WriteLineTypes(TagWriter tags)
    {
        var styles = Enum.GetValues<LineStyle>();
        StartTable(tags, "LTYPE", styles.Length);
        foreach (var style in styles)
        {
            var dashes = Pen.Dashes(style);
            StartEntry(tags, "LTYPE", LineType(style));
            tags.Text(3, style.ToString());
            tags.Whole(72, 65);
            tags.Whole(73, dashes.Count);
            tags.Mm(40, dashes.Sum());
            foreach (var (index, dash) in dashes.Index())
            {
                tags.Mm(49, index % 2 == 0 ? dash : -dash);
            }
        }

        tags.Text(0, "ENDTAB");
    }

    /// <summary>Layer 0, which every reader expects, and the layers of the sheet.</summary>
    public static void WriteLayers(TagWriter tags, IReadOnlyCollection<Layer> layers)
    {
        StartTable(tags, "LAYER", layers.Count + 1);
        WriteLayer(tags, "0", Pen.For(Role.Text));
        foreach (var layer in layers)
        {
            WriteLayer(tags, layer.Name, Pen.For(layer.Role));
        }

        tags.Text(0, "ENDTAB");
    }

    /// <summary>The one text style, in the plain font that readers have.</summary>
    public static void WriteTextStyle(TagWriter tags)
    {
        StartTable(tags, "STYLE", 1);
        StartEntry(tags, "STYLE", TextStyle);
        tags.Mm(40, 0);
        tags.Factor(41, 1);
        tags.Degrees(50, Angle.Zero);
        tags.Whole(71, 0);
        tags.Mm(42, 2.5);
        tags.Text(3, "txt");
        tags.Text(4, "");
        tags.Text(0, "ENDTAB");
    }

    private static void WriteLayer(TagWriter tags, string name, Pen pen)
    {
        StartEntry(tags, "LAYER", name);
        tags.Whole(62, pen.ColourNumber);
        tags.Text(6, LineType(pen.Style));
    }

    private static void StartTable(TagWriter tags, string name, int count)
    {
        tags.Text(0, "TABLE");
        tags.Text(2, name);
        tags.Whole(70, count);
    }

    private static void StartEntry(TagWriter tags, string type, string name)
    {
        tags.Text(0, type);
        tags.Text(2, name);
        tags.Whole(70, 0);
    }
}
