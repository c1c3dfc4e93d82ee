using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Shops;

/// <summary>Refits tried on whole designs.</summary>
public class RefitShopTests
{
    /// <summary>There and back: the same parameters, and the same bytes but for the two lines that say hole and margin.</summary>
    [Theory]
    [InlineData("auditorium", 100, 97.5)]
    [InlineData("auditorium", 100, 98.35)]
    [InlineData("jumbo", 104, 103)]
    [InlineData("classical", 86, 84.2)]
    public void KeepRing_ThereAndBack_GivesTheDesignBack(string preset, double from, double to)
    {
        var text = Built.PresetText(preset);

        var there = Kept(text, to);
        var back = Kept(there, from);

        Assert.NotEqual(text, there);
        Assert.Equal(Resolved(text), Resolved(back));
        var (lines, after) = (text.Split('\n'), there.Split('\n'));
        Assert.Equal(lines.Length, after.Length);
        Assert.All(lines.Zip(after).Where(l => l.First != l.Second), l => Assert.True(l.First.StartsWith("diameter", StringComparison.Ordinal) || l.First.StartsWith("margin", StringComparison.Ordinal), l.First));
    }

    [Fact]
    public void HoleOutsidePractice_IsARemarkWithTheRange()
    {
        var (report, _) = RefitShop.Weigh(Built.PresetText("parlour"), "a.toml", 82, null);

        Assert.Equal("usual for a parlour body is from 85 to 96 mm", report!.Remark);
        Assert.True(report.AirAfterHz < report.AirBeforeHz);
    }

    /// <summary>A hole so large that the legs reach over it: the findings are new, with the place of the crossing that cures them.</summary>
    [Fact]
    public void LargerHole_NamesTheClearancesItBreaksAndTheirCures()
    {
        var (report, refusal) = RefitShop.Weigh(Built.PresetText("auditorium").Replaced("below_hole = 33", "below_hole = 24"), "a.toml", 112, new OldRing(62, 68));

        Assert.Null(refusal);
        Assert.Contains(report!.Options.SelectMany(o => o.NewFindings), f => f.Cure is { } cure && cure.Contains("transverse", StringComparison.Ordinal) | cure.Contains("below_hole", StringComparison.Ordinal));
    }

    [Fact]
    public void SalvagedRing_RoundTheNewHole_WritesMarginAndWidthWithRoomForGlue()
    {
        var (report, _) = RefitShop.Weigh(Built.PresetText("auditorium"), "a.toml", 100, new OldRing(54.5, 60.5));

        var layout = Layout(report!.Options[0].Text!);
        Assert.Equal("keep-ring", report.Options[0].Option.Key);
        Assert.Equal((4.5, 6.1), (layout.Design[Rosette.Margin].Value, layout.Design[Rosette.Width].Value));
    }

    /// <summary>Nothing is recommended while a check that passed before fails.</summary>
    [Fact]
    public void HoleIntoTheLinings_RecommendsNothing()
    {
        var (report, _) = RefitShop.Weigh(Built.PresetText("parlour"), "a.toml", 190, new OldRing(98, 104));

        Assert.DoesNotContain(report!.Options, o => o.Option.Verdict == RefitVerdict.Recommended);
        Assert.StartsWith("once this is cured: ", report.Options[0].Option.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("auditorium", 300, "the hole must be from 15 to 200 mm across; it is 300 mm")]
    [InlineData("no rosette", 98, "the design has no [rosette], so there is no margin and no depth to go by")]
    public void Refit_ThatCannotBe_IsRefused(string design, double diameter, string said)
    {
        var text = Built.PresetText("auditorium");

        var (report, refusal) = RefitShop.Weigh(design == "no rosette" ? text.Without("[rosette]") : text, "a.toml", diameter, null);

        Assert.Null(report);
        Assert.Equal(said, refusal);
    }

    private static string Kept(string text, double diameter)
    {
        var (report, refusal) = RefitShop.Weigh(text, "a.toml", diameter, null);
        Assert.Null(refusal);
        return Assert.Single(report!.Options, o => o.Option.Key == "keep-ring").Text!;
    }

    private static List<string> Resolved(string text) => [.. DesignReader.Read(text, "a.toml", Parameters.Table).Design!.Resolved];

    private static Layout Layout(string text) => LayoutBuilder.Build(DesignReader.Read(text, "a.toml", Parameters.Table).Design!).Layout!;
}
