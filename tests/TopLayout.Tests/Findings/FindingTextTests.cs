using TopLayout.Lutherie.Findings;

namespace TopLayout.Tests.Findings;

public class FindingTextTests
{
    [Theory]
    [InlineData(Severity.Error, "error")]
    [InlineData(Severity.Fail, "fail")]
    [InlineData(Severity.Warning, "warning")]
    [InlineData(Severity.Note, "note")]
    [InlineData(Severity.Remark, "remark")]
    [InlineData(Severity.Pass, "pass")]
    public void Word_OfEachSeverity_IsItsName(Severity severity, string word) => Assert.Equal(word, FindingText.Word(severity));

    [Fact]
    public void Of_FindingWithEverything_PrintsEachOnItsLine()
    {
        var finding = new Finding(Rules.PartsDoNotFit, Severity.Error, "soundhole", "the hole leaves the outline by 3 mm")
        {
            Place = new SourcePlace("presets/a.toml", 12, 5, 2),
            OtherPlaces = [new SourcePlace("presets/a.toml", 3, 1, 9)],
            Cure = "make `diameter` smaller",
        };

        Assert.Equal(
            "presets/a.toml:12:5: error TL2001: the hole leaves the outline by 3 mm\n  also: presets/a.toml:3:1\n  hint: make `diameter` smaller",
            FindingText.Of(finding));
    }

    [Fact]
    public void Of_FindingWithoutPlace_BeginsWithTheSeverity() => Assert.Equal(
        "error TL9001: `a.toml` does not exist",
        FindingText.Of(new Finding(Rules.FileNotReadable, Severity.Error, "a.toml", "`a.toml` does not exist")));
}
