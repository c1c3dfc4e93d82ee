using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans;

namespace TopLayout.Tests.Parts;

/// <summary>What the key `body` sets, and what it leaves alone.</summary>
public class BodyTests
{
    private const string X = "[x_brace]\n[bridge_plate]\n";

    public static TheoryData<string> Words => [.. Body.All.Select(Body.Word)];

    [Theory]
    [MemberData(nameof(Words))]
    public void Check_BodyAndScaleAlone_GivesALayoutWithoutARemark(string word)
    {
        var review = Pipeline.Check(Least(word), "t.toml");

        Assert.Equal([], review.Findings.Where(f => f.Severity is Severity.Error or Severity.Remark).Select(FindingText.Of));
        Assert.NotNull(review.Top);
    }

    // Tone bars lie behind an X, so not on a classical body. Between a ukulele's block and its transverse brace nothing finds room.
    [Theory]
    [InlineData("parlour", X + "[rosette]\n[transverse_brace]\n[tongue]\n[[tone_bar]]\n")]
    [InlineData("parlour", X + "[rosette]\n[transverse_brace]\n[flat_brace]\n[[tone_bar]]\n")]
    [InlineData("classical", X + "[rosette]\n[transverse_brace]\n[tongue]\n")]
    [InlineData("classical", X + "[rosette]\n[transverse_brace]\n[flat_brace]\n")]
    [InlineData("concert", X + "[rosette]\n[transverse_brace]\n[tongue]\n[[tone_bar]]\n")]
    [InlineData("concert", X + "[rosette]\n[transverse_brace]\n[flat_brace]\n[[tone_bar]]\n")]
    [InlineData("auditorium", X + "[rosette]\n[transverse_brace]\n[tongue]\n[[tone_bar]]\n[[tone_bar]]\nbehind_plate = 56\nangle = 69\n")]
    [InlineData("auditorium", X + "[rosette]\n[transverse_brace]\n[flat_brace]\n[[tone_bar]]\n")]
    [InlineData("square-shouldered", X + "[rosette]\n[transverse_brace]\n[tongue]\n[[tone_bar]]\n[[tone_bar]]\nbehind_plate = 56\nangle = 69\n")]
    [InlineData("square-shouldered", X + "[rosette]\n[transverse_brace]\n[flat_brace]\n[[tone_bar]]\n")]
    [InlineData("jumbo", X + "[rosette]\n[transverse_brace]\n[tongue]\n[[tone_bar]]\n[[tone_bar]]\nbehind_plate = 56\nangle = 69\n")]
    [InlineData("jumbo", X + "[rosette]\n[transverse_brace]\n[flat_brace]\n[[tone_bar]]\n")]
    [InlineData("tenor-ukulele", X + "[rosette]\n[transverse_brace]\n")]
    [InlineData("tenor-ukulele", X + "[rosette]\n[tongue]\n")]
    [InlineData("octave-mandolin", X + "[rosette]\n[transverse_brace]\n[tongue]\n[[tone_bar]]\n")]
    [InlineData("octave-mandolin", X + "[rosette]\n[transverse_brace]\n[flat_brace]\n[[tone_bar]]\n")]
    public void Check_BodyAndItsParts_FitWithoutARemarkOnUsualPractice(string word, string parts)
    {
        var review = Pipeline.Check(Least(word) + parts, "t.toml");

        var spoiled = review.Findings.Where(f =>
            f.Severity == Severity.Error || f.Rule == Rules.Unusual || (f.Rule == Rules.PartsOverlap && f.Severity == Severity.Fail));
        Assert.Equal([], spoiled.Select(FindingText.Of));
        Assert.NotNull(review.Top);
    }

    // The outlines computed by a second program, as in OutlineRecipeTests.
    [Theory]
    [MemberData(nameof(OutlineRecipeTests.Worked), MemberType = typeof(OutlineRecipeTests))]
    public void Recipe_OfABody_IsTheWorkedOne(string body, double[] stations, double[] fractions, double[] expected)
    {
        Assert.NotEmpty(expected);
        var design = DesignReader.Read(Least(body.Replace(' ', '-')), "t.toml", Parameters.Table).Design!;

        Assert.Equal(OutlineRecipeTests.Recipe(stations, fractions), Outline.Recipe(design));
    }

