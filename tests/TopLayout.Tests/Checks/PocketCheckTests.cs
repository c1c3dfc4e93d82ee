using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Tests.Parts;
using TopLayout.Tests.Parts.Outlines;

namespace TopLayout.Tests.Checks;

public class PocketCheckTests
{
    /// <summary>Two bars 6 wide straight across between straight sides, 10 from middle to middle: 4 of the lining between them, on either side.</summary>
    [Fact]
    public void Lining_BetweenTwoPockets_IsTheWidthWorkedByHand()
    {
        var findings = Of(310);

        Assert.Equal(["ladder bar 2 and ladder bar 1, bass lining", "ladder bar 2 and ladder bar 1, treble lining"], findings.Select(f => f.Subject).Order());
        Assert.All(findings, f => Check.Near(4, f.Measured!.Value.Value, 1e-9, f.Subject));
        Assert.All(findings, f => Assert.Equal((Rules.LiningSliver, Severity.Note), (f.Rule, f.Severity)));
        Assert.All(findings, f => Check.Near(4, f.Where!.Value.From.DistanceTo(f.Where.Value.To), 1e-9, "the mark"));
        Assert.Contains(
            "4 mm of the treble lining are left between the pockets of ladder bar 2 and ladder bar 1; 6 mm or more hold, less breaks out", findings.Select(f => f.Sentence));
    }

    [Theory]
    [InlineData(312, 6)]
    [InlineData(340, 34)]
    public void Lining_WideEnoughBetweenPockets_PassesOnce(double second, double left)
    {
        var finding = Assert.Single(Of(second));

        Check.Near(left, finding.Measured!.Value.Value, 1e-9, "left");
        Assert.Equal((Severity.Pass, null), (finding.Severity, finding.Cure));
    }

    /// <summary>Bars side by side have one pocket.</summary>
    [Fact]
    public void Lining_BetweenBarsThatTouch_IsNone() => Assert.Empty(Of(306));

    /// <summary>Where the flat brace enters the cutaway's lining it stands clear of the transverse brace.</summary>
    [Fact]
    public void Lining_OfAnyPreset_HasNoSliver() => Assert.All(
        Built.PresetNames, p => Assert.DoesNotContain(PocketCheck.Of(Built.Preset(p)), f => f.Severity != Severity.Pass));

    private static List<Finding> Of(double second) => [.. PocketCheck.Of(OutlineDesigns.Layout(
        OutlineDesigns.Box(150) + FormattableString.Invariant($"[[ladder_bar]]\nfrom_neck_edge = 300\nwidth = 6\n[[ladder_bar]]\nfrom_neck_edge = {second}\nwidth = 6\n")))];
}
