using TopLayout.Drawing;
using TopLayout.Drawing.Svg;
using TopLayout.Geometry;
using TopLayout.Tests.HouseRules;

namespace TopLayout.Tests.Geometry;

/// <summary>
/// A page of panels, one case each, kept as an SVG under output-samples/geometry. To show another operation, write a test that makes
/// a page, draws its panels and calls <see cref="AssertAsAccepted"/>; TOPLAYOUT_ACCEPT_SAMPLES=1 writes the file, and a person looks at it.
/// </summary>
/// <param name="name">File stem.</param>
/// <param name="title">What the page shows.</param>
/// <param name="columns">Panels a row.</param>
internal sealed class PicturePage(string name, string title, int columns = 3)
{
    private const double Pitch = 130;
    private const double RowPitch = 112;
    private const double CaptionMm = 4;
    private readonly List<Shape> _shapes = [];
    private int _panels;

    /// <summary>Starts the next panel; what is drawn in it is about 100 mm wide and 80 high round its own origin. The caption has up to two lines.</summary>
    public PicturePanel Panel(string caption, string second = "")
    {
        var origin = new Point2(Pitch * (_panels % columns), -RowPitch * (_panels / columns));
        _panels++;
        var panel = new PicturePanel(_shapes, origin);
        panel.Label(new Point2(-58, 50), caption, CaptionMm);
        if (second.Length > 0)
        {
            panel.Label(new Point2(-58, 43.5), second, CaptionMm);
        }

        return panel;
    }

    public void AssertAsAccepted()
    {
        Shape[] all = [new LabelShape("page", Role.Text, title, new Point2(-58, 66), 7), .. _shapes];
        using var stream = new MemoryStream();
        SvgWriter.Write(Sheet.Around(name, title, $"Panels of the kernel's own output: {title}.", all), stream);
        var path = Path.Combine(Repository.Root, "output-samples", "geometry", name + ".svg");
        if (Environment.GetEnvironmentVariable("TOPLAYOUT_ACCEPT_SAMPLES") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, stream.ToArray());
        }

        Assert.True(File.Exists(path), $"{name}.svg is not accepted yet; TOPLAYOUT_ACCEPT_SAMPLES=1 writes it");
        Assert.True(File.ReadAllBytes(path).AsSpan().SequenceEqual(stream.ToArray()), $"{name}.svg has changed; look, then accept with TOPLAYOUT_ACCEPT_SAMPLES=1");
    }
}

/// <summary>One case on a page, drawn in its own coordinates.</summary>
internal sealed class PicturePanel(List<Shape> shapes, Point2 origin)
{
    private const double HatchMm = 2.5;
    private readonly Placement _at = Placement.Moved(origin.X, origin.Y);

    /// <summary>What was cut away or replaced: thin and grey.</summary>
    public void Before(Contour contour) => Draw("before", Role.Mark, contour, Emphasis.Faint);

    /// <summary>What was asked about: black.</summary>
    public void Given(Contour contour) => Draw("given", Role.Cut, contour);

    /// <summary>What came out: blue.</summary>
    public void Result(Contour contour) => Draw("result", Role.Pocket, contour);

    /// <summary>What helps to read it: chain line.</summary>
    public void Aid(Contour contour) => Draw("aid", Role.Centre, contour);

    /// <summary>What an operation on areas starts from: dashed.</summary>
    public void Input(Contour contour) => Draw("inputs", Role.Hidden, contour);

    /// <summary>An area that came out: blue and hatched.</summary>
    public void Result(Region area, double hatchDegrees = 45)
    {
        var along = Trig.Direction(Angle.FromDegrees(hatchDegrees));
        for (var k = -40; k <= 40; k++)
        {
            var middle = default(Point2) + (along.Left * (HatchMm * k));
            area.Clip(Line(middle - (along * 100), middle + (along * 100))).ToList().ForEach(part => Draw("hatch", Role.Mark, part, Emphasis.Faint));
        }

        area.Loops.ToList().ForEach(Result);
    }

    /// <summary>A point as a small red circle.</summary>
    public void Dot(Point2 p, double radius = 0.8) => Draw("points", Role.Finding, Contour.Circle(p, radius));

    /// <summary>A measured point as a tiny grey circle.</summary>
    public void Sample(Point2 p) => Draw("samples", Role.Mark, Contour.Circle(p, 0.45));

    public void Label(Point2 anchor, string text, double height = 3.2) =>
        shapes.Add(new LabelShape("words", Role.Text, text, _at.Apply(anchor), height));

    public static Contour Line(Point2 a, Point2 b) => new([new Vertex(a), new Vertex(b)], isClosed: false);

    private void Draw(string part, Role role, Contour contour, Emphasis emphasis = Emphasis.Normal) =>
        shapes.Add(new ContourShape(part, role, contour.Placed(_at), emphasis));
}
