using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Tests.Drawing;

public class SheetTests
{
    private static readonly Box2 Page = new(new Point2(0, 0), new Point2(100, 100));

    [Fact]
    public void Layers_PlainParts_AreNamedPartAndRole()
    {
        Assert.Equal(["OUTLINE_CUT", "SLOT_2_POCKET"], Names(("outline", Role.Cut), ("slot 2", Role.Pocket), ("outline", Role.Cut)));
    }

    [Fact]
    public void Layers_AccentsAndSigns_BecomePlainLetters()
    {
        Assert.Equal(["FLUGEL_OBEN_MARK", "PART_3_PLY_CUT", "DIA_98_MARK"], Names(("Flügel, oben!", Role.Mark), ("3 ply", Role.Cut), ("Ø98", Role.Mark)));
    }

    [Fact]
    public void Layers_LongOrClashingNames_AreCutAndNumberedInOrder()
    {
        var longPart = "the upper transverse member on the treble side";

        var names = Names((longPart, Role.Dimension), (longPart + " two", Role.Dimension), ("Slot", Role.Cut), ("slot", Role.Cut), ("slöt", Role.Cut));

        Assert.Equal(["THE_UPPER_TRANSVERSE_DIMENSION", "THE_UPPER_TRANSVER_2_DIMENSION", "SLOT_CUT", "SLOT_2_CUT", "SLOT_3_CUT"], names);
    }

    [Theory]
    [InlineData("")]
    [InlineData("*** !!!")]
    [InlineData("日本")]
    [InlineData("a part with a name that goes on and on and on and on")]
    [InlineData("___x___")]
    [InlineData("9")]
    public void Layers_AnyWords_FitTheNarrowestFormat(string words)
    {
        var part = words.Length == 0 ? "-" : words;
        foreach (var role in Enum.GetValues<Role>())
        {
            Assert.Matches("^[A-Z][A-Z0-9_]{0,29}$", Names((part, role)).Single());
        }
    }

    [Fact]
    public void Shapes_SameWallTwiceOnCut_IsDrawnOnce()
    {
        Point2[] corners = [new(10, 10), new(40, 10), new(40, 30)];
        var wall = Contour.Polygon(corners);
        var turned = Contour.Polygon(corners[2], corners[0], corners[1]).Reversed();

        var sheet = Of(new ContourShape("a", Role.Cut, wall), new ContourShape("b", Role.Cut, turned), new ContourShape("b", Role.Pocket, wall));

        Assert.Equal([("a", Role.Cut), ("b", Role.Pocket)], sheet.Shapes.Select(s => (s.Part, s.Role)));
    }

    [Fact]
    public void Shapes_SameCircleFromAnotherStart_IsDrawnOnce()
    {
        var other = new Contour([new Vertex(new Point2(50, 60), -1), new Vertex(new Point2(50, 40), -1)], isClosed: true);

        var sheet = Of(new ContourShape("a", Role.Pocket, Contour.Circle(new Point2(50, 50), 10)), new ContourShape("b", Role.Pocket, other));

        Assert.Single(sheet.Shapes);
    }

    [Fact]
    public void Shapes_SameLineOfTwoPartsToMark_StayBoth()
    {
        var line = new Contour([new Vertex(new Point2(0, 0)), new Vertex(new Point2(10, 0))], isClosed: false);

        Assert.Equal(2, Of(new ContourShape("a", Role.Mark, line), new ContourShape("b", Role.Mark, line)).Shapes.Length);
    }

    [Fact]
    public void Shapes_SameChordOtherBulge_StayBoth()
    {
        Contour Bow(double bulge) => new([new Vertex(new Point2(0, 0), bulge), new Vertex(new Point2(10, 0))], isClosed: false);

        Assert.Equal(2, Of(new ContourShape("a", Role.Cut, Bow(0.5)), new ContourShape("a", Role.Cut, Bow(-0.5))).Shapes.Length);
        Assert.Single(Of(new ContourShape("a", Role.Cut, Bow(0.5)), new ContourShape("a", Role.Cut, Bow(0.5).Reversed())).Shapes);
    }

    [Fact]
    public void Shapes_SameLabelTwice_IsWrittenOnce()
    {
        LabelShape Label(string text) => new("a", Role.Text, text, new Point2(0, 0), 2.5);

        Assert.Equal(["one", "two"], Of(Label("one"), Label("two"), Label("one")).Shapes.Cast<LabelShape>().Select(l => l.Text));
    }

    [Theory]
    [InlineData("")]
    [InlineData("plan 1")]
    [InlineData("../plan")]
    public void Sheet_NameThatIsNoFileStem_IsRefused(string name) =>
        Assert.Throws<ArgumentException>(() => new Sheet(name, "t", "d", Page, []));

    [Fact]
    public void Around_Shapes_PageHasTheMargin()
    {
        var sheet = Sheet.Around("s", "t", "d", [new ContourShape("a", Role.Cut, Contour.Circle(new Point2(0, -50), 20))], 5);

        Assert.Equal(new Box2(new Point2(-25, -75), new Point2(25, -25)), sheet.Page);
    }

    [Theory]
    [InlineData("two\nlines", 2.5, Role.Text)]
    [InlineData(" ", 2.5, Role.Text)]
    [InlineData("a", 0, Role.Text)]
    [InlineData("a", 2.5, Role.Cut)]
    [InlineData("a", 2.5, Role.Pocket)]
    public void Label_ThatCannotBeWritten_IsRefused(string text, double height, Role role) =>
        Assert.Throws<ArgumentException>(() => new LabelShape("a", role, text, new Point2(0, 0), height));

    [Fact]
    public void Emphasis_AnyTwoOfOneRole_DifferWithoutColour()
    {
        foreach (var role in Enum.GetValues<Role>())
        {
            var pens = Enum.GetValues<Emphasis>().Select(e => Pen.For(role, e)).Select(p => (p.WidthMm, p.Style)).ToList();
            Assert.Equal(pens.Count, pens.Distinct().Count());
        }
    }

    private static Sheet Of(params Shape[] shapes) => new("s", "t", "d", Page, shapes);

    private static IEnumerable<string> Names(params (string Part, Role Role)[] parts) =>
        Of([.. parts.Select((p, i) => new ContourShape(p.Part, p.Role, Contour.Circle(new Point2(i, 0), 5)))]).Layers.Select(l => l.Name);
}
