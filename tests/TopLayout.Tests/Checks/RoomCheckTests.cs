using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts;
using TopLayout.Tests.Parts.Outlines;

namespace TopLayout.Tests.Checks;

public class RoomCheckTests
{
    /// <summary>Sides of 2.1 and linings of 6.5 end 8.6 from the neck edge; a hole of radius 50 centred at 58 begins at 8, at 58.7 at 8.7.</summary>
    [Theory]
    [InlineData(58, 0.6)]
    [InlineData(58.7, null)]
    public void Hole_NearTheNeckEnd_IsMeasuredAgainstTheLinings(double centre, double? past)
    {
        var findings = Of(t => t.WithRosette(null).Replaced("behind_fretboard = 6 ", FormattableString.Invariant($"from_neck_edge = {centre} ")));

        Expect(findings, "soundhole", past);
    }

    /// <summary>The block of the preset is 92 wide.</summary>
    [Theory]
    [InlineData(100, 100.0)]
    [InlineData(92, null)]
    public void Tongue_OnItsBlock_IsMeasuredAgainstTheBlocksFace(double root, double? measured)
    {
        var findings = Of(t => t.With(FormattableString.Invariant($"[tongue]\nshape = \"straight\"\nroot_width = {root}\nlength = 15")));

        Expect(findings, Tongue.Name, measured);
    }

    /// <summary>Sides of 2.1 and linings of 6.5 leave 141.4 of the box's half: a bridge of 300 reaches 8.6 over them, one of 280 stands clear.</summary>
    [Theory]
    [InlineData(300, 8.6)]
    [InlineData(280, null)]
    public void Bridge_InABodyWithStraightSides_IsMeasuredAgainstTheLinings(int length, double? past) =>
        Expect([.. RoomCheck.Of(OutlineDesigns.Layout(OutlineDesigns.Box(150) + $"[bridge]\nlength = {length}\n"))], "bridge", past);

    private static List<Finding> Of(Func<string, string> edit) => [.. RoomCheck.Of(Built.Preset("auditorium", edit))];

    private static void Expect(List<Finding> findings, string subject, double? measured)
    {
        if (measured is { } value)
        {
            var finding = Assert.Single(findings, f => f.Subject == subject);
            Assert.Equal((Rules.OutsideItsRoom, Severity.Fail), (finding.Rule, finding.Severity));
            Check.Near(value, finding.Measured!.Value.Value, 1e-6, subject);
        }
        else
        {
            Assert.DoesNotContain(findings, f => f.Subject == subject);
        }
    }
}
