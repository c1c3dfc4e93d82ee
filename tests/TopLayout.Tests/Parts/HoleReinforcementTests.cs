using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

public class HoleReinforcementTests
{
    [Fact]
    public void Ring_RoundTheHole_HasItsInsetAndWidth()
    {
        var layout = Built.Preset("jumbo");

        var ring = layout.Find(HoleReinforcement.Name)!;
        Check.Near(Math.PI * ((63 * 63) - (53 * 53)), ring.Footprint.Area, 1e-6, "area");
        Check.Near(layout.Hole.Center.Y, ring.Footprint.Bounds.Center.Y, 1e-9, "centre");
        Assert.DoesNotContain(HoleClearanceCheck.Of(layout), f => f.Subject == HoleReinforcement.Name);
    }

    [Theory]
    [InlineData("along", 0)]
    [InlineData("across", 90)]
    public void Ring_Grain_IsAsTheDesignSays(string word, double degrees)
    {
        var layout = Built.Preset("jumbo", t => t.Replaced("style = \"ring\"", $"style = \"ring\"\ngrain = \"{word}\""));

        Check.Near(degrees, layout.Find(HoleReinforcement.Name)!.Grain.Degrees, 0, word);
    }

    [Fact]
    public void Strips_BesideTheHole_StandAtTheirInsetMovedTowardsTheNeck()
    {
        var layout = Built.Preset("concert");

        var centre = layout.Hole.Center.Y;
        var box = layout.Find("hole reinforcement, treble")!.Footprint.Bounds;
        Check.Near(47 + 2, box.Min.X, 1e-7, "hole side");
        Check.Near(47 + 2 + 14, box.Max.X, 1e-7, "outer side");
        Check.Near(20 - 33, box.Min.Y - centre, 1e-7, "tail end");
        Check.Near(20 + 33, box.Max.Y - centre, 1e-7, "neck end");
        Check.Near(-box.Max.X, layout.Find("hole reinforcement, bass")!.Footprint.Bounds.Min.X, 1e-9, "mirror");
        Assert.Null(layout.Find("hole reinforcement, tail side"));
    }

    [Fact]
    public void Strips_Four_SurroundTheHoleWithTheirGrainAlongThem()
    {
        var layout = Built.Preset("classical", t => t.Replaced("style = \"ring\"", "style = \"strips\"\nstrips = 4"));

        var strips = layout.Members.Where(HoleReinforcement.IsPartOf).ToList();
        Assert.Equal([0, 0, 90, 90], strips.Select(s => s.Grain.Degrees));
        Assert.All(strips, s => Check.Near(86 * 11, s.Footprint.Area, 1e-6, s.Name));
        Assert.All(strips, s => Check.Near(44, s.Footprint.DistanceTo(layout.Hole.Center), 1e-7, s.Name));
        Assert.Equal(Severity.Pass, Assert.Single(OverlapCheck.Of(layout)).Severity);
    }

    /// <summary>
    /// The legs' near edges stand (47 + d)·sin 47° − 3.75 from the hole's centre, d from the hole to the crossing: 274.6 − 48/tan 47° − 139.5 − 47
    /// = 43.4 gives 62.37, and 62.37 − 47 − 2 = 13.3 is left for a ring: its near side passes the edge at 15.37.
    /// </summary>
    [Fact]
    public void Ring_NearerBrace_IsAMisfitWithTheWidthThatFits()
    {
        var misfit = Assert.Single(Built.Misfits("concert", t => t
            .Replaced("style = \"strips\"", "style = \"ring\"").Replaced("above_hole = 20", "above_hole = 24").Without("[flat_brace]")), m => m.Sentence.Contains("reaches", StringComparison.Ordinal));

        // 63 − 62.37 = 0.63 too wide; 14 − 0.63 − 2 = 11.37 leaves the usual 2 mm.
        Assert.Equal("the hole reinforcement reaches 0.6 mm into the X leg, bass; 2 mm between them are usual", misfit.Sentence);
        Assert.Equal("`width = 11.3` leaves 2 mm; or move the X leg, bass 2.7 mm away from the hole", misfit.Cure);
        Assert.Equal("width angle", misfit.Keys);
    }

    [Fact]
    public void Ring_WithoutRoom_IsSentToStrips()
    {
        var misfit = Assert.Single(
            Built.Misfits("classical", t => t.Replaced("above_hole = 24", "above_hole = 6").Without("[flat_brace]")), m => m.Sentence.Contains("reaches", StringComparison.Ordinal));

        Assert.Equal("the hole reinforcement reaches 9 mm into the upper transverse brace; 2 mm between them are usual", misfit.Sentence);
        Assert.Equal("leave the reinforcement out there, or take strips (`style = \"strips\"`); or move the upper transverse brace 11 mm away from the hole", misfit.Cure);
    }
}
