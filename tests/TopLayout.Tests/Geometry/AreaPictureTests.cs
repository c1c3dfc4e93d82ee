using System.Globalization;
using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>One page for the operations on areas and one for offsets and bands: what went in is dashed, what came out is blue and hatched.</summary>
public class AreaPictureTests
{
    private static readonly Contour Plate = Contour.Polygon(new(-42, -28), new(40, -28), new(40, -6), new(-8, -6), new(-8, 26), new(-42, 26));

    private static string F(double value) => value.ToString("F1", CultureInfo.InvariantCulture);

    private static string Areas(IReadOnlyCollection<Region> parts) =>
        $"{(parts.Count == 1 ? "area" : $"{parts.Count} parts:")} {string.Join(", ", parts.Select(p => F(p.Area)))}";

    [Fact]
    public void Operations()
    {
        var page = new PicturePage("area-operations", "Operations on areas");
        var a = Region.Inside(new Contour([new(new(-48, -26)), new(new(5, -26), 0.6), new(new(5, 26)), new(new(-48, 26))], isClosed: true));
        var b = Region.Between(Contour.Circle(new(16, 0), 34), Contour.Circle(new(20, 0), 13));
        void Pair(string caption, Region result)
        {
            var panel = page.Panel(caption, Areas([result]));
            a.Loops.Concat(b.Loops).ToList().ForEach(panel.Input);
            panel.Result(result);
            panel.Label(new Point2(-55, 28), "A", 5);
            panel.Label(new Point2(44, 28), "B", 5);
        }

        Pair("union of A and B", a.Union(b));
        Pair("intersection of A and B", a.Intersect(b));
        Pair("difference, A less B", a.Subtract(b));

        var fork = Region.Inside(new Contour(
            [new(new(-45, -32)), new(new(45, -32)), new(new(45, 30)), new(new(20, 30)), new(new(20, -2), -1), new(new(-20, -2)), new(new(-20, 30)), new(new(-45, 30))], isClosed: true));
        var wave = new Contour([new(new(-56, 4), -0.5), new(new(-4, 10), 0.6), new(new(56, 8))], isClosed: false);
        var parts = fork.Split(wave);
        var split = page.Panel("split by a path", Areas([.. parts]));
        split.Input(wave);
        parts.Select((p, i) => (Part: p, Degrees: i % 2 == 0 ? 45.0 : 135)).ToList().ForEach(p => split.Result(p.Part, p.Degrees));

        var inside = fork.Clip(wave);
        var clip = page.Panel("clip of a path to an area", $"{inside.Count} pieces, length {string.Join(" and ", inside.Select(c => F(c.Length)))}");
        clip.Input(wave);
        fork.Loops.ToList().ForEach(clip.Input);
        inside.ToList().ForEach(clip.Result);
        inside.SelectMany(c => new[] { c.Vertices[0], c.Vertices[^1] }).ToList().ForEach(v => clip.Dot(v.Position, 1.2));

        var knot = new Contour([new(new(-45, -25)), new(new(45, 22), 0.8), new(new(5, 22)), new(new(10, -30), 0.5), new(new(40, -10))], isClosed: true);
        var covered = page.Panel("covered by a loop that crosses itself", Areas([Region.Covered(knot)]));
        covered.Input(knot);
        covered.Result(Region.Covered(knot));
        page.AssertAsAccepted();
    }

    [Fact]
    public void OffsetsAndBands()
    {
        var page = new PicturePage("offsets-bands", "Offsets of areas and bands of paths");
        void Case(string caption, Region area, double mm, Corner corner = default)
        {
            var result = area.Offset(mm, corner);
            var panel = page.Panel(caption, $"by {Math.Abs(mm)} mm: {Areas(result.Parts)}");
            area.Loops.ToList().ForEach(panel.Input);
            panel.Result(result);
        }

        void Band(string caption, Contour path, double half, BandEnd end = BandEnd.Round, Corner corner = default)
        {
            var result = path.Band(half, end, corner);
            var panel = page.Panel(caption, $"{half} mm to each side: {Areas([result])}");
            panel.Result(result);
            panel.Input(path);
        }

        var plate = Region.Inside(Plate);
        var tip = Region.Inside(new Contour([new(new(-35, -26)), new(new(42, -26)), new(new(-12, 0)), new(new(-12, 24), 0.4), new(new(-35, 24))], isClosed: true));
        var waisted = Region.Inside(new Contour([new(new(-22, -8), -0.2), new(new(22, -8), 0.9), new(new(22, 8), -0.2), new(new(-22, 8), 0.9)], isClosed: true))
            .Union(Region.Union([HardPairs.Disc(-30, 0, 22), HardPairs.Disc(32, 0, 18)]));
        var holed = Region.Between(Contour.Polygon(new(-40, -26), new(40, -26), new(40, 26), new(-40, 26)), Contour.Circle(new(-16, 0), 16), Contour.Circle(new(22, 0), 6));
        Case("outward, corners rounded", plate, 8);
        Case("outward, corners mitred", plate, 8, Corner.Mitre());
        Case("mitred, the sharp tip cut at limit 3", tip, 7, Corner.Mitre(3));
        Case("inward, the hollow corner rounded", plate, -8);
        Case("inward, falling apart", waisted, -9);
        Case("outward, the small hole vanishing", holed, 7);

        var path = new Contour([new(new(-42, -22)), new(new(-10, 18)), new(new(10, -14), 0.7), new(new(40, 16))], isClosed: false);
        Band("band with round ends", path, 6);
        Band("band with flat ends, mitred", path, 6, BandEnd.Flat, Corner.Mitre());
        Band("band of a closed path", Plate, 6);
        page.AssertAsAccepted();
    }
}
