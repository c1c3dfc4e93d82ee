using System.Diagnostics;

namespace TopLayout.EndToEnd.Tests;

/// <summary>What a run of the program gave back.</summary>
internal sealed record Outcome(int Code, string Output, string Errors);

/// <summary>The built program, run as a user runs it, and a folder of its own for each test.</summary>
internal static class Toplayout
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    public static string PresetFolder { get; } = Path.Combine(AppContext.BaseDirectory, "presets");

    public static IReadOnlyList<string> Presets { get; } =
        [.. Directory.EnumerateFiles(PresetFolder, "*.toml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    public static string PresetFile(string name) => Path.Combine(PresetFolder, name + ".toml");

    public static Outcome Run(params string[] arguments) => Run(new Dictionary<string, string>(), arguments);

    public static Outcome Run(IReadOnlyDictionary<string, string> environment, params string[] arguments) => Run(AppContext.BaseDirectory, environment, arguments);

    /// <summary>The program as it lies in another folder.</summary>
    public static Outcome RunFrom(string folder, params string[] arguments) => Run(folder, new Dictionary<string, string>(), arguments);

    private static Outcome Run(string folder, IReadOnlyDictionary<string, string> environment, string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(folder, "toplayout.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(Patience), $"toplayout {string.Join(' ', arguments)} takes longer than {Patience}");
        return new Outcome(process.ExitCode, output, errors.Result);
    }

    /// <summary>Starts the program and kills it, as <c>kill -9</c> does, a while after something is first written into a folder; true when it had not ended by itself.</summary>
    public static bool RunAndKill(string folder, TimeSpan after, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "toplayout.dll"), .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        var begun = DateTime.UtcNow;
        using var process = Process.Start(start)!;
        var output = Task.WhenAll(process.StandardError.ReadToEndAsync(), process.StandardOutput.ReadToEndAsync());
        while (!process.HasExited && Directory.GetLastWriteTimeUtc(folder) < begun)
        {
            Thread.Sleep(1);
        }

        var killed = !process.WaitForExit(after);
        if (killed)
        {
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
        }

        output.Wait();
        return killed;
    }

    /// <summary>Every file of a folder by name, hidden ones too.</summary>
    public static SortedDictionary<string, byte[]> Contents(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(folder, f), File.ReadAllBytes),
        StringComparer.Ordinal);

    /// <summary>Names and bytes of two folders are the same.</summary>
    public static void AssertSame(SortedDictionary<string, byte[]> expected, SortedDictionary<string, byte[]> actual)
    {
        Assert.Equal(expected.Keys, actual.Keys);
        foreach (var (name, bytes) in expected)
        {
            Assert.True(bytes.AsSpan().SequenceEqual(actual[name]), $"{name} differs");
        }
    }
}

/// <summary>A folder that goes when the test ends.</summary>
internal sealed class Desk : IDisposable
{
    public Desk() => Directory.CreateDirectory(Folder);

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "toplayout-" + Guid.NewGuid().ToString("N"));

    public string At(string name) => Path.Combine(Folder, name);

    /// <summary>Writes a file and gives its path.</summary>
    public string Put(string name, string text)
    {
        File.WriteAllText(At(name), text);
        return At(name);
    }

    /// <summary>A preset's text, changed, as a file of this folder.</summary>
    public string Preset(string name, params (string From, string To)[] edits)
    {
        var text = File.ReadAllText(Toplayout.PresetFile(name));
        foreach (var (from, to) in edits)
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }

        return Put("design.toml", text);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
