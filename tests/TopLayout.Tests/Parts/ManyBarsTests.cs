using System.Globalization;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans;
using Xunit.Abstractions;

namespace TopLayout.Tests.Parts;

/// <summary>Far more bars than any top carries: the program stays quick, and says where it stops. TOPLAYOUT_BARS sets another number.</summary>
[Collection(nameof(RobustnessTests))]
public class ManyBarsTests(ITestOutputHelper output)
{
    private const double LongestSeconds = 10;

    private TimeSpan _since;

    [Theory]
    [InlineData("side by side")]
    [InlineData("over each other")]
    public void Check_ThousandsOfBars_EndsSoon(string how)
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("TOPLAYOUT_BARS"), out var asked) ? asked : 2000;
        var text = how == "side by side" ? SideBySide(count) : Anywhere(count /= 4);
        _since = Environment.CpuUsage.TotalTime;
        var design = DesignReader.Read(text, "many.toml", Parameters.Table).Design!;
        Tell("read");
        var layout = LayoutBuilder.Build(design).Layout!;
        Tell("built");
        Assert.InRange(layout.Members.Count(m => m.Name.StartsWith("bar ", StringComparison.Ordinal)), count * 9 / 10, count);
        var grain = GrainCheck.Of(layout);
        Tell("grain");
        foreach (var check in LayoutChecks.All)
        {
            var found = check(layout).Count();
            Tell($"{check.Method.DeclaringType!.Name} {found}");
        }

        Assert.NotNull(Pipeline.Check(text, "many.toml").Top);
        Tell("all again");
        Assert.NotEmpty(grain.Sides);
    }

    [Fact]
    public void Read_MoreBarsThanMayBe_NamesTheFirstTooMany()
    {
        var text = "name = \"n\"\nunits = \"mm\"\nscale.length = 645\n" + string.Concat(Enumerable.Repeat("[[bar]]\nfrom_neck_edge=300\nangle=9\n", 20_001));

        var finding = Assert.Single(Pipeline.Check(text, "many.toml").Findings, f => f.Severity == Severity.Error);

        Assert.Equal(Rules.TooMany, finding.Rule);
        Assert.Equal(new SourcePlace("many.toml", 4 + (3 * 20_000), 1, 7), finding.Place);
        Assert.Equal("`[[bar]]` may stand at most 20000 times; this is one more", finding.Sentence);
    }

    [Fact]
    public void Read_FileOverAMillionCharacters_IsRefusedByName()
    {
        var finding = Assert.Single(Pipeline.Check(new string('#', DesignReader.LongestText + 1), "long.toml").Findings);

        Assert.Equal((Rules.TooLarge, new SourcePlace("long.toml", 1, 1, 0)), (finding.Rule, finding.Place));
        Assert.Contains("`long.toml` has 1000001 characters", finding.Sentence, StringComparison.Ordinal);
    }

    // Time of the processor, so that a busy machine does not count.
    private void Tell(string what)
    {
        var seconds = (Environment.CpuUsage.TotalTime - _since).TotalSeconds;
        output.WriteLine($"{seconds,8:F2} s  {what}");
        Assert.True(seconds < LongestSeconds || Environment.GetEnvironmentVariable("TOPLAYOUT_BARS") is not null, what);
        _since = Environment.CpuUsage.TotalTime;
    }

    private static string SideBySide(int count) => Head + string.Concat(Enumerable.Range(0, count).Select(n => string.Create(
        CultureInfo.InvariantCulture,
        $"[[bar]]\nfrom_neck_edge={310 + (2.2 * (n % 70)):0.0}\nacross={-132 + (11 * (n / 70 % 25)):0.0}\nangle=90\nends=\"floating\"\nlength=10\nwidth=2\n")));

    private static string Anywhere(int count)
    {
        var random = new Random(20266);
        return Head + string.Concat(Enumerable.Range(0, count).Select(_ => string.Create(
            CultureInfo.InvariantCulture,
            $"[[bar]]\nfrom_neck_edge={220 + (270 * random.NextDouble()):0.0}\nacross={-140 + (280 * random.NextDouble()):0.0}\nangle={-90 + (180 * random.NextDouble()):0}\nends=\"floating\"\nlength={10 + (20 * random.NextDouble()):0}\nwidth=4\n")));
    }

    private const string Head = "name = \"many\"\nunits = \"mm\"\nbody = \"jumbo\"\nscale.length = 645\n";
}
