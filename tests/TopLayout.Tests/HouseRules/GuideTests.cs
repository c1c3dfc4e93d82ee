using System.Text.RegularExpressions;

namespace TopLayout.Tests.HouseRules;

/// <summary>The guides name only what is there.</summary>
public partial class GuideTests
{
    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    public void Guide_Paths_Exist(string guide)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, guide));
        var paths = Ticked().Matches(text).Concat(Linked().Matches(text)).Select(m => m.Groups[1].Value).Distinct().ToList();

        Assert.NotEmpty(paths);
        foreach (var path in paths)
        {
            var full = Path.Combine(Repository.Root, path);
            Assert.True(File.Exists(full) || Directory.Exists(full), $"{guide} names {path}");
        }
    }

    [GeneratedRegex(@"`((?:src|tests|presets|output-samples)/[\w./-]*)`")]
    private static partial Regex Ticked();

    [GeneratedRegex(@"\]\(((?:src|tests|presets|output-samples)/[^)]+)\)")]
    private static partial Regex Linked();
}
