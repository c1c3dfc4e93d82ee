using System.Globalization;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Checks;

public class BridgeAndNeckEndCheckTests
{
    /// <summary>
    /// The bridge of the preset begins 10 before the saddle's middle. The slot's front treble corner lies 37·cos a − 1.5·sin a across and
    /// 37·sin a + 1.5·cos a before the middle, tan a = 2.5/55: 1.680 + 1.498 = 3.178. So 6.82 are left; 12 wide, 10 − 1.680 − 5.994 = 2.33.
    /// </summary>
    [Theory]
    [InlineData("width = 3\nlength = 74", 6.82, Severity.Pass)]
    [InlineData("width = 12\nlength = 74", 2.33, Severity.Remark)]
    public void Slot_InTheBridge_LeavesTheWoodWorkedByHand(string slot, double wood, Severity severity)
    {
        var finding = One(t => t.Replaced("width = 3\nlength = 74", slot), Rules.BridgeWood);

        Check.Near(wood, finding.Measured!.Value.Value, 0.005, slot);
        Assert.Equal(severity, finding.Severity);
    }

    [Fact]
    public void Slot_LongerThanTheBridge_Fails()
    {
        var finding = One(t => t.Replaced("length = 74", "length = 160"), Rules.BridgeWood);

        Assert.Equal((Severity.Fail, "shorten the slot or lengthen the bridge"), (finding.Severity, finding.Cure));

        // (160·cos a − 154)/2 and half the width times sin a: 2.92 + 0.07.
        Check.Near(-2.99, finding.Measured!.Value.Value, 0.01, "past the end");
    }

    /// <summary>
    /// The bass pin stands 1.25 and 13 behind the saddle's middle, the bridge's rear edge 24: 9.75 less half of 5. The plate goes on 4 more.
    /// At 22 the hole's rim is 24 − 23.25 − 2.5 = −1.75 from the edge.
    /// </summary>
    [Theory]
    [InlineData(13, 7.25, Severity.Pass, 11.25, Severity.Pass)]
    [InlineData(18, 2.25, Severity.Remark, 6.25, Severity.Pass)]
    [InlineData(22, -1.75, Severity.Fail, 2.25, Severity.Pass)]
    [InlineData(23, -2.75, Severity.Fail, 1.25, Severity.Remark)]
    public void Pins_BehindTheSaddle_KeepOffTheEdges(int behind, double bridge, Severity atBridge, double plate, Severity atPlate)
    {
        var findings = Of(t => t.Replaced("pins_behind_saddle = 13", $"pins_behind_saddle = {behind}")).Where(f => f.Rule == Rules.PinHoles).ToList();

        foreach (var (subject, room, severity) in (ReadOnlySpan<(string, double, Severity)>)[
            ("bridge pin 6 and bridge's edge", bridge, atBridge), ("bridge pin 6 and bridge plate's edge", plate, atPlate)])
        {
            var finding = Assert.Single(findings, f => f.Subject == subject);
            Check.Near(room, finding.Measured!.Value.Value, 1e-6, subject);
            Assert.Equal(severity, finding.Severity);
        }
    }

    [Theory]
    [InlineData("parallel", 1.25)]
    [InlineData("straight", 0)]
    public void Pins_OnTheirLine_StandBehindTheSaddle(string line, double bassFurther)
    {
        var layout = Built.Preset("auditorium", t => t.Replaced("pin_line = \"parallel\"", $"pin_line = \"{line}\""));

        var pins = layout.DrillPoints.Where(BridgePins.IsPin).ToList();
        Assert.Equal(6, pins.Count);
        Check.Near(-27.5, pins[0].At.X, 1e-9, "bass pin across");
        Check.Near(11, pins[1].At.X - pins[0].At.X, 1e-9, "spacing");
        Check.Near(13 + bassFurther, layout.Saddle.Middle.Y - pins[0].At.Y, 1e-9, "bass pin");
        Check.Near(13 - bassFurther, layout.Saddle.Middle.Y - pins[5].At.Y, 1e-9, "treble pin");
    }

    [Fact]
    public void Pins_WithoutAPlate_Warn()
    {
        var findings = Of(t => t.Without("[bridge_plate]").Without("[[tone_bar]]").Without("[[tone_bar]]"));

        Assert.Contains(findings, f => f.Rule == Rules.PinHoles && f.Severity == Severity.Warning);
    }

