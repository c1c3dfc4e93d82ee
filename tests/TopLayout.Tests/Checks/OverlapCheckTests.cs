using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Checks;

public class OverlapCheckTests
{
    [Theory]
    [InlineData("auditorium")]
    [InlineData("classical")]
    [InlineData("concert")]
    [InlineData("jumbo")]
    [InlineData("straight-tongue")]
    [InlineData("tapered-tongue")]
    public void Presets_PartsBesideEachOther_Pass(string preset)
    {
        var finding = Assert.Single(OverlapCheck.Of(Built.Preset(preset)));

        Assert.Equal(Severity.Pass, finding.Severity);
    }

    [Fact]
    public void ToneBar_OverTheTailBlock_FailsAndNamesBoth()
    {
        var layout = Built.Preset("auditorium", text => text.Replace("behind_plate = 56\nangle = 69", "behind_plate = 66\nangle = 64", StringComparison.Ordinal));

        var finding = Assert.Single(OverlapCheck.Of(layout));

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal("the tone bar 2 lies over the tail block on the inside face, 479.9 mm from the neck edge", finding.Sentence);
        Assert.Equal("move the tone bar 2 9.5 mm towards the neck, or turn or shorten one of the two", finding.Cure);
    }

    [Fact]
    public void Tongue_ReachingUnderTheTransverseBrace_Fails()
    {
        var layout = Built.Preset("tapered-tongue", text => text.Replace("length = 44", "length = 54", StringComparison.Ordinal));

        var finding = Assert.Single(OverlapCheck.Of(layout));

        Assert.Equal("tongue and upper transverse brace", finding.Subject);
    }
}
