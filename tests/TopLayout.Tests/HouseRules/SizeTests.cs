namespace TopLayout.Tests.HouseRules;

/// <summary>No file over 400 lines, no function over 60.</summary>
public class SizeTests
{
    [Fact]
    public void Files_OfTheProject_StayUnder400Lines()
    {
        foreach (var file in Repository.SourceFiles("src").Concat(Repository.SourceFiles("tests")))
        {
            var lines = File.ReadLines(file).Count();
            Assert.True(lines <= 400, $"{Repository.Name(file)} has {lines} lines");
        }
    }

    // A member starts at four spaces of indent with its brace and ends at the closing brace of the same indent (dotnet format holds the layout).
    [Fact]
    public void Functions_OfTheProject_StayUnder60Lines()
    {
        foreach (var file in Repository.SourceFiles("src"))
        {
            var start = -1;
            var lines = File.ReadAllLines(file);
            for (var i = 0; i < lines.Length; i++)
            {
                start = lines[i] == "    {" ? i : start;
                if (lines[i] is "    }" or "    };")
                {
                    Assert.True(i - start <= 60, $"{Repository.Name(file)}:{start + 1}: {i - start} lines");
                }
            }
        }
    }
}
