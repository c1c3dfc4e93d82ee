using System.Text.Json;

namespace TopLayout.EndToEnd.Tests;

/// <summary>The command that weighs the ways to refit a rosette, as a user runs it.</summary>
public class RosetteCommandTests
{
    [Fact]
    public void Apply_WritesTheBestWayOnceAndNeverOverAFile()
    {
        using var desk = new Desk();
        var design = desk.Preset("jumbo");
        var target = desk.At("new.toml");

        var run = Toplayout.Run("rosette", design, "--hole", "103", "--apply", target);

        Assert.Equal(0, run.Code);
        Assert.Contains("1. keep the ring, change what surrounds it (keep-ring): recommended", run.Output, StringComparison.Ordinal);
        var expected = File.ReadAllText(design).Replace("diameter = 104", "diameter = 103", StringComparison.Ordinal).Replace("margin = 4\n", "margin = 4.5\n", StringComparison.Ordinal);
        Assert.Equal(expected, File.ReadAllText(target));
        var again = Toplayout.Run("rosette", design, "--hole", "102", "--apply", target);
        Assert.Equal(2, again.Code);
        Assert.Contains("is already there", again.Errors, StringComparison.Ordinal);
        Assert.Equal(expected, File.ReadAllText(target));
    }

    [Fact]
    public void Json_HoldsEveryWayWithItsVerdict()
    {
        var run = Toplayout.Run("rosette", Toplayout.PresetFile("auditorium"), "--hole", "4 in", "--old-ring", "111x110.2,128x127,60", "--json");

        Assert.Equal(0, run.Code);
        var json = JsonDocument.Parse(run.Output).RootElement;
        Assert.Equal(101.6, json.GetProperty("new_diameter").GetDouble());
        var ways = json.GetProperty("ways").EnumerateArray().ToDictionary(w => w.GetProperty("key").GetString()!, w => w.GetProperty("verdict").GetString());
        Assert.Equal(["keep-count", "keep-length", "keep-ring", "segments", "spring"], ways.Keys.Order(StringComparer.Ordinal));
        Assert.Equal("refused", ways["spring"]);
    }

    [Theory]
    [InlineData("--hole 98 --old-ring 120,110", "error: `--old-ring` takes two diameters")]
    [InlineData("--hole wide", "error: `--hole` takes a length")]
    [InlineData("--hole 98 --way keep-rings", "hint: did you mean `keep-ring`?")]
    [InlineData("", "error: `rosette` needs `--hole`")]
    public void Arguments_ThatAreOff_AreSaid(string arguments, string expected)
    {
        var run = Toplayout.Run(["rosette", Toplayout.PresetFile("auditorium"), .. arguments.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);

        Assert.Equal(2, run.Code);
        Assert.Contains(expected, run.Errors, StringComparison.Ordinal);
    }
}
