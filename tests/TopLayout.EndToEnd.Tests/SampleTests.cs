using System.Runtime.CompilerServices;
using System.Text;

namespace TopLayout.EndToEnd.Tests;

/// <summary>
/// The files in output-samples/ are what the program writes, byte for byte. They change by one command only:
/// <c>TOPLAYOUT_ACCEPT_SAMPLES=1 dotnet test tests/TopLayout.EndToEnd.Tests -c Release --filter Samples</c>, with the reason in the commit.
/// </summary>
public class SampleTests
{
    public static TheoryData<string> Sampled => new("auditorium", "straight-tongue", "tapered-tongue");

    [Theory]
    [MemberData(nameof(Sampled))]
    public void Samples_OfAPreset_AreWhatTheProgramWrites(string preset)
    {
        using var desk = new Desk();
        var sample = Path.Combine(Root(), "output-samples", preset);

        // Named as in the repository, so that places in the report read as a user would see them there.
        Toplayout.Run("draw", Path.GetRelativePath(Environment.CurrentDirectory, Toplayout.PresetFile(preset)), "--out", desk.At("plans"));
        var drawn = Toplayout.Contents(desk.At("plans"));
        drawn["report.json"] = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(drawn["report.json"])
            .Replace(Path.GetRelativePath(Environment.CurrentDirectory, Toplayout.PresetFolder) + "/", "presets/", StringComparison.Ordinal));
        drawn.Remove("toplayout.files.json");

        // The steps of one preset stand for those of all.
        foreach (var name in drawn.Keys.Where(n => preset != "auditorium" && n.StartsWith("steps", StringComparison.Ordinal)).ToList())
        {
            drawn.Remove(name);
        }

        // PDF files are large, and all written alike: one sheet of one preset stands for them, whole and tiled.
        foreach (var name in drawn.Keys.Where(n => n.EndsWith(".pdf", StringComparison.Ordinal) && !(preset == "auditorium" && n is "rosette.pdf" or "rosette-tiles.pdf")).ToList())
        {
            drawn.Remove(name);
        }

        if (Environment.GetEnvironmentVariable("TOPLAYOUT_ACCEPT_SAMPLES") == "1")
        {
            Accept(sample, drawn);
        }

        var expected = Toplayout.Contents(sample);
        Assert.Equal(expected.Keys, drawn.Keys);
        Assert.All(expected, f => Assert.True(f.Value.AsSpan().SequenceEqual(drawn[f.Key]), $"{preset}/{f.Key}: {FirstDifference(f.Value, drawn[f.Key])}"));
    }

    private static void Accept(string sample, SortedDictionary<string, byte[]> drawn)
    {
        if (Directory.Exists(sample))
        {
            Directory.Delete(sample, recursive: true);
        }

        Directory.CreateDirectory(sample);
        foreach (var (name, bytes) in drawn)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(sample, name))!);
            File.WriteAllBytes(Path.Combine(sample, name), bytes);
        }
    }

    private static string FirstDifference(byte[] expected, byte[] actual)
    {
        var (a, b) = (Encoding.UTF8.GetString(expected).Split('\n'), Encoding.UTF8.GetString(actual).Split('\n'));
        var line = a.Zip(b).TakeWhile(l => l.First == l.Second).Count();
        return $"line {line + 1}: expected `{a.ElementAtOrDefault(line)}`, got `{b.ElementAtOrDefault(line)}`";
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
