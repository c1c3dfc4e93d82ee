using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TopLayout.Drawing;
using TopLayout.Drawing.Pdf;
using TopLayout.Geometry;
using static TopLayout.Tests.Drawing.Specimen;

namespace TopLayout.Tests.Drawing;

/// <summary>The PDF files themselves; what readers make of them is tested end to end.</summary>
public class PdfWriterTests
{
    [Fact]
    public void Write_TwiceAndUnderACommaCulture_GivesTheSameBytes()
    {
        var (whole, tiled) = (Bytes(Whole, Mixed()), Bytes(Tiled, Mixed()));

        InCulture.Run("de-DE", () => Assert.Equal(whole, Bytes(Whole, Mixed())));
        InCulture.Run("tr-TR", () => Assert.Equal(tiled, Bytes(Tiled, Mixed())));
    }

    [Fact]
    public void Write_TableOfObjects_PointsAtEach()
    {
        var text = Encoding.Latin1.GetString(Bytes(Tiled, Mixed()));

        var table = int.Parse(Regex.Match(text, @"startxref\n(\d+)\n").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.StartsWith("xref\n0 ", text[table..], StringComparison.Ordinal);
        var offsets = Regex.Matches(text[table..], @"(\d{10}) 00000 n ").Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();
        Assert.True(offsets.Count > 5);
        Assert.All(offsets.Index(), o => Assert.StartsWith($"{o.Index + 1} 0 obj\n", text[o.Item..], StringComparison.Ordinal));
        Assert.All(Regex.Matches(text, @"/Length (\d+) >>\nstream\n").Cast<Match>(), m =>
            Assert.StartsWith("\nendstream", text[(m.Index + m.Length + int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))..], StringComparison.Ordinal));
    }

    [Fact]
    public void Write_Page_IsTheSheetToAHundredthOfAMmAndAsksForNoScaling()
    {
        var text = Encoding.Latin1.GetString(Bytes(Whole, Mixed()));

        var box = Regex.Match(text, @"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]");
        Check.Near(200 + 40, double.Parse(box.Groups[1].Value, CultureInfo.InvariantCulture) * 25.4 / 72, 0.001, "width");
        Check.Near(100 + 40, double.Parse(box.Groups[2].Value, CultureInfo.InvariantCulture) * 25.4 / 72, 0.001, "height");
        Assert.Contains("/PrintScaling /None", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/FontFile", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Date", text, StringComparison.Ordinal);
    }

    /// <summary>What is seen are strokes: every piece of text is written in rendering mode 3, which leaves no ink, and as long as its strokes.</summary>
    [Theory]
    [InlineData("Soundhole (left) \\ 30°", @"(Soundhole \(left\) \\ 30\260) Tj")]
    [InlineData("½ × Ø3 → ±λ", @"(\275 \327 \3303 -> \261lambda) Tj")]
    [InlineData("Müller – Éluard", @"(M\374ller - \311luard) Tj")]
    public void Text_OfALabel_IsUnseenAndAsLongAsItsStrokes(string words, string operators)
    {
        var label = new LabelShape("a", Role.Text, words, new Point2(20, 30), 4, Alignment.Centre, Angle.FromDegrees(90));

        var content = new PdfContent().Draw(label).ToString();

        var text = Assert.Single(Regex.Matches(content, @"BT 3 Tr /Words 1 Tf (\S+) (\S+) (\S+) (\S+) (\S+) (\S+) Tm (.*) ET\n"));
        Assert.Equal(operators, text.Groups[7].Value);
        var m = text.Groups.Values.Skip(1).Take(6).Select(g => double.Parse(g.Value, CultureInfo.InvariantCulture)).ToArray();

        // Courier: every letter 600 of 1000 wide, a capital 562 high (Adobe's metrics of the font, from memory).
        var letters = Regex.Replace(operators[1..^4], @"\\(\d{3}|.)", "x").Length;
        Check.Near(Lettering.Measure(words, 4).Width, 0.6 * letters * m[1], 0.01, "length");
        Check.Near(4, 0.562 * -m[2], 0.001, "height of a capital");
        Check.Near(0, Math.Abs(m[0]) + Math.Abs(m[3]), 1e-9, "upright");
        Check.Near(0, new Point2(m[4], m[5]).DistanceTo(label.BaselineStart), 1e-4, "start");
    }

