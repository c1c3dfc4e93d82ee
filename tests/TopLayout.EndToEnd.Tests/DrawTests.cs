using System.Globalization;
using TopLayout.Plans;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>The main job on every preset.</summary>
public class DrawTests(ITestOutputHelper output)
{
    public static TheoryData<string> Presets => [.. Toplayout.Presets];

    [Theory]
    [MemberData(nameof(Presets))]
    public void Draw_Preset_WritesPlansAndReportThatAStrangerReadsWithoutAFinding(string preset)
    {
        using var desk = new Desk();
        var folder = desk.At("plans");

        var run = Toplayout.Run("draw", Toplayout.PresetFile(preset), "--out", folder);

        var fails = preset == "straight-tongue";
        Assert.Equal(fails ? 1 : 0, run.Code);
        string[] expected = ["inside-plan.dxf", "inside-plan.svg", "outside-plan.dxf", "outside-plan.svg", "report.json", "report.md", "toplayout.files.json"];
        string[] template = preset == "tapered-tongue" ? ["tongue.dxf", "tongue.svg"] : [];
        Assert.Equal(expected.Concat(template).Order(StringComparer.Ordinal), Toplayout.Contents(folder).Keys);
        Assert.Equal(Toplayout.Contents(folder).Keys.Where(n => n != "toplayout.files.json").Order(StringComparer.Ordinal), run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => Path.GetFileName(l)!).Order(StringComparer.Ordinal));

        // The reader: tests/readers/check-drawing (ezdxf, librsvg, and its own lint). DXF layers end in _CUT, SVG groups in -cut.
        var drawings = Directory.EnumerateFiles(folder).Where(f => f.EndsWith(".dxf", StringComparison.Ordinal) || f.EndsWith(".svg", StringComparison.Ordinal));
        OutsideReader.CheckDrawing(output, ["--strict", "--gap", "0.05", "--closed", "[_-](CUT|POCKET|cut|pocket)$", .. drawings]);
    }

    [Fact]
    public void Check_StraightTongue_FailsAndNamesBothFlanksWithAllThatMatters()
    {
        var run = Toplayout.Run("check", Toplayout.PresetFile("straight-tongue"));

        Assert.Equal(1, run.Code);
        foreach (var side in (string[])["bass", "treble"])
        {
            var finding = run.Errors.Split('\n').Single(l => l.Contains($"fail TL3002: the {side} flank of the tongue", StringComparison.Ordinal));
            Assert.Contains("for 89 mm without support, at 0° to it", finding, StringComparison.Ordinal);
            Assert.Contains("flat-sawn black cherry (grain along) on quarter-sawn Sitka spruce", finding, StringComparison.Ordinal);
            Assert.Contains("glued at 60 % and used at 25 % humidity", finding, StringComparison.Ordinal);
        }

        Assert.Contains("hint: taper the tongue", run.Errors, StringComparison.Ordinal);
        Assert.Contains("4 failed checks", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_TaperedTongue_IsClean() => Assert.Equal(0, Toplayout.Run("check", Toplayout.PresetFile("tapered-tongue")).Code);

    [Fact]
    public void Draw_AnotherLanguageAndTimeZone_GivesTheSameBytes()
    {
        using var desk = new Desk();
        Toplayout.Run("draw", Toplayout.PresetFile("tapered-tongue"), "--out", desk.At("a"));

        Toplayout.Run(
            new Dictionary<string, string> { ["LANG"] = "de_DE.UTF-8", ["LC_ALL"] = "de_DE.UTF-8", ["TZ"] = "Asia/Kathmandu" },
            "draw", Toplayout.PresetFile("tapered-tongue"), "--out", desk.At("b"));

        Toplayout.AssertSame(Toplayout.Contents(desk.At("a")), Toplayout.Contents(desk.At("b")));
    }

    // The program itself runs without culture data; here the library meets a culture with decimal commas.
    [Theory]
    [MemberData(nameof(Presets))]
    public void Files_UnderACommaCulture_AreTheSameBytes(string preset)
    {
        var text = File.ReadAllText(Toplayout.PresetFile(preset));
        SortedDictionary<string, byte[]> Files() => new(
            Pipeline.Files(Pipeline.Check(text, "design.toml").Top!, new DrawOptions { CutAnyway = true }).ToDictionary(f => f.Name, f => f.Content), StringComparer.Ordinal);
        var before = Files();
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("0,5", 0.5.ToString("0.0", CultureInfo.CurrentCulture));
            Toplayout.AssertSame(before, Files());
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }
}