    [Fact]
    public void Outline_OfTheOctaveMandolin_HasItsWidthAndLength()
    {
        var bounds = Pipeline.Check(Least("octave-mandolin"), "t.toml").Top!.Layout.Outline.Bounds;

        Check.Near(356, bounds.Width, 1e-9);
        Check.Near(405, bounds.Height, 1e-9);
    }

    [Fact]
    public void Remark_OnUsualPractice_NamesTheBodyAndItsRange()
    {
        const string Ending = "scale.length = 650\nsoundhole.diameter = 110\n";
        Assert.Equal(
            "t.toml:5:22: remark TL1010: `diameter` is 110 mm; usual for a classical body is from 82 to 90 mm",
            Remark("name = \"n\"\nunits = \"mm\"\nbody = \"classical\"\n" + Ending));
        Assert.Equal(
            "t.toml:5:22: remark TL1010: `diameter` is 110 mm; usual is from 55 to 106 mm",
            Remark("name = \"n\"\nunits = \"mm\"\nrevision = \"B\"\n" + Ending));
        Assert.Equal(
            "t.toml:5:19: remark TL1010: `join_fret` is 14; usual for a parlour body is 12",
            Remark("name = \"n\"\nunits = \"mm\"\nbody = \"parlour\"\nscale.length = 620\nscale.join_fret = 14\n"));
        Assert.Equal(
            "t.toml:5:22: remark TL1010: `diameter` is 60.96 mm (`2.4 in`); usual for an octave mandolin body is from 80 to 102 mm",
            Remark("name = \"n\"\nunits = \"mm\"\nbody = \"octave-mandolin\"\nscale.length = 540\nsoundhole.diameter = \"2.4 in\"\n"));
    }

    [Fact]
    public void Error_OnARange_HintsAtTheBodysValues()
    {
        var reading = Read("name = \"n\"\nunits = \"mm\"\nbody = \"tenor-ukulele\"\nscale.length = 430\nsoundhole.diameter = 500\n");

        Assert.Equal("write for example `diameter = 60`; usual for a tenor ukulele body is from 55 to 66 mm", Assert.Single(reading.Findings).Cure);
        Assert.Equal("add `[scale]`, and below it a line such as `length = 432`", Read("name = \"n\"\nunits = \"mm\"\nbody = \"tenor-ukulele\"\n").Findings[0].Cure);
    }

    [Fact]
    public void WithoutBody_GeneralDefaultsHoldAndNothingIsResolvedForIt()
    {
        var design = Read("name = \"n\"\nunits = \"mm\"\nscale.length = 645\n").Design!;

        Assert.Null(design.Find(Body.Type));
        Assert.Equal(500, design[Outline.Length].Value);
        Assert.Equal(5, design.Find(Soundhole.Gap)!.Value.Value);
        Assert.DoesNotContain(design.Resolved, line => line.StartsWith("body", StringComparison.Ordinal));
        Assert.Equal(0, Read(Least("classical")).Design!.Find(Soundhole.Gap)!.Value.Value);
    }

    [Fact]
    public void BodyValues_ThatContradictTheParameter_AreRefusedWhenTheTableIsMade()
    {
        Assert.Throws<ArgumentException>(() => Made(BodyValues.Of(jumbo: 300)));
        Assert.Throws<ArgumentException>(() => Made(BodyValues.Of(jumbo: (100, 300))));
        Assert.Throws<ArgumentException>(() => Made(BodyValues.Of(jumbo: (90, 100, 110))));
        Assert.NotNull(Made(BodyValues.Of(jumbo: (105, 100, 110))));

        static Parameter Made(BodyValues values) => Parameter.Length(Section.Root, "key", "meaning", possible: (10, 200), fallback: 98, byBody: values);
    }

    private static Reading Read(string text) => DesignReader.Read(text, "t.toml", Parameters.Table);

    private static string Remark(string text) => FindingText.Of(Assert.Single(Read(text).Findings));

    private static string Least(string word)
    {
        var body = Body.All.Single(b => Body.Word(b) == word);
        var (low, high) = Scale.Length.UsualFor(body)!.Value;
        return $"name = \"least\"\nunits = \"mm\"\nbody = \"{word}\"\nscale.length = {(int)((low + high) / 2)}\n";
    }
}
