using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans;
using TopLayout.Plans.Reports;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>The tables of numbers, against what the design files say and what is worked from it by hand.</summary>
public class BenchNumberTests
{
    /// <summary>2 x 6 and 1.5 x 1.5 as the design says; the purfling lies from 2 to 2 + 1.5 off the edge.</summary>
    [Theory]
    [InlineData("binding ledge, width from the edge", "2.00", "cut round the closed box")]
    [InlineData("binding ledge, depth down the side", "6.00", "")]
    [InlineData("purfling ledge, width", "1.50", "inside the binding, from 2 to 3.5 mm off the edge")]
    [InlineData("purfling ledge, depth from the top's face", "1.50", "")]
    [InlineData("linings, width on the glued edge", "7.00", "true mahogany")]
    [InlineData("linings, height down the side", "17.00", "")]
    public void Rim_OfTheArcChain_HasLiningsBindingAndPurfling(string what, string value, string remark) =>
        Assert.Equal([what, value, remark], Row("arc-chain", "rim", what));

    [Fact]
    public void Rim_WithoutABinding_NamesNoLedge() => Assert.DoesNotContain(Table("auditorium", "rim"), r => r[0].Contains("ledge", StringComparison.Ordinal));

    /// <summary>
    /// The octave mandolin: half the outline all round is the strip and half the flat of 60. The cutaway: the treble half is the flat to the wall
    /// at 36 and the strip.
    /// </summary>
    [Fact]
    public void SideStrip_OfABodyWithMeantCorners_RunsFromTheCorner()
    {
        var octave = Built.Preset("octave-mandolin");
        Assert.Equal("60.00", Row("octave-mandolin", "body", "neck flat, corner to corner")[1]);
        Check.Near((octave.Outline.Length / 2) - 30, Length(octave, "one side strip, neck corner to tail, without allowance"), 1e-9, "octave mandolin");

        var cutaway = Built.Preset("cutaway");
        var halves = new[] { "bass side strip, centre line at the neck to tail, without allowance", "treble side strip, neck corner to tail, without allowance", "neck flat, centre line to the treble corner" };
        Check.Near(cutaway.Outline.Length, halves.Sum(h => Length(cutaway, h)), 1e-9, "cutaway");
        Assert.Equal("36.00", Row("cutaway", "body", "neck flat, centre line to the treble corner")[1]);
    }

    /// <summary>A pointed horn is a corner too: two strips, which with the flat make up the half.</summary>
    [Fact]
    public void SideStrips_OfAPointedCutaway_MeetAtTheHorn()
    {
        var layout = Built.Preset("pointed-cutaway");
        var treble = layout.Outline.Length - Length(layout, "bass side strip, centre line at the neck to tail, without allowance");
        string[] pieces = ["neck flat, centre line to the treble corner", "treble side strip, neck corner to point, without allowance", "treble side strip, point to tail, without allowance"];

        Check.Near(treble, pieces.Sum(p => Length(layout, p)), 1e-9, "treble half");
    }

    [Fact]
    public void SideStrip_OfARoundShoulder_IsHalfTheOutline()
    {
        var layout = Built.Preset("auditorium");

        Check.Near(layout.Outline.Length / 2, Length(layout, "one side strip, centre line at the neck to tail, without allowance"), 1e-9, "strip");
        Assert.DoesNotContain(Table("auditorium", "body"), r => r[0].StartsWith("neck flat", StringComparison.Ordinal));
    }

    /// <summary>As the design says: wall 36 from the line and 20 long, horn 138 out and 128 down.</summary>
    [Fact]
    public void Body_OfTheCutaway_HasWallAndHorn()
    {
        Assert.Equal("36.00", Row("cutaway", "body", "cutaway wall, from the centre line")[1]);
        Assert.Equal("20.00", Row("cutaway", "body", "cutaway wall, length from the neck edge")[1]);
        Assert.Equal("138.00", Row("cutaway", "body", "horn, treble half-width")[1]);
        Assert.Equal("128.00", Row("cutaway", "body", "horn, treble half, from neck edge")[1]);
    }

    /// <summary>Classical: hole 86, ring from 1 to 12 off its edge: 88 inside, 110 outside; its centre 111.09 + 43 down. Auditorium: cap 25 square.</summary>
    [Theory]
    [InlineData("classical", "hole reinforcement", "ring, 110 outside, 88 inside, centre 154.1 mm")]
    [InlineData("auditorium", "X cap", "25.00 mm square, over the crossing: glued to the legs, not to the top")]
    [InlineData("parlour", "cleats 1 to 3", "3 alike, diamonds 20.00 across and 15.00 mm along; middles at ")]
    [InlineData("octave-mandolin", "cleats 1 and 2", "2 alike, ")]
    [InlineData("arc-chain", "linings, bass and treble alike", "7.00 mm wide on the glued edge")]
    public void Pieces_SayWhatTheirBoxDoesNot(string preset, string part, string remark) => Assert.StartsWith(remark, Row(preset, "pieces", part)[^1], StringComparison.Ordinal);

