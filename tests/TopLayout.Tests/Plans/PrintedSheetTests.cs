using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Drawing.Pdf;
using TopLayout.Geometry;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>What stands on printed pages besides the sheets, and where the joints between pages run.</summary>
public class PrintedSheetTests
{
    public static TheoryData<string> Presets => [.. Built.PresetNames];

    /// <summary>The words of both bars and of the triangle keep off each other on every page that a sheet is printed whole on.</summary>
    [Theory]
    [InlineData(400, 900)]
    [InlineData(297, 420)]
    [InlineData(914, 1200)]
    [InlineData(160, 130)]
    public void WholePages_BarsAndTriangle_KeepApart(double width, double height)
    {
        foreach (var ruler in Enum.GetValues<Ruler>())
        {
            var page = new Sheet("page", "page", "", new Box2(new Point2(0, 0), new Point2(width, height)), PdfWriter.Proof(width, height, ruler));

            Assert.Equal([], Collisions.Of(page).Select(c => $"{c.Label.Text} on {(c.Other as LabelShape)?.Text ?? c.Other.Part}"));
        }
    }

    /// <summary>On pages of all sizes: no word of a bar or of the triangle comes within 1 mm of the lines or words of another.</summary>
    [Fact]
    public void WholePages_OfAnySize_BarsKeepTheirWordsApart()
    {
        foreach (var (size, ruler) in Enumerable.Range(200, 60).SelectMany(n => Enum.GetValues<Ruler>().Select(r => (n, r))))
        {
            var shapes = PdfWriter.Proof(size, size + 93.5, ruler).ToList();
            foreach (var label in shapes.OfType<LabelShape>().Where(l => l.Text.Length > 1))
            {
                // The ticks of its own bar lie under it.
                var near = shapes.Where(s => s != label && s.Bounds.Overlaps(label.Bounds.Grown(1))).ToList();
                Assert.All(near, s => Assert.True(s is ContourShape && IsAlong(label, s.Bounds), $"{size} mm, {ruler}: {label.Text} beside {(s as LabelShape)?.Text ?? "a line"} at {s.Bounds.Center}"));
            }
        }

        static bool IsAlong(LabelShape label, Box2 line) => label.Rotation == Angle.Zero
            ? line.Max.Y < label.Bounds.Min.Y && label.Text[0] == 'x'
            : line.Max.X < label.Bounds.Min.X && label.Text[0] == 'y';
    }

    /// <summary>By hand: a design in inches on a page of 300 by 400: bars of 10 and 14 in (270 and 370 mm of room), a triangle of 6, 8 and 10 in.</summary>
    [Fact]
    public void WholePages_OnARulerInInches_HaveBarsAndTriangleOfWholeInches()
    {
        var words = PdfWriter.Proof(300, 400, Ruler.Inches).OfType<LabelShape>().Select(l => l.Text).ToList();

        Assert.Contains("x: 10 in = 254 mm", words);
        Assert.Contains("y: 14 in = 355.6 mm", words);
        Assert.Contains("P to Q 6 in (152.4 mm), P to R 8 in (203.2 mm), Q to R 10 in (254 mm); print at actual size, 100 %", words);
        Assert.Contains("P to Q 150 mm, P to R 200 mm, Q to R 250 mm; print at actual size, 100 %", PdfWriter.Proof(300, 400, Ruler.Millimetres).OfType<LabelShape>().Select(l => l.Text));
    }

    /// <summary>
    /// No joint cuts a title block or a legend: each stands whole on one page of the drawing, or on the overview and on no other, with the bar that
    /// proves the print; and then at true size, on the paper, and off the map.
    /// </summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void Tiles_OfSheets_CutNoTitleBlockAndNoLegend(string preset)
    {
        foreach (var kind in (string[])["outside-plan", "inside-plan", "grain", "outline", "mould", "rosette", "bridge-place"])
        {
            var sheet = Drawn.One(preset, kind);
            var bar = Assert.Single(sheet.Whole);
            foreach (var paper in Paper.All)
            {
                var tiled = TiledSheet.Of(sheet, paper);
                foreach (var part in sheet.Shapes.Where(s => s.Part is "title block" or "legend").GroupBy(s => s.Part))
                {
                    var box = Box2.Around(part.Select(s => s.Bounds));
                    var isApart = tiled.Apart.Any(s => s.Part == part.Key);
                    Assert.True(isApart != tiled.Drawing.Shapes.Any(s => s.Part == part.Key), $"{kind} on {paper.Name}: {part.Key}");
                    Assert.True(isApart || tiled.Grid.ShowsWhole(box), $"{kind} on {paper.Name}: {part.Key} is cut");
                }

                Assert.Contains(tiled.Drawing.Words().Concat(tiled.Apart.OfType<LabelShape>().Select(l => l.Text)), w => w is "100 mm" or "4 in");
                Assert.True(!tiled.Apart.IsEmpty || tiled.Grid.ShowsWhole(bar), $"{kind} on {paper.Name}");
                Overview(tiled, paper, $"{kind} on {paper.Name}");
            }
        }
    }

