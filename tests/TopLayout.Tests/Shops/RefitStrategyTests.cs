using System.Text.RegularExpressions;
using TopLayout.Geometry;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Tests.Shops;

/// <summary>The ways to refit a ring, each against numbers worked by hand; none recommends what the margins refuse.</summary>
public class RefitStrategyTests
{
    /// <summary>By hand: ring 54 to 64 round a hole of 50; the new one of 48 leaves 6 of margin, of 53 only 1.</summary>
    [Theory]
    [InlineData(48, RefitVerdict.Recommended, "6 mm of wood stays between it and the hole")]
    [InlineData(53, RefitVerdict.Refused, "a margin of 1 mm between hole and ring; 2 mm is the least")]
    [InlineData(44, RefitVerdict.Workable, "the margin is 10 mm; 7 mm or less is usual")]
    public void KeepRing_AroundAnotherHole_GoesByTheMargin(double hole, RefitVerdict verdict, string reason)
    {
        var option = Weighed(Case(new OldRing(54, 64), hole) with { UsualMarginMm = 7, FillerMm = 0.5 }, "keep-ring");

        Assert.Equal(verdict, option.Verdict);
        Assert.Contains(reason, option.Reason, StringComparison.Ordinal);
        Check.Near(54, option.InnerMm, 1e-12, "the ring stays");
    }

    /// <summary>By hand: a ring 0.4 mm oval in diameter reaches 0.1 mm further in than its mean radius, and as far out: 2.05 − 0.1 is less than 2.</summary>
    [Fact]
    public void KeepRing_ALittleOval_IsLeftSoAndCountsItsNarrowestMargin()
    {
        var round = Weighed(Case(new OldRing(52.05, 60), 50), "keep-ring");
        var refused = Weighed(Case(new OldRing(52.05, 60) { OvalMm = 0.4 }, 50), "keep-ring");
        var oval = Weighed(Case(new OldRing(52.15, 60) { OvalMm = 0.4 }, 50), "keep-ring");

        Assert.Equal((RefitVerdict.Recommended, RefitVerdict.Refused, RefitVerdict.Recommended), (round.Verdict, refused.Verdict, oval.Verdict));
        Check.Near(0.2, oval.RoomMm, 1e-12, "room for the ring as it is, both walls together");
        Assert.EndsWith("the channel 0.2 mm wider, as the ring stays oval", oval.Cost, StringComparison.Ordinal);
    }

    /// <summary>A ring 1 mm oval is opened at a joint and comes round to its mean radius, which is what the margin then counts from.</summary>
    [Fact]
    public void KeepRing_MoreOval_IsOpenedAndCountsItsMean()
    {
        var option = Weighed(Case(new OldRing(52.05, 60) { OvalMm = 1 }, 50), "keep-ring");

        Assert.Equal(RefitVerdict.Workable, option.Verdict);
        Assert.StartsWith("open one joint and let the ring come round to its mean diameter", option.Cost, StringComparison.Ordinal);
        Check.Near(2.05, option.MarginMm, 1e-12, "margin");
        Check.Near(0, option.RoomMm, 1e-12, "no more room than a round one");
    }

    /// <summary>
    /// A curve drawn through points at R + (d/4)·cos 2θ: the circle through three neighbours differs in curvature from 1/R by most at the ends of
    /// its axes, and its length is that of the mean circle, so an opened ring closes again.
    /// </summary>
    [Fact]
    public void OvalRing_PressedRound_StrainsByWhatItsCurvatureChanges()
    {
        var ring = new OldRing(53, 63) { OvalMm = 0.8 };
        const int Points = 2000;
        var curve = Enumerable.Range(0, Points).Select(i => 2 * Math.PI * i / Points)
            .Select(t => (R: 58 + (0.2 * Math.Cos(2 * t)), T: t)).Select(p => new Point2(p.R * Math.Cos(p.T), p.R * Math.Sin(p.T))).ToList();

        double Curvature(int i)
        {
            var (a, b, c) = (curve[(i + Points - 20) % Points], curve[i], curve[(i + 20) % Points]);
            return 2 * (b - a).Cross(c - b) / (a.DistanceTo(b) * b.DistanceTo(c) * c.DistanceTo(a));
        }

        var change = Enumerable.Range(0, Points).Max(i => Math.Abs(Curvature(i) - (1.0 / 58)));
        Check.Near(change * 5, KeepRing.PressedRoundStrain(ring), 2e-5, "strain of the edges");
        Check.Near(2 * Math.PI * 58, Enumerable.Range(0, Points).Sum(i => curve[i].DistanceTo(curve[(i + 1) % Points])), 0.01, "length");
    }

