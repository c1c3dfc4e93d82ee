using System.Globalization;
using TopLayout.Geometry;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Sheets;
using Xunit.Abstractions;

namespace TopLayout.Tests.Parts.Outlines;

/// <summary>Cutaways, ledges, and what lies beside them.</summary>
public class CutawayTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("right", 1)]
    [InlineData("left", -1)]
    public void Cutaway_OnTheSheetOfAHand_LiesOnItsTrebleSide(string hand, int treble)
    {
        var layout = Built.Preset("cutaway", t => t.Replaced("handed = \"right\"", $"handed = \"{hand}\""));
        var sheet = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value).Map(layout.Outline);

        Check.Near(36, OutlineDesigns.HalfWidth(sheet, 15, treble), 1e-6, "the wall");
        Assert.True(OutlineDesigns.HalfWidth(sheet, 15, -treble) > 80, "the other shoulder");
    }

    [Theory]
    [InlineData("horn_radius = 40", "horn_radius = 180", "a horn of radius 180 mm leaves no hollow", "`horn_radius` from 5 mm to")]
    [InlineData("horn_at = 128", "horn_at = 200", "not above the waist at 190 mm", "`horn_at` from")]
    [InlineData("wall_from_centre = 36", "wall_from_centre = 140", "not past the wall at 140 mm", "`wall_from_centre` from 10 mm to 137.")]
    public void Cutaway_ThatDoesNotFit_SaysWhichNumberAloneWouldMendIt(string from, string to, string sentence, string cure)
    {
        var (said, hint, _) = Assert.Single(Built.Misfits("cutaway", t => t.Replaced(from, to)));

        Assert.Contains(sentence, said, StringComparison.Ordinal);
        Assert.Contains(cure, hint, StringComparison.Ordinal);
    }

    [Fact]
    public void RoundedHorn_WithoutAWaist_AsksForAPointedOne()
    {
        Assert.Contains("a rounded horn runs into a waist", OutlineDesigns.Printed("[teardrop]\n[cutaway]\n"), StringComparison.Ordinal);
        var outline = OutlineDesigns.Layout("[teardrop]\n[cutaway]\nshape = \"pointed\"\nhorn_at = 120\nwall_from_centre = 40\n").Outline;
        Check.Near(40, OutlineDesigns.HalfWidth(outline, 10, 1), 1e-6, "wall");
    }

    // A point of 25 degrees: no line inside the sides has its corner left, but every one of them is there.
    [Fact]
    public void TightPointedHorn_DoesNotRefuseTheLining()
    {
        var layout = OutlineDesigns.Layout("[cutaway]\nshape = \"pointed\"\nhorn_at = 110\nwall_length = 70\n[lining]\nwidth = 12\n");

        Assert.Null(RegionValidity.FirstFault(Region.Inside(layout.LiningLine)));
        Assert.All(layout.LiningLine.Segments, s => Assert.True(layout.Outline.DistanceTo(s.PointAt(0.5)) > 14.1 - 1e-6));
    }

    [Theory]
    [InlineData("rounded")]
    [InlineData("pointed")]
    public void BracesBlocksAndLinings_NeverRunPastACutaway(string shape)
    {
        var layout = Built.Preset("cutaway", t => t.Replaced("shape = \"rounded\"", $"shape = \"{shape}\""));

        foreach (var member in layout.Members.Where(m => m.Face == TopFace.Inside))
        {
            foreach (var at in member.Footprint.Edges.SelectMany(e => Enumerable.Range(0, 40).Select(n => e.PointAt(n / 40.0))))
            {
                Assert.True(layout.InsideOfSides.Contains(at) || layout.InsideOfSides.DistanceTo(at) < 1e-6, $"{member.Name} at {at}");
            }
        }

        foreach (var name in (string[])[TransverseBrace.Name, FlatBrace.Name])
        {
            var bounds = layout.Find(name)!.Footprint.Bounds;
            Assert.True(bounds.Max.X < -bounds.Min.X - 5, $"the {name} is cut at the cutaway");
            Check.Near(0, layout.InsideOfSides.DistanceTo(new Point2(bounds.Max.X, layout.Find(name)!.Footprint.Edges.MaxBy(e => e.End.X).End.Y)), 1e-6, "ends at the sides");
        }
    }

    // Beside the block it ends at the block's face; from there to the tail block every point of the sides' inside has lining on it.
    [Fact]
    public void TrebleLining_FollowsWallHollowAndHorn()
    {
        var layout = Built.Preset("cutaway");
        var (lining, neck, tail) = (layout.Find("treble lining")!.Footprint, layout.Find(Block.Neck.Name)!.Footprint, layout.Find(Block.Tail.Name)!.Footprint);

        foreach (var s in layout.InsideOfSides.Segments)
        {
            foreach (var at in Enumerable.Range(0, 20).Select(n => s.PointAt((n + 0.5) / 20)).Where(p => p.X > 0))
            {
                var isAtBlock = neck.DistanceTo(at) < 0.5 || tail.DistanceTo(at) < 0.5;
                Assert.True(isAtBlock || lining.DistanceTo(at) < 1e-6, $"no lining at {at}");
            }
        }
    }

    [Theory]
    [InlineData("wall_from_centre = 28", Severity.Fail, "set `wall_from_centre` to 33.3 mm or more")]
    [InlineData("wall_from_centre = 32", Severity.Remark, "set `wall_from_centre` to 33.3 mm or more")]
    [InlineData("wall_from_centre = 33.3", Severity.Pass, null)]
    public void Wall_NearTheFretboard_IsJudgedWithTheNumberThatMendsIt(string wall, Severity severity, string? cure)
    {
        var found = Assert.Single(CutawayWallCheck.Of(Built.Preset("cutaway", t => t.Replaced("wall_from_centre = 36", wall))));

        Assert.Equal((severity, cure), (found.Severity, found.Cure));
    }

    [Fact]
    public void Ledge_IsTheOutlineOffsetByTheBinding()
    {
        var layout = OutlineDesigns.Layout("body = \"concert\"\n[cutaway]\n[ledge]\nbinding = 2.4\n");

        Assert.All(layout.Body.PlateEdge.Segments.SelectMany(s => new[] { s.PointAt(0.1), s.PointAt(0.5) }), p =>
        {
            Check.Near(2.4, layout.Outline.DistanceTo(p), 1e-6, "from the body's edge");
            Assert.True(layout.Outline.Contains(p));
        });
        Check.Near(2.1, layout.Outline.DistanceTo(layout.InsideOfSides.Segments[0].PointAt(0.5)), 1e-6, "the sides stay");
    }

    [Theory]
    [InlineData(2.4, Severity.Pass)]
    [InlineData(7.5, Severity.Remark)]
    [InlineData(9, Severity.Fail)]
    public void Ledge_ThatLeavesLittle_IsSaid(double binding, Severity severity)
    {
        var layout = OutlineDesigns.Layout(string.Create(CultureInfo.InvariantCulture, $"[ledge]\nbinding = {binding}\n"));

        Assert.Equal(severity, Assert.Single(LedgeCheck.Of(layout)).Severity);
    }

    [Fact]
    public void AnyCutaway_IsAValidBodyOrARefusalWithACure()
    {
        const int seed = 20264;
        var random = new Random(seed);
        var (drawn, refused) = (0, 0);
        for (var n = 0; n < 400; n++)
        {
            double Draw(double low, double high) => low + ((high - low) * random.NextDouble());
            var text = string.Create(CultureInfo.InvariantCulture, $"""
                [cutaway]
                shape = "{(random.Next(2) == 0 ? "rounded" : "pointed")}"
                wall_from_centre = {Draw(20, 70):0.00}
                wall_length = {Draw(0, 70):0.00}
                horn_at = {Draw(50, 200):0.00}
                horn_from_centre = {Draw(100, 170):0.00}
                horn_radius = {Draw(8, 80):0.00}
                """);
            var (layout, findings) = OutlineDesigns.Built(text);
            if (layout is null)
            {
                refused++;
                Assert.All(findings, f => Assert.True(f.Place is { Line: > 3 } && f.Cure is not null, $"seed {seed}, draw {n}: {FindingText.Of(f)}"));
                continue;
            }

            drawn++;
            foreach (var line in (Contour[])[layout.Outline, layout.InsideOfSides, layout.LiningLine])
            {
                var fault = RegionValidity.FirstFault(Region.Inside(line));
                Assert.True(fault is null or { Kind: RegionFaultKind.ShortSegment }, $"seed {seed}, draw {n}: {fault}\n{text}");
            }

            Check.Near(500, layout.Outline.Bounds.Height, 1e-6, $"seed {seed}, draw {n}: length");
        }

        output.WriteLine($"seed {seed}: {drawn} drawn, {refused} refused");
        Assert.True(drawn > refused);
    }
}
