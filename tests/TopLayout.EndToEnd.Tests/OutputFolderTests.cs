namespace TopLayout.EndToEnd.Tests;

/// <summary>What <c>draw</c> does to the folder it writes into.</summary>
public class OutputFolderTests
{
    [Fact]
    public void Draw_SheetThatTheEditedDesignHasNoMore_GoesFromTheFolder()
    {
        using var desk = new Desk();
        var plans = desk.At("plans");
        Toplayout.Run("draw", Toplayout.PresetFile("tapered-tongue"), "--out", plans);
        Assert.True(File.Exists(desk.At("plans/tongue.dxf")));

        var text = File.ReadAllText(Toplayout.PresetFile("tapered-tongue"));
        var (start, end) = (text.IndexOf("[tongue]", StringComparison.Ordinal), text.IndexOf("[tail_block]", StringComparison.Ordinal));
        var run = Toplayout.Run("draw", desk.Put("design.toml", text.Remove(start, end - start)), "--out", plans);

        Assert.Equal(0, run.Code);
        Assert.DoesNotContain(Toplayout.Contents(plans).Keys, n => n.StartsWith("tongue", StringComparison.Ordinal));
    }

    [Fact]
    public void Draw_DesignThatFails_LeavesNoTemplateUnlessAskedFor()
    {
        using var desk = new Desk();
        var plans = desk.At("plans");
        Toplayout.Run("draw", Toplayout.PresetFile("tapered-tongue"), "--out", plans);

        var failed = Toplayout.Run("draw", Toplayout.PresetFile("straight-tongue"), "--out", plans);
        Assert.Equal(1, failed.Code);
        Assert.False(File.Exists(desk.At("plans/tongue.dxf")) || File.Exists(desk.At("plans/tongue.svg")));
        Assert.Contains("these templates were not written: half-template, mould, rosette, rosette-templates, tongue, parts; `--cut-anyway` writes them", failed.Errors, StringComparison.Ordinal);

        var asked = Toplayout.Run("draw", Toplayout.PresetFile("straight-tongue"), "--out", plans, "--cut-anyway");
        Assert.Equal(1, asked.Code);
        Assert.True(File.Exists(desk.At("plans/tongue.dxf")));
    }

    public static TheoryData<string> Foreign => new("their own plan", "a sheet they changed", "a manifest of their own", "a folder named like a sheet", "a stale sheet they changed");

    [Theory]
    [MemberData(nameof(Foreign))]
    public void Draw_SomebodysFileInTheWay_ChangesNothingAndNamesIt(string what)
    {
        using var desk = new Desk();
        var plans = desk.At("plans");
        Directory.CreateDirectory(plans);
        var design = Toplayout.PresetFile("auditorium");
        string Put(string name)
        {
            File.WriteAllText(Path.Combine(plans, name), "mine");
            return name;
        }

        string Make(string name)
        {
            Directory.CreateDirectory(Path.Combine(plans, name));
            return name;
        }

        string Drawn(string preset, string name)
        {
            Toplayout.Run("draw", Toplayout.PresetFile(preset), "--out", plans);
            return Put(name);
        }

        var name = what switch
        {
            "their own plan" => Put("outside-plan.svg"),
            "a sheet they changed" => Drawn("auditorium", "inside-plan.dxf"),
            "a manifest of their own" => Put("toplayout.files.json"),
            "a folder named like a sheet" => Make("report.md"),
            _ => Drawn("tapered-tongue", "tongue.dxf"),
        };
        var before = Toplayout.Contents(plans);

        var run = Toplayout.Run("draw", design, "--out", plans);

        Assert.Equal(2, run.Code);
        Assert.Contains("error TL9003", run.Errors, StringComparison.Ordinal);
        Assert.Contains($"`{name}`", run.Errors, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Toplayout.AssertSame(before, Toplayout.Contents(plans));
        Assert.Equal(what == "a folder named like a sheet" ? 2 : 0, Toplayout.Run("draw", design, "--out", plans, "--overwrite").Code);
    }

    [Fact]
    public void Draw_AfterARunThatDiedHalfway_FinishesTheWork()
    {
        using var desk = new Desk();
        var plans = desk.At("plans");
        Toplayout.Run("draw", Toplayout.PresetFile("tapered-tongue"), "--out", plans);
        var old = Toplayout.Contents(plans);
        Toplayout.Run("draw", Toplayout.PresetFile("auditorium"), "--out", desk.At("other"));
        var next = Toplayout.Contents(desk.At("other"));

        // The state between the renames: a manifest that knows both versions, one file new, the others old, a staging folder left.
        static string Both(byte[] a, byte[] b) => System.Text.Encoding.UTF8.GetString(a).Split("\"files\": {")[0] + "\"files\": {"
            + string.Join(",", Entries(a).Concat(Entries(b)).GroupBy(e => e.Name).Select(g => $"\"{g.Key}\": [{string.Join(",", g.SelectMany(e => e.Hashes).Distinct())}]")) + "}}";
        File.WriteAllText(Path.Combine(plans, "toplayout.files.json"), Both(old["toplayout.files.json"], next["toplayout.files.json"]));
        File.WriteAllBytes(Path.Combine(plans, "report.md"), next["report.md"]);
        Directory.CreateDirectory(Path.Combine(plans, ".toplayout.part"));
        File.WriteAllText(Path.Combine(plans, ".toplayout.part", "outside-plan.svg"), "half a pl");

        var run = Toplayout.Run("draw", Toplayout.PresetFile("auditorium"), "--out", plans);

        Assert.Equal(0, run.Code);
        Toplayout.AssertSame(next, Toplayout.Contents(plans));
    }

    [Fact]
    public void Draw_FolderThatCannotBeMade_SaysSo()
    {
        using var desk = new Desk();
        var file = desk.Put("file", "text");

        var run = Toplayout.Run("draw", Toplayout.PresetFile("auditorium"), "--out", Path.Combine(file, "plans"));

        Assert.Equal(2, run.Code);
        Assert.Contains("error TL9002", run.Errors, StringComparison.Ordinal);
        Assert.Contains("hint: choose another folder", run.Errors, StringComparison.Ordinal);
        Assert.Equal("text", File.ReadAllText(file));
    }

    [Fact]
    public async Task Draw_TwoRunsAtOnce_NeverMix()
    {
        using var desk = new Desk();
        var plans = desk.At("plans");
        var runs = await Task.WhenAll(((string[])["auditorium", "tapered-tongue"])
            .Select(p => Task.Run(() => Toplayout.Run("draw", Toplayout.PresetFile(p), "--out", plans))));

        Assert.Contains(runs, r => r.Code == 0);
        Assert.All(runs, r => Assert.True(r.Code == 0 || r.Errors.Contains("another run of toplayout is writing", StringComparison.Ordinal), r.Errors));
        var found = Toplayout.Contents(plans);
        var whole = ((string[])["auditorium", "tapered-tongue"]).Select(p =>
        {
            Toplayout.Run("draw", Toplayout.PresetFile(p), "--out", desk.At(p));
            return Toplayout.Contents(desk.At(p));
        });
        Assert.Contains(whole, w => w.Keys.SequenceEqual(found.Keys) && w.All(f => f.Value.AsSpan().SequenceEqual(found[f.Key])));
    }

    private static IEnumerable<(string Name, List<string> Hashes)> Entries(byte[] manifest)
    {
        using var json = System.Text.Json.JsonDocument.Parse(manifest);
        return [.. json.RootElement.GetProperty("files").EnumerateObject().Select(p => (p.Name, p.Value.EnumerateArray().Select(v => v.GetRawText()).ToList()))];
    }
}
