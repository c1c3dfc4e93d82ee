using SkiaSharp;
using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Preview;

namespace TopLayout.Tests.Preview;

/// <summary>Ten pixels to a mm, so that a place on the sheet is read off as a pixel by hand.</summary>
public class PngWriterTests
{
    private const int PerMm = 10;
    private static readonly Box2 Page = new(new Point2(-20, -10), new Point2(80, 40));

    [Theory]
    [InlineData(254, 1000, 500)]
    [InlineData(25.4, 100, 50)]
    [InlineData(96, 378, 189)]
    public void Picture_OfAPage_IsThePageTimesItsDots(double dpi, int width, int height)
    {
        using var picture = Painted(dpi, Line(new Point2(0, 0), new Point2(10, 0)));

        Assert.Equal((width, height), (picture.Width, picture.Height));
    }

    [Fact]
    public void Line_HasInkAlongItAndNoneBesideIt()
    {
        var (from, to) = (new Point2(-10, 0), new Point2(70, 30));
        using var picture = Painted(PerMm * 25.4, Line(from, to));

        var beside = (to - from).Unit.Left;
        for (var n = 0; n <= 40; n++)
        {
            var p = from + ((to - from) * (n / 40.0));
            Assert.True(IsInk(picture, p), $"no ink at {p}");
            Assert.False(IsInk(picture, p + beside) || IsInk(picture, p - beside), $"ink beside {p}");
        }
    }

    /// <summary>Points from the equation of the circle: a half turn, a flat arc, and one that turns right.</summary>
    [Theory]
    [InlineData(0, 180)]
    [InlineData(80, 100)]
    [InlineData(150, 20)]
    [InlineData(-30, 170)]
    public void Arc_HasInkOnTheCircleAndNoneOnItsChord(double fromDegrees, double toDegrees)
    {
        var center = new Point2(30, 5);
        Point2 On(double degrees, double r = 25) => center + (new Vec2(Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180)) * r);
        var bulge = Math.Tan((toDegrees - fromDegrees) * Math.PI / 720);
        IEnumerable<Vertex> vertices = Math.Abs(bulge) <= 1
            ? [new Vertex(On(fromDegrees), bulge), new Vertex(On(toDegrees))]
            : [new Vertex(On(fromDegrees), Math.Tan(Math.PI / 8)), new Vertex(On(fromDegrees + 90), Math.Tan((toDegrees - fromDegrees - 90) * Math.PI / 720)), new Vertex(On(toDegrees))];

        using var picture = Painted(PerMm * 25.4, new ContourShape("arc", Role.Cut, new Contour(vertices, isClosed: false)));

        for (var n = 0; n <= 40; n++)
        {
            var at = fromDegrees + ((toDegrees - fromDegrees) * n / 40);
            Assert.True(IsInk(picture, On(at)), $"no ink at {at}°");
            Assert.False(IsInk(picture, On(at, 24)) || IsInk(picture, On(at, 26)), $"ink beside {at}°");
        }
    }

    [Fact]
    public void Circle_HasInkAllRound()
    {
        using var picture = Painted(PerMm * 25.4, new ContourShape("hole", Role.Cut, Contour.Circle(new Point2(20, 10), 15)));

        foreach (var to in (Vec2[])[new(15, 0), new(-15, 0), new(0, 15), new(0, -15), new(9, 12), new(-12, -9)])
        {
            Assert.True(IsInk(picture, new Point2(20, 10) + to));
        }
    }

    /// <summary>Dashes of 3 mm, gaps of 1.5 mm.</summary>
    [Fact]
    public void HiddenLine_IsDashed()
    {
        using var picture = Painted(PerMm * 25.4, new ContourShape("far", Role.Hidden, new Contour([new Vertex(new Point2(0, 0)), new Vertex(new Point2(45, 0))], isClosed: false)));

        for (var n = 0; n < 10; n++)
        {
            Assert.True(IsInk(picture, new Point2((4.5 * n) + 1.5, 0)));
            Assert.False(IsInk(picture, new Point2((4.5 * n) + 3.75, 0)));
        }
    }

    /// <summary>An L ten high: its stem and its foot, and nothing between.</summary>
    [Fact]
    public void Letter_IsWrittenAsStrokes()
    {
        var label = new LabelShape("words", Role.Text, "L", new Point2(0, 0), 10);
        using var picture = Painted(PerMm * 25.4, label);

        var box = Box2.Around(label.Lines.Select(l => l.Bounds));
        Assert.True(IsInk(picture, new Point2(box.Min.X, 5)) && IsInk(picture, new Point2(box.Center.X, 0)));
        Assert.False(IsInk(picture, new Point2(box.Center.X, 5)));
    }

    [Fact]
    public void ContactSheet_OfTwoKinds_BeginsARowForEach()
    {
        using var stream = new MemoryStream();
        Sheet[] sheets = [.. Enumerable.Range(1, 8).Select(n => new Sheet($"sheet-{n}", "Sheet", "", Page, [Line(new Point2(-20, -10), new Point2(80, 40))]))];
        ContactSheet.Write([("Plans", sheets[..6]), ("Parts", sheets[6..])], stream, columns: 5, dotsPerInch: 25.4);
        using var picture = SKBitmap.Decode(stream.ToArray());

        // A pixel a mm: cells of 62, pages twice as wide as high, so 31; a name of 8, a heading of 10 over a kind's first row, gaps of 6.
        int[] tops = [6 + 10, 6 + 10 + 31 + 8 + 6, 6 + 10 + 31 + 8 + 6 + 31 + 8 + 6 + 10];
        Assert.Equal((6 + (5 * 68), tops[2] + 31 + 8 + 6), (picture.Width, picture.Height));
        bool HasInk(int column, int row) => Enumerable.Range(0, 62).Any(x => Enumerable.Range(0, 31).Any(y => picture.GetPixel(6 + (column * 68) + x, tops[row] + y) != SKColors.White));
        Assert.Equal(
            [true, true, true, true, true, true, false, false, false, false, true, true, false, false, false],
            Enumerable.Range(0, 15).Select(i => HasInk(i % 5, i / 5)));
        Assert.Throws<ArgumentException>(() => ContactSheet.Write([], stream));
        Assert.Throws<ArgumentException>(() => ContactSheet.Write([("Plans", [])], stream));
    }

    private static ContourShape Line(Point2 from, Point2 to) => new("line", Role.Cut, new Contour([new Vertex(from), new Vertex(to)], isClosed: false));

    private static SKBitmap Painted(double dpi, params Shape[] shapes)
    {
        using var stream = new MemoryStream();
        PngWriter.Write(new Sheet("known", "Known", "", Page, shapes), stream, dpi);
        return SKBitmap.Decode(stream.ToArray());
    }

    private static bool IsInk(SKBitmap picture, Point2 p) => picture.GetPixel((int)((p.X - Page.Min.X) * PerMm), (int)((Page.Max.Y - p.Y) * PerMm)).Green < 240;
}