    /// <summary>Worked: 54 to 57 with a tolerance of 0.1: chords of 28.6 mm, 13 joints, 18.8 mm of ring missing.</summary>
    [Fact]
    public void Segments_From54To57_AreThoseWorkedByHand()
    {
        var option = Weighed(Case(new OldRing(49, 59), 48), "segments");

        Check.Near(28.6, LaySegments.LongestChord(54, 57), 0.05, "chord");
        Check.Near(18.8, option.ResidueMm, 0.06, "missing");
        Assert.StartsWith("13 cuts", option.Cost, StringComparison.Ordinal);

        // A chord of that length across either circle: their arcs stand this far apart in the middle.
        static double Sagitta(double r) => r - Math.Sqrt((r * r) - (14.3 * 14.3));
        Check.Near(LaySegments.OffMm, Sagitta(54) - Sagitta(57), 0.006, "stand-off");
    }

    /// <summary>Worked: 54 to 57, a line of 1.5 mm strains by 0.07 %, a band of 10 mm by 0.49 %.</summary>
    [Theory]
    [InlineData(1.5, RefitVerdict.Workable)]
    [InlineData(10, RefitVerdict.Refused)]
    public void Spring_From54To57_IsForThinLines(double width, RefitVerdict verdict)
    {
        var ring = new OldRing(54 - (width / 2), 54 + (width / 2));
        var option = Weighed(Case(ring, 57 - (width / 2) - 4) with { MarginMm = 4 }, "spring");

        Assert.Equal(verdict, option.Verdict);
        Check.Near(2 * Math.PI * 3, option.ResidueMm, 1e-9, "missing");
    }

    [Fact]
    public void Spring_WithTheGapUnderTheBoard_IsRecommended()
    {
        var ring = new OldRing(53.25, 54.75);
        var refit = new RefitCase(ring, 52.25, 4, 1.4, (_, _) => new HiddenArc(Angle.FromDegrees(20)));

        var option = Weighed(refit, "spring");

        Assert.Equal((RefitVerdict.Recommended, "one gap, under the fretboard"), (option.Verdict, option.ResidueWhere));
        Assert.Equal("it strains its edges by 0.07 % only", option.Reason);
    }

    /// <summary>Tiles placed one by one round the new circle: what is left of it is the residue, for any radii and numbers.</summary>
    [Fact]
    public void Tiles_LaidAnew_LeaveTheResidueStated()
    {
        var random = new Random(20261125);
        for (var n = 0; n < 300; n++)
        {
            var ring = new OldRing(50, 60) { Tiles = new OldTiles(random.Next(8, 200), 0, 10) };
            var refit = Case(ring, 36 + (20 * random.NextDouble()));
            var (was, now) = (55.0, refit.LaidInnerMm + 5);
            var turn = 2 * Math.PI * was / ring.Tiles.Count / now;

            var (length, count) = (Weighed(refit, "keep-length"), Weighed(refit, "keep-count"));
            var laid = (int)Math.Round(((2 * Math.PI * now) - length.ResidueMm) / (turn * now));
            var end = 0.0;
            for (var i = 0; i < laid; i++)
            {
                end += turn;
            }

            Check.Near(((2 * Math.PI) - end) * now, length.ResidueMm, 1e-6, $"draw {n}: as long as before");
            Assert.True(Math.Abs(length.ResidueMm) <= (turn * now / 2) + 1e-9, $"draw {n}: more than half a tile is left");
            Check.Near(((2 * Math.PI) - (ring.Tiles.Count * turn)) * now, count.ResidueMm, 1e-6, $"draw {n}: as many as before");
        }
    }

    [Fact]
    public void KeepLength_OfTwoWoodsByTurns_KeepsTheNumberEven()
    {
        var ring = new OldRing(50, 60) { Tiles = new OldTiles(40, 0, 10) { Repeat = 2 } };

        // By hand: 2π·59.2 / (2π·55/40) = 43.05, so 43 tiles; of two woods 44: 2π·59.2 − 44·8.639 = −8.17.
        var option = Weighed(Case(ring, 50.2), "keep-length");

        Check.Near(-8.17, option.ResidueMm, 0.01, "residue");
    }

