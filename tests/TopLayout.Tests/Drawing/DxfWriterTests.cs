using System.Globalization;
using TopLayout.Drawing;
using TopLayout.Drawing.Dxf;
using TopLayout.Geometry;
using static TopLayout.Tests.Drawing.Specimen;

namespace TopLayout.Tests.Drawing;

public class DxfWriterTests
{
    [Fact]
    public void Write_AnySheet_IsPairsOfAsciiLines()
    {
        var text = Dxf(Mixed());

        Assert.True(text.All(char.IsAscii) && !text.Contains('\r'));
        Assert.EndsWith("0\nEOF\n", text, StringComparison.Ordinal);
        Assert.Equal(0, text.Count(c => c == '\n') % 2);
        Assert.DoesNotContain(Tags(Mixed()), t => t.Code is 210 or 220 or 230 or 999);
        Assert.All(Tags(Mixed()).Where(t => t.Code is >= 10 and <= 59), t => Assert.Matches(@"^-?\d+\.\d+$", t.Value));
    }

    [Fact]
    public void Write_Header_SaysMillimetresAndTheBoxWithText()
    {
        var sheet = Mixed();
        var text = Dxf(sheet);

        Assert.Contains("$ACADVER\n1\nAC1009\n", text, StringComparison.Ordinal);
        Assert.Contains("$MEASUREMENT\n70\n1\n", text, StringComparison.Ordinal);
        Assert.Contains("$INSUNITS\n70\n4\n", text, StringComparison.Ordinal);
        Assert.Contains($"$EXTMIN\n10\n-60", text[..400], StringComparison.Ordinal);
        Assert.Equal(-30, sheet.Extents.Min.Y, 1e-9);
    }

    [Fact]
    public void Write_ShapesByKind_AreTheSimplestEntities()
    {
        var arc = Open(Role.Mark, At(10, 0, 0.5), At(-10, 0));
        var sheet = Sheet(
            Open(Role.Mark, At(0, 0), At(10, 5)), arc, Closed(Role.Cut, At(0, 0), At(10, 0), At(0, 10)), new ContourShape("hole", Role.Cut, Contour.Circle(new Point2(1, 2), 3)));

        Assert.Equal(["LINE", "ARC", "POLYLINE", "VERTEX", "VERTEX", "VERTEX", "SEQEND", "CIRCLE"], Entities(sheet).Select(e => e.Type));
    }

    [Fact]
    public void Write_ClosedContour_SetsTheFlagAndDoesNotRepeatAVertex()
    {
        var polyline = Entities(Sheet(Closed(Role.Cut, At(0, 0), At(10, 0, -0.25), At(0, 10)))).ToList();

        Assert.Equal(["66=1", "70=1"], polyline[0].Tags.Where(t => t.Code is 66 or 70).Select(t => $"{t.Code}={t.Value}"));
        Assert.Equal(3, polyline.Count(e => e.Type == "VERTEX"));
        Assert.Equal("-0.25", Assert.Single(polyline.SelectMany(e => e.Tags), t => t.Code == 42).Value);
    }

    [Theory]
    [InlineData(1, "0.0", "180.0")]
    [InlineData(-1, "180.0", "0.0")]
    [InlineData(0.41421356237309503, "45.0", "135.0")]
    public void Write_SingleArc_RunsCounterClockwise(double bulge, string start, string end)
    {
        var arc = Entities(Sheet(Open(Role.Mark, At(10, 0, bulge), At(-10, 0)))).Single();

        Assert.Equal((start, end), (arc.Value(50), arc.Value(51)));
    }

    [Fact]
    public void Write_MirroredArc_IsTheMirrorImage()
    {
        var arc = new Contour([At(10, 0, 0.5), At(20, 5)], isClosed: false);
        var mirrored = arc.Placed(Placement.MirroredAcrossY);

        var (one, two) = (Written(arc), Written(mirrored));

        Check.Near(one.Center, -two.Center, 1e-6, "centre");
        Check.Near((540 - one.End) % 360, two.Start, 1e-6, "the mirror turns the ends round");
        Check.Near((540 - one.Start) % 360, two.End, 1e-6, "the mirror turns the ends round");

        static (double Center, double Start, double End) Written(Contour contour)
        {
            var entity = Entities(Sheet(new ContourShape("a", Role.Mark, contour))).Single();
            return (entity.Number(10), entity.Number(50), entity.Number(51));
        }
    }

