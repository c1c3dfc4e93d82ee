using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Shops;

/// <summary>The numbers to cut a rosette by, against polygons drawn point by point and values worked by hand.</summary>
public class RosetteNumberTests
{
    private const int Seed = 20261125;

    /// <summary>By hand, bit 3, pin 4: an inner wall at 54 has the bit's centre at 55.5 and 52 between near edges; an outer wall at 60: 58.5, and 62 over all.</summary>
    [Fact]
    public void Cutter_AtTheWalls_IsHalfABitAway()
    {
        var inner = CutterSettings.WasteOutside("inner", 54, 1.5, 3, 4);
        var outer = CutterSettings.WasteInside("outer", 60, 1.5, 3, 4);

        Assert.Equal((55.5, 52.0), (inner.PivotToBitMm, inner.PinToBitEdgeMm));
        Assert.Equal((58.5, 62.0), (outer.PivotToBitMm, outer.PinToBitEdgeMm));
    }

    /// <summary>The bit turned about the pivot, point by point: it touches the wall and never leaves the channel.</summary>
    [Fact]
    public void Cutter_TurnedAboutThePivot_TouchesTheWallsAndStaysBetweenThem()
    {
        var layout = Built.Preset("auditorium");
        var cuts = CutterSettings.Of(layout);

        Assert.Equal(["rosette channel, outer wall", "rosette channel, inner wall", "soundhole"], cuts.Select(c => c.Name));
        var reach = cuts.Select(c => Enumerable.Range(0, 3600)
            .Select(i => new Vec2(c.PivotToBitMm + (1.5 * Math.Cos(i * Math.PI / 1800)), 1.5 * Math.Sin(i * Math.PI / 1800)).Length).ToList()).ToList();
        Check.Near(63, reach[0].Max(), 1e-9, "outer wall");
        Check.Near(54, reach[1].Min(), 1e-9, "inner wall");
        Check.Near(50, reach[2].Max(), 1e-9, "hole");
        Assert.All(cuts.Take(2), c => Check.Near(1.6, c.DepthMm, 1e-12, "1.4 deep once 0.2 is levelled off"));
        Check.Near(2.8, cuts[2].DepthMm, 1e-12, "a top of 2.8, levelled");
    }

    /// <summary>By hand, a channel from 54, bit 3: one 2.2 wide takes a bit of 2, its centre at 56.2 - 1 and 54 + 1; one 0.4 wide finds none that is sold.</summary>
    [Fact]
    public void Cutter_WithABitWiderThanTheChannel_TakesTheLargestUsualOneThatFits()
    {
        var cuts = CutterSettings.Of(Built.Preset("auditorium", t => t.WithRosette("margin = 4\nwidth = 2.2\ndepth = 1.4\n")));
        var thin = CutterSettings.Of(Built.Preset("auditorium", t => t.WithRosette("margin = 4\nwidth = 0.4\ndepth = 1.4\n")));

        Assert.Equal([(2, 55.2), (2, 55), (3, 48.5)], cuts.Select(c => (c.BitMm, Math.Round(c.PivotToBitMm, 9))));
        Assert.All(cuts, c => Assert.True(c.FitsBit));
        Assert.Equal([false, false, true], thin.Select(c => c.FitsBit));
    }

    /// <summary>
    /// By hand, hole 43: lines from 48 to 49.1 and from 58.9 to 60 are 1.1 wide and take a bit of 1 instead of 3; the tiles between them share
    /// both walls, take the bit of 3 and are cleared by two passes, 58.9 - 1.5 and 49.1 + 1.5, 1.0 deep and 0.2 more.
    /// </summary>
    [Fact]
    public void Cuts_OfTheClassicalsThreeChannels_AreWorkedWithBitsThatFit()
    {
        var cuts = CutterSettings.Of(Built.Preset("classical"));

        Assert.Equal([1, 1, 3, 3, 1, 1, 3], cuts.Select(c => c.BitMm));
        Assert.Equal([59.5, 59.4, 57.4, 50.6, 48.6, 48.5, 41.5], cuts.Select(c => Math.Round(c.PivotToBitMm, 9)));
        Assert.Equal([1.4, 1.4, 1.2, 1.2, 1.4, 1.4, 2.4], cuts.Select(c => Math.Round(c.DepthMm, 9)));
        Assert.Equal("rosette channel 2, outermost pass", cuts[2].Name);
    }

