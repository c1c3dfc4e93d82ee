using TopLayout.Lutherie.Findings;

namespace TopLayout.Tests.Designs;

/// <summary>Lines that are not TOML, and where findings point in files from several editors.</summary>
public class SyntaxTests
{
    [Theory]
    [InlineData("a = mm", "1:5: error TL0001: `mm` is not in quotes\n  hint: write `a = \"mm\"`")]
    [InlineData("a = 10,5", "1:5: error TL0001: `10,5` is not a number\n  hint: the decimal mark is a point: `a = 10.5`")]
    [InlineData("a = 4 5/16", "1:5: error TL0001: `4 5/16` is not a number\n  hint: a fraction needs quotes and its unit: `a = \"4 5/16 in\"`")]
    [InlineData("a = 4 5/16 in # wide", "1:5: error TL0001: `4 5/16 in` is not in quotes\n  hint: write `a = \"4 5/16 in\"`")]
    [InlineData("a = 5/16\"", "1:5: error TL0001: `5/16\"` is not in quotes\n  hint: write `a = '5/16\"'`")]
    [InlineData("a = .5", "1:5: error TL0001: `.5` is not a number as TOML writes it\n  hint: write `a = 0.5`")]
    [InlineData("a = 99999999999999999999", "1:5: error TL0001: `99999999999999999999` is too large a number\n  hint: write a smaller number")]
    [InlineData("  foo", "1:3: error TL0001: the line is neither `key = value` nor a `[section]`\n  hint: add what is missing, or begin a comment with `#`")]
    [InlineData("a =", "error TL0001: `a` has no value\n  hint: write a value after `=`, or delete the line")]
    [InlineData("a = \"\\u00", "1:5: error TL0001: the text has no closing quote")]
    [InlineData("a = 07", "1:5: error TL0001: `07` is not a number as TOML writes it\n  hint: write `a = 7`")]
    [InlineData("a = [1 2]", "1:8: error TL0001: missing a `,` (")]
    [InlineData("a = \"open", "1:5: error TL0001: the text has no closing quote\n  hint: end it with `\"`")]
    public void Read_NotToml_SaysWhatWasMeant(string text, string expected) =>
        Assert.Contains(expected, SampleTable.Printed(SampleTable.Read(text)), StringComparison.Ordinal);

    [Fact]
    public void Read_SyntaxError_StopsBeforeBinding()
    {
        var findings = SampleTable.Read("wibble = 1\nunits = mm\n[soundhole]\ndiameter = 1\n").Findings;

        Assert.Equal([Rules.Syntax], findings.Select(f => f.Rule));
    }

    [Fact]
    public void Read_AnyLengthOfNonsense_PrintsAShortMessage()
    {
        var nines = new string('9', 100_000);
        string[] texts = [$"{nines} = 1\n", $"[{nines}]\n", $"a = {nines}\n", $"{SampleTable.Least}name = \"{nines}\"\n", $"scale.length = \"{nines}\"\n"];

        Assert.All(texts, text => Assert.InRange(SampleTable.Printed(SampleTable.Read(text)).Length, 50, 700));
    }

    [Fact]
    public void Read_ManySyntaxErrors_NamesTheFirstTenLines() =>
        Assert.Equal(10, SampleTable.Read(string.Concat(Enumerable.Repeat("foo bar\n", 500))).Findings.Length);

    [Fact]
    public void Read_ManyUnknownKeys_StopsAtTwoHundred()
    {
        var text = string.Concat(Enumerable.Range(0, 5000).Select(i => $"wibble{i} = 1\n"));

        Assert.InRange(SampleTable.Read(text).Findings.Length, 200, 210);
    }

    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    public void Read_BracketsNestedDeeply_IsAFinding(char bracket)
    {
        var text = "a = " + string.Concat(Enumerable.Repeat(bracket == '[' ? "[" : "{b=", 50_000));

        Assert.Contains("error TL0001: brackets are nested too deeply", SampleTable.Printed(SampleTable.Read(text)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\uFEFFunits = \"mm\"\nscale = { length = 5 }\n", 2, 20, 1)]
    [InlineData("units = \"mm\"\r\n\r\n[scale]\r\n\tlength = 5 # short\r\n", 4, 11, 1)]
    [InlineData("# Größe, 大きさ, 😀\nunits = \"mm\"\nname = \"😀é\" # 😀\nscale.length = 55\n", 4, 16, 2)]
    [InlineData("units = \"mm\"\nscale = { \"length\"   =   5, body_fret = 14 }\n", 2, 26, 1)]
    [InlineData("units = \"mm\"\nx_brace = { wood = \"maple\" } # é\n[scale  ]\nlength   = \"5 mm\"\n", 4, 12, 6)]
    public void Read_FromAnyEditor_PointsAtTheCharacter(string text, int line, int column, int length)
    {
        var place = Assert.Single(SampleTable.Read(text).Findings).Place;

        Assert.Equal(new SourcePlace("a.toml", line, column, length), place);
    }

    [Fact]
    public void Read_WideCharactersBeforeTheValueOnItsLine_CountAsOneColumnEach()
    {
        var place = Assert.Single(SampleTable.Read("units = \"mm\"\nscale.length = 645\nx_brace = { wood = \"é😀\", angle = 99 }\n").Findings).Place;

        Assert.Equal(new SourcePlace("a.toml", 3, 20, 4), place);
    }
}
