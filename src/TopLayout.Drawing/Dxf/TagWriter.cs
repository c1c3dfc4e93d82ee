using System.Text;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Dxf;

/// <summary>Writes group codes and values, a line each: ASCII, LF.</summary>
internal sealed class TagWriter(TextWriter output)
{
    private const int MmDecimals = 6;
    private const int DegreeDecimals = 8;
    private const int BulgeDecimals = 10;

    /// <summary>ASCII, so that a character which slipped through fails instead of being garbled.</summary>
    public static readonly Encoding Encoding =
        Encoding.GetEncoding("us-ascii", EncoderFallback.ExceptionFallback, DecoderFallback.ExceptionFallback);

    /// <summary>A string.</summary>
    public void Text(int code, string value) => output.Write($"{NumberFormat.Whole(code)}\n{value}\n");

    /// <summary>A count or flag.</summary>
    public void Whole(int code, int value) => Text(code, NumberFormat.Whole(value));

    /// <summary>A length or coordinate, mm.</summary>
    public void Mm(int code, double mm) => Text(code, NumberFormat.Real(mm, MmDecimals));

    /// <summary>A bare factor.</summary>
    public void Factor(int code, double factor) => Mm(code, factor);

    /// <summary>An angle, written in degrees.</summary>
    public void Degrees(int code, Angle angle) => Text(code, NumberFormat.Real(angle.Degrees, DegreeDecimals));

    /// <summary>A bulge.</summary>
    public void Bulge(double bulge) => Text(42, NumberFormat.Real(bulge, BulgeDecimals));

    /// <summary>A point in the plane under codes n and n + 10.</summary>
    public void Point2D(int code, Point2 p)
    {
        Mm(code, p.X);
        Mm(code + 10, p.Y);
    }

    /// <summary>A point at height zero under codes n, n + 10 and n + 20.</summary>
    public void Point(int code, Point2 p)
    {
        Point2D(code, p);
        Mm(code + 20, 0);
    }

    /// <summary>The name of a header variable.</summary>
    public void Variable(string name) => Text(9, name);
}
