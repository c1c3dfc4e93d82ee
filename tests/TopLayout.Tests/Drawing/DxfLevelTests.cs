using System.Globalization;
using System.Text;
using TopLayout.Drawing;
using TopLayout.Drawing.Dxf;
using TopLayout.Geometry;
using static TopLayout.Tests.Drawing.Specimen;

namespace TopLayout.Tests.Drawing;

/// <summary>The levels, units and origins a drawing can be written in; what all readers make of them is tested end to end.</summary>
public class DxfLevelTests
{
    [Fact]
    public void R2000_Contour_IsALightPolylineWithItsCountFirst()
    {
        var polyline = Written(Sheet(Closed(Role.Cut, At(0, 0), At(10, 0, -0.25), At(0, 10))), new(DxfLevel.R2000)).After("LWPOLYLINE");

        Assert.Equal(["AcDbEntity", "AcDbPolyline"], polyline.TakeWhile(t => t.Code != 0).Where(t => t.Code == 100).Select(t => t.Value));
        var own = polyline.SkipWhile(t => t.Value != "AcDbPolyline").Skip(1).TakeWhile(t => t.Code != 0).Select(t => t.Code);
        Assert.Equal([90, 70, 10, 20, 10, 20, 42, 10, 20], own);
    }

    [Fact]
    public void R2000_EveryHandle_IsItsOwnBelowTheSeedAndOwnedByARecord()
    {
        var tags = Written(Mixed(), new(DxfLevel.R2000));

        static int Hex(string value) => int.Parse(value, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        var seed = Hex(tags[tags.IndexOf((9, "$HANDSEED")) + 1].Value);
        var handles = tags.Skip(tags.IndexOf((0, "ENDSEC"))).Where(t => t.Code is 5 or 105).Select(t => Hex(t.Value)).ToList();
        Assert.Equal(handles.Count, handles.Distinct().Count());
        Assert.True(handles.Max() < seed);
        Assert.All(tags.Where(t => t.Code == 330 && t.Value != "0"), t => Assert.Contains(Hex(t.Value), handles));
        var modelSpace = tags[tags.FindIndex(t => t == (2, "*Model_Space")) - 4].Value;
        Assert.Equal(tags.Count(t => t == (100, "AcDbEntity")) - 4, tags.Count(t => t == (330, modelSpace)) - 2);
    }

    [Fact]
    public void R12_And_R2000_SayTheSameGeometry()
    {
        var (old, young) = (Written(Mixed(), default), Written(Mixed(), new(DxfLevel.R2000)));

        static IEnumerable<string> Numbers(IEnumerable<(int Code, string Value)> tags) => tags
            .SkipWhile(t => t.Value != "ENTITIES").Where(t => t.Code is 11 or 21 or 40 or 42 or 50 or 51).Select(t => $"{t.Code} {t.Value}");
        Assert.Equal(Numbers(old), Numbers(young));
    }

    [Fact]
    public void LinesAndArcs_ClosedContour_TouchesEndToEnd()
    {
        var contour = new Contour([At(-50.125, 0), At(50, 0, 0.3), At(50, 30), At(-50, 30, -0.3)], isClosed: true);
        var tags = Written(Sheet(new ContourShape("a", Role.Cut, contour)), new(DxfLevel.LinesAndArcs));

        Assert.Equal(["LINE", "ARC", "LINE", "ARC"], tags.SkipWhile(t => t.Value != "ENTITIES").Where(t => t.Code == 0).Select(t => t.Value).SkipLast(2));
        var arc = tags.After("ARC").TakeWhile(t => t.Code != 0).ToDictionary(t => t.Code, t => t.Value);
        double Of(int code) => double.Parse(arc[code], CultureInfo.InvariantCulture);
        Check.Near(50, Of(10) + (Of(40) * Math.Cos(Of(50) * Math.PI / 180)), 1e-5, "start of the arc");
        Check.Near(0, Of(20) + (Of(40) * Math.Sin(Of(50) * Math.PI / 180)), 1e-5, "start of the arc");
        Check.Near(30, Of(20) + (Of(40) * Math.Sin(Of(51) * Math.PI / 180)), 1e-5, "end of the arc");
    }

    [Fact]
    public void Inches_EveryLength_IsDividedOnceAndAnglesAreNot()
    {
        var sheet = Sheet(
            new ContourShape("a", Role.Cut, Contour.Circle(new Point2(25.4, 50.8), 12.7)),
            new LabelShape("a", Role.Text, "ABC", new Point2(0, 0), 2.54, rotation: Angle.FromDegrees(30)));

        var tags = Written(sheet, new(Unit: DxfUnit.Inch));

        Assert.Contains("$MEASUREMENT\n70\n0\n", Text(sheet, new(Unit: DxfUnit.Inch)), StringComparison.Ordinal);
        Assert.Contains("$INSUNITS\n70\n1\n", Text(sheet, new(Unit: DxfUnit.Inch)), StringComparison.Ordinal);
        Assert.Equal(["1.0", "2.0", "0.0", "0.5"], tags.After("CIRCLE").Where(t => t.Code is 10 or 20 or 30 or 40).Take(4).Select(t => t.Value));
        Assert.Equal(["0.1", "30.0"], tags.After("TEXT").Where(t => t.Code is 40 or 50).Take(2).Select(t => t.Value));
        Assert.Contains((41, "1.0"), tags);
    }

    [Fact]
    public void Corner_EveryPoint_IsShiftedByThePageAndNothingElse()
    {
        var sheet = Mixed();
        var (datum, corner) = (Written(sheet, default), Written(sheet, new(Origin: DxfOrigin.Corner)));

        var moved = datum.Zip(corner).SkipWhile(p => p.First.Value != "ENTITIES").Where(p => p.First != p.Second).ToList();
        Assert.All(moved, p => Check.Near(p.First.Code is 10 or 11 ? 100 : 50, Number(p.Second) - Number(p.First), 1e-9, p.First.Code.ToString(CultureInfo.InvariantCulture)));
        Assert.All(moved, p => Assert.True(p.First.Code is 10 or 11 or 20 or 21));
        Assert.Contains((10, "0.0"), corner.After("POLYLINE").Take(6));
    }

    private static double Number((int Code, string Value) tag) => double.Parse(tag.Value, CultureInfo.InvariantCulture);

    private static string Text(Sheet sheet, DxfOptions options) => Encoding.ASCII.GetString(Bytes((s, stream) => DxfWriter.Write(s, stream, options), sheet));

    private static List<(int Code, string Value)> Written(Sheet sheet, DxfOptions options) =>
        [.. Text(sheet, options).TrimEnd('\n').Split('\n').Chunk(2).Select(p => (int.Parse(p[0], CultureInfo.InvariantCulture), p[1]))];
}

/// <summary>Reading lists of tags.</summary>
file static class TagListExtensions
{
    /// <summary>The tags after the first record of a type, that record's own first.</summary>
    public static List<(int Code, string Value)> After(this List<(int Code, string Value)> tags, string type) => tags[(tags.IndexOf((0, type)) + 1)..];
}
