using System.Text.RegularExpressions;
using SkiaSharp;
using TopLayout.Drawing;
using TopLayout.Drawing.Pdf;
using TopLayout.Geometry;
using TopLayout.Plans;
using TopLayout.Plans.Sheets;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>The PDF sheets, read by qpdf and poppler.</summary>
public class PrintTests(ITestOutputHelper output)
{
    private const int PxPerMm = 10;

    /// <summary>Of a long file the overview and the first tiles, which are drawn as all the others.</summary>
    [Fact]
    public void Pdf_OfEverySheet_ReadsBackClean()
    {
        using var desk = new Desk();
        var folder = desk.At("plans");
        Assert.Equal(0, Toplayout.Run("draw", Toplayout.PresetFile("jumbo"), "--out", folder, "--quiet").Code);
        var files = Directory.EnumerateFiles(folder, "*.pdf", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToList();

        Assert.True(files.Count > 40);
        OutsideReader.CheckDrawing(output, ["--strict", "--ppm", "2", "--max-pages", "2", .. files]);
    }

    /// <summary>On every page both bars, as the stranger measures them.</summary>
    [Theory]
    [InlineData("jumbo", "A4", "180", "260")]
    [InlineData("tapered-tongue", "Letter", "180", "240")]
    public void Tiles_OfAPlan_HaveTheirBarsOnEveryPage(string preset, string paper, string across, string along)
    {
        using var desk = new Desk();
        var folder = desk.At("plans");
        Assert.Equal(0, Toplayout.Run("draw", Toplayout.PresetFile(preset), "--out", folder, "--only", "inside-plan", "--paper", paper, "--quiet").Code);

        var text = OutsideReader.CheckDrawing(output, ["--strict", "--ppm", "4", "--expect-line", across, "--expect-line", along, Path.Combine(folder, "inside-plan-tiles.pdf")]);
        Assert.DoesNotContain("expect-line-page", text ?? "", StringComparison.Ordinal);
    }

    /// <summary>Whoever looks for words in a sheet finds them, and its layers; no ink of theirs is text, and no font is in the file.</summary>
    [Fact]
    public void Words_OfASheet_AreFoundAndNotSeen()
    {
        using var desk = new Desk();
        var folder = desk.At("plans");
        Assert.Equal(0, Toplayout.Run("draw", Toplayout.PresetFile("auditorium"), "--out", folder, "--only", "inside-plan", "--quiet").Code);

        foreach (var name in (string[])["inside-plan.pdf", "inside-plan-tiles.pdf"])
        {
            var file = Path.Combine(folder, name);
            if (OutsideReader.Words(output, file) is not { } words)
            {
                return;
            }

            Assert.All(["Hall auditorium - rev A", "Inside plan: bracing", "upper transverse brace", "tone bar 2", "X leg, treble", "lower bout 396 at 376"], w => Assert.Contains(w, words, StringComparison.Ordinal));
            var raw = File.ReadAllText(file, System.Text.Encoding.Latin1);
            Assert.Equal(Regex.Count(raw, @"\bBT\b"), Regex.Count(raw, @"\bBT 3 Tr\b"));
            Assert.DoesNotContain("/FontFile", raw, StringComparison.Ordinal);
            Assert.Contains("/Type /OCG /Name (OUTLINE_CUT)", raw, StringComparison.Ordinal);
        }
    }

    /// <summary>A browser draws a sheet of one page as it is; where there is none on the machine the test says so and ends.</summary>
    [Fact]
    public void Browser_OpensASheet()
    {
        using var desk = new Desk();
        var folder = desk.At("plans");
        Assert.Equal(0, Toplayout.Run("draw", Toplayout.PresetFile("auditorium"), "--out", folder, "--only", "rosette", "--quiet").Code);

        if (OutsideReader.BrowserPicture(output, Path.Combine(folder, "rosette.pdf"), desk.At("browser.png")))
        {
            using var picture = SKBitmap.Decode(desk.At("browser.png"));

            // Within the viewer's bars: paper, and some ink.
            var seen = picture.Pixels.Where((_, i) => i % picture.Width > 0.3 * picture.Width && i % picture.Width < 0.95 * picture.Width && i / picture.Width > 0.15 * picture.Height).ToList();
            var (paper, ink) = ((double)seen.Count(p => p == SKColors.White) / seen.Count, (double)seen.Count(p => p.Red < 120) / seen.Count);
            output.WriteLine($"{picture.Width} x {picture.Height}: {paper:P1} paper, {ink:P1} ink");
            Assert.True(paper > 0.8 && ink > 0.005, $"{paper:P1} paper, {ink:P1} ink");
        }
    }

    /// <summary>
    /// All files drawn by poppler at 10 px/mm without smoothing: inside each tile's trim the whole sheet's pixels come back, and those of what the
    /// tiles leave out on the overview; at least 999 in 1,000 alike and each other one within a pixel of ink in both. Nothing of the sheet is
    /// missing. Furniture lies on the joints: two mm along them and round the crosses are left out, and so are the margins with the bars of
    /// the whole sheet.
    /// </summary>
    [Fact]
    public void Tiles_LaidTogether_AreTheWholeSheet()
    {
        using var desk = new Desk();
        var top = Pipeline.Check(File.ReadAllText(Toplayout.PresetFile("tapered-tongue")), "x.toml").Top!;
        var sheet = SheetCatalog.All.Single(e => e.Name == "outside-plan").Draw(top).Single();
        var tiled = TiledSheet.Of(sheet, Paper.A4);
        Assert.Equal(sheet.Shapes.ToHashSet(), tiled.Drawing.Shapes.Concat(tiled.Apart).ToHashSet());
        IReadOnlyList<Bitmap>? Pictures(string name, Action<Stream> write)
        {
            using (var stream = File.Create(desk.At(name + ".pdf")))
            {
                write(stream);
            }

            return OutsideReader.Rasters(output, desk.At(name + ".pdf"), PxPerMm, desk.At(name));
        }

        if (Pictures("whole", s => PdfWriter.Write(sheet, s, PageFormat.Fitted)) is not [var whole]
            || Pictures("drawing", s => PdfWriter.Write(tiled.Drawing, s, PageFormat.Fitted)) is not [var drawing]
            || Pictures("tiles", s => TiledPdfWriter.Write(sheet, s, Paper.A4, ScaleCorrection.None)) is not { } pages)
        {
            return;
        }

        var (grid, around, same) = (tiled.Grid, PageFormat.Fitted.Around(sheet)!.Value, new Sameness());
        (int X, int Y) OnSheet(Point2 p) => ((int)Math.Round((p.X - around.Min.X) * PxPerMm), (int)Math.Round((around.Max.Y - p.Y) * PxPerMm));
        (int X, int Y) OnPage(Point2 p) => ((int)Math.Round(p.X * PxPerMm), (int)Math.Round((grid.HeightMm - p.Y) * PxPerMm));
        Assert.Equal(grid.Tiles.Length + 1, pages.Count);
        foreach (var (index, tile) in grid.Tiles.Index())
        {
            same.Compare(tile.Name, grid.Trim(tile).Grown(-5).Common(sheet.Page), (drawing, OnSheet), (pages[index + 1], p => OnPage(p + TileFurniture.Shift(tile))));
        }

        var shift = new Overview(tiled, Paper.A4, Ruler.Millimetres, "printed without correction").ApartShift!.Value;
        Assert.NotEmpty(tiled.Apart);
        foreach (var label in tiled.Apart.OfType<LabelShape>())
        {
            same.Compare(label.Text, label.Bounds, (whole, OnSheet), (pages[0], p => OnPage(p + shift)));
        }

        output.WriteLine($"{same.Alike} pixels alike, {same.Other} not");
        Assert.True(same.Other < 0.001 * (same.Alike + same.Other), $"{same.Other} of {same.Alike + same.Other} pixels differ");
    }

    private sealed class Sameness
    {
        public long Alike { get; private set; }

        public long Other { get; private set; }

        /// <summary>Of a box in sheet coordinates, mm, on two pictures.</summary>
        public void Compare(string name, Box2 box, (Bitmap Picture, Func<Point2, (int X, int Y)> Place) one, (Bitmap Picture, Func<Point2, (int X, int Y)> Place) two)
        {
            for (var y = (int)(box.Min.Y * PxPerMm); y < box.Max.Y * PxPerMm; y++)
            {
                for (var x = (int)(box.Min.X * PxPerMm); x < box.Max.X * PxPerMm; x++)
                {
                    var p = new Point2((double)x / PxPerMm, (double)y / PxPerMm);
                    var (a, b) = (one.Place(p), two.Place(p));
                    if (one.Picture.IsInk(a.X, a.Y) == two.Picture.IsInk(b.X, b.Y))
                    {
                        Alike++;
                    }
                    else
                    {
                        Other++;
                        Assert.True(one.Picture.IsNearInk(a.X, a.Y) && two.Picture.IsNearInk(b.X, b.Y), $"{name}: ({p.X}, {p.Y}) has ink in one only");
                    }
                }
            }
        }
    }

    /// <summary>A half plan needs fewer pages than the whole, each clean; its fold runs down through them at x = 0.</summary>
    [Fact]
    public void HalfPlan_OfThePlans_FitsFewerTiles()
    {
        using var desk = new Desk();
        int Pages(params string[] more)
        {
            var folder = desk.At(string.Concat(more) + "plans");
            Assert.Equal(0, Toplayout.Run(["draw", Toplayout.PresetFile("auditorium"), "--out", folder, "--only", "inside-plan", "--quiet", .. more]).Code);
            var file = Path.Combine(folder, "inside-plan-tiles.pdf");
            OutsideReader.CheckDrawing(output, ["--strict", "--ppm", "4", file]);
            return File.ReadAllText(file, System.Text.Encoding.Latin1).Split("/Type /Page ").Length - 1;
        }

        var (whole, left, right) = (Pages(), Pages("--half", "left"), Pages("--half", "right"));

        output.WriteLine($"whole {whole}, left {left}, right {right} pages");
        Assert.True(left < whole && right < whole, $"whole {whole}, left {left}, right {right} pages");
    }

    /// <summary>A roll of 610 mm takes a bar of 580.</summary>
    [Fact]
    public void WholeSheet_OnARoll_IsAsWideAsTheRollAndHasItsBars()
    {
        using var desk = new Desk();
        var folder = desk.At("plans");
        Assert.Equal(0, Toplayout.Run("draw", Toplayout.PresetFile("auditorium"), "--out", folder, "--only", "outside-plan", "--page", "roll-610", "--quiet").Code);

        OutsideReader.CheckDrawing(output, ["--strict", "--ppm", "4", "--expect-line", "580", Path.Combine(folder, "outside-plan.pdf")]);
    }
}