    /// <summary>Worked: a line of 0.5 mm at radius 55 strains 0.45 %, and the next one is 2π·0.5 = 3.14 mm longer. The lengths are those of polygons of 100 000 sides.</summary>
    [Fact]
    public void Line_Bent_IsAsLongAsItsMiddleLine()
    {
        var line = new BentLine(55, 0.5);

        Check.Near(Around(55.25), line.LengthMm, 1e-6, "length");
        Check.Near((Around(55.5) - Around(55.25)) / Around(55.25), line.Strain, 1e-9, "strain");
        Check.Near(0.0045, line.Strain, 0.00005, "the value worked by hand");
        Check.Near(3.1, new BentLine(55.5, 0.5).LengthMm - line.LengthMm, 0.05, "the next line");
        Check.Near(line.LengthMm - 40 + 15, line.StripMm(40), 1e-12, "strip");
    }

    /// <summary>Worked: N 40, h 12: 1.88; N 60, h 10: 1.05; N 120, h 8: 0.42.</summary>
    [Theory]
    [InlineData(40, 12, 1.88)]
    [InlineData(60, 10, 1.05)]
    [InlineData(120, 8, 0.42)]
    public void StraightTiles_LeaveTheGapWorkedByHand(int count, double depth, double gap) =>
        Check.Near(gap, new Tile(new TileRow(count, TileShape.Straight), 50, 50 + depth).OuterGapMm, 0.005, "outer gap");

    /// <summary>Worked: N 30, Ri 50: the corners stand 0.27 off; N 30, Ro 60: 0.33 proud; 0.1° a face on 30 tiles is 6°.</summary>
    [Fact]
    public void Tiles_Of30_HaveTheStandOffAndBuildUpWorkedByHand()
    {
        var tile = new Tile(new TileRow(30, TileShape.Wedge), 50, 60);

        Check.Near(0.27, tile.StandOffMm, 0.01, "inner corner");
        Check.Near(0.33, new Tile(tile.Row, 60, 70).StandOffMm, 0.005, "outer corner");
        Check.Near(6, tile.BuildUp(Angle.FromDegrees(0.1)).Degrees, 1e-9, "build-up");
        Check.Near(2 * 10 * Math.Tan(Math.PI / 30), tile.TaperMm, 1e-9, "taper");
    }

    /// <summary>Tiles laid out as polygons: no two share area, and the corners' distances are the gaps that are stated.</summary>
    [Theory]
    [InlineData(TileShape.Wedge)]
    [InlineData(TileShape.Straight)]
    public void Tiles_LaidRound_NeverOverlapAndLeaveTheGapsStated(TileShape shape)
    {
        var random = new Random(Seed);
        for (var n = 0; n < 200; n++)
        {
            var (count, inner) = (random.Next(6, 200), 25 + (40 * random.NextDouble()));
            var tile = new Tile(new TileRow(count, shape), inner, inner + 1 + (14 * random.NextDouble()));
            var row = Enumerable.Range(0, count).Select(i => Corners(tile, i)).ToList();

            var gaps = 0.0;
            foreach (var (i, corners) in row.Index())
            {
                var next = row[(i + 1) % count];
                var which = $"seed {Seed}, draw {n}: {shape}, {count} tiles";
                Check.Near(0, corners[0].DistanceTo(next[1]), 1e-9, $"{which}: they touch inside");
                gaps += corners[3].DistanceTo(next[2]);

                // The whole neighbour lies on the far side of the edge from this tile's corner to corner.
                var side = corners[3] - corners[0];
                Assert.All(next, p => Assert.True(side.Cross(p - corners[0]) > -1e-9, which));
            }

            Check.Near(tile.GapSumMm, gaps, 1e-6, $"seed {Seed}, draw {n}: sum of gaps");
        }
    }