    /// <summary>Every layer of the sheet is one that a reader lists and can hide, in order.</summary>
    [Fact]
    public void Layers_OfASheet_AreThoseOfTheFile()
    {
        var sheet = Mixed();
        var text = Encoding.Latin1.GetString(Bytes(Tiled, sheet));

        var named = Regex.Matches(text, @"(\d+) 0 obj\n<< /Type /OCG /Name \((\w+)\) >>").ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
        var order = Regex.Match(text, @"/Order \[([^\]]*)\]").Groups[1].Value.Split(" 0 R", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        Assert.Equal(sheet.Layers.Select(l => l.Name), order.Select(n => named[n]));
        Assert.Equal(sheet.Layers.Select(l => l.Name), Regex.Matches(text, @"/OC /L(\d+) BDC\n").Select(m => named[m.Groups[1].Value]));
        Assert.Equal(sheet.Layers.Length, Regex.Count(text, @"\nEMC\n"));
    }

    /// <summary>The points of every cubic, sampled, lie on the arc to a tenth of a micrometre, up to the radii where 30° is as fine as it gets.</summary>
    [Theory]
    [InlineData(0.3, 1)]
    [InlineData(2, -0.7)]
    [InlineData(60, 1)]
    [InlineData(250, 0.2)]
    [InlineData(250, -0.05)]
    public void Arc_AsCubics_StaysOnTheArc(double radius, double bulge)
    {
        var half = radius * 2 * Math.Abs(bulge) / (1 + (bulge * bulge));
        var contour = new Contour([At(-half, 3, bulge), At(half, 3)], isClosed: false);
        var arc = contour.Segments[0];

        var content = new PdfContent().Draw(new ContourShape("a", Role.Cut, contour)).ToString();

        // The coordinates themselves are rounded to 0.0001 mm.
        var points = Points(arc.Start, Cubics(content)).ToList();
        Assert.All(points, p => Check.Near(radius, p.DistanceTo(arc.Center), 2.5e-4, $"radius {radius}"));
        Check.Near(0, points[^1].DistanceTo(arc.End), 1e-4, "end");
    }

    /// <summary>Letters to read are drawn to a micrometre, in coarser cubics; letters that a tool follows as finely as any line.</summary>
    [Theory]
    [InlineData(Role.Text, 2.5e-3)]
    [InlineData(Role.Engrave, 2.5e-4)]
    public void Arc_OfALetter_IsAsFineAsItsUse(Role role, double within)
    {
        var label = new LabelShape("a", role, "o", new Point2(12.3456, 7.8912), 3);
        var letter = Assert.Single(label.Lines);

        var drawn = Cubics(new PdfContent().Draw(label).ToString()).ToList();

        // No arc of an "o" turns by more than 90°.
        Assert.Equal(role == Role.Text, drawn.Count == letter.Segments.Length);
        Assert.All(Points(letter.Vertices[0].Position, drawn), p => Check.Near(0, letter.DistanceTo(p), within, "off the letter"));
    }

    [Theory]
    [InlineData("A4", 500, 700)]
    [InlineData("Letter", 900, 250)]
    [InlineData("A3", 30, 40)]
    public void Tiles_OfASheet_CoverItOnceInWholeMmSteps(string name, double width, double height)
    {
        var page = new Box2(new Point2(-width / 3, -height), new Point2(2 * width / 3, 0));
        var sheet = new Sheet("s", "S", "S.", page, [new ContourShape("a", Role.Cut, Contour.Polygon(page.Min, new(page.Max.X, page.Min.Y), page.Max, new(page.Min.X, page.Max.Y)))]);

        var grid = TileGrid.Of(sheet, Paper.All.Single(p => p.Name == name));

        Assert.Equal((0, 0), (grid.StepX % 1, grid.StepY % 1));
        Assert.Equal(grid.Tiles.Length, grid.Tiles.Select(t => t.Name).Distinct().Count());
        var frame = sheet.Shapes.OfType<ContourShape>().Single().Contour;
        foreach (var side in frame.Segments)
        {
            for (var t = 0.0005; t < 1; t += 0.0037)
            {
                Assert.Single(grid.Tiles, tile => grid.Trim(tile).Contains(side.PointAt(t)));
            }
        }

        var random = new Random(1);
        for (var i = 0; i < 2000; i++)
        {
            var p = new Point2(page.Min.X + (random.NextDouble() * width), page.Max.Y - (random.NextDouble() * height));
            Assert.True(grid.Tiles.Count(t => grid.Trim(t).Contains(p)) <= 1, $"{p} is in two tiles");
        }

        Assert.True(grid.Bounds.Contains(page.Min) && grid.Bounds.Contains(page.Max));
    }

    /// <summary>A printer that makes 179.6 of 180 is given 180/179.6, round the middle of the page.</summary>
    [Fact]
    public void Correction_StretchesEveryPageRoundItsMiddle()
    {
        var factor = 180 / 179.6;
        var text = Encoding.Latin1.GetString(Bytes((s, stream) => TiledPdfWriter.Write(s, stream, Paper.A4, new ScaleCorrection(factor, 1)), Mixed()));

        var place = Regex.Match(text, @"([\d.]+) 0 0 1 (\S+) (\S+) cm");
        Check.Near(factor, double.Parse(place.Groups[1].Value, CultureInfo.InvariantCulture), 1e-8, "factor");
        var side = Regex.Match(text, @"/MediaBox \[0 0 ([\d.]+) ").Groups[1].Value;
        var middle = double.Parse(side, CultureInfo.InvariantCulture) * 25.4 / 72 / 2;
        Check.Near(middle * (1 - factor), double.Parse(place.Groups[2].Value, CultureInfo.InvariantCulture), 1e-4, "shift");
    }

    [Theory]
    [InlineData(210, 180)]
    [InlineData(297, 260)]
    [InlineData(215.9, 180)]
    public void ScaleBars_AreAsLongAsThePaperAllows(double side, double expected) => Assert.Equal(expected, ScaleBars.LengthOn(side));

    /// <summary>Crosses at three corners of a right triangle, and the sides said beside it.</summary>
    [Theory]
    [InlineData(300, 400, 150, 200)]
    [InlineData(400, 300, 200, 150)]
    public void Triangle_OnALargePage_HasSides150And200And250(double width, double height, double across, double along)
    {
        var arms = ScaleBars.Triangle(width, height, 7, Ruler.Millimetres).OfType<ContourShape>().Select(s => s.Contour.Segments[0]).ToList();

        var crosses = arms.Chunk(2).Select(pair => pair[0].PointAt(0.5)).ToList();
        Assert.All(arms.Chunk(2), pair => Check.Near(0, pair[0].PointAt(0.5).DistanceTo(pair[1].PointAt(0.5)), 1e-9, "arms cross in the middle"));
        Check.Near(across, crosses[0].DistanceTo(crosses[1]), 1e-9, "across");
        Check.Near(along, crosses[0].DistanceTo(crosses[2]), 1e-9, "along");
        Check.Near(250, crosses[1].DistanceTo(crosses[2]), 1e-9, "third side");
        Assert.Empty(ScaleBars.Triangle(170, 210, 7, Ruler.Millimetres));
    }

    /// <summary>The sheet stands in the middle, the way round it fits; a page too small is none.</summary>
    [Theory]
    [InlineData("fitted", 500, 700, 540, 740)]
    [InlineData("A1", 500, 700, 594, 841)]
    [InlineData("A1", 700, 500, 841, 594)]
    [InlineData("roll-610", 500, 700, 610, 740)]
    [InlineData("roll-914", 1500, 700, 1540, 914)]
    [InlineData("ansi-D", 500, 700, 558.8, 863.6)]
    [InlineData("A2", 500, 700, 0, 0)]
    [InlineData("roll-610", 700, 800, 0, 0)]
    public void PageFormat_RoundASheet_IsTheStandardPage(string name, double width, double height, double pageWidth, double pageHeight)
    {
        var sheet = TopLayout.Drawing.Sheet.Around("s", "S", "S.", [new ContourShape("a", Role.Cut, Contour.Rectangle(new Box2(new Point2(-30, -40), new Point2(width - 50, height - 60))))]);

        var page = PageFormat.All.Single(f => f.Name == name).Around(sheet);

        Assert.Equal((pageWidth, pageHeight), (Math.Round(page?.Width ?? 0, 6), Math.Round(page?.Height ?? 0, 6)));
        Check.Near(0, page?.Center.DistanceTo(sheet.Page.Center) ?? 0, 1e-9, "middle");
    }

    /// <summary>Left and right half share the strip about the centre line and show nothing of the other side; a mm is left for the lines' width.</summary>
    [Fact]
    public void Half_OfASheet_IsClippedBesideTheCentreLine()
    {
        var sheet = TopLayout.Drawing.Sheet.Around("s", "S", "S.", [new ContourShape("a", Role.Cut, Contour.Rectangle(new Box2(new Point2(-200, -300), new Point2(200, 0))))]);
        string Text(SheetHalf half) => Encoding.Latin1.GetString(Bytes((s, stream) => TiledPdfWriter.Write(s, stream, Paper.A4, ScaleCorrection.None, half), sheet));

        Assert.Contains("-201 -301 209 302 re W n", Text(SheetHalf.Left), StringComparison.Ordinal);
        Assert.Contains("-8 -301 209 302 re W n", Text(SheetHalf.Right), StringComparison.Ordinal);
    }

    private static IEnumerable<Point2[]> Cubics(string content) => Regex.Matches(content, @"(\S+) (\S+) (\S+) (\S+) (\S+) (\S+) c\n")
        .Select(m => m.Groups.Values.Skip(1).Select(g => double.Parse(g.Value, CultureInfo.InvariantCulture)).Chunk(2).Select(c => new Point2(c[0], c[1])).ToArray());

    // Of every cubic twenty points, its end among them.
    private static IEnumerable<Point2> Points(Point2 start, IEnumerable<Point2[]> cubics)
    {
        foreach (var p in cubics)
        {
            for (var i = 1; i <= 20; i++)
            {
                var (t, u) = (i / 20.0, 1 - (i / 20.0));
                yield return new Point2(
                    (u * u * u * start.X) + (3 * u * u * t * p[0].X) + (3 * u * t * t * p[1].X) + (t * t * t * p[2].X),
                    (u * u * u * start.Y) + (3 * u * u * t * p[0].Y) + (3 * u * t * t * p[1].Y) + (t * t * t * p[2].Y));
            }

            start = p[2];
        }
    }

    private static void Whole(Sheet sheet, Stream stream) => PdfWriter.Write(sheet, stream, PageFormat.Fitted);

    private static void Tiled(Sheet sheet, Stream stream) => TiledPdfWriter.Write(sheet, stream, Paper.A4, ScaleCorrection.None);
}
