using System.Xml.Linq;
using TopLayout.Drawing;
using TopLayout.Drawing.Svg;
using TopLayout.Geometry;
using static TopLayout.Tests.Drawing.Specimen;

namespace TopLayout.Tests.Drawing;

public class SvgWriterTests
{
    private static readonly XNamespace Svg1 = "http://www.w3.org/2000/svg";

    [Fact]
    public void Write_Root_GivesSizeTitleAndDescription()
    {
        var root = XDocument.Parse(Svg(Mixed())).Root!;

        Assert.Equal(("200mm", "100mm", "0 0 200 100"), (root.Attribute("width")!.Value, root.Attribute("height")!.Value, root.Attribute("viewBox")!.Value));
        Assert.Equal(("img", "title desc"), (root.Attribute("role")!.Value, root.Attribute("aria-labelledby")!.Value));
        Assert.Equal(["title", "desc"], root.Elements().Take(2).Select(e => e.Attribute("id")!.Value));
        Assert.Equal("A <specimen> & more", root.Elements().First().Value);
    }

    [Fact]
    public void Write_Layers_AreTitledGroupsWithUniqueNames()
    {
        var groups = Groups(Mixed());

        Assert.Equal(["part-cut", "ring-pocket", "part-hidden", "part-mark", "notes-text", "part-engrave"], groups.Select(g => g.Attribute("id")!.Value));
        Assert.All(groups, g => Assert.Equal("title", g.Elements().First().Name.LocalName));
        Assert.Equal("ring, pocket", groups[1].Element(Svg1 + "title")!.Value);
    }

    [Fact]
    public void Write_AnySheet_UsesNoTextTransformOrStyle()
    {
        var names = XDocument.Parse(Svg(Mixed())).Descendants().ToList();

        Assert.Equal(["circle", "desc", "g", "path", "svg", "title"], names.Select(e => e.Name.LocalName).Distinct().Order());
        Assert.DoesNotContain(names.Attributes(), a => a.Name.LocalName is "transform" or "style" or "class");
    }

    [Theory]
    [InlineData(0.5, "M 100 50 A 12.5 12.5 0 0 0 120 50")]
    [InlineData(-0.5, "M 100 50 A 12.5 12.5 0 0 1 120 50")]
    public void Write_Arc_TurnsTheSameWayOnThePage(double bulge, string data) =>
        Assert.Equal(data, Path(Open(Role.Mark, At(0, 0, bulge), At(20, 0))));

    [Fact]
    public void Write_MirroredArc_TurnsTheOtherWay()
    {
        var arc = new Contour([At(0, 0, 0.5), At(20, 0)], isClosed: false).Placed(Placement.MirroredAcrossY);

        Assert.Equal("M 100 50 A 12.5 12.5 0 0 1 80 50", Path(new ContourShape("a", Role.Mark, arc)));
    }

    [Fact]
    public void Write_HalfTurn_IsSplitSoThatTheRadiusIsNeverTooSmall() =>
        Assert.Equal("M 110 50 A 10 10 0 0 0 100 40 A 10 10 0 0 0 90 50", Path(Open(Role.Mark, At(10, 0, 1), At(-10, 0))));

    [Fact]
    public void Write_ClosedContour_EndsWithZAndDoesNotRepeatItsStart() =>
        Assert.Equal("M 100 50 L 110 50 L 100 40 Z", Path(Closed(Role.Mark, At(0, 0), At(10, 0), At(0, 10))));

    [Fact]
    public void Write_ClosedContourWithArcAtItsEnd_DrawsTheArcBeforeZ() =>
        Assert.Equal("M 100 50 L 110 50 A 6.25 6.25 0 0 0 100 50 Z", Path(Closed(Role.Mark, At(0, 0), At(10, 0, 0.5))));

    [Fact]
    public void Write_FullCircle_IsACircle()
    {
        var circle = Groups(Sheet(new ContourShape("a", Role.Cut, Contour.Circle(new Point2(-3, 4), 49)))).Single().Element(Svg1 + "circle")!;

        Assert.Equal(("97", "46", "49"), (circle.Attribute("cx")!.Value, circle.Attribute("cy")!.Value, circle.Attribute("r")!.Value));
    }

    [Fact]
    public void Write_Label_IsOnePathWithItsWordsAsTitle()
    {
        var path = Groups(Sheet(new LabelShape("a", Role.Text, "i & j", new Point2(0, 0), 5))).Single().Element(Svg1 + "path")!;

        Assert.Equal("i & j", path.Element(Svg1 + "title")!.Value);
        Assert.Equal("0.5", path.Attribute("stroke-width")!.Value);
        Assert.Equal(5, path.Attribute("d")!.Value.Count(c => c == 'M'));
    }

    [Fact]
    public void Write_HiddenLine_IsDashedByItsGroup()
    {
        Assert.Equal("3 1.5", Groups(Sheet(Open(Role.Hidden, At(0, 0), At(50, 0)))).Single().Attribute("stroke-dasharray")!.Value);
    }

    [Fact]
    public void Write_LabelOnADashedLayer_IsUnbroken()
    {
        var path = Groups(Sheet(new LabelShape("a", Role.Hidden, "I", new Point2(0, 0), 5))).Single().Element(Svg1 + "path")!;

        Assert.Equal("none", path.Attribute("stroke-dasharray")!.Value);
    }

    [Fact]
    public void Write_Emphasis_ChangesWidthAndColourOfTheShapeOnly()
    {
        var bad = new ContourShape("a", Role.Mark, new Contour([At(0, 0), At(9, 0)], isClosed: false), Emphasis.Bad);
        var group = Groups(Sheet(bad)).Single();

        Assert.Equal(("0.25", "0.75"), (group.Attribute("stroke-width")!.Value, group.Element(Svg1 + "path")!.Attribute("stroke-width")!.Value));
        Assert.NotEqual(group.Attribute("stroke")!.Value, group.Element(Svg1 + "path")!.Attribute("stroke")!.Value);
    }

    [Fact]
    public void Write_TwiceAndUnderACommaCulture_GivesTheSameBytes()
    {
        var once = Bytes(SvgWriter.Write, Mixed());

        Assert.DoesNotContain((byte)'\r', once);
        InCulture.Run("de-DE", () => Assert.Equal(once, Bytes(SvgWriter.Write, Mixed())));
        InCulture.Run("tr-TR", () => Assert.Equal(once, Bytes(SvgWriter.Write, Mixed())));
    }

    private static List<XElement> Groups(Sheet sheet) => [.. XDocument.Parse(Svg(sheet)).Root!.Elements(Svg1 + "g")];

    private static string Path(Shape shape) => Groups(Sheet(shape)).Single().Element(Svg1 + "path")!.Attribute("d")!.Value;
}