    /// <summary>
    /// Auditorium by hand: crossing at 145.15 + 50 + 33 = 228.15, half the angle 48.5°, legs 8 wide and a gap of 0.5: 4.5 / cos 48.5° = 6.791 off
    /// the axis; front at 278.56, rear at 318.56: (50.41 · 1.1303 - 6.791) · 2 = 100.38 and (90.41 · 1.1303 - 6.791) · 2 = 190.80.
    /// </summary>
    [Fact]
    public void BridgePlate_BetweenLegs_HasBothItsWidths() =>
        Assert.Equal("100.38 mm wide at the front edge, 190.80 mm at the rear", Row("auditorium", "pieces", "bridge plate")[^1]);

    /// <summary>A cutaway's linings differ, so each has its row; and machines read each cleat by itself.</summary>
    [Fact]
    public void Pieces_ThatDifferOrAreForMachines_StandAlone()
    {
        Assert.Contains(Table("cutaway", "pieces"), r => r[0] == "bass lining");
        var each = BenchNumbers.Of(Built.Preset("parlour"), isMerged: false).Single(t => t.Key == "pieces").Rows.Select(r => ((Cell.Words)r[0]).Text).ToList();
        Assert.Equal(["cleat 1", "cleat 2", "cleat 3"], each.Where(n => n.StartsWith("cleat", StringComparison.Ordinal)));
        Assert.Contains("bass lining", each);
    }

    /// <summary>As the design says: 12 deep; string spread 58 and 11 past the outer strings on either side.</summary>
    [Fact]
    public void TieBlock_OfTheClassical_HasDepthAndLength() => Assert.Equal(
        ["tie block, its front edge ahead of the bridge's rear edge", "12.00", "80 mm long"],
        Row("classical", "positions", "tie block, its front edge ahead of the bridge's rear edge"));

    /// <summary>Half of 16 mm each, from opposite faces; the fan's struts over a plate of ±70 mm, 1.5 thick, whose outermost miss it.</summary>
    [Fact]
    public void Notches_OfXAndFan_AreHalfTheHeightAndThePlatesThickness()
    {
        Assert.Equal("half-lap, 8 mm deep, from its free face", Row("arc-chain", "bars", "X leg, bass")[^1]);
        Assert.Equal("half-lap, 8 mm deep, from its glued face", Row("arc-chain", "bars", "X leg, treble")[^1]);
        Assert.Equal("1.5 mm deep over the bridge plate", Row("classical", "bars", "fan strut 4")[^1]);
        Assert.Equal("", Row("classical", "bars", "fan strut 1")[^1]);
        Assert.DoesNotContain(BenchNumbers.Of(Built.Preset("parlour")).Single(t => t.Key == "bars").Columns, c => c.Key == "notch");
    }

    /// <summary>Blocks 92 and 102 deep: 92 less 16 for the linings holds 4 layers of 18; in inches the neck block is 4 deep, 3 3/8 hold 4 layers of 3/4.</summary>
    [Theory]
    [InlineData("pointed-cutaway", "72.00", "4 layers of 18 mm plywood or fibreboard")]
    [InlineData("inches", "3", "4 layers of 3/4 in plywood or fibreboard")]
    public void Mould_IsLowerThanTheSides(string preset, string height, string remark) => Assert.Equal(["mould, height", height, remark], Row(preset, "rim", "mould, height"));

    /// <summary>Below the waist both sides of a cutaway body are alike: one row for each arc there, told as that of both sides.</summary>
    [Theory]
    [InlineData("cutaway")]
    [InlineData("pointed-cutaway")]
    public void Radii_OfACutaway_StandOnceWhereBothSidesAreAlike(string preset)
    {
        var radii = Table(preset, "body").Select(r => r[0]).Where(r => r.StartsWith("radius", StringComparison.Ordinal)).ToList();

        Assert.Equal(radii.Distinct(), radii);
        Assert.All((string[])["lower side", "lower corner", "tail"], arc => Assert.Single(radii, r => r.StartsWith($"radius, {arc}, both sides", StringComparison.Ordinal)));
        Assert.Single(radii, r => r.StartsWith("radius, cutaway hollow, treble side", StringComparison.Ordinal));
        Assert.Single(radii, r => r.StartsWith("radius, shoulder, bass side", StringComparison.Ordinal));
        Assert.DoesNotContain(Table("auditorium", "body"), r => r[0].Contains("both sides", StringComparison.Ordinal));
    }

