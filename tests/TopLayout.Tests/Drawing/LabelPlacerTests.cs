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

        Assert.All(label.Frame.Corners, v => Assert.True(region.Contains(v)));
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

    /// <summary>The eight near places are taken by a box of ink; of the far ones those beyond the wall on the right are free first.</summary>
    [Fact]
    public void Place_WallBesideThePoint_LeaderGoesAnotherWay()
    {
        var ink = new ContourShape("ink", Role.Hatch, Contour.Rectangle(new Box2(new Point2(97, 72), new Point2(103, 78))));
        Shape Wall(Role role, Emphasis emphasis = Emphasis.Normal) =>
            new ContourShape("wall", role, new Contour([new Vertex(new Point2(103.5, 0)), new Vertex(new Point2(103.5, 150))], isClosed: false), emphasis);
        double X(Shape wall) => LabelPlacer.Place([ink, wall], [Request("name", 100, 75)], Page).Shapes.OfType<LabelShape>().Single().Bounds.Center.X;

        Assert.True(X(Wall(Role.Mark)) < 103.5, "a wall");
        Assert.True(X(Wall(Role.Hidden)) > 103.5, "a line behind is no wall");
        Assert.True(X(Wall(Role.Mark, Emphasis.Faint)) > 103.5, "nor is a faint one");
    }

    /// <summary>Round the target is ink up to the margin; the other point of the same thing has room.</summary>
    [Fact]
    public void Place_CrowdedTarget_TakesAnotherPointOfTheSameThing()
    {
        var ink = Enumerable.Range(0, 60).Select(i => Line(0, 1.5 * i, 200, 1.5 * i)).ToList();
        var request = new LabelRequest("bar", Role.Text, "bar", 2.5, new Point2(100, 40)) { Elsewhere = [new Point2(100, 130)] };

        var label = Assert.Single(LabelPlacer.Place(ink, [request], Page).Shapes.OfType<LabelShape>());

        Assert.True(Page.Contains(label.Bounds.Min) && label.Bounds.Center.DistanceTo(new Point2(100, 130)) < 20);
    }

    [Fact]
    public void BrokenLines_AxisAndLineBehind_BreakOffRoundALabelAndWallsDoNot()
    {
        var frame = new TurnedBox(new Point2(50, 50), Vec2.UnitX, 10, 10);
        Shape[] drawn = [Level("axis", Role.Centre), Level("behind", Role.Hidden), Level("wall", Role.Mark), new ContourShape("round", Role.Hidden, Contour.Circle(new Point2(40, 50), 5))];

        var left = BrokenLines.Of(drawn, [frame]).Cast<ContourShape>().ToList();

        Assert.Equal([40.0, 40.0], left.Where(s => s.Part == "axis").Select(s => s.Contour.Length).Select(l => Math.Round(l, 9)));
        Assert.Equal(2, left.Count(s => s.Part == "behind"));
        Check.Near(100, Assert.Single(left, s => s.Part == "wall").Contour.Length, 0, "a wall");
        Check.Near(5 * Math.PI, left.Where(s => s.Part == "round").Sum(s => s.Contour.Length), 1e-9, "half a circle");
    }

    private static ContourShape Level(string part, Role role) => new(part, role, new Contour([new Vertex(new Point2(0, 50)), new Vertex(new Point2(100, 50))], isClosed: false));

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
