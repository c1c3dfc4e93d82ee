namespace TopLayout.EndToEnd.Tests;

/// <summary>Designs that cannot be drawn: each says where, what was found, what is allowed and what to do, and writes nothing.</summary>
public class BadDesignTests
{
    private const string Head = "name = \"x\"\nunits = \"mm\"\n[scale]\nlength = 645\n";

    public static TheoryData<string, string, string> Designs => new()
    {
        { "empty", "", "design.toml:1:1: error TL0002: " },
        { "only a comment", "# nothing\n", "design.toml:1:1: error TL0002: " },
        { "broken", Head + "[soundhole\ndiameter = 100\n", "design.toml:5:" },
        { "wrong type", Head + "[soundhole]\ndiameter = true\n", "design.toml:6:12: error TL1003: " },
        { "negative", Head + "[soundhole]\ndiameter = -100\n", "design.toml:6:12: error TL1002: `diameter` must be from 15 to 200 mm; it is -100 mm" },
        { "not a number", Head + "[soundhole]\ndiameter = nan\n", "design.toml:6:12: error TL1009: " },
        { "no unit", Head + "[soundhole]\ndiameter = \"4 feet\"\n", "design.toml:6:12: error TL1004: " },
        { "missing", "name = \"x\"\nunits = \"mm\"\n", "error TL1001: " },
        { "near miss", Head + "[soundhole]\ndiametre = 100\n", "design.toml:6:1: error TL0005: " },
        { "unknown section", Head + "[soundhol]\ndiameter = 100\n", "design.toml:5:" },
        { "stated twice", Head + "[soundhole]\nbehind_fretboard = 5\nfrom_neck_edge = 150\n", "design.toml:7:" },
        { "impossible together", Head + "[outline]\nwaist_width = 300\n", "design.toml:6:15: error TL2001: the waist must be narrower than both bouts" },
        { "hole beside the body", Head + "[soundhole]\ntoward_treble = 150\n", "error TL2001: the hole, 100 mm across" },
        { "not UTF-8", "name = \"\uFFFF\"", "error TL9001: " },
    };

    [Theory]
    [MemberData(nameof(Designs))]
    public void Draw_BadDesign_SaysWhereWhatAndWhatToDo(string what, string text, string expected)
    {
        using var desk = new Desk();
        var design = desk.Put("design.toml", text);
        if (what == "not UTF-8")
        {
            File.WriteAllBytes(design, [0x6e, 0x61, 0x6d, 0x65, 0xff, 0xfe, 0x00]);
        }

        var run = Toplayout.Run("draw", design, "--out", desk.At("plans"));

        Assert.True(run.Code == 2, $"{what}: {run.Code} {run.Errors}");
        Assert.Contains(expected, run.Errors, StringComparison.Ordinal);
        Assert.Contains("\n  hint: ", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Errors, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.False(Directory.Exists(desk.At("plans")), "nothing is written");
    }

    [Fact]
    public void Check_SeveralErrors_AreAllSaidAtOnce()
    {
        using var desk = new Desk();
        var design = desk.Put("design.toml", "name = \"x\"\nunits = \"mm\"\n[soundhole]\ndiameter = 900\ncolour = 1\n[top]\nthickness = \"thin\"\n");

        var run = Toplayout.Run("check", design);

        Assert.Equal(2, run.Code);
        foreach (var line in (string[])["design.toml:4:12: error TL1002", "design.toml:5:1: error TL0005", "design.toml:7:13: error TL1004", "error TL1001"])
        {
            Assert.Contains(line, run.Errors, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("nowhere.toml", "there is no such file")]
    [InlineData(".", "it is a folder")]
    public void Check_FileThatCannotBeRead_SaysWhy(string name, string why)
    {
        using var desk = new Desk();

        var run = Toplayout.Run("check", desk.At(name));

        Assert.Equal(2, run.Code);
        Assert.Contains(why, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_HugeFile_IsRefusedByName()
    {
        using var desk = new Desk();
        var design = desk.Put("design.toml", Head + "# " + new string('x', 1_100_000) + "\n");

        var run = Toplayout.Run("check", design);

        Assert.Equal(2, run.Code);
        Assert.Contains("design.toml", run.Errors, StringComparison.Ordinal);
        Assert.Contains("error TL0003", run.Errors, StringComparison.Ordinal);
    }
}