    /// <summary>Holes 11.6 apart over 58, 4 above the top, through a block of 12; none of them among the holes to drill through the top.</summary>
    [Fact]
    public void TieHoles_OfTheClassical_HaveATableOfTheirOwn()
    {
        var rows = Table("classical", "tie_holes");

        Assert.Equal(["tie hole 6", "-29.00", "4.00", "1.60", "12.00"], rows[0]);
        Assert.Equal("-17.40", rows[1][1]);
        Assert.Equal(6, rows.Count);
        Assert.DoesNotContain(BenchNumbers.Of(Built.Preset("auditorium")), t => t.Key == "tie_holes");
    }

    /// <summary>Whole inches, and 4 / 2 = 2 at none of them; half-widths are crossed where they are measured.</summary>
    [Fact]
    public void Offsets_OfADesignInInches_StandAtWholeInches() =>
        Assert.Equal(Enumerable.Range(1, 19).Select(n => n.ToString(System.Globalization.CultureInfo.InvariantCulture)), Table("inches", "offsets").Select(r => r[0]));

    /// <summary>As its file says, the wall is 36 from the line; the straight piece ends at 30 on the other side. A round shoulder has no corner there.</summary>
    [Fact]
    public void Offsets_BeginAtTheCornersOfTheNeckEdge()
    {
        Assert.Equal(["0.00", "30.00", "36.00"], Table("pointed-cutaway", "offsets")[0]);
        Assert.Equal("25.00", Table("auditorium", "offsets")[0][0]);
    }

    /// <summary>3 5/8 in by 1 11/16 in is 6.1 square inches less what the side's curve takes; the fretboard's area is square inches too.</summary>
    [Fact]
    public void Area_InInches_IsInSquareInches()
    {
        Assert.Equal("10 in²", CellText.Of(new Cell.Area(6451.6), LengthUnit.Inch));
        Assert.Equal("64.5 cm²", CellText.Of(new Cell.Area(6451.6), LengthUnit.Millimetre));
    }

    /// <summary>
    /// Parlour by hand: ring from 49 to 55, its middle at 52, the board's end 49 from the hole's centre: 2 · 52 · acos(49 / 52) = 35.5 mm of it lie under
    /// the board. 3 mm inside, at 52, the ring's inner edge at 49 does not reach: nothing.
    /// </summary>
    [Fact]
    public void RingUnderTheBoard_IsGivenAsItLiesAndAsItHides()
    {
        Assert.Equal("35.50", Row("parlour", "positions", "ring's middle line under the fretboard, length")[1]);
        Assert.DoesNotContain(Table("parlour", "positions"), r => r[0].StartsWith("ring's middle line hidden", StringComparison.Ordinal));
    }

    /// <summary>A strip of 0.8 in a top of 2.9: it goes in after levelling.</summary>
    [Fact]
    public void Liner_OfTheArcChain_HasThicknessAndHeight()
    {
        Assert.Equal(["soundhole liner, thickness", "0.80", "a strip bent round inside the hole's edge and glued in: the opening is smaller by it all round"], Row("arc-chain", "positions", "soundhole liner, thickness"));
        Assert.Equal("2.90", Row("arc-chain", "positions", "soundhole liner, height")[1]);
    }

    /// <summary>No wall of the parlour's channel has an edge of the reinforcement under it: 4 and 10 from the hole, against 1 and 11; the brace's face stands 18 - 5 = 13 off it, 2 from the ring.</summary>
    [Fact]
    public void Parlour_Reinforcement_ClearsTheWallsAndTheBrace()
    {
        Assert.DoesNotContain("lies under a wall", Row("parlour", "positions", "rosette channel, depth")[2], StringComparison.Ordinal);
        Assert.DoesNotContain(
            Lutherie.Checks.LayoutChecks.Of(Built.Preset("parlour")),
            f => f.Severity > Lutherie.Findings.Severity.Pass && f.Subject.StartsWith("hole reinforcement", StringComparison.Ordinal));
    }

    /// <summary>It lies on the legs: no area of the top is glued by it.</summary>
    [Fact]
    public void XCap_HasNoGluedArea() => Assert.Equal("", Row("auditorium", "pieces", "X cap")[8]);

    /// <summary>The pin is 3 where the design does not say; the hole's centre is 89.15 + 50.5 + 6 down. Locating pins have a hole there already.</summary>
    [Fact]
    public void DrillPoints_HaveThePivotOfTheCutter()
    {
        Assert.Equal(["pivot of the rosette", "145.65", "0.00", "3.00", ""], Row("arc-chain", "drill_points", "pivot of the rosette"));
        Assert.DoesNotContain(Table("auditorium", "drill_points"), r => r[0] == "pivot of the rosette");
        Assert.Contains(Table("auditorium", "drill_points"), r => r[0] == "soundhole centre");
        Assert.Contains(Drawn.One("arc-chain", "drill-points").Words(), w => w == "pivot of the rosette: 145.7, centre, dia 3");
    }

