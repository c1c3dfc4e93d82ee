using System.Text;
using TopLayout.Drawing;
using TopLayout.Drawing.Dxf;
using TopLayout.Drawing.Svg;
using TopLayout.Geometry;

namespace TopLayout.Tests.Drawing;

/// <summary>Shapes and sheets for the tests of the writers, and what the writers make of them.</summary>
internal static class Specimen
{
    public static readonly Box2 Page = new(new Point2(-100, -50), new Point2(100, 50));

    public static Sheet Sheet(params IEnumerable<Shape> shapes) => new("specimen", "A <specimen> & more", "Test.", Page, shapes);

    public static ContourShape Open(Role role, params IEnumerable<Vertex> vertices) => new("part", role, new Contour(vertices, isClosed: false));

    public static ContourShape Closed(Role role, params IEnumerable<Vertex> vertices) => new("part", role, new Contour(vertices, isClosed: true));

    public static Vertex At(double x, double y, double bulge = 0) => new(new Point2(x, y), bulge);

    public static Sheet Mixed() => Sheet(
        Closed(Role.Cut, At(-50.125, 0), At(50, 0, 0.3), At(50, 30), At(-50, 30, -0.3)),
        new ContourShape("ring", Role.Pocket, Contour.Circle(new Point2(0, 10), 1 / 3.0)),
        Open(Role.Hidden, At(-10, -10), At(10, -10.5)),
        Open(Role.Mark, At(0, 0, 1), At(0, 10)),
        new LabelShape("notes", Role.Text, "Ø98 ± ½°", new Point2(0, -30), 2.5, Alignment.Centre),
        new LabelShape("part", Role.Engrave, "ABC", new Point2(-60, -30), 5));

    public static string Dxf(Sheet sheet) => Encoding.ASCII.GetString(Bytes(DxfWriter.Write, sheet));

    public static string Svg(Sheet sheet) => Encoding.UTF8.GetString(Bytes(SvgWriter.Write, sheet));

    public static byte[] Bytes(Action<Sheet, Stream> write, Sheet sheet)
    {
        using var stream = new MemoryStream();
        write(sheet, stream);
        return stream.ToArray();
    }
}
