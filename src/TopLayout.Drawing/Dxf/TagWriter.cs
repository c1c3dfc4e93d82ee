using System.Text;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Dxf;

/// <summary>Writes group codes and values, a line each: ASCII, LF. Lengths come in mm and leave in the unit of the file.</summary>
internal sealed class TagWriter(TextWriter output, DxfUnit unit, Vec2 shift)
{
    private const double MmPerInch = 25.4;

    // A nanometre in mm; a quarter of one in inches.
    private const int MmDecimals = 6;
    private const int InchDecimals = 8;
    private const int DegreeDecimals = 8;
    private const int BulgeDecimals = 10;

    /// <summary>ASCII, so that a character which slipped through fails instead of being garbled.</summary>
    public static readonly Encoding Encoding =
        Encoding.GetEncoding("us-ascii", EncoderFallback.ExceptionFallback, DecoderFallback.ExceptionFallback);

    /// <summary>A string.</summary>
    public void Text(int code, string value) => output.Write($"{NumberFormat.Whole(code)}\n{value}\n");

    /// <summary>A count or flag.</summary>
    public void Whole(int code, int value) => Text(code, NumberFormat.Whole(value));

    /// <summary>A length, mm.</summary>
    public void Mm(int code, double mm) => Text(
        code, unit == DxfUnit.Mm ? NumberFormat.Real(mm, MmDecimals) : NumberFormat.Real(mm / MmPerInch, InchDecimals));

    /// <summary>A bare factor.</summary>
    public void Factor(int code, double factor) => Text(code, NumberFormat.Real(factor, MmDecimals));

    /// <summary>An angle, written in degrees.</summary>
    public void Degrees(int code, Angle angle) => Text(code, NumberFormat.Real(angle.Degrees, DegreeDecimals));

    /// <summary>A bulge.</summary>
    public void Bulge(double bulge) => Text(42, NumberFormat.Real(bulge, BulgeDecimals));

    /// <summary>A point of the sheet in the plane, under codes n and n + 10.</summary>
    public void Point2D(int code, Point2 p)
    {
        Mm(code, p.X + shift.X);
        Mm(code + 10, p.Y + shift.Y);
    }

    /// <summary>A point of the sheet at height zero, under codes n, n + 10 and n + 20.</summary>
    public void Point(int code, Point2 p)
    {
        Point2D(code, p);
        Mm(code + 20, 0);
    }

    /// <summary>The file's origin under codes 10, 20 and 30.</summary>
    public void Origin()
    {
        Mm(10, 0);
        Mm(20, 0);
        Mm(30, 0);
    }

    /// <summary>The name of a header variable.</summary>
    public void Variable(string name) => Text(9, name);
}