    [Theory]
    [InlineData(Role.Text, "TEXT")]
    [InlineData(Role.Dimension, "TEXT")]
    [InlineData(Role.Finding, "TEXT")]
    [InlineData(Role.Engrave, "LINE")]
    [InlineData(Role.Mark, "LINE")]
    public void Write_Label_IsTextToReadOrStrokesToMake(Role role, string type)
    {
        var entities = Entities(Sheet(new LabelShape("a", role, "I", new Point2(0, 0), 5)));

        Assert.Equal(type, Assert.Single(entities).Type);
    }

    [Fact]
    public void Write_CentredText_GivesBothPoints()
    {
        var text = Entities(Sheet(new LabelShape("a", Role.Text, "Ø98", new Point2(5, 6), 2.5, Alignment.Centre, Angle.FromDegrees(30)))).Single();

        Assert.Equal("dia 98", text.Value(1));
        Assert.Equal(("1", "5.0", "6.0", "30.0"), (text.Value(72), text.Value(11), text.Value(21), text.Value(50)));
        Assert.True(text.Number(10) < 5 && text.Number(20) < 6, "the hint lies before the middle");
    }

    [Fact]
    public void Write_LayersAndLineTypes_AreDefinedBeforeUse()
    {
        var sheet = Sheet(Enum.GetValues<Role>().SelectMany(r => Enum.GetValues<Emphasis>().Select((e, i) =>
            new ContourShape(r.ToString(), r, new Contour([At(0, i), At(10, (int)r)], isClosed: false), e))));

        var tables = Tags(sheet).TakeWhile(t => t.Value != "ENTITIES").ToList();
        var defined = tables.Where(t => t.Code == 2).Select(t => t.Value).ToHashSet();
        Assert.All(Tags(sheet).Where(t => t.Code is 8 or 6), t => Assert.Contains(t.Value, defined));
        Assert.Contains(("DASHED", "HIDDEN_HIDDEN"), tables.Zip(tables.Skip(3)).Select(p => (p.Second.Value, p.First.Value)));
        Assert.Contains(Entities(sheet), e => e.Tags.Any(t => t is (6, "LONG_DASHED")));
    }

    [Fact]
    public void Write_TwiceAndUnderACommaCulture_GivesTheSameBytes()
    {
        var once = Bytes(DxfWriter.Write, Mixed());

        InCulture.Run("de-DE", () => Assert.Equal(once, Bytes(DxfWriter.Write, Mixed())));
        InCulture.Run("tr-TR", () => Assert.Equal(once, Bytes(DxfWriter.Write, Mixed())));
    }

    private static List<(int Code, string Value)> Tags(Sheet sheet) =>
        [.. Dxf(sheet).TrimEnd('\n').Split('\n').Chunk(2).Select(p => (int.Parse(p[0], CultureInfo.InvariantCulture), p[1]))];

    private static IEnumerable<Entity> Entities(Sheet sheet)
    {
        var tags = Tags(sheet).SkipWhile(t => t != (2, "ENTITIES")).Skip(1).TakeWhile(t => t != (0, "ENDSEC")).ToList();
        for (var i = 0; i < tags.Count;)
        {
            var own = tags.Skip(i + 1).TakeWhile(t => t.Code != 0).ToList();
            yield return new Entity(tags[i].Value, own);
            i += own.Count + 1;
        }
    }

    private sealed record Entity(string Type, IReadOnlyList<(int Code, string Value)> Tags)
    {
        public string Value(int code) => Tags.Single(t => t.Code == code).Value;

        public double Number(int code) => double.Parse(Value(code), CultureInfo.InvariantCulture);
    }
}
