using CsCheck;
using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using Xunit.Abstractions;

namespace TopLayout.Tests.Drawing;

public class LabelPlacerTests(ITestOutputHelper output)
{
    private const string Seed = "0001drawing8";
    private static readonly Box2 Page = new(new Point2(0, 0), new Point2(200, 150));

    [Fact]
    public void Place_FreePoint_StandsRightBesideItWithoutLeader()
    {
        var placed = LabelPlacer.Place([], [Request("neck", 100, 75)], Page);

        var label = Assert.IsType<LabelShape>(Assert.Single(placed.Shapes));
        Check.Near(100 + (0.6 * 2.5), label.Anchor.X, 1e-9, "start of the text");
        Check.Near(75, label.Frame.Bounds.Center.Y, 1e-9, "middle of the text");
        Assert.Equal(Page, placed.Page);
    }

    [Fact]
    public void Place_PreferredSpotFree_TakesIt()
    {
        var request = new LabelRequest("a", Role.Text, "here", 2.5, new Point2(100, 75)) { Preferred = [new Point2(30, 40)], Rotation = Angle.FromDegrees(90) };

        var label = Assert.IsType<LabelShape>(Assert.Single(LabelPlacer.Place([], [request], Page).Shapes));

        Check.Near(30, label.Frame.Bounds.Center.X, 1e-9, "x");
        Check.Near(40, label.Frame.Bounds.Center.Y, 1e-9, "y");
        Assert.Equal(90, label.Rotation.Degrees);
    }

    [Fact]
    public void Place_AreaWithAHole_StaysInsideAndOffTheHole()
    {
        var hole = Contour.Circle(new Point2(100, 75), 15);
        var region = Region.Between(Contour.Circle(new Point2(100, 75), 40), hole);
        var request = new LabelRequest("ring", Role.Text, "rosewood", 3, new Point2(100, 75)) { Inside = region };
        var drawn = region.Loops.Select(l => new ContourShape("ring", Role.Cut, l)).ToList();

        var label = Assert.IsType<LabelShape>(Assert.Single(LabelPlacer.Place(drawn, [request], Page).Shapes));

        Assert.All(label.Frame.Vertices, v => Assert.True(region.Contains(v.Position)));
        Assert.Empty(Collisions.Of(new Sheet("s", "s", "", Page, [.. drawn, label])));
    }

    [Fact]
    public void Place_HigherPriority_GetsTheBetterSpot()
    {
        var first = new LabelRequest("first", Role.Text, "first", 2.5, new Point2(100, 75));
        var second = new LabelRequest("second", Role.Text, "second", 2.5, new Point2(100, 75)) { Priority = 1 };

        var labels = LabelPlacer.Place([], [first, second], Page).Shapes.OfType<LabelShape>().ToList();

        Assert.Equal(["second", "first"], labels.Select(l => l.Text));
        Assert.Equal(Alignment.Left, labels[0].Alignment);
    }

    [Fact]
    public void Place_CrowdedPoint_GoesToTheMarginWithALeaderAndGrowsThePage()
    {
        var hatch = Enumerable.Range(0, 101).Select(i => Line(0, 1.5 * i, 200, 1.5 * i)).ToList();

        var placed = LabelPlacer.Place(hatch, [Request("crowded", 150, 75.5)], Page);

        var label = Assert.Single(placed.Shapes.OfType<LabelShape>());
        var leader = placed.Shapes.OfType<ContourShape>().First();
        Assert.True(label.Frame.Bounds.Min.X > Page.Max.X, "right of the page");
        Assert.True(placed.Page.Contains(label.Bounds.Max) && placed.Page.Contains(label.Bounds.Min), "on the grown page");
        Assert.Equal(Role.Dimension, leader.Role);
        Assert.Equal(new Point2(150, 75.5), leader.Contour.Vertices[^1].Position);
    }

    [Fact]
    public void Place_CrowdedRandomScenes_NothingOverlapsAndEveryLabelIsThere()
    {
        output.WriteLine($"seed {Seed}");
        Scene().Array[60].Sample(scenes => Assert.All(scenes, NothingOverlaps), seed: Seed, iter: 1);
    }

    [Fact]
    public void Place_SameInputTwice_SamePlaces()
    {
        output.WriteLine($"seed {Seed}");
        Scene().Array[20].Sample(
            scenes => Assert.All(scenes, s => Assert.True(Placed(s).Shapes.SequenceEqual(Placed(s).Shapes))), seed: Seed, iter: 1);
    }

    private static PlacedLabels Placed((List<Shape> Drawn, List<LabelRequest> Requests) scene) =>
        LabelPlacer.Place(scene.Drawn, scene.Requests, Page);

    private static void NothingOverlaps((List<Shape> Drawn, List<LabelRequest> Requests) scene)
    {
        var placed = Placed(scene);
        var sheet = new Sheet("s", "s", "", placed.Page, [.. scene.Drawn, .. placed.Shapes]);

        Assert.Equal(scene.Requests.Select(r => r.Text).Order(), placed.Shapes.OfType<LabelShape>().Select(l => l.Text).Order());
        Assert.True(Collisions.Of(sheet).Count == 0, string.Join('\n', Collisions.Of(sheet).Select(Told)));
        Assert.All(placed.Shapes, s => Assert.True(placed.Page.Union(s.Bounds) == placed.Page, $"{s} leaves the page"));
    }

    private static string Told(Collision c) => c.Other is ContourShape { Contour: var line }
        ? $"{c.Label.Text} at {At(c.Label.Anchor)} is crossed by {c.Other.Part}, {c.Other.Role}, {string.Join(' ', line.Vertices.Select(v => At(v.Position)))}"
        : $"{c.Label.Text} at {At(c.Label.Anchor)} lies on {((LabelShape)c.Other).Text}";

    private static string At(Point2 p) => $"({NumberFormat.Mm(p.X)}, {NumberFormat.Mm(p.Y)})";

    private static LabelRequest Request(string text, double x, double y) => new(text, Role.Text, text, 2.5, new Point2(x, y));

    private static ContourShape Line(double x0, double y0, double x1, double y1) =>
        new("hatch", Role.Mark, new Contour([new Vertex(new Point2(x0, y0)), new Vertex(new Point2(x1, y1))], isClosed: false));

    private static Gen<(List<Shape> Drawn, List<LabelRequest> Requests)> Scene()
    {
        var point = Gen.Select(Gen.Double[5, 195], Gen.Double[5, 145], (x, y) => new Point2(x, y));
        var bulge = Gen.Double[-1, 1].Select(b => Math.Abs(b) < 1e-6 ? 0 : b); // flatter than that is a line in the kernel
        var arc = Gen.Select(point, point, bulge, (a, b, turn) =>
            (Shape)new ContourShape("lines", Role.Mark, new Contour([new Vertex(a, turn), new Vertex(b)], isClosed: false)));
        var lines = arc.Array[5, 25];
        var points = point.Array[10, 60];
        return Gen.Select(lines, points, (drawn, targets) => (
            drawn.ToList(),
            targets.Select((t, i) => new LabelRequest($"part {i}", Role.Text, $"{i} mm wide", 2.5, t) { Priority = i % 3 }).ToList()));
    }
}
