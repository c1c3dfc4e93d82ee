using System.Globalization;
using CsCheck;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Tests.Designs;

public class DesignTests
{
    private const string Full = """
        units = "in"
        name = "small parlour"
        hand = "left"

        [scale]
        length = 25.5
        body_fret = 12

        [soundhole]
        diameter = "4 in"

        [x_brace]
        target = "40 mm"

        [[tone_bar]]
        length = 4
        sawn = "flat"

        [[tone_bar]]
        length = "10 cm"
        """;

    [Fact]
    public void Design_WrittenValues_AreInMillimetresWithTheirPlace()
    {
        var design = SampleTable.Design(Full);

        Check.Near(647.7, design[SampleTable.ScaleLength].Value, 1e-9);
        Assert.Equal(new SourcePlace("a.toml", 6, 10, 4), design[SampleTable.ScaleLength].Place);
        Check.Near(101.6, design[SampleTable.Diameter].Value, 1e-9);
        Assert.False(design[SampleTable.Diameter].IsDefault);
        Assert.Equal(12, design[SampleTable.BodyFret].Value);
        Assert.Equal("small parlour", design[SampleTable.Name].Value);
        Assert.True(design.Get(SampleTable.IsLeftHanded).Value);
        Assert.Equal(LengthUnit.Inch, design.Units);
    }

    [Fact]
    public void Design_Default_PointsAtItsHeaderOrTheFirstLine()
    {
        var design = SampleTable.Design(Full);

        Assert.Equal(new Sourced<double>(0.25, new SourcePlace("a.toml", 9, 1, 11), IsDefault: true), design[SampleTable.Position]);
        Assert.Equal(new SourcePlace("a.toml", 9, 1, 11), design.PlaceOf(SampleTable.Position));
        Assert.Equal(new SourcePlace("a.toml", 10, 12, 6), design.PlaceOf(SampleTable.Diameter));
        Assert.Equal(new Sourced<double>(50, new SourcePlace("a.toml", 1, 1, 0), IsDefault: true), design[SampleTable.Humidity]);
    }

    [Fact]
    public void Design_RepeatedSections_KeepFileOrder()
    {
        var bars = SampleTable.Design(Full).Each(SampleTable.ToneBar);

        Assert.Equal([1, 2], bars.Select(b => b.Number));
        Check.Near(101.6, bars[0][SampleTable.BarLength].Value, 1e-9);
        Check.Near(100, bars[1][SampleTable.BarLength].Value, 1e-9);
        Assert.Equal(SampleTable.Sawing.Flat, bars[0].Get(SampleTable.BarSawing).Value);
        Assert.Equal(SampleTable.Sawing.QuarterSawn, bars[1].Get(SampleTable.BarSawing).Value);
        Assert.Equal(new SourcePlace("a.toml", 19, 1, 12), bars[1].PlaceOf(SampleTable.BarSawing));
    }

    [Fact]
    public void Design_OptionalSection_IsThereOnlyWhenWritten()
    {
        var without = SampleTable.Design(SampleTable.Least);
        var with = SampleTable.Design(SampleTable.Least + "[flat_brace]\n");

        Assert.False(without.Has(SampleTable.FlatBrace));
        Assert.Throws<InvalidOperationException>(() => without[SampleTable.FlatWidth]);
        Assert.Equal(new SourcePlace("a.toml", 1, 1, 0), without.PlaceOf(SampleTable.FlatBrace));
        Assert.True(with.Has(SampleTable.FlatBrace));
        Assert.Equal(20, with[SampleTable.FlatWidth].Value);
        Assert.Equal(new SourcePlace("a.toml", 3, 1, 12), with.PlaceOf(SampleTable.FlatBrace));
        Assert.Throws<InvalidOperationException>(() => with.In(SampleTable.ToneBar));
    }

    [Fact]
    public void Design_Group_AssumesItsFirstMemberOnlyWhenNoneIsWritten()
    {
        var assumed = SampleTable.Design(SampleTable.Least);
        var written = SampleTable.Design(Full);

        Assert.Equal(98, assumed.Find(SampleTable.XAngle)!.Value.Value.Degrees);
        Assert.True(assumed.Find(SampleTable.XAngle)!.Value.IsDefault);
        Assert.Null(assumed.Find(SampleTable.XTarget));
        Assert.Null(written.Find(SampleTable.XAngle));
        Assert.Equal(40, written.Find(SampleTable.XTarget)!.Value.Value);
    }

