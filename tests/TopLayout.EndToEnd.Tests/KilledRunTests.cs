using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>Runs that are killed at any moment: no file under its final name is ever part of one.</summary>
public class KilledRunTests(ITestOutputHelper output)
{
    private const int Seed = 20261125;
    private const int Kills = 100;

    // About as long as an idle machine writes two sheets.
    private static readonly TimeSpan Writing = TimeSpan.FromMilliseconds(60);

    /// <summary>Two designs drawn in turn into one folder; a run is killed at a random moment from when it begins to write.</summary>
    [Fact]
    public void Draw_KilledAtRandomMoments_LeavesWholeFilesOnly()
    {
        using var desk = new Desk();
        var plans = desk.At("plans");
        string[] presets = ["auditorium", "tapered-tongue"];
        var whole = presets.Select(p =>
        {
            Toplayout.Run(Draw(p, desk.At(p)));
            return Toplayout.Contents(desk.At(p));
        }).ToList();

        var random = new Random(Seed);
        var killed = 0;
        for (var i = 0; i < Kills; i++)
        {
            killed += Toplayout.RunAndKill(Path.Combine(plans, ".toplayout.part"), Writing * random.NextDouble(), Draw(presets[i % 2], plans)) ? 1 : 0;
            foreach (var (name, bytes) in Directory.Exists(plans) ? Toplayout.Contents(plans) : [])
            {
                var isOurs = name == "toplayout.files.json" || name.StartsWith(".toplayout.part", StringComparison.Ordinal);
                Assert.True(isOurs || whole.Any(w => w.TryGetValue(name, out var content) && content.AsSpan().SequenceEqual(bytes)), $"seed {Seed}, run {i}: {name} is not whole");
            }
        }

        output.WriteLine($"seed {Seed}: {killed} of {Kills} runs were killed");
        Assert.True(killed > Kills / 4, $"only {killed} runs were killed");
        Assert.Equal(0, Toplayout.Run(Draw("auditorium", plans)).Code);
        Toplayout.AssertSame(whole[0], Toplayout.Contents(plans));
    }

    // Two sheets are enough files to die between, and drawn in less time than all.
    private static string[] Draw(string preset, string folder) =>
        ["draw", Toplayout.PresetFile(preset), "--out", folder, "--only", "rosette", "--only", "bridge-place"];
}