    /// <summary>The block begins 28 − 12 = 16 behind the front edge, the slot's rear bass corner 8, 40·sin a = 0.34 and 1.25 behind it.</summary>
    [Theory]
    [InlineData(12, 6.4, Severity.Pass)]
    [InlineData(20, -1.6, Severity.Fail)]
    public void TieBlock_BehindTheSlot_LeavesAChannel(int depth, double channel, Severity severity)
    {
        var layout = Built.Preset("classical", t => t.Replaced("tie_block = 12", $"tie_block = {depth}"));

        var finding = Assert.Single(BridgeCheck.Of(layout), f => f.Subject == "tie block");
        Check.Near(channel, finding.Measured!.Value.Value, 0.01, "channel");
        Assert.Equal(severity, finding.Severity);
    }

    /// <summary>
    /// A bridge 8 high, holes of 1.6, six over 58: 8 − 4 − 0.8 = 3.2 above and below; at 2, 1.2 below; at 7.5, −0.3 above; over 15 they stand
    /// 3 apart, 1.4 between.
    /// </summary>
    [Theory]
    [InlineData("tie_hole_height = 4", "tie_hole_height = 4", 3.2, Severity.Pass)]
    [InlineData("tie_hole_height = 4", "tie_hole_height = 2", 1.2, Severity.Remark)]
    [InlineData("tie_hole_height = 4", "tie_hole_height = 7.5", -0.3, Severity.Fail)]
    [InlineData("tie_spread = 58", "tie_spread = 15", 1.4, Severity.Remark)]
    [InlineData("thickness = 8\nwood = \"rosewood_indian\"\nstyle", "thickness = 16\nwood = \"rosewood_indian\"\nstyle", 3.2, Severity.Pass)]
    public void TieHoles_InTheBlock_LeaveTheWoodWorkedByHand(string from, string to, double wood, Severity severity)
    {
        var finding = Assert.Single(BridgeCheck.Of(Built.Preset("classical", t => t.Replaced(from, to))), f => f.Rule == Rules.TieHoleWood);

        Check.Near(wood, finding.Measured!.Value.Value, 1e-9, to);
        Assert.Equal(severity, finding.Severity);
    }

