using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using Station = TopLayout.Lutherie.Parts.OutlineRecipe.Station;

namespace TopLayout.Tests.Parts;

/// <summary>Outlines with a cutaway and without a waist. The worked values come from a second program in another language, printed to the digits shown.</summary>
public class OutlineFormTests
{
    private static readonly OutlineRecipe Auditorium =
        OutlineRecipeTests.Recipe([500, 290, 100, 242, 190, 396, 376], [.46, .42, .88, .84, .18, .25]);

    [Fact]
    public void Teardrop_WorkedExample_RadiiStripAndAreaAgree()
    {
        var recipe = new TeardropRecipe(405, 30, Angle.FromDegrees(48), new Station(356, 240), 205, new OutlineRecipe.EndShape(.90, .15, 0));

        var half = recipe.Half()!;
        var outline = HalfLemmas.Whole(half, half);

        double Radius(string label) => outline.Segments.First(s => s.Label == label).Radius;
        Check.Near(819, Radius("shoulder"), 0.5, "shoulder");
        Check.Near(205, Radius("lower side"), 1e-9, "side");
        Check.Near(143, Radius("lower corner"), 0.5, "corner");
        Check.Near(194, Radius("tail"), 0.5, "tail");
        Check.Near(592, outline.Length / 2, 0.5, "half of the way round, the neck's flat included");
        Check.Near(1075, outline.SignedArea / 100, 0.5, "area, cm²");
        Check.Near(356, outline.Bounds.Width, 1e-9, "width");
        Check.Near(405, outline.Bounds.Height, 1e-9, "length");
        Assert.Equal(2, Corners(outline));
    }

    [Fact]
    public void RoundedCutaway_WorkedExample_HollowAndTurnAgree()
    {
        var recipe = new CutawayRecipe(CutawayShape.Rounded, 33, 18, new Station(2 * 138, 118), 38);

        var outline = Cut(recipe)!;

        var hollow = outline.Segments.Single(s => s.Label == "cutaway hollow");
        Check.Near(62.1, hollow.Radius, 0.05, "hollow radius");
        Check.Near(92.8, Math.Abs(hollow.Sweep.Degrees), 0.05, "turn");
        Check.Near(38, outline.Segments.Single(s => s.Label == "horn").Radius, 1e-9, "horn radius");
        Assert.Equal(1, Corners(outline));
        Assert.True(outline.SignedArea < Auditorium.Build().SignedArea);
    }

    [Fact]
    public void PointedCutaway_OnTheBodysOwnSide_KeepsTheRestOfTheOutline()
    {
        var outline = Cut(new CutawayRecipe(CutawayShape.Pointed, 33, 15, new Station(0, 110), 0))!;

        var body = Auditorium.Build();
        var own = outline.Segments.Where(s => s.Label is not ("heel" or "cutaway wall" or "cutaway hollow"));
        Assert.All(own, s => Check.Near(0, body.DistanceTo(s.PointAt(0.5)), 1e-9, s.Label));
        Assert.Equal(2, Corners(outline));
    }

    [Theory]
    [InlineData(140, 18, 138, 118, 38)]
    [InlineData(33, 18, 100, 118, 38)]
    [InlineData(33, 18, 138, 195, 38)]
    [InlineData(33, 18, 138, 118, 400)]
    public void RoundedCutaway_ThatDoesNotFit_IsRefused(double heel, double wall, double hornHalf, double hornAt, double hornRadius) =>
        Assert.Null(Cut(new CutawayRecipe(CutawayShape.Rounded, heel, wall, new Station(2 * hornHalf, hornAt), hornRadius)));

    private static Contour? Cut(CutawayRecipe recipe)
    {
        var body = BodyHalves.Alike(Auditorium.TrebleHalf(), default) with { Recipe = Auditorium };
        return recipe.Cut(body).Half is { } half ? (body with { Treble = half }).Whole() : null;
    }

    private static int Corners(Contour outline) => Enumerable.Range(0, outline.Segments.Length).Count(i =>
        Math.Abs(outline.Segments[i].TangentAt(1).Cross(outline.Segments[(i + 1) % outline.Segments.Length].TangentAt(0))) > 1e-6);
}
