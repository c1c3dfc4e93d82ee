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
        Assert.Equal("tone bar 2 lies over the tail block on the inside face, 479.9 mm from the neck edge", finding.Sentence);
        Assert.Equal("move tone bar 2 by 9.5 mm towards the neck, or turn or shorten one of the two", finding.Cure);
    }

    /// <summary>A bar written twice lies wholly on itself: no edge of one is inside the other.</summary>
    [Fact]
    public void Bar_WrittenTwice_Fails()
    {
        const string bar = "[[bar]]\nfrom_neck_edge = 420\nacross = 110\nangle = 80\nends = \"floating\"\nlength = 40\n";
        var layout = Built.Preset("auditorium", text => text.With(bar + bar));

        Assert.Contains(OverlapCheck.Of(layout), f => f.Severity == Severity.Fail && f.Subject == "bar 1 and bar 2");
    }

    [Fact]
    public void Tongue_ReachingUnderTheTransverseBrace_IsLeftToTheClearance()
    {
        var layout = Built.Preset("tapered-tongue", text => text.Replace("length = 44", "length = 54", StringComparison.Ordinal));

        Assert.Equal(Severity.Pass, Assert.Single(OverlapCheck.Of(layout)).Severity);
        Assert.Contains(ClearanceCheck.Of(layout), f => f.Severity == Severity.Fail && f.Subject == "tongue and upper transverse brace");
    }
}
