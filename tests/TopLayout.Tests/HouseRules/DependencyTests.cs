using System.Text.RegularExpressions;

namespace TopLayout.Tests.HouseRules;

/// <summary>Dependencies point one way. Projects: the compiler holds it once this list does. Folders of Lutherie: this test holds it.</summary>
public partial class DependencyTests
{
    private static readonly string[] LutherieOrder = ["Findings", "Woods", "Designs", "Parts", "Mechanics", "Checks", "Shops"];

    public static TheoryData<string, string[]> Projects => new()
    {
        { "Geometry", [] },
        { "Drawing", ["Geometry"] },
        { "Lutherie", ["Geometry"] },
        { "Plans", ["Drawing", "Lutherie"] },
        { "Preview", ["Drawing"] },
        { "Cli", ["Plans", "Preview"] },
    };

    [Theory]
    [MemberData(nameof(Projects))]
    public void Project_References_AreThoseOfTheHouse(string project, string[] expected)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, "src", $"TopLayout.{project}", $"TopLayout.{project}.csproj"));

        Assert.Equal(expected, ProjectReference().Matches(text).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Lutherie_Folders_UseOnlyTheOnesBeforeThem()
    {
        foreach (var file in Repository.SourceFiles("src/TopLayout.Lutherie"))
        {
            var folder = Repository.Name(file).Split('/')[2];
            var own = Array.IndexOf(LutherieOrder, folder);
            Assert.True(own >= 0, $"{Repository.Name(file)}: {folder} has no place in the order");
            foreach (var used in Using().Matches(File.ReadAllText(file)).Select(m => m.Groups[1].Value))
            {
                Assert.True(Array.IndexOf(LutherieOrder, used) <= own, $"{Repository.Name(file)} uses {used}, which stands above {folder}");
            }
        }
    }

    [Theory]
    [InlineData("Geometry")]
    [InlineData("Drawing")]
    [InlineData("Preview")]
    public void Project_BelowTheDomain_KnowsNoWordOfIt(string project)
    {
        foreach (var file in Repository.SourceFiles($"src/TopLayout.{project}"))
        {
            var hit = DomainWord().Match(File.ReadAllText(file));
            Assert.False(hit.Success, $"{Repository.Name(file)} says `{hit.Value}`");
        }
    }

    [GeneratedRegex(@"ProjectReference Include=""\.\./TopLayout\.(\w+)/")]
    private static partial Regex ProjectReference();

    [GeneratedRegex(@"TopLayout\.Lutherie\.(\w+)")]
    private static partial Regex Using();

    [GeneratedRegex(@"\b(brace|braces|bridge|fretboard|soundhole|rosette|grain|spruce|guitar|tongue|lining|Console|DateTime)\b", RegexOptions.IgnoreCase)]
    private static partial Regex DomainWord();
}