    /// <summary>Beside it, inside the sides from the tail: a chain of chords of their inner face, each within 0.001 mm of it, up to both faces of a brace that lies across. Heights as usual left.</summary>
    [Theory]
    [InlineData("arc-chain", "upper transverse brace", 2.8)]
    [InlineData("cutaway", "upper transverse brace", 2.8)]
    [InlineData("tenor-ukulele", "upper transverse brace", 1.8)]
    public void BraceEnds_LieAsATapeFindsThem(string preset, string brace, double height)
    {
        var layout = Built.Preset(preset);
        var ends = BraceEnds.Of(layout).Where(e => e.Bar.Name == brace).ToList();

        Assert.Equal(["bass", "treble"], ends.Select(e => e.Side).Order());
        foreach (var end in ends)
        {
            var inside = Region.Inside(layout.Outline).Offset(-layout.Design[Rim.SideThickness].Value).Outer;
            var points = inside.Flattened(0.001).Where(p => end.Side == "bass" ? p.X <= 0 : p.X >= 0).OrderBy(p => p.Y).ToList();
            Check.Near(Tape(points, end.Bar.Footprint.Bounds.Min.Y), end.FromMm, 1, end.Side);
            Check.Near(Tape(points, end.Bar.Footprint.Bounds.Max.Y), end.ToMm, 1, end.Side);
            var (before, after) = (points.Last(p => p.Y < end.Bar.Footprint.Bounds.Center.Y), points.First(p => p.Y > end.Bar.Footprint.Bounds.Center.Y));
            Check.Near(Math.Atan2(after.Y - before.Y, Math.Abs(after.X - before.X)) * 180 / Math.PI, end.ToRim.Degrees, 1, "angle");
            Assert.Equal(height, end.HeightMm);
            Assert.Equal(end.Bar.Footprint.Bounds.Height, end.WidthMm, 6);
        }
    }

    /// <summary>A plate of 3 as thick at its end: the cutaway's wall stands in its way on the treble side, and its other end is free.</summary>
    [Theory]
    [InlineData("cutaway")]
    [InlineData("pointed-cutaway")]
    public void BraceEnds_HaveTheFlatBraceThatEntersALining(string preset)
    {
        var end = Assert.Single(BraceEnds.Of(Built.Preset(preset)), e => e.Bar.Name == FlatBrace.Name);

        Assert.Equal(("treble", end.Bar.ThicknessMm), (end.Side, end.HeightMm));
    }

    // From point to point up to a height; the last stretch in part.
    private static double Tape(List<Point2> points, double y) => points.Zip(points.Skip(1)).TakeWhile(p => p.First.Y < y)
        .Sum(p => p.First.DistanceTo(p.Second) * (p.Second.Y <= y ? 1 : (y - p.First.Y) / (p.Second.Y - p.First.Y)));

    /// <summary>Of two findings, or two edges on either side of the centre line, each says its side or its wall: nothing stands there twice.</summary>
    [Fact]
    public void Report_OfEveryPreset_SaysNothingTwice()
    {
        foreach (var preset in Built.PresetNames)
        {
            var top = Pipeline.Check(Built.PresetText(preset), preset).Top!;
            var heads = ReportContent.Of(top).OfType<ReportBlock.Bullets>().First().Items.Select(i => i.Strong.Split(" (mark ")[0]).Where(h => h.Length > 0).ToList();
            var rows = GrainNumbers.Of(top.Grain).Rows.Select(r => (Edge: $"{((Cell.Words)r[0]).Text}, {((Cell.Words)r[1]).Text}", IsBass: ((Cell.Length)r[3]).Mm < 0)).Distinct().Select(r => r.Edge).ToList();

            Assert.True(heads.Count == heads.Distinct().Count(), $"{preset}: {string.Join("; ", heads)}");
            Assert.True(rows.Count == rows.Distinct().Count(), $"{preset}: {string.Join("; ", rows)}");
        }
    }

    private static double Length(Layout layout, string what) =>
        ((Cell.Length)OutlineNumbers.Of(layout).First().Rows.Single(r => ((Cell.Words)r[0]).Text == what)[1]).Mm;

    private static string[] Row(string preset, string table, string first) => Table(preset, table).Single(r => r[0] == first);

    private static List<string[]> Table(string preset, string table)
    {
        var layout = Built.Preset(preset);
        return [.. BenchNumbers.Of(layout).Single(t => t.Key == table).Rows.Select(r => r.Select(c => CellText.Of(c, layout.Design.Units)).ToArray())];
    }
}
