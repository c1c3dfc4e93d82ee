using TopLayout.Drawing;
using TopLayout.Drawing.Dxf;
using TopLayout.Drawing.Labels;
using TopLayout.Drawing.Svg;
using TopLayout.Geometry;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests.Drawing;

public class ReaderTests(ITestOutputHelper output)
{
    private static readonly Box2 Page = new(new Point2(-20, -20), new Point2(320, 220));

    [Theory]
    [InlineData(DxfLevel.R12, DxfUnit.Mm, DxfOrigin.Datum)]
    [InlineData(DxfLevel.R12, DxfUnit.Inch, DxfOrigin.Corner)]
    [InlineData(DxfLevel.R2000, DxfUnit.Mm, DxfOrigin.Corner)]
    [InlineData(DxfLevel.R2000, DxfUnit.Inch, DxfOrigin.Datum)]
    [InlineData(DxfLevel.LinesAndArcs, DxfUnit.Mm, DxfOrigin.Datum)]
    [InlineData(DxfLevel.LinesAndArcs, DxfUnit.Inch, DxfOrigin.Corner)]
    public void Dxf_SheetOfEverything_ReadsBackWithoutAFinding(DxfLevel level, DxfUnit unit, DxfOrigin origin) => ReadBack(
        "dxf", (sheet, stream) => DxfWriter.Write(sheet, stream, new DxfOptions(level, unit, origin)), unit == DxfUnit.Inch ? ["--allow", "units-not-mm"] : []);

    [Fact]
    public void Svg_SheetOfEverything_ReadsBackWithoutAFinding() => ReadBack("svg", SvgWriter.Write, []);

    private void ReadBack(string extension, Action<Sheet, Stream> write, string[] allowed)
    {
        var folder = Directory.CreateTempSubdirectory("toplayout-");
        try
        {
            var file = Path.Combine(folder.FullName, "everything." + extension);
            using (var stream = File.Create(file))
            {
                write(Everything(), stream);
            }

            OutsideReader.CheckDrawing(output, ["--strict", .. allowed, "--gap", "0.05", "--closed", "[_-](CUT|POCKET)$", "--expect-line", "300", file]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static Sheet Everything()
    {
        List<Shape> shapes = [.. Walls(), .. Styles(), .. Letters()];
        var labels = Enumerable.Range(0, 12).Select(i =>
            new LabelRequest($"post {i}", Role.Text, $"post {i}: Ø{i + 3} × 4½ mm", 2.5, new Point2(100 + (3 * i), 100)));
        var placed = LabelPlacer.Place(shapes, labels, Page);
        return new Sheet("everything", "Everything & more", "Lines, arcs, circles and words.", placed.Page, [.. shapes, .. placed.Shapes]);
    }

    private static IEnumerable<Shape> Walls()
    {
        var plate = new Contour([At(0, 0), At(300, 0, 1), At(300, 40), At(180, 40, -0.6), At(120, 40), At(0, 40, 0.2)], isClosed: true);
        yield return new ContourShape("plate", Role.Cut, plate);
        yield return new ContourShape("mirrored plate", Role.Cut, plate.Placed(new Placement(new Vec2(300, 100), Angle.FromDegrees(12), true)));
        yield return new ContourShape("hole", Role.Cut, Contour.Circle(new Point2(150, 15), 10));
        yield return new ContourShape("inner ring", Role.Pocket, Contour.Circle(new Point2(60, 20), 12.345678));
        yield return new ContourShape("outer ring", Role.Pocket, Contour.Circle(new Point2(60, 20), 12.345678).Reversed());
        yield return new ContourShape("bow", Role.Mark, new Contour([At(10, 60, -1 / 3.0), At(90, 65)], isClosed: false));
    }

    private static IEnumerable<Shape> Styles() =>
        from role in Enum.GetValues<Role>()
        where role is not (Role.Cut or Role.Pocket)
        from emphasis in Enum.GetValues<Emphasis>()
        let y = 170 + (5 * (int)role)
        let x = 10 + (40 * (int)emphasis)
        select new ContourShape("styles", role, new Contour([At(x, y), At(x + 30, y)], isClosed: false), emphasis);

    private static IEnumerable<Shape> Letters()
    {
        var text = string.Concat(Enumerable.Range(33, 94).Select(i => (char)i)) + "°±×Ø½¼¾→Λθ·–";
        yield return new LabelShape("letters", Role.Engrave, text, new Point2(10, -5), 2.5);
        yield return new LabelShape("letters", Role.Text, text, new Point2(10, -12), 2.5);
        yield return new LabelShape("letters", Role.Engrave, "turned 30°", new Point2(250, 100), 5, Alignment.Centre, Angle.FromDegrees(30));
    }

    private static Vertex At(double x, double y, double bulge = 0) => new(new Point2(x, y), bulge);
}