    /// <summary>Tiles finished and laid, any number, size, shape and start: none over the next, none outside the channel, the gaps those stated.</summary>
    [Fact]
    public void Tiles_FinishedAndLaid_StayInTheirChannelAndLeaveTheGapsStated()
    {
        var random = new Random(Seed);
        for (var n = 0; n < 400; n++)
        {
            var (count, inner) = (random.Next(12, 200), 25 + (40 * random.NextDouble()));
            var row = new TileRow(count, (TileShape)random.Next(2)) { Start = (TileStart)random.Next(2) };
            var tile = new Tile(row, inner, inner + 3 + (12 * random.NextDouble()));
            var (which, center) = ($"seed {Seed}, draw {n}: {row}", new Point2(3, -145));
            var gaps = 0.0;
            for (var i = 0; i < count; i++)
            {
                var (laid, next) = (tile.Laid(i, center), tile.Laid(i + 1, center));
                Assert.True(Area(laid) > 0, $"{which}: clockwise or empty");
                Assert.All(laid, p => Assert.True(p.DistanceTo(center) <= tile.OuterRadiusMm + 1e-9, $"{which}: outside the outer wall"));
                Check.Near(inner, FromLine(center, laid[3], laid[0]), 1e-9, $"{which}: its inner end touches the inner wall");
                Check.Near(0, laid[3].DistanceTo(next[0]), 1e-9, $"{which}: they touch inside");
                gaps += laid[2].DistanceTo(next[1]);

                // The whole neighbour lies on the far side of this tile's second side.
                Assert.All(next, p => Assert.True((laid[2] - laid[3]).Cross(p - laid[3]) > -1e-9, $"{which}: over the next"));
            }

            Check.Near(count * tile.GapAt(tile.FinishedDepthMm), gaps, 1e-6, $"{which}: sum of gaps");
            Check.Near(tile.OuterRadiusMm, tile.Laid(0, center)[1].DistanceTo(center), 1e-9, $"{which}: the outer corners touch the outer wall");
        }

        static double Area(IReadOnlyList<Point2> p) => ((p[2].X - p[0].X) * (p[3].Y - p[1].Y)) - ((p[3].X - p[1].X) * (p[2].Y - p[0].Y));
        static double FromLine(Point2 point, Point2 a, Point2 b) => Math.Abs((b - a).Cross(point - a)) / a.DistanceTo(b);
    }

    /// <summary>A joint, or the middle of a tile, lies on the centre line at the tail end; with an even number so it does at the neck end.</summary>
    [Theory]
    [InlineData(TileStart.Joint, 40)]
    [InlineData(TileStart.Tile, 40)]
    [InlineData(TileStart.Tile, 41)]
    public void Tiles_Start_LiesOnTheCentreLine(TileStart start, int count)
    {
        var tile = new Tile(new TileRow(count, TileShape.Wedge) { Start = start }, 50, 60);
        var first = tile.Laid(0, new Point2(0, 0));

        var on = start == TileStart.Joint ? first[0] : first[0].MidpointTo(first[3]);
        Check.Near(0, on.X, 1e-9, "on the line");
        Assert.True(on.Y < -49, "towards the tail");
        var opposite = tile.Laid(count / 2, new Point2(0, 0));
        Assert.Equal(count % 2 == 0, Math.Abs((start == TileStart.Joint ? opposite[0] : opposite[0].MidpointTo(opposite[3])).X) < 1e-9);
    }

    /// <summary>Worked: straight tiles pass from N &gt; 2πh/0.15: 418.9 for 10 mm; the gap is then 0.15 and one tile fewer leaves more.</summary>
    [Fact]
    public void StraightTiles_PassFromTheNumberStated()
    {
        static double Gap(int count) => new Tile(new TileRow(count, TileShape.Straight), 50, 60).OuterGapMm;

        Assert.Equal(419, new Tile(new TileRow(40, TileShape.Straight), 50, 60).StraightFrom);
        Assert.True(Gap(419) <= Tile.UnseenGapMm && Gap(418) > Tile.UnseenGapMm);
    }

