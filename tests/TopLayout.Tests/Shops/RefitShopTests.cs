using System.Text.Json;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;
using TopLayout.Plans.Reports;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Shops;

/// <summary>Refits tried on whole designs.</summary>
public class RefitShopTests
{
    private const string Filler = "[[ring]]\nkind = \"filler\"\nwidth = 0.6\n\n";

    /// <summary>There and back: the same parameters, and the same bytes but for the lines that say hole and margin, and filler lines that come and go.</summary>
    [Theory]
    [InlineData("auditorium", 100, 97.5, 0)]
    [InlineData("auditorium", 100, 98.35, 0)]
    [InlineData("auditorium", 100, 92, 6)]
    [InlineData("jumbo", 104, 103, 0)]
    [InlineData("jumbo", 104, 97, 5)]
    [InlineData("classical", 86, 84.2, 0)]
    [InlineData("classical", 86, 82.8, 4)]
    [InlineData("concert", 94, 88, 0)]
    public void KeepRing_ThereAndBack_GivesTheDesignBack(string preset, double from, double to, int fillers)
    {
        var text = Built.PresetText(preset);

        var there = Kept(text, to);
        var back = Kept(there, from);

        Assert.NotEqual(text, there);
        Assert.Equal(Resolved(text), Resolved(back));
        Assert.Equal(fillers, there.Split(Filler).Length - 1);
        OnlyHoleAndMarginDiffer(text, there.Replace(Filler, "", StringComparison.Ordinal));
        OnlyHoleAndMarginDiffer(text, back);
    }

    /// <summary>With line ends of Windows and a byte-order mark, and with a maker's comment among the fillers: all of it stays.</summary>
    [Fact]
    public void KeepRing_ThereAndBack_KeepsLineEndsMarkAndComments()
    {
        var text = "\uFEFF" + Built.PresetText("jumbo").ReplaceLineEndings("\r\n");

        var there = Kept(text, 97);
        var noted = there.Replace("kind = \"filler\"\r\n", "kind = \"filler\"\r\n# black dyed\r\n", StringComparison.Ordinal);
        var back = Kept(noted, 104);

        Assert.Equal(5, there.Split(Filler.ReplaceLineEndings("\r\n")).Length - 1);
        Assert.Equal(Resolved(text), Resolved(back));
        Assert.Equal(5, back.Split("# black dyed\r\n").Length - 1);
        OnlyHoleAndMarginDiffer(text, back.Replace("# black dyed\r\n", "", StringComparison.Ordinal));
    }

