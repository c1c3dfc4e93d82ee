using TopLayout.Geometry;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Checks;

public class GrainSettingsTests
{
    [Fact]
    public void Settings_DesignWithoutLimits_AreThoseThatShip() =>
        Assert.Equal(Calibration.Default, GrainSettings.Of(Built.Preset("auditorium").Design));

    // Every key of [limits] written with another value: each must change its own setting and no other stays at its default unseen.
    [Fact]
    public void Settings_EveryKeyWritten_ReachesTheModel()
    {
        var layout = Built.Preset("auditorium", text => text.With("""
            [limits]
            band = 2
            stops_below = 25
            runs_from = 50
            merge_gap = 4
            support_reach = 5
            support_beyond = 10
            block_beyond = 6
            support_angle = 45
            support_spacing = 100
            rim_restraint = 0.6
            creep_factor = 0.4
            layout_error = 1
            note_from = 0.1
            warn_from = 0.3
            fail_from = 0.9
            fail_mismatch = 0.2
            """));

        Assert.Equal(
            Calibration.Default with
            {
                BandHalfWidthMm = 2,
                PassLengthMm = 25,
                FailLengthMm = 50,
                MergeGapMm = 4,
                SupportReachMm = 5,
                ContinuesBeyondMm = 10,
                BlockContinuesBeyondMm = 6,
                SupportLeastAngle = Angle.FromDegrees(45),
                SupportSpacingMm = 100,
                RimRestraint = 0.6,
                Relaxation = 0.4,
                LayoutError = Angle.FromDegrees(1),
                NoteSeverity = 0.1,
                WarningSeverity = 0.3,
                FailSeverity = 0.9,
                FailIndex = 0.2,
            },
            GrainSettings.Of(layout.Design));
        Assert.Equal(16, Limits.All.Count());
    }

    [Theory]
    [InlineData("stops_below = 70", "`stops_below` is 70 mm, above `runs_from` with 60 mm", "raise `runs_from` or lower `stops_below`", "stops_below [limits]")]
    [InlineData("fail_from = 0.3", "`warn_from` is 0.40, above `fail_from` with 0.30", "raise `fail_from` or lower `warn_from`", "fail_from [limits]")]
    [InlineData("warn_from = 0.12", "`note_from` is 0.15, above `warn_from` with 0.12", "raise `warn_from` or lower `note_from`", "warn_from [limits]")]
    public void Limits_ThatContradictEachOther_AreSaidFromBothEnds(string line, string sentence, string cure, string keys) =>
        Assert.Equal([(sentence, cure, keys)], Built.Misfits("auditorium", text => text.With($"[limits]\n{line}")));

    // A flank at 16° that may be made 2° off is one at 14°: 2w/tan 14° = 24.06 mm instead of 20.92 mm.
    [Fact]
    public void LayoutError_OfTwoDegrees_IsTakenOffTheFlanksAngle()
    {
        double Flank(GrainReview review) => review.Sides.Where(s => s.Member == "tongue").Max(s => s.RunMm);
        var drawn = GrainCheck.Of(Built.Preset("tapered-tongue"));
        var allowed = GrainCheck.Of(Built.Preset("tapered-tongue", text => text.With("[limits]\nlayout_error = 2")));

        Check.Near(6 / Trig.Tan(Angle.FromDegrees(16)), Flank(drawn), 0.01);
        Check.Near(6 / Trig.Tan(Angle.FromDegrees(14)), Flank(allowed), 0.01);
        Assert.All(drawn.Sides, d => Assert.Contains(allowed.Sides, a => (a.Member, a.Side) == (d.Member, d.Side) && a.RunMm >= d.RunMm - 1e-9));
        Assert.Contains("parts and grain may be turned against each other by 2°: the worst was taken", allowed.Assumptions);
        Assert.DoesNotContain(drawn.Assumptions, a => a.StartsWith("parts and grain", StringComparison.Ordinal));
    }

    [Fact]
    public void LayoutError_NeverMakesAFindingMilder()
    {
        var drawn = GrainCheck.Of(Built.Preset("straight-tongue"));
        var allowed = GrainCheck.Of(Built.Preset("straight-tongue", text => text.With("[limits]\nlayout_error = 1")));

        foreach (var finding in drawn.Findings.Where(f => f.Severity > Severity.Pass))
        {
            Assert.Contains(allowed.Findings, f => f.Subject == finding.Subject && f.Severity >= finding.Severity);
        }
    }
}