    /// <summary>By hand, N 30, Ri 50, Ro 60: 60·cos 6° − 50 = 9.671 deep, 2·60·sin 6° = 12.543 wide outside; the blank is 0.33 deeper.</summary>
    [Fact]
    public void Tile_Finished_IsSmallerThanItsBlankByTheCornersThatStoodProud()
    {
        var tile = new Tile(new TileRow(30, TileShape.Wedge), 50, 60);

        Check.Near(9.671, tile.FinishedDepthMm, 0.001, "depth");
        Check.Near(12.543, tile.FinishedOuterWidthMm, 0.001, "width");
        Check.Near(0.33, tile.DepthMm - tile.FinishedDepthMm, 0.002, "proud");
    }

    /// <summary>Worked: R 60, board 57 away and 57 wide: 38 mm; 62, 55: 59; 64, 43, 62 wide: 65; a band 54 to 62 with the board at 55: nothing.</summary>
    [Theory]
    [InlineData(60, 60, 57, 57, 38)]
    [InlineData(62, 62, 55, 57, 59)]
    [InlineData(64, 64, 43, 62, 65)]
    [InlineData(54, 62, 55, 57, 0)]
    public void HiddenArc_HasTheLengthWorkedByHand(double inner, double outer, double toBoard, double board, double expected)
    {
        var arc = HiddenArc.Of(inner, outer, toBoard, board / 2, margin: 0);

        Check.Near(expected, arc.LengthAt(outer), 0.5, "length");
    }

    /// <summary>Point by point round the ring: as much of it as is said, and no more, lies under the board with its margin.</summary>
    [Fact]
    public void HiddenArc_OfAnyRing_IsWhatAWalkRoundItFinds()
    {
        var random = new Random(Seed);
        for (var n = 0; n < 100; n++)
        {
            var inner = 40 + (30 * random.NextDouble());
            var (outer, toBoard, half) = (inner + (15 * random.NextDouble()), 35 + (40 * random.NextDouble()), 20 + (15 * random.NextDouble()));

            bool IsHidden(double w) => new[] { inner, outer }.All(r => r * Math.Cos(w) >= toBoard + 3 && r * Math.Sin(w) <= half - 3);
            var walked = Enumerable.Range(0, 20000).Select(i => i * Math.PI / 2 / 20000).TakeWhile(IsHidden).Count() * Math.PI / 2 / 20000;

            Check.Near(walked, HiddenArc.Of(inner, outer, toBoard, half).HalfTurn.Radians, 1e-4, $"seed {Seed}, draw {n}");
        }
    }

    /// <summary>
    /// A table printed for a bottle of 750 ml with a neck 8 cm long and 1.8 cm wide, end correction 1.2 r: 9.08 cm, 2.54 cm², about 105.5 Hz
    /// (a public calculator's worked example).
    /// </summary>
    [Fact]
    public void Air_OfABottle_HasThePublishedFrequency() => Check.Near(105.5, AirResonance.Hz(Math.PI * 81, 80 + (1.2 * 9), 750_000), 0.5, "Hz");

    /// <summary>A published estimate for a rigid classical body is about 130 Hz; a hole 10 % larger raises it by nearly √1.1.</summary>
    [Fact]
    public void Air_OfAClassicalBody_IsNearThePublishedEstimateAndRisesWithTheHole()
    {
        var hz = AirResonance.Of(Built.Preset("classical"))!.Value;
        var larger = AirResonance.Of(Built.Preset("classical", t => t.Replaced("diameter = 86", "diameter = 94.6")))!.Value;

        Check.Near(130, hz, 10, "Hz");
        Check.Near(Math.Sqrt(1.1), larger / hz, 0.002, "ratio");
    }

    // Inner ends first: the corner towards the next tile, the one towards the tile before, then the outer ones in turn.
    private static Point2[] Corners(Tile tile, int index)
    {
        var turn = 2 * Math.PI * index / tile.Row.Count;
        Point2 At(double along, double across) => new(
            (along * Math.Cos(turn)) - (across * Math.Sin(turn)), (along * Math.Sin(turn)) + (across * Math.Cos(turn)));
        var (a, b) = (tile.InnerWidthMm / 2, tile.OuterWidthMm / 2);
        return [At(tile.InnerRadiusMm, a), At(tile.InnerRadiusMm, -a), At(tile.OuterRadiusMm, -b), At(tile.OuterRadiusMm, b)];
    }

    private static double Around(double radius) => 100_000 * 2 * radius * Math.Sin(Math.PI / 100_000);
}