    /// <summary>Whatever the hole: where the table says the ring comes to lie, the written design has it, with the fillers it promised inside.</summary>
    [Theory]
    [InlineData("auditorium")]
    [InlineData("jumbo")]
    [InlineData("classical")]
    public void EveryWay_WritesTheRingWhereTheTablePutsIt(string preset)
    {
        var done = 0;
        for (var diameter = 82.0; diameter <= 108; diameter += 6.5)
        {
            foreach (var tried in (RefitShop.Weigh(Built.PresetText(preset), "a.toml", diameter, null).Report?.Options ?? []).Where(o => o.Text is not null))
            {
                var layout = Layout(tried.Text!);
                var rings = Rosette.Channels(layout.Design, diameter / 2).SelectMany(c => c.Rings).ToList();
                var which = $"{preset}, {diameter}: {tried.Option.Key}";
                Assert.True(tried.Option.Fillers == rings.Count(r => r.Kind == RingKind.Filler), which);
                Check.Near(tried.Option.InnerMm, (diameter / 2) + rings.First(r => r.Kind != RingKind.Filler).InnerMm, 1e-6, which);
                Assert.True(layout.Design[Rosette.Margin].Value >= 2 - 1e-9, which);
                if (tried.Option.Tiles is { } tiles)
                {
                    Assert.True(tiles == rings.Single(r => r.Tiles is not null).Tiles!.Count, which);
                }

                done++;
            }
        }

        Assert.True(done > 8, $"only {done}");
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

    /// <summary>By hand: walls at the margin of 4.5 and 0.1 beyond the ring of 6. It takes the place of the design's own rings, or of its width.</summary>
    [Theory]
    [InlineData("auditorium")]
    [InlineData("concert")]
    public void SalvagedRing_TakesThePlaceOfWhatTheDesignHas(string preset)
    {
        var hole = Layout(Built.PresetText(preset)).Hole.Radius!.Value;
        var (report, _) = RefitShop.Weigh(Built.PresetText(preset), "a.toml", 2 * hole, new OldRing(hole + 4.5, hole + 10.5));

        var channel = Assert.Single(Rosette.Channels(Layout(report!.Options[0].Text!).Design, hole));
        Assert.Equal("keep-ring", report.Options[0].Option.Key);
        Check.Near(4.5, channel.InnerMm, 1e-9, "inner wall");
        Check.Near(10.6, channel.OuterMm, 1e-9, "outer wall");
        Assert.Equal(RingKind.Band, Assert.Single(channel.Rings).Kind);
    }

    /// <summary>By hand: 48 tiles at 60.5 are 7.92 long; laid at 50 + 4 + 6 = 60 they are 47.6, so 48 again as long as before, and 48 as many as before; at 45: 55 and 43.6.</summary>
    [Theory]
    [InlineData(100, "keep-count", 48)]
    [InlineData(90, "keep-count", 48)]
    [InlineData(90, "keep-ring", 48)]
    [InlineData(90, "keep-length", 44)]
    [InlineData(90, "segments", 44)]
    public void SalvagedTiles_AreWrittenWithTheirNumber(double hole, string way, int tiles)
    {
        var salvaged = new OldRing(54.5, 66.5) { Tiles = new OldTiles(48, 0, 12) };
        var (report, _) = RefitShop.Weigh(Built.PresetText("auditorium"), "a.toml", hole, salvaged);

        var tried = Assert.Single(report!.Options, o => o.Option.Key == way);
        Assert.True(tried.Text is not null, tried.Option.Reason);
        var row = Assert.Single(Rosette.Channels(Layout(tried.Text).Design, hole / 2).SelectMany(c => c.Rings), r => r.Tiles is not null);
        Assert.Equal(tiles, row.Tiles!.Count);
        Check.Near(12, row.WidthMm, 1e-9, "width");
    }

    /// <summary>
    /// By hand: the preset's 48 tiles, a motif of 4, lie at 50 + 4 + 1.2 + 3.25 = 58.45, 7.65 long; at 55.95 they are 45.95, so 46, 7.64 long, and no
    /// whole number of motifs.
    /// </summary>
    [Fact]
    public void Segments_ThatBreakTheMotif_AreWrittenAsLongAsTheyAre()
    {
        var (report, _) = RefitShop.Weigh(Built.PresetText("auditorium"), "a.toml", 95, null);

        var tried = Assert.Single(report!.Options, o => o.Option.Key == "segments");
        var row = Assert.Single(Rosette.Channels(Layout(tried.Text!).Design, 47.5).SelectMany(c => c.Rings), r => r.Tiles is not null);
        Assert.Equal(46, row.Tiles!.Count);
        Assert.Contains("the pattern of 4 breaks", tried.Option.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Report_SaysFillersAndAnOvalRing()
    {
        var text = RefitText.Of(RefitShop.Weigh(Built.PresetText("jumbo"), "a.toml", 97, null).Report!, LengthUnit.Millimetre);
        var json = JsonDocument.Parse(RefitJson.Write(RefitShop.Weigh(Built.PresetText("jumbo"), "a.toml", 97, null).Report!)).RootElement;
        var oval = RefitText.Of(RefitShop.Weigh(Built.PresetText("auditorium"), "a.toml", 100, new OldRing(55.3, 63.75) { OvalMm = 1 }).Report!, LengthUnit.Millimetre);

        Assert.Contains("\n   cost     5 filler lines of 0.6 mm inside the ring\n", text, StringComparison.Ordinal);
        Assert.Contains("\n   residue  0 mm, with the fillers 4.5 mm of bare wood stays\n", text, StringComparison.Ordinal);
        Assert.Equal(5, json.GetProperty("ways").EnumerateArray().Single(w => w.GetProperty("key").GetString() == "keep-ring").GetProperty("fillers").GetInt32());
        Assert.Contains("the ring measures 110.6 mm to 127.5 mm across, on the average; it is 1 mm oval;", oval, StringComparison.Ordinal);
    }

    /// <summary>By hand: 0.4 oval, the ring reaches 0.1 in and out: walls at 54.4 − 0.1 and 60.4 + 0.1, and 0.1 for glue.</summary>
    [Fact]
    public void SalvagedOval_LeftAsItIs_HasAChannelThatTakesIt()
    {
        var (report, _) = RefitShop.Weigh(Built.PresetText("auditorium"), "a.toml", 100, new OldRing(54.4, 60.4) { OvalMm = 0.4 });

        var channel = Assert.Single(Rosette.Channels(Layout(report!.Options[0].Text!).Design, 50));
        Check.Near(54.3, 50 + channel.InnerMm, 1e-9, "inner wall");
        Check.Near(60.6, 50 + channel.OuterMm, 1e-9, "outer wall");
    }

    /// <summary>
    /// By hand: the reinforcement's edges lie 20 and 30 from the hole, at 70 and 80, and the walls at 54 and 63; round a hole of 96 at 68 and 78, so
    /// that an edge and a wall come within 6 on one grain line. That is the grain check's to say; alone it said something else of the walls.
    /// </summary>
    [Fact]
    public void Findings_BeforeAndAfter_AreThoseOfTheGrainCheckToo()
    {
        var text = Built.PresetText("auditorium").With("[hole_reinforcement]\nstyle = \"ring\"\ninset = 20\nwidth = 10");

        var report = RefitShop.Weigh(text, "a.toml", 96, null).Report!;
        var kept = report.Options.Single(o => o.Option.Key == "keep-ring");

        Assert.Contains(kept.NewFindings, f => f.Rule.Code == "TL3002" && f.Sentence.Contains("hole reinforcement", StringComparison.Ordinal));
        Assert.Equal("TL3001", Assert.Single(kept.GoneFindings).Rule.Code);
        var said = RefitText.Of(report, LengthUnit.Millimetre);
        Assert.Contains("\n   then     note TL3002: the walls of the rosette channel", said, StringComparison.Ordinal);
        Assert.Contains("\n   no more  note TL3001: the walls of the rosette channel", said, StringComparison.Ordinal);
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

        var (report, refusal) = RefitShop.Weigh(design == "no rosette" ? text.WithRosette(null) : text, "a.toml", diameter, null);

        Assert.Null(report);
        Assert.Equal(said, refusal);
    }

    private static void OnlyHoleAndMarginDiffer(string text, string other)
    {
        var (lines, after) = (text.Split('\n'), other.Split('\n'));
        Assert.Equal(lines.Length, after.Length);
        Assert.All(lines.Zip(after).Where(l => l.First != l.Second), l => Assert.True(l.First.StartsWith("diameter", StringComparison.Ordinal) || l.First.StartsWith("margin", StringComparison.Ordinal), l.First));
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
