using TopLayout.Lutherie.Findings;

namespace TopLayout.Tests.Designs;

/// <summary>What each rule of reading prints, and what it lets pass.</summary>
public class ReadingRulesTests
{
    public static TheoryData<string> Codes => [.. ReadingExamples.All.Select(e => e.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Rule_ItsFailingExample_PrintsExactly(string code)
    {
        var example = ReadingExamples.All.Single(e => e.Code == code);

        SampleTable.Finds(example.Fails, example.Printed);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Rule_ItsPassingExample_FindsNothing(string code) =>
        SampleTable.FindsNothing(ReadingExamples.All.Single(e => e.Code == code).Passes);

    [Fact]
    public void Rules_OfReadingAndValues_AllHaveAnExample() => Assert.Equal(
        Rules.All.Select(r => r.Code).Where(code => code.StartsWith("TL0", StringComparison.Ordinal) || code.StartsWith("TL1", StringComparison.Ordinal)),
        ReadingExamples.All.Select(e => e.Code));

    [Fact]
    public void Read_ManyIndependentErrors_NamesThemAllAtOnce() => SampleTable.Finds(
        """
        name = ""
        units = "mms"
        [scale]
        diameter = 3
        length = "650"
        body_fret = 14.0
        [soundhole]
        position = true
        [season]
        glued_at = 1e400
        temperature = [1]
        """,
        """
        a.toml:1:8: error TL1011: `name` must be one line of 1 to 30 characters; it is empty
          hint: write a short text on one line
        a.toml:2:9: error TL1005: `units` must be `mm` or `in`; it is `mms`
          hint: did you mean `units = "mm"`?
        a.toml:4:1: error TL0005: `[scale]` has no key `diameter`
          hint: it belongs under `[soundhole]`
        a.toml:5:10: error TL1004: `length` must be a length; `650` has no unit
          hint: write a number and `mm`, `cm` or `in`, for example `length = "635 mm"`
        a.toml:6:13: error TL1003: `body_fret` must be a whole number; it is the number `14.0`
          hint: write for example `body_fret = 14`
        a.toml:8:12: error TL1003: `position` must be a number; it is `true`
          hint: write for example `position = 0.25`
        a.toml:10:12: error TL1009: `glued_at` must be a finite number; it is `1e400`
          hint: write for example `glued_at = 50`
        a.toml:11:15: error TL1003: `temperature` must be a temperature in °C, a number; it is a list
          hint: write for example `temperature = 21`
        """);

    [Fact]
    public void Read_NoUnits_LeavesBareLengthsUnjudged() => SampleTable.Finds(
        "scale.length = 5\n",
        """
        a.toml:1:1: error TL1001: `units` is missing from the top of the file
          hint: add a line such as `units = "mm"` before the first section
        """);

    [Fact]
    public void Read_RequiredKeyOfAbsentSection_ShowsHeaderAndLine() => SampleTable.Finds(
        "units = \"in\"\n",
        """
        a.toml:1:1: error TL1001: `length` is missing from `[scale]`
          hint: add `[scale]`, and below it a line such as `length = 25`
        """);

    [Theory]
    [InlineData("scale = 5", "1:1: error TL0007: `scale` is a section; it is given the number `5`")]
    [InlineData("tone_bar = 5", "1:1: error TL0007: `tone_bar` is a section; it is given the number `5`")]
    [InlineData("tone_bar = [1]", "1:1: error TL0007: `tone_bar` is a section; it is given a list")]
    [InlineData("tone_bar = { length = 60 }", "1:1: error TL0008: `tone_bar` may stand several times, so it needs double brackets; it is written `tone_bar = { ... }`")]
    [InlineData("tone_bar.length = 60", "1:1: error TL0008: `tone_bar` may stand several times, so it needs double brackets; it is written `tone_bar.length`")]
    [InlineData("[[season]]", "1:1: error TL0008: there is only one `season`, so it needs single brackets; it is written `[[season]]`")]
    [InlineData("[season]\n[season]", "2:1: error TL0006: `[season]` is written twice\n  also: a.toml:1:1")]
    [InlineData("season.glued_at = 50\n[season]", "2:1: error TL0006: `[season]` is written twice\n  also: a.toml:1:1")]
    [InlineData("[soundhole.diameter]", "1:1: error TL0007: `diameter` takes one value; it is written as a section")]
    [InlineData("soundhole.diameter.x = 1", "1:1: error TL0007: `diameter` takes one value; it is written as a section")]
    [InlineData("[soundhole]\ndiameter = { x = 1 }", "2:1: error TL0007: `diameter` takes one value; it is written as a section")]
    [InlineData("[[soundhole.ring]]", "1:1: error TL0004: there is no section `[[soundhole.ring]]`")]
    [InlineData("\"\" = 1", "1:1: error TL0005: the top of the file has no key ``")]
    [InlineData("[\"\"]", "1:1: error TL0004: there is no section `[]`")]
    [InlineData("sondhole = 1", "1:1: error TL0005: the top of the file has no key `sondhole`\n  hint: did you mean `soundhole`?")]
    [InlineData("wibble = 1", "1:1: error TL0005: the top of the file has no key `wibble`\n  hint: the keys of the top of the file are `units`, `name`, `hand`")]
    public void Read_WrongForm_IsNamed(string text, string expected) =>
        Assert.Contains($"a.toml:{expected}", SampleTable.Printed(SampleTable.Read(text)), StringComparison.Ordinal);

    [Theory]
    [InlineData("soundhole.diameter = -5", "must be from 10 to 200 mm; it is -5 mm\n  hint: write for example `diameter = 98`; usual is from 80 to 110 mm")]
    [InlineData("soundhole.diameter = 200.00001", "must be from 10 to 200 mm; it is 200.00001 mm\n")]
    [InlineData("soundhole.diameter = 1e300", "must be from 10 to 200 mm; it is 1E+300 mm\n")]
    [InlineData("soundhole.diameter = \"0.2 in\"", "must be from 10 to 200 mm; it is 5.08 mm (`0.2 in`)\n")]
    [InlineData("soundhole.diameter = 9.5", "did you mean `diameter = \"9.5 cm\"`?")]
    [InlineData("soundhole.position = 25", "`position` must be from 0 to 1; it is 25\n  hint: did you mean `position = 0.25`?")]
    [InlineData("season.glued_at = 0.45", "`glued_at` must be from 5 to 95 %; it is 0.45 %\n  hint: did you mean `glued_at = 45`?")]
    [InlineData("season.temperature = 70", "`temperature` must be from -10 to 50 °C; it is 70 °C\n  hint: write for example `temperature = 21`")]
    [InlineData("x_brace.angle = 300", "`angle` must be from 60 to 130°; it is 300°\n  hint: write for example `angle = 97`; usual is from 90 to 104°")]
    [InlineData("scale.body_fret = 9223372036854775807", "`body_fret` must be from 10 to 18; it is 9.223372036854776E+18\n")]
    [InlineData("soundhole.diameter = \"4,25 in\"", "`4,25 in` is not a number and a unit\n  hint: the decimal mark is a point")]
    [InlineData("soundhole.diameter = \"wide\"", "`diameter` must be a length; `wide` has no number\n")]
    [InlineData("soundhole.diameter = \"4 furlong\"", "`4 furlong` has the unknown unit `furlong`\n")]
    [InlineData("soundhole.diameter = \"4 5/0 in\"", "`4 5/0 in` has a fraction over zero\n")]
    [InlineData("soundhole.diameter = 1979-05-27", "`diameter` must be a length; it is a date or time\n")]
    [InlineData("x_brace.wood = \"balsa\"", "hint: choose a wood from `toplayout woods`, or describe it in [[wood]]")]
    [InlineData("name = \"two\\nlines\"", "`name` must be one line of 1 to 30 characters; it holds a line end, a tab or a control character\n")]
    public void Read_WrongValue_SaysWhatIsAllowedAndFound(string line, string expected) =>
        Assert.Contains(expected, SampleTable.Printed(SampleTable.Read("units = \"mm\"\n" + line)), StringComparison.Ordinal);

    [Fact]
    public void Read_InchFile_PrintsRangesInInchesRoundedInwards() => SampleTable.Finds(
        "units = \"in\"\nscale.length = 645\nsoundhole.diameter = 0.2\n",
        """
        a.toml:2:16: error TL1002: `length` must be from 11.812 to 35.433 in; it is 645 in
          hint: did you mean `length = "645 mm"`?
        a.toml:3:22: error TL1002: `diameter` must be from 0.394 to 7.874 in; it is 0.2 in
          hint: write for example `diameter = 3.86`; usual is from 3.15 to 4.33 in
        """);
}
