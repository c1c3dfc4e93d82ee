using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Tests.Parts.Outlines;

namespace TopLayout.Tests.Checks;

public class BendAndFloorCheckTests
{
    /// <summary>Sides of 2 bend to 40 easily, to 25 with skill, and break at 15; those of 1.6 to 0.8 of that: 32, 20 and 12.</summary>
    [Theory]
    [InlineData(41, 2, Severity.Pass, 40)]
    [InlineData(39, 2, Severity.Remark, 40)]
    [InlineData(24, 2, Severity.Warning, 25)]
    [InlineData(14, 2, Severity.Fail, 15)]
    [InlineData(33, 1.6, Severity.Pass, 32)]
    [InlineData(31, 1.6, Severity.Remark, 32)]
    [InlineData(19, 1.6, Severity.Warning, 20)]
    [InlineData(11, 1.6, Severity.Fail, 12)]
    public void Corner_OfOneRadius_IsJudgedByTheSides(double radius, double side, Severity severity, double limit)
    {
        var corner = FormattableString.Invariant($"""
            [[arc]]
            to_from_neck_edge = 0
            to_from_centre = {150 - radius}
            bend = "straight"
            [[arc]]
            to_from_neck_edge = {radius}
            to_from_centre = 150
            bend = "out"
            radius = {radius}
            [[arc]]
            to_from_neck_edge = 500
            to_from_centre = 150
            bend = "straight"
            [[arc]]
            to_from_neck_edge = 500
            to_from_centre = 0
            bend = "straight"
            [sides]
            thickness = {side}
            [lining]
            width = 2
            """);

        var finding = Assert.Single(BendRadiusCheck.Of(OutlineDesigns.Layout(corner)));

        Assert.Equal((Rules.BendRadius, severity, "arc 2"), (finding.Rule, finding.Severity, finding.Subject));
        Check.Near(radius, finding.Measured!.Value.Value, 1e-9, "radius");
        Check.Near(limit, finding.Measured!.Value.Limit, 1e-9, "limit");
    }

    /// <summary>A top of 2.8, less the channel: 1.2 are usual, 0.8 the least.</summary>
    [Theory]
    [InlineData(1.6, 1.2, Severity.Pass)]
    [InlineData(1.7, 1.1, Severity.Remark)]
    [InlineData(2.1, 0.7, Severity.Warning)]
    [InlineData(2.8, 0, Severity.Fail)]
    public void Floor_UnderTheChannel_IsWhatItsDepthLeaves(double depth, double floor, Severity severity)
    {
        var layout = OutlineDesigns.Layout(FormattableString.Invariant($"[top]\nthickness = 2.8\n[rosette]\ndepth = {depth}\n"));

        var finding = Assert.Single(ChannelFloorCheck.Of(layout));

        Assert.Equal((Rules.ChannelFloor, severity), (finding.Rule, finding.Severity));
        Check.Near(floor, finding.Measured!.Value.Value, 1e-9, "floor");
        Assert.Equal(severity == Severity.Pass ? null : "make the channel 1.6 mm deep or less, and its inlay thinner", finding.Cure);
    }

    /// <summary>A floor of 2.8 - 1.7 = 1.1 is thin under steel strings and usual under nylon: a classical body, or a tie block; 0.9 is usual on a ukulele only.</summary>
    [Theory]
    [InlineData("", "", 1.7, Severity.Remark, 1.2)]
    [InlineData("body = \"classical\"\n", "", 1.7, Severity.Pass, 1.0)]
    [InlineData("", "[bridge]\nstyle = \"tie\"\n", 1.7, Severity.Pass, 1.0)]
    [InlineData("body = \"classical\"\n", "", 1.9, Severity.Remark, 1.0)]
    [InlineData("body = \"tenor-ukulele\"\n", "", 1.9, Severity.Pass, 0.8)]
    public void Floor_UsualOnATop_GoesByItsStrings(string body, string bridge, double depth, Severity severity, double usual)
    {
        var layout = OutlineDesigns.Layout(FormattableString.Invariant($"[top]\nthickness = 2.8\n[rosette]\ndepth = {depth}\n") + bridge, OutlineDesigns.Head.Replace("640", body.Contains("ukulele", StringComparison.Ordinal) ? "430" : "640", StringComparison.Ordinal) + body);

        var finding = Assert.Single(ChannelFloorCheck.Of(layout));

        Assert.Equal(severity, finding.Severity);
        Check.Near(usual, finding.Measured!.Value.Limit, 1e-9, "usual");
        Assert.All((string[])["1.2 mm is usual on tops for steel strings", "1.0 mm on tops for nylon", "0.8 mm on ukuleles"], s => Assert.Contains(s, Rules.ChannelFloor.Explanation.ReplaceLineEndings(" "), StringComparison.Ordinal));
    }
}