    private static void Overview(TiledSheet tiled, Paper paper, string what)
    {
        var overview = new Overview(tiled, paper, Ruler.Inches, "printed without correction");
        var page = new Box2(new Point2(0, 0), new Point2(tiled.Grid.WidthMm, tiled.Grid.HeightMm)).Grown(-TileGrid.MarginMm + 0.001);
        Assert.All(overview.Furniture().Where(s => s.Part == "overview"), s => Assert.True(page.Contains(s.Bounds.Min) && page.Contains(s.Bounds.Max), $"{what}: {(s as LabelShape)?.Text} leaves the page"));
        Assert.True(overview.MapScale > 0.1, $"{what}: a map of 1:{1 / overview.MapScale:F0}");
        if (tiled.Apart.IsEmpty)
        {
            return;
        }

        Assert.True(overview.ApartShift is not null, $"{what}: the title block is not at true size");
        var moved = tiled.Apart.OfType<LabelShape>().Select(l => new Box2(l.Bounds.Min + overview.ApartShift.Value, l.Bounds.Max + overview.ApartShift.Value)).ToList();
        Assert.All(moved, b => Assert.True(page.Contains(b.Min) && page.Contains(b.Max), $"{what}: words leave the page"));
        Assert.All(overview.Furniture().Where(s => s.Part == "overview"), s => Assert.DoesNotContain(moved, b => b.Overlaps(s.Bounds)));
        Assert.Contains(overview.Furniture().OfType<LabelShape>(), l => l.Text.StartsWith("On this page alone, not on the others: title block", StringComparison.Ordinal));
    }

    /// <summary>
    /// By hand: A4 shows 182 mm by 269 and moves on by 172: ink from 0 to 300 takes two columns. Words of a part that may stand apart, at 250 to 300,
    /// make the second: without them the tiles are one, and the overview with the words the other page.
    /// </summary>
    [Fact]
    public void Tiles_PartThatMayStandApart_LeavesThemWhereThatSavesAPage()
    {
        static ContourShape Frame(string part, double from, double to) =>
            new(part, Role.Mark, Contour.Rectangle(new Box2(new Point2(from, 0), new Point2(to, 100))));
        Sheet Of(params string[] apart) => new("s", "S", "", new Box2(new Point2(-10, -10), new Point2(310, 110)), [Frame("plan", 0, 170), Frame("words", 250, 300)]) { Apart = [.. apart] };

        var (together, parted) = (TiledSheet.Of(Of(), Paper.A4), TiledSheet.Of(Of("words"), Paper.A4));

        Assert.Equal((1, 0), (TileGrid.Of(Of(), Paper.Tabloid).Tiles.Length, TiledSheet.Of(Of("words"), Paper.Tabloid).Apart.Length));
        Assert.Equal((2, 0), (together.Grid.Tiles.Length, together.Apart.Length));
        Assert.Equal((1, "words"), (parted.Grid.Tiles.Length, Assert.Single(parted.Apart).Part));
        Assert.Equal("plan", Assert.Single(parted.Drawing.Shapes).Part);
    }

    /// <summary>
    /// By hand: A4 shows 182 by 269 mm and moves on by 172 and 259: 300 by 500 takes two columns of two rows. Of 302, a line's width round them,
    /// 52 are spare, so that the joint, at 150, may move by 26: right of a line at 165,
    /// so that the upper right page is empty, but not past one at 190.
    /// </summary>
    [Fact]
    public void Tiles_GridMovesWhereThatSavesAPage()
    {
        static ContourShape Line(double x1, double y1, double x2, double y2) =>
            new("a", Role.Mark, new Contour([new Vertex(new Point2(x1, y1)), new Vertex(new Point2(x2, y2))], isClosed: false));
        static int Pages(params Shape[] shapes) => TileGrid.Of(Sheet.Around("s", "S", "", shapes), Paper.A4).Tiles.Length;

        Assert.Equal(4, Pages(Line(0, 0, 300, 0), Line(100, 0, 100, 500), Line(190, 300, 190, 500)));
        Assert.Equal(3, Pages(Line(0, 0, 300, 0), Line(100, 0, 100, 500), Line(165, 300, 165, 500)));
    }

    /// <summary>By hand: A4 shows 182 mm and moves on by 172; two columns over 300 mm leave 54 spare, so the joint, at 150, moves by 27 at most.</summary>
    [Theory]
    [InlineData(130, 230, true)]
    [InlineData(60, 160, true)]
    [InlineData(100, 200, false)]
    public void Tiles_BarUnderAJoint_AreMovedWithinWhatIsSpareOrLeaveItOut(double from, double to, bool isShown)
    {
        var frame = new ContourShape("frame", Role.Mark, Contour.Rectangle(new Box2(new Point2(1, 1), new Point2(299, 199))));
        var line = new ContourShape("bar", Role.Dimension, new Contour([new Vertex(new Point2(from, 10)), new Vertex(new Point2(to, 10))], isClosed: false));
        var sheet = new Sheet("s", "S", "", new Box2(new Point2(0, 0), new Point2(300, 200)), [frame, line]) { Whole = [line.Bounds] };
        var tiled = TiledSheet.Of(sheet, Paper.A4);
        var upright = tiled.Grid;

        Assert.Equal(isShown, upright.ShowsWhole(line.Bounds));
        Assert.Equal(isShown, tiled.Drawing.Shapes.Contains(line));
        Assert.True(upright.Bounds.Min.X <= 0 && upright.Bounds.Max.X >= 300);
    }
}
