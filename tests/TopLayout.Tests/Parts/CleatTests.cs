using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

public class CleatTests
{
    private static List<Member> CleatsOf(Layout layout) => [.. layout.Members.Where(m => m.Name.StartsWith("cleat ", StringComparison.Ordinal))];

    [Theory]
    [InlineData("diamond", 0.5)]
    [InlineData("square", 1)]
    public void Cleats_OfAShape_LieOnTheJointWithTheirGrainAcross(string shape, double shareOfBox)
    {
        var layout = Built.Preset("concert", t => t.Replaced("shape = \"diamond\"", $"shape = \"{shape}\""));

        var cleats = CleatsOf(layout);
        Assert.True(cleats.Count >= 3, $"{cleats.Count} cleats");
        foreach (var cleat in cleats)
        {
            Check.Near(0, cleat.Footprint.Bounds.Center.X, 1e-9, cleat.Name);
            Check.Near(20, cleat.Footprint.Bounds.Width, 1e-9, cleat.Name);
            Check.Near(16, cleat.Footprint.Bounds.Height, 1e-9, cleat.Name);
            Check.Near(20 * 16 * shareOfBox, cleat.Footprint.Area, 1e-7, cleat.Name);
            Check.Near(90, cleat.Grain.Degrees, 0, cleat.Name);
        }
    }

    [Theory]
    [InlineData("diamond")]
    [InlineData("square")]
    public void Cleats_BesideOtherParts_KeepTheirGapAndPitch(string shape)
    {
        var layout = Built.Preset("concert", t => t.Replaced("shape = \"diamond\"", $"shape = \"{shape}\""));

        var cleats = CleatsOf(layout);
        foreach (var (a, b) in cleats.Zip(cleats.Skip(1)))
        {
            Assert.True(a.Footprint.Bounds.Center.Y - b.Footprint.Bounds.Center.Y >= 40 - 1e-9, $"{a.Name} to {b.Name}");
        }

        foreach (var cleat in cleats)
        {
            foreach (var other in layout.Members.Where(m => m.Face == TopFace.Inside && !cleats.Contains(m)))
            {
                var nearest = cleat.Footprint.Edges.SelectMany(e => Enumerable.Range(0, 101).Select(i => e.PointAt(i / 100.0))).Min(other.Footprint.DistanceTo);
                Assert.True(nearest >= 3 - Tolerances.ShortestMm, $"{cleat.Name} to {other.Name}: {nearest}");
            }
        }
    }

    /// <summary>The first stands a gap of 3 and half of 16 behind the plate: bridge front + 32 + 4 + 11.</summary>
    [Fact]
    public void Cleats_First_StandsBehindTheBridgePlate()
    {
        var layout = Built.Preset("concert");

        var front = (632 * Math.Pow(2, -14 / 12.0)) + 3.1 - 10;
        Check.Near(-(front + 32 + 4 + 3 + 8), CleatsOf(layout)[0].Footprint.Bounds.Center.Y, 1e-7, "cleat 1");
    }

    [Fact]
    public void Cleats_ARowOfTheirOwn_StayInIt()
    {
        var layout = Built.Preset("concert", t => t.Replaced("pitch = 40", "pitch = 20\nrow_from = 240\nrow_to = 300"));

        // Between the crossing and the bridge plate there is room for one; behind the plate the row has ended.
        var cleat = Assert.Single(CleatsOf(layout));
        Assert.InRange(cleat.Footprint.Bounds.Max.Y, -300, -240);
    }

    [Fact]
    public void Cleats_ARowPastTheTail_StayInTheBody()
    {
        var layout = Built.Preset("concert", t => t.Replaced("pitch = 40", "pitch = 20\nrow_to = 690"));

        Assert.All(CleatsOf(layout), c => Assert.True(c.Footprint.Bounds.Min.Y > Block.Tail.FaceY(layout.Design, layout.InsideOfSides), c.Name));
    }

    [Fact]
    public void Cleats_UnderAMiddleStrut_AreAMisfit()
    {
        var misfit = Assert.Single(Built.Misfits("classical", t => t.With("[cleats]\nalong = 16")));

        Assert.Equal("no cleat 16 mm along the joint fits on the centre line from 348.8 mm to 470 mm from the neck edge; left out of the plan", misfit.Sentence);
        Assert.Equal(
            "make the cleats or their `gap` smaller, lengthen the row with `row_from` and `row_to`, or leave [cleats] out where a bar lies on the joint", misfit.Cure);
        Assert.Equal("along [cleats]", misfit.Keys);
    }
}
