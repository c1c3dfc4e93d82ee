using TopLayout.Lutherie.Findings;
using TopLayout.Plans;

namespace TopLayout.Tests.Parts;

public class PresetTests
{
    [Theory]
    [InlineData("auditorium")]
    [InlineData("classical")]
    [InlineData("concert")]
    [InlineData("jumbo")]
    [InlineData("parlour")]
    [InlineData("tenor-ukulele")]
    [InlineData("octave-mandolin")]
    [InlineData("cutaway")]
    [InlineData("pointed-cutaway")]
    [InlineData("arc-chain")]
    [InlineData("measured")]
    [InlineData("inches")]
    public void Presets_SoundDesigns_HaveNoFailureNoWarningAndNoRemark(string preset)
    {
        var review = Pipeline.Check(Built.PresetText(preset), preset + ".toml");

        Assert.Equal([], review.Findings.Where(f => f.Severity is Severity.Error or Severity.Fail or Severity.Warning or Severity.Remark).Select(FindingText.Of));
    }
}