    /// <summary>Six over 60 stand 12 apart, from the bass: −30, −18 and so on, level with the block from its front edge to its rear.</summary>
    [Fact]
    public void TieHoles_OfATieBlock_RunAlongTheBodyAndNotThroughTheTop()
    {
        var layout = Built.Preset("classical", t => t.Replaced("tie_spread = 58", "tie_spread = 60"));

        Assert.Equal(["tie hole 6", "tie hole 5", "tie hole 4", "tie hole 3", "tie hole 2", "tie hole 1"], layout.TieHoles.Select(h => h.Name));
        Assert.All(layout.TieHoles.Index(), h => Check.Near(-30 + (12 * h.Index), h.Item.From.X, 1e-9, h.Item.Name));
        Assert.All(layout.TieHoles, h => Check.Near(12, h.From.Y - h.To.Y, 1e-9, h.Name));
        Assert.DoesNotContain(layout.DrillPoints, p => p.Name.StartsWith("tie", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("tie_holes = 6", "tie_holes = 0", "classical.toml:101:13")]
    [InlineData("tie_hole_diameter = 1.6", "tie_hole_diameter = \"thick\"", "classical.toml:103:21")]
    [InlineData("tie_spread = 58", "tie_spread = 5.8", "classical.toml:102:14")]
    public void TieHoles_OfBadNumbers_AreToldAtTheirPlace(string from, string to, string place)
    {
        var reading = DesignReader.Read(Built.PresetText("classical").Replaced(from, to), "classical.toml", Parameters.Table);

        Assert.StartsWith(place, FindingText.Of(Assert.Single(reading.Findings, f => f.Severity == Severity.Error)), StringComparison.Ordinal);
    }

    /// <summary>A straight tongue 40 wide and 8 thick; a slot of 6.5 leaves 16.75 to each side.</summary>
    [Theory]
    [InlineData("depth = 4", 4.0, Severity.Pass, 16.75, Severity.Pass)]
    [InlineData("depth = 6", 2.0, Severity.Remark, 16.75, Severity.Pass)]
    [InlineData("depth = 8", 0.0, Severity.Fail, 16.75, Severity.Pass)]
    [InlineData("width = 28", 4.0, Severity.Pass, 6, Severity.Pass)]
    [InlineData("into_tongue = 30", 4.0, Severity.Pass, -3.25, Severity.Fail)]
    public void TrussRod_InATongue_LeavesTheWoodWorkedByHand(string line, double below, Severity atBelow, double beside, Severity atBeside)
    {
        var findings = Of(t => t.With($"[tongue]\nshape = \"straight\"\nroot_width = 40\nlength = 20\nthickness = 8\n[truss_rod]\n{line}"), NeckEndCheck.Of).Where(f => f.Rule == Rules.TrussRodSlot).ToList();

        Check.Near(below, findings[0].Measured!.Value.Value, 1e-9, "below");
        Check.Near(beside, findings[1].Measured!.Value.Value, 1e-6, "beside");
        Assert.Equal((atBelow, atBeside), (findings[0].Severity, findings[1].Severity));
    }

    /// <summary>The fretboard ends at 84.15 and 5, the block at 44.1; the pin's radius is 1.5.</summary>
    [Theory]
    [InlineData(25, 17.6, Severity.Pass)]
    [InlineData(44, -1.4, Severity.Fail)]
    public void LocatingPin_UnderTheFretboard_GoesIntoTheBlock(int at, double room, Severity severity)
    {
        var findings = Of(t => t.Replaced("under_fretboard = 25", $"under_fretboard = {at}"), NeckEndCheck.Of);

        var finding = Assert.Single(findings, f => f.Subject == "locating pin, neck and neck block");
        Check.Near(room, finding.Measured!.Value.Value, 1e-6, "into the block");
        Assert.Equal(severity, finding.Severity);
    }

    /// <summary>The preset's bridge is 9 thick, its slot 74 long, its strings 55 apart, its saddle 55/cos a with tan a = 2.5/55: 55.06 long.</summary>
    [Theory]
    [InlineData("depth = 5", "depth = 5", 4, Severity.Pass, 9.47, Severity.Pass)]
    [InlineData("depth = 5", "depth = 7.5", 1.5, Severity.Remark, 9.47, Severity.Pass)]
    [InlineData("depth = 5", "depth = 9", 0, Severity.Fail, 9.47, Severity.Pass)]
    [InlineData("length = 74", "length = 58", 4, Severity.Pass, 1.47, Severity.Remark)]
    [InlineData("length = 74", "length = 50", 4, Severity.Pass, -2.53, Severity.Fail)]
    public void Saddle_InItsSlot_HasAFloorAndReachesPastTheStrings(string line, string edited, double floor, Severity atFloor, double beyond, Severity atEnds)
    {
        var findings = Of(t => t.Replaced(line, edited), SaddleHoldCheck.Of);

        Check.Near(floor, findings[0].Measured!.Value.Value, 1e-9, "floor");
        Check.Near(beyond, findings[1].Measured!.Value.Value, 0.01, "past the strings");
        Assert.Equal((atFloor, atEnds), (findings[0].Severity, findings[1].Severity));
    }

    /// <summary>Pins along a saddle 55.06 long, with holes of 5: six stand 11.01 apart, eight 7.87, ten 6.12, twelve 5.005.</summary>
    [Theory]
    [InlineData(6, 6.01, Severity.Pass)]
    [InlineData(8, 2.87, Severity.Remark)]
    [InlineData(10, 1.12, Severity.Remark)]
    [InlineData(12, 0.005, Severity.Fail)]
    [InlineData(24, -2.606, Severity.Fail)]
    public void Pins_OfANumber_LeaveWoodBetweenThem(int pins, double web, Severity severity)
    {
        var finding = Assert.Single(Of(t => t.Replaced("pins = 6", $"pins = {pins}"), PinWoodCheck.Of), f => f.Subject == "wood between the pins");

        Check.Near(web, finding.Measured!.Value.Value, 0.005, "wood between");
        Assert.Equal(severity, finding.Severity);
    }

    /// <summary>The pins stand 5.5 and more to either side of the centre line, their holes 3: a bar of 5 on the centre line keeps off them, one 5.5 across lies under the third.</summary>
    [Theory]
    [InlineData(5.5, true)]
    [InlineData(0, false)]
    public void Pins_IntoABrace_Fail(double across, bool isHit)
    {
        var bar = $"[[bar]]\nfrom_neck_edge = 305\nacross = {across.ToString(CultureInfo.InvariantCulture)}\nangle = 0\nends = \"floating\"\nlength = 60\nwidth = 5\n";

        var hits = Of(t => t.Without("[bridge_plate]").Without("[[tone_bar]]").Without("[[tone_bar]]").With(bar), PinWoodCheck.Of).Where(f => f.Severity == Severity.Fail).ToList();

        Assert.Equal(isHit, hits.Count == 1);
        Assert.All(hits, f => Assert.StartsWith("bridge pin 3 and bar", f.Subject, StringComparison.Ordinal));
    }

    private static Finding One(Func<string, string> edit, Rule rule) => Assert.Single(Of(edit), f => f.Rule == rule);

    private static List<Finding> Of(Func<string, string> edit, Func<Layout, IEnumerable<Finding>>? check = null) =>
        [.. (check ?? BridgeCheck.Of)(Built.Preset("auditorium", edit))];
}
