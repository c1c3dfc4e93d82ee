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
        Shape[] shapes = [.. ScaleBars.Of(width, height, PdfWriter.WholeFromEdgeMm), .. ScaleBars.Triangle(width, height, PdfWriter.TriangleFromEdgeMm)];
        var page = new Sheet("page", "page", "", new Box2(new Point2(0, 0), new Point2(width, height)), shapes);

        Assert.Equal([], Collisions.Of(page).Select(c => $"{c.Label.Text} on {(c.Other as LabelShape)?.Text ?? c.Other.Part}"));
    }

    /// <summary>The bar that proves the print lies on one page, or on none: the pages have bars of their own.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void Tiles_OfPlans_CutNoBarOfATitleBlock(string preset)
    {
        foreach (var kind in (string[])["outside-plan", "inside-plan", "grain", "outline", "mould"])
        {
            var sheet = Drawn.One(preset, kind);
            var bar = Assert.Single(sheet.Whole);
            foreach (var paper in Paper.All)
            {
                var grid = TileGrid.Of(sheet, paper);
                var hasBar = TiledPdfWriter.Uncut(sheet, grid).Words().Any(w => w is "100 mm" or "4 in");
                Assert.True(hasBar == IsOnOnePage(grid, bar), $"{kind} on {paper.Name}");
            }
        }
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
        var upright = TileGrid.Of(sheet, Paper.A4);

        Assert.Equal(isShown, IsOnOnePage(upright, line.Bounds));
        Assert.Equal(isShown, TiledPdfWriter.Uncut(sheet, upright).Shapes.Contains(line));
        Assert.True(upright.Bounds.Min.X <= 0 && upright.Bounds.Max.X >= 300);
    }

    private static bool IsOnOnePage(TileGrid grid, Box2 box) => grid.Tiles.Any(t => grid.Trim(t) is var trim && trim.Contains(box.Min) && trim.Contains(box.Max));
}