    [Theory]
    [InlineData("units = \"mm\"\nsoundhole.diameter = 95\nsoundhole.position = 0.3\nscale.length = 645\n")]
    [InlineData("units = \"mm\"\nsoundhole = { diameter = 95, position = 0.3 }\nscale.length = 645\n")]
    [InlineData("units = \"mm\"\n\"soundhole\" . \"diameter\" = 95.0\nsoundhole.position = 3e-1\n[scale]\nlength = 645\n")]
    [InlineData("units = \"in\"\nscale.length = \"645 mm\"\n[ soundhole ]\nposition = 0.3\ndiameter = \"95 mm\"\n")]
    public void ResolvedText_SameDesignInAnyForm_IsTheSame(string text)
    {
        var plain = SampleTable.Design("units = \"mm\"\n[scale]\nlength = 645\n[soundhole]\ndiameter = 95\nposition = 0.3\n");

        Assert.Equal(WithoutUnits(plain), WithoutUnits(SampleTable.Design(text)));
    }

    [Fact]
    public void ResolvedText_FullDesign_ListsEveryValueSorted() => Assert.Equal(
        """
        hand = left
        name = small parlour
        scale.body_fret = 12
        scale.length = 647.7
        season.glued_at = 50
        season.temperature = 21
        soundhole.diameter = 101.6
        soundhole.position = 0.25
        tone_bar.01.length = 101.6
        tone_bar.01.sawn = flat
        tone_bar.02.length = 100
        tone_bar.02.sawn = quarter_sawn
        units = in
        x_brace.target = 40
        x_brace.wood = sitka_spruce

        """.ReplaceLineEndings("\n"),
        SampleTable.Design(Full).ResolvedText());

    [Fact]
    public void Read_ListOfInlineTables_IsARepeatedSection()
    {
        var bars = SampleTable.Design(SampleTable.Least + "tone_bar = [{ length = 60 }, { length = 70 }]\n").Each(SampleTable.ToneBar);

        Assert.Equal([60.0, 70.0], bars.Select(b => b[SampleTable.BarLength].Value));
        Assert.Equal(new SourcePlace("a.toml", 3, 30, 15), bars[1].Place);
    }

    [Fact]
    public void Read_UnderACommaCulture_ChangesNothing()
    {
        const string Wrong = "units = \"in\"\nscale.length = 0.25\nsoundhole.diameter = \"4.25 in\"\nname = \"\"\n";
        var (design, findings) = (SampleTable.Design(Full).ResolvedText(), SampleTable.Printed(SampleTable.Read(Wrong)));
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("0,5", 0.5.ToString(CultureInfo.CurrentCulture));
            Assert.Equal(design, SampleTable.Design(Full).ResolvedText());
            Assert.Equal(findings, SampleTable.Printed(SampleTable.Read(Wrong)));
            Assert.Equal("4.25 in", LengthText.Write(107.95, LengthUnit.Inch));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Read_AnyText_DoesNotThrowAndGivesADesignExactlyWithoutErrors() => Draws.All(
        Gen.OneOf(Gen.String, Gen.Int[0, Scraps.Length - 1].Select(i => Scraps[i]).Array[0, 25].Select(string.Concat)),
        seed: 20263,
        count: 5_000,
        text =>
        {
            var reading = SampleTable.Read(text);
            Assert.Equal(reading.Findings.All(f => f.Severity != Severity.Error), reading.Design is not null);
            Assert.All(reading.Findings, f => Assert.True(f.Place is { Line: >= 1, Column: >= 1, Length: >= 0 }));
        });

    private static readonly string[] Scraps =
    [
        "units", " = ", "\"mm\"", "\n", "\r\n", "[", "]", "[[", "]]", "{", "}", ",", ".", "soundhole", "diameter", "scale", "length", "tone_bar", "645", "-1",
        "0.5", "nan", "1e999", "\"4 5/16 in\"", "'", "\"", "\"\"\"", "#", "\t", "é", "😀", "\uD800", "\0", "\uFEFF", "\\u00", "units = \"mm\"\nscale.length = 645\n",
        "[soundhole]\n", "[[tone_bar]]\n", "length = 60\n", "true", "1979-05-27", "x_brace = { angle = 98 }\n",
    ];

    private static IEnumerable<string> WithoutUnits(Design design) =>
        design.Resolved.Where(line => !line.StartsWith("units", StringComparison.Ordinal));
}
