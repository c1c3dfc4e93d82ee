using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Checks;

public class ClearanceCheckTests
{
    /// <summary>
    /// Block face at sides of 2.1 and 42: 44.1. The brace's centre 20 before the hole, which begins at fret 20 (84.15 mm), 5 and 6: its neck
    /// side, half of 10 nearer, at 70.15. So there are 26.05 for the tongue.
    /// </summary>
    [Theory]
    [InlineData(20, 6.05, Severity.Pass)]
    [InlineData(25, 1.05, Severity.Remark)]
    [InlineData(30, -3.95, Severity.Fail)]
    public void Tongue_BeforeTheTransverseBrace_HasTheRoomWorkedByHand(int length, double gap, Severity severity)
    {
        var layout = Built.Preset("auditorium", t => t.Without("[flat_brace]").With($"[tongue]\nshape = \"straight\"\nroot_width = 40\nlength = {length}"));

        var finding = ClearanceCheck.Of(layout).Single(f => f.Subject == "tongue and upper transverse brace");
        Assert.Equal(severity, finding.Severity);
        Check.Near(gap, finding.Measured!.Value.Value, 0.005, "gap");
        Assert.Equal(severity == Severity.Pass, finding.Cure is null);
    }

    /// <summary>A ring of the hole that reaches under a leg is one mistake: one finding for both legs, with the width that fits.</summary>
    [Fact]
    public void Ring_UnderTheLegs_IsToldOnce()
    {
        var layout = Built.Preset("auditorium", t => t.With("[hole_reinforcement]\nstyle = \"ring\"\ninset = 1\nwidth = 13\nthickness = 1.5"));

        var failed = LayoutChecks.Of(layout).Where(f => f.Severity == Severity.Fail).ToList();
        var finding = Assert.Single(failed);
        Assert.Equal((Rules.LittleRoom, "hole reinforcement and X leg, bass"), (finding.Rule, finding.Subject));

        // The legs stand 83·sin 48.5° − 4 = 58.16 from the hole's centre, so 58.16 − 51 − 2 = 5.16 is left for a ring.
        Assert.StartsWith("`width = 5.1` leaves 2 mm", finding.Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void BridgePlate_IntoTheLegs_IsToldOnce()
    {
        var layout = Built.Preset("auditorium", t => t.Replaced("ahead_of_bridge = 2", "ahead_of_bridge = 2\nlength = 150"));

        var failed = LayoutChecks.Of(layout).Where(f => f.Severity == Severity.Fail && f.Subject.Contains(BridgePlate.Name, StringComparison.Ordinal)).ToList();
        Assert.Equal("bridge plate and X legs", Assert.Single(failed).Subject);
    }

    /// <summary>
    /// The lower bout is 396 wide at 376 from the neck edge: sides of 2.1 leave 195.9 to each side there, a few hundredths less at the bar's
    /// corners. A bar 400 long runs 4.1 past; one of 390 ends inside.
    /// </summary>
    [Theory]
    [InlineData(400, 4.1)]
    [InlineData(390, null)]
    public void FloatingBar_AcrossTheBout_IsMeasuredAgainstTheSides(int length, double? past)
    {
        var layout = Built.Preset("auditorium", t => t.With($"[[bar]]\nfrom_neck_edge = 376\nangle = 90\nends = \"floating\"\nlength = {length}\nwidth = 6"));

        var faults = layout.Faults.Where(f => f.Subject == "bar 1").ToList();
        Assert.Equal(past is null ? 0 : 2, faults.Count);
        Assert.All(faults, f => Check.Near(past!.Value, f.Measured!.Value.Value, 0.06, f.Sentence));
        Assert.All(faults, f => Assert.Equal((Rules.DrawnOtherwise, Severity.Fail), (f.Rule, f.Severity)));
    }
}
