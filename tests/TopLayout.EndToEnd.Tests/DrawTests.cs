using System.Globalization;
using TopLayout.Drawing.Dxf;
using TopLayout.Plans;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>The main job on every preset.</summary>
public class DrawTests(ITestOutputHelper output)
{
    private const string Walls = "[_-](CUT|POCKET|cut|pocket)$";

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
        var names = Toplayout.Contents(folder).Keys;
        string[] halves = preset is "cutaway" or "pointed-cutaway" or "measured" ? ["half-template-bass", "half-template-treble"] : ["half-template"];
        string[] drilled = preset is "auditorium" or "arc-chain" ? ["drill-points"] : [];
        string[] sheets =
        [
            "bridge-place", "grain", "inside-plan", "numbers", "outline", "outside-plan", "rosette-enlarged", .. fails ? (string[])[] : ["rosette", "rosette-templates", "mould", .. halves],
            .. preset == "tapered-tongue" ? (string[])["tongue"] : [], .. drilled,
        ];
        string[] forms = [".dxf", ".svg", ".pdf", "-tiles.pdf"];
        string[] expected = [.. sheets.SelectMany(s => forms.Select(f => s + f)), "report.html", "report.json", "report.md", "toplayout.files.json"];
        Assert.Equal(expected.Order(StringComparer.Ordinal), names.Where(n => !n.StartsWith("parts", StringComparison.Ordinal) && !n.StartsWith("steps", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Equal(fails, !names.Contains(Path.Combine("parts", "neck-block.dxf")));
        Assert.All([preset == "measured" ? "1-outline-on-the-rim" : "1-outline-and-mould", "2-hole-and-rosette", "3-bracing", "5-box", "6-bridge-place"], s => Assert.Contains(Path.Combine("steps", s + ".pdf"), names));
        Assert.Equal(names.Where(n => n != "toplayout.files.json").Order(StringComparer.Ordinal), run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => Path.GetRelativePath(folder, l)).Order(StringComparer.Ordinal));

        // The reader: tests/readers/check-drawing (ezdxf, librsvg, and its own lint). DXF layers end in _CUT, SVG groups in -cut. Every level of DXF, in one go.
        var top = Pipeline.Check(File.ReadAllText(Toplayout.PresetFile(preset)), preset).Top!;
        IEnumerable<string> drawings =
        [
            .. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(f => f.EndsWith(".dxf", StringComparison.Ordinal) || f.EndsWith(".svg", StringComparison.Ordinal)),
            .. DrawnDxf.Write(top, desk.At("r2000"), new DxfOptions(DxfLevel.R2000)),
            .. DrawnDxf.Write(top, desk.At("lines-and-arcs"), new DxfOptions(DxfLevel.LinesAndArcs)),
        ];
        OutsideReader.CheckDrawing(output, ["--strict", "--ppm", "2", "--gap", "0.05", "--closed", Walls, .. drawings]);
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

    /// <summary>What the program makes of its options; the stranger is the same.</summary>
    [Theory]
    [InlineData("r2000", "mm", "corner")]
    [InlineData("lines-and-arcs", "in", "datum")]
    public void Draw_DxfOfAnotherLevelUnitAndOrigin_ReadsBackWithoutAFinding(string level, string unit, string origin)
    {
        using var desk = new Desk();
        var folder = desk.At("plans");

        Assert.Equal(0, Toplayout.Run("draw", Toplayout.PresetFile("tapered-tongue"), "--out", folder, "--only", "inside-plan", "--only", "parts", "--dxf", level, "--dxf-unit", unit, "--dxf-origin", origin).Code);

        string[] allowed = unit == "in" ? ["--allow", "units-not-mm"] : [];
        OutsideReader.CheckDrawing(output, ["--strict", .. allowed, "--gap", "0.05", "--closed", Walls, .. Directory.EnumerateFiles(folder, "*.dxf", SearchOption.AllDirectories)]);
    }

    /// <summary>A sheet drawn again leaves the others of the same design; those of a design that has changed are old, and go.</summary>
    [Fact]
    public void Draw_Only_LeavesTheSameDesignAndTakesAwayAnother()
    {
        using var desk = new Desk();
        var (folder, design) = (desk.At("plans"), desk.At("top.toml"));
        File.Copy(Toplayout.PresetFile("auditorium"), design);
        Toplayout.Run("draw", design, "--out", folder);
        var before = Toplayout.Contents(folder);
        File.AppendAllText(Path.Combine(folder, "outline.svg"), "<!-- by hand -->");

        var again = Toplayout.Run("draw", design, "--out", folder, "--only", "inside-plan", "--paper", "A3");

        Assert.Equal(0, again.Code);
        Assert.Equal(before.Keys, Toplayout.Contents(folder).Keys);
        Assert.EndsWith("<!-- by hand -->", File.ReadAllText(Path.Combine(folder, "outline.svg")), StringComparison.Ordinal);
        Assert.Equal(
            ["inside-plan-tiles.pdf", "outline.svg"],
            Toplayout.Contents(folder).Where(f => f.Key != "toplayout.files.json" && !f.Value.SequenceEqual(before[f.Key])).Select(f => f.Key));

        File.WriteAllBytes(Path.Combine(folder, "outline.svg"), before["outline.svg"]);
        File.WriteAllText(design, File.ReadAllText(design).Replace("join_fret = 14", "join_fret = 13", StringComparison.Ordinal));
        var changed = Toplayout.Run("draw", design, "--out", folder, "--only", "inside-plan", "--only", "rosette");

        Assert.Contains("took away", changed.Errors, StringComparison.Ordinal);
        Assert.Equal(
            ["inside-plan-tiles.pdf", "inside-plan.dxf", "inside-plan.pdf", "inside-plan.svg", "rosette-tiles.pdf", "rosette.dxf", "rosette.pdf", "rosette.svg", "toplayout.files.json"],
            Toplayout.Contents(folder).Keys);
        Assert.False(Directory.Exists(Path.Combine(folder, "parts")));
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
    [InlineData("straight-tongue")]
    [InlineData("jumbo")]
    [InlineData("cutaway")]
    [InlineData("measured")]
    [InlineData("inches")]
    public void Files_UnderACommaCulture_AreTheSameBytes(string preset)
    {
        var text = File.ReadAllText(Toplayout.PresetFile(preset));
        SortedDictionary<string, byte[]> Files()
        {
            var (top, options) = (Pipeline.Check(text, "design.toml").Top!, new DrawOptions { CutAnyway = true });
            return new(Pipeline.Files(top, options, Pipeline.Sheets(top, options)).ToDictionary(f => f.Name, f => f.Content), StringComparer.Ordinal);
        }

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
