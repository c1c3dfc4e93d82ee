using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Text.Json;

namespace TopLayout.EndToEnd.Tests;

/// <summary>Arguments, streams, exit codes. The help texts are a contract and stand approved in Approved/.</summary>
public class CommandLineTests
{
    public static TheoryData<string> Helps => new("", "new", "draw", "check", "rosette", "presets", "explain", "woods", "parameters");

    [Theory]
    [MemberData(nameof(Helps))]
    public void Help_OfACommand_IsTheApprovedText(string command)
    {
        var run = Toplayout.Run([.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]);

        Assert.Equal(0, run.Code);
        Assert.Empty(run.Errors);
        var approved = Approved($"help{(command.Length == 0 ? "" : "-" + command)}.txt");
        var text = run.Output.ReplaceLineEndings("\n").TrimEnd() + "\n";
        if (Environment.GetEnvironmentVariable("TOPLAYOUT_ACCEPT_SAMPLES") == "1")
        {
            File.WriteAllText(approved, text);
        }

        Assert.Equal(File.ReadAllText(approved), text);
    }

    [Theory]
    [InlineData("new", "a file needs a name")]
    [InlineData("draw {0} --out", "error: `--out` names no folder")]
    [InlineData("rosette {0} --hole 98 --apply", "a file needs a name")]
    public void EmptyNames_AreAnsweredAsSuch(string arguments, string expected)
    {
        var run = Toplayout.Run([.. arguments.Split(' ').Select(a => a == "{0}" ? Toplayout.PresetFile("jumbo") : a), ""]);

        Assert.Equal(2, run.Code);
        Assert.Contains(expected, run.Errors, StringComparison.Ordinal);
    }

    /// <summary>A full disk under the console is no bug of the program: one line where anybody listens, exit code 2. Only where there is a device that is always full.</summary>
    [Theory]
    [InlineData("--json > /dev/full", "error: what was to be printed could not be written")]
    [InlineData("2> /dev/full", "")]
    public void Output_ThatNobodyTakes_IsSaidAndEndsTheRun(string redirected, string expected)
    {
        if (!File.Exists("/dev/full"))
        {
            return;
        }

        var start = new ProcessStartInfo("sh", ["-c", $"dotnet '{Path.Combine(AppContext.BaseDirectory, "toplayout.dll")}' check '{Toplayout.PresetFile("straight-tongue")}' {redirected}"]) { RedirectStandardError = true, RedirectStandardOutput = true };
        using var process = Process.Start(start)!;
        var said = process.StandardError.ReadToEnd();
        process.WaitForExit();

        Assert.Equal(2, process.ExitCode);
        Assert.Contains(expected, said, StringComparison.Ordinal);
        Assert.DoesNotContain("bug", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "error: say what to do: new, draw, check, rosette, presets, explain, woods, parameters")]
    [InlineData("drwa x.toml", "error: there is no command `drwa`; known are new, draw, check, rosette, presets, explain, woods, parameters\n  hint: did you mean `draw`?")]
    [InlineData("draw", "error: `draw` needs <design>: the design file (TOML)\n  help: toplayout draw --help")]
    [InlineData("draw x.toml --overwite", "hint: did you mean `--overwrite`?")]
    [InlineData("draw x.toml y.toml", "error: `y.toml` is one word too many for `draw`")]
    [InlineData("draw x.toml --dxf r13", "error: `--dxf` takes r12, r2000, lines-and-arcs; it is `r13`")]
    [InlineData("draw x.toml --dxf-unit", "error: `--dxf-unit` needs a value")]
    [InlineData("draw x.toml --paper A5", "error: `--paper` takes A4, A3, Letter, Tabloid; it is `A5`")]
    [InlineData("draw x.toml --measured-x 180", "error: `--measured-x` takes what the printed bar measures and what it should, as `179.6/180`; it is `180`")]
    [InlineData("draw x.toml --measured-y 240/250", "error: `--measured-y`: the print is 4 % out, which no correction should mend")]
    [InlineData("presets auditorum", "hint: did you mean `auditorium`?")]
    [InlineData("explain TL301", "error: there is no code `TL301`")]
    [InlineData("new x.toml --from jumbo-jet", "error: there is no preset `jumbo-jet`")]
    public void Arguments_ThatAreOff_AreAnsweredOnStandardErrorWithExitCode2(string arguments, string expected)
    {
        var run = Toplayout.Run(arguments.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal(2, run.Code);
        Assert.Empty(run.Output);
        Assert.Contains(expected, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void New_FromAPreset_MakesADesignThatDrawsAndNeverReplacesAFile()
    {
        using var desk = new Desk();
        var file = desk.At("mine.toml");

        Assert.Equal(0, Toplayout.Run("new", file, "--from", "tapered-tongue").Code);
        Assert.Equal(File.ReadAllText(Toplayout.PresetFile("tapered-tongue")), File.ReadAllText(file));
        Assert.Equal(0, Toplayout.Run("draw", file, "--out", desk.At("plans"), "--quiet").Code);

        File.WriteAllText(file, "mine now");
        var again = Toplayout.Run("new", file);
        Assert.Equal(2, again.Code);
        Assert.Contains("error TL9003", again.Errors, StringComparison.Ordinal);
        Assert.Equal("mine now", File.ReadAllText(file));
    }

    [Fact]
    public void Presets_ListAndText_AreThoseOfTheFolder()
    {
        var list = Toplayout.Run("presets");

        Assert.Equal(Toplayout.Presets, list.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split(' ')[0]));
        Assert.Equal(File.ReadAllText(Toplayout.PresetFile("auditorium")), Toplayout.Run("presets", "auditorium").Output);
    }

    [Fact]
    public void Check_AsJson_PrintsJsonOnStandardOutputAlone()
    {
        var run = Toplayout.Run("check", Toplayout.PresetFile("straight-tongue"), "--json");

        Assert.Equal(1, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal("fail", json.RootElement.GetProperty("findings")[0].GetProperty("severity").GetString());
        Assert.Contains("fail TL3002", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_ACode_SaysWhatItMeans()
    {
        var run = Toplayout.Run("explain", "tl3001");

        Assert.Equal(0, run.Code);
        Assert.StartsWith("TL3001: a glued edge along the grain", run.Output, StringComparison.Ordinal);
        Assert.Contains("Limits of the model", run.Output, StringComparison.Ordinal);
    }

    private static string Approved(string name, [CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "Approved", name);
}
