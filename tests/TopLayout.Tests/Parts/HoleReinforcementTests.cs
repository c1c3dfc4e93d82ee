using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts.Braces;
using TopLayout.Tests.Parts.Outlines;

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
        Assert.Equal("`width = 11.3` leaves 2 mm; or move the X leg, bass, by 2.7 mm away from the hole", misfit.Cure);
        Assert.Equal("width angle", misfit.Keys);
    }

    // Sides of 2.1 and linings of 6.5 leave 141.4 of the box's half; the strips lie from 50 + 40 to 60 further, so that 8.6 reach past it.
    [Fact]
    public void Strips_ThatReachTheLinings_AreCutAlongThem()
    {
        var layout = OutlineDesigns.Layout(OutlineDesigns.Box(150) + "[hole_reinforcement]\nstyle = \"strips\"\ninset = 40\nwidth = 60\nlength = 80\n");

        foreach (var side in (string[])["bass", "treble"])
        {
            var strip = layout.Find($"hole reinforcement, {side}")!;
            Check.Near((141.4 - 90) * 80, strip.Footprint.Area, 1e-6, "area");
            Check.Near(80, strip.Footprint.Edges.Single(e => e.Label == "lining side").Length, 1e-6, "cut edge");
            var remark = layout.Faults.Single(f => f.Subject == strip.Name);
            Assert.Equal((Rules.DrawnOtherwise, Severity.Remark), (remark.Rule, remark.Severity));
            Assert.Equal($"the {strip.Name}, reaches 8.6 mm into the linings and is cut along them", remark.Sentence);
            Check.Near(8.6, remark.Measured!.Value.Value, 1e-6, "past");
        }

        Assert.Equal(Severity.Pass, Assert.Single(OverlapCheck.Of(layout)).Severity);
    }

    // A ring from 90 to 150 of the hole's centre, 141.4 to either side: less two caps of a circle of 150 cut off at 141.4.
    [Fact]
    public void Ring_ThatReachesTheLinings_IsCutAlongThem()
    {
        var layout = OutlineDesigns.Layout(OutlineDesigns.Box(150) + "[soundhole]\nfrom_neck_edge = 240\n[hole_reinforcement]\ninset = 40\nwidth = 60\n");

        var angle = 2 * Math.Acos(141.4 / 150);
        var caps = 150 * 150 * (angle - Math.Sin(angle));
        Check.Near((Math.PI * ((150 * 150) - (90 * 90))) - caps, layout.Find(HoleReinforcement.Name)!.Footprint.Area, 1e-6, "area");
        Assert.Equal("the hole reinforcement reaches 8.6 mm into the linings and is cut along them", Assert.Single(layout.Faults).Sentence);
    }

    [Fact]
    public void Strips_WhollyInTheLinings_AreLeftOut()
    {
        var layout = OutlineDesigns.Layout(OutlineDesigns.Box(90) + "[hole_reinforcement]\nstyle = \"strips\"\ninset = 40\n");

        Assert.Empty(layout.Members.Where(HoleReinforcement.IsPartOf));
        Assert.Equal(
            ["the hole reinforcement, bass, lies wholly outside the linings; left out of the plan", "the hole reinforcement, treble, lies wholly outside the linings; left out of the plan"],
            layout.Faults.Where(f => f.Severity == Severity.Fail).Select(f => f.Sentence));
    }

    /// <summary>
    /// The strip's corner at 47 + 2 + 14 = 63 from the centre line nears the leg that crosses at 139.5 + 90.4: at y its room is
    /// (229.9 − y)·sin 47° − 63·cos 47° − 3.75, which is 2 at 163.3, so 43.8 from the strip's middle. Longer ones fail by how deep the leg lies in them.
    /// </summary>
    [Theory]
    [InlineData(87, Severity.Pass)]
    [InlineData(90, Severity.Remark)]
    [InlineData(100, Severity.Fail)]
    public void Strips_NearALeg_AreJudgedByTheRoomWithTheLengthThatFits(int length, Severity severity)
    {
        var layout = Built.Preset("concert", t => t.Replaced("length = 66", $"length = {length}").Without("[transverse_brace]").Without("[flat_brace]"));

        var crossing = XBrace.Crossing(layout.Design, layout.Hole).Y;
        var room = (-crossing * Axis.Sin(47)) - (63 * Axis.Cos(47)) - 3.75;
        var fits = 2 * (((room - 2) / Axis.Sin(47)) + layout.Hole.Center.Y + 20);
        var finding = ClearanceCheck.Of(layout).Single(f => f.Subject == "hole reinforcement, treble and X leg, bass");
        Assert.Equal(severity, finding.Severity);
        Assert.Equal(severity == Severity.Fail, finding.Measured!.Value.Value < 0);
        Assert.Equal(
            severity == Severity.Pass ? null : FormattableString.Invariant($"`length = {Math.Floor(fits * 10) / 10:0.0}` leaves 2 mm; or move the strips with `shift`, or move the X leg, bass"), finding.Cure);
        Check.Near(87.6, fits, 0.1, "the length by hand");
    }

    [Fact]
    public void Ring_WithoutRoom_IsSentToStrips()
    {
        var misfit = Assert.Single(
            Built.Misfits("classical", t => t.Replaced("above_hole = 24", "above_hole = 6").Without("[flat_brace]")), m => m.Sentence.Contains("reaches", StringComparison.Ordinal));

        Assert.Equal("the hole reinforcement reaches 9 mm into the upper transverse brace; 2 mm between them are usual", misfit.Sentence);
        Assert.Equal("leave the reinforcement out there, or take strips (`style = \"strips\"`); or move the upper transverse brace by 11 mm away from the hole", misfit.Cure);
    }
}