    /// <summary>By hand, margin 7.5, usual 3 to 6, so down to 4.5: five lines of 0.6 leave 4.5. Exactly 6 gets none; 24 lines are a rosette of their own.</summary>
    [Theory]
    [InlineData(46.5, 5, true)]
    [InlineData(48, 0, true)]
    [InlineData(35, 0, true)]
    [InlineData(46.5, 0, false)]
    public void KeepRing_WithTooWideAMargin_AddsFillersWhereItCan(double hole, int fillers, bool canFill)
    {
        var option = Weighed(Case(new OldRing(54, 64), hole) with { FilledMarginMm = 4.5, CanFill = canFill }, "keep-ring");

        Assert.Equal(fillers, option.Fillers);
        Assert.Equal(fillers > 0, option.ResidueWhere == "with the fillers 4.5 mm of bare wood stays");
    }

    /// <summary>A maker who leaves 8 mm bare anyway gets none.</summary>
    [Fact]
    public void KeepRing_OfAMakerWhoLeavesMoreBareWoodThanUsual_AddsNone() =>
        Assert.Equal(0, Weighed(Case(new OldRing(54, 64), 45) with { MarginMm = 8 }, "keep-ring").Fillers);

    /// <summary>Rigid pieces keep their tiles' length: 60 tiles at 54 are 63.3 at 57, so 63; two woods by turns meet their like once.</summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    public void Segments_OfTiles_KeepTheirLength(int repeat, bool breaks)
    {
        var option = Weighed(Case(new OldRing(49, 59) { Tiles = new OldTiles(60, 0, 10) { Repeat = repeat } }, 48), "segments");

        Assert.Equal(63, option.Tiles);
        Assert.Equal(breaks, option.Reason.EndsWith($"with 63 tiles the pattern of {repeat} breaks at one of them", StringComparison.Ordinal));
    }

    /// <summary>Old and new diameters over a grid, rings of every kind: what is recommended keeps the least margin and floor.</summary>
    [Fact]
    public void Recommended_IsNeverWhatTheMarginsRefuse()
    {
        var recommended = 0;
        var refused = new List<string>();
        for (var old = 70.0; old <= 110; old += 4)
        {
            for (var now = 70.0; now <= 110; now += 2.5)
            {
                foreach (var (margin, width, floor) in new[] { (1.5, 9.0, 1.4), (4, 1.5, 1.4), (4, 9, 0.5), (5, 12, 1.2) })
                {
                    var ring = new OldRing((old / 2) + margin, (old / 2) + margin + width) { Tiles = width > 8 ? new OldTiles(60, 0, width) : null };
                    var options = RefitStrategy.Weighed(new RefitCase(ring, now / 2, margin, floor, (_, _) => new HiddenArc(Angle.FromDegrees(25))));
                    Assert.Equal(options.Select(o => o.Verdict).Order(), options.Select(o => o.Verdict));
                    refused.AddRange(options.Where(o => o.Verdict == RefitVerdict.Refused).Select(o => o.Reason));
                    foreach (var option in options.Where(o => o.Verdict != RefitVerdict.Refused))
                    {
                        recommended++;
                        Assert.True(option.InnerMm - (now / 2) >= 2 - 1e-6 && floor >= 0.8, $"{old} to {now}, {option.Key}: margin {option.MarginMm}, floor {floor}");
                    }
                }
            }
        }

        Assert.True(recommended > 200, $"only {recommended}");
        Assert.True(refused.Count > 200, $"only {refused.Count}");
        Assert.All(refused, reason => Assert.True(reason == "the ring has no tiles" || Regex.IsMatch(reason, "[0-9]+(\\.[0-9]+)? (mm|%|tiles)"), reason));
    }

    private static RefitCase Case(OldRing ring, double hole) => new(ring, hole, 4, 1.4, (_, _) => new HiddenArc(Angle.Zero));

    private static RefitOption Weighed(RefitCase refit, string key) => Assert.Single(RefitStrategy.Weighed(refit), o => o.Key == key);
}
