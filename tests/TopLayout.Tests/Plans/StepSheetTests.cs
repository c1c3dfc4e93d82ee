using TopLayout.Drawing;
using TopLayout.Drawing.Pdf;
using TopLayout.Lutherie.Designs;
using TopLayout.Plans;
using TopLayout.Plans.Reports;
using TopLayout.Plans.Sheets.Steps;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

public class StepSheetTests
{
    [Fact]
    public void Steps_OfAPreset_ComeInTheOrderOfTheWork() => Assert.Equal(
        ["1-outline-and-mould", "2-hole-and-rosette", "3-bracing", "4-neck-block-and-tongue", "5-box", "6-bridge-place"],
        Draw("straight-tongue").Select(s => s.Name).Where(n => !char.IsAsciiDigit(n[^1])));

    [Fact]
    public void Steps_OfADesignWithoutTongueOrRosette_NameNeither()
    {
        var steps = StepList.Of(Pipeline.Check(Built.PresetText("auditorium").WithRosette(null), "auditorium").Top!.Layout).ToList();

        Assert.DoesNotContain(steps, s => s.Name.Contains("tongue", StringComparison.Ordinal) || s.Title.Contains("rosette", StringComparison.Ordinal));
    }

    /// <summary>Values as the design file says them; the hole's centre is 50 + 6 mm past the fretboard's end at 89.15 mm.</summary>
    [Theory]
    [InlineData("1-outline-and-mould", "lower bout width", "396.0 mm", "±1 mm")]
    [InlineData("2-hole-and-rosette", "soundhole centre", "145.15 mm", "±0.5 mm")]
    [InlineData("3-bracing", "relative humidity while gluing", "45 %", "±3 %")]
    [InlineData("2-hole-and-rosette", "soundhole centre, to the centre line", "on it", "±0.3 mm")]
    [InlineData("2-hole-and-rosette", "soundhole diameter", "100.00 mm", "±0.5 mm")]
    [InlineData("6-bridge-place", "bridge square to the centre line, over its length", "square", "±0.25 mm")]
    public void Steps_OfThePreset_SayNumberAndTolerance(string step, string what, string value, string tolerance) =>
        Assert.Contains(new StepRow(what, value, tolerance), StepList.Of(Top("auditorium").Layout).Single(s => s.Name == step).Rows);

    /// <summary>0.5 mm is 1.26 sixty-fourths of an inch, 1 mm 2.52 of them; 0.25 / 25.4 = 0.0098, 0.3 / 25.4 = 0.0118.</summary>
    [Theory]
    [InlineData(1, LengthUnit.Inch, "±1/32 (0.031) in")]
    [InlineData(0.5, LengthUnit.Inch, "±1/64 (0.016) in")]
    [InlineData(0.25, LengthUnit.Inch, "±0.010 in")]
    [InlineData(0.3, LengthUnit.Inch, "±0.012 in")]
    [InlineData(0.1, LengthUnit.Inch, "±0.004 in")]
    [InlineData(0.25, LengthUnit.Millimetre, "±0.25 mm")]
    public void Tolerance_InAUnit_IsSaidInIt(double mm, LengthUnit units, string said) => Assert.Equal(said, StepTolerance.Within(mm, units));

    [Theory]
    [InlineData("auditorium")]
    [InlineData("classical")]
    [InlineData("inches")]
    public void Steps_OnA4AndLetter_FillOnePageEach(string preset)
    {
        foreach (var sheet in Draw(preset))
        {
            Assert.Single(TileGrid.Of(sheet, Paper.A4, null).Tiles);
            Assert.Single(TileGrid.Of(sheet, Paper.Letter, null).Tiles);
        }
    }

    /// <summary>Whatever is drawn small belongs to the key, which says that it is not to scale; nothing on the page is a wall to cut.</summary>
    [Fact]
    public void Steps_KeyDrawing_CannotBeTakenForATemplate()
    {
        foreach (var sheet in Draw("auditorium"))
        {
            Assert.DoesNotContain(sheet.Shapes, s => s.Role is Role.Cut or Role.Pocket);
            Assert.DoesNotContain(sheet.Shapes, s => s.Role is Role.Mark or Role.Centre && !s.Part.StartsWith("key", StringComparison.Ordinal));
            Assert.DoesNotContain(sheet.Shapes.OfType<LabelShape>(), l => l.Text.Contains("full size", StringComparison.Ordinal));
            Assert.Equal(!char.IsAsciiDigit(sheet.Name[^1]), sheet.Shapes.OfType<LabelShape>().Any(l => l.Text == "NOT TO SCALE"));
        }
    }

    /// <summary>10 x 17 mm as the design file says; 70 mm before the hole's edge at 145.15 - 50 mm.</summary>
    [Fact]
    public void Steps_OfThePreset_SayWhereABraceEndsAndItsSectionInOneRow()
    {
        var grid = StepList.Of(Top("auditorium").Layout).Single(s => s.Name == "3-bracing").Grids[1];

        Assert.Equal(["brace; as built below", "one end, ±1 mm", "other end, ±1 mm", "width x height, ±0.5 mm"], [.. grid.Headings]);
        Assert.Equal(["75.2; 139.5 bass", "75.2; 139.5 treble", "10.00 x 17.00 mm"], grid.Rows.Single(r => r[0] == "upper transverse brace").Skip(1));
    }

    /// <summary>Every row of every table is on one of the pages, once, in order.</summary>
    [Theory]
    [InlineData("classical")]
    [InlineData("cutaway")]
    public void Steps_LongTable_GoesOnOnTheNextPage(string preset)
    {
        var top = Top(preset);
        var step = StepList.Of(top.Layout).Single(s => s.Name == "3-bracing");
        var pages = StepSheets.Draw(top).Where(s => s.Name.StartsWith("3-bracing", StringComparison.Ordinal)).ToList();

        Assert.Equal(2, pages.Count);
        var shown = pages.SelectMany(p => p.Shapes.OfType<LabelShape>()).Where(l => l.Part == "numbers" && l.Anchor.X < 10).Select(l => l.Text);
        var said = step.Rows.Select(r => r.What).Concat(step.Grids.SelectMany(g => g.Rows).Select(r => r[0])).ToList();

        // However the names are broken into lines, and without the headings, they are read in order.
        var (left, text) = (string.Join(' ', shown), "");
        foreach (var name in said)
        {
            var at = left.IndexOf(name, StringComparison.Ordinal);
            Assert.True(at >= 0, $"{name} after {text}");
            (left, text) = (left[(at + name.Length)..], name);
        }
    }

    /// <summary>Where a step goes on, its last page holds three rows or more.</summary>
    [Fact]
    public void Steps_OfEveryPreset_EndOnNoNearlyEmptyPage()
    {
        foreach (var preset in Built.PresetNames)
        {
            foreach (var page in Draw(preset).Where(s => char.IsAsciiDigit(s.Name[^1])))
            {
                // A row begins with a line over the whole width.
                var lines = page.Shapes.OfType<ContourShape>().Count(s => s.Part == "numbers" && s.Contour.Segments is [var line] && line.Length > StepSheets.WidthMm - 1);
                Assert.True(lines >= StepPages.LeastRows, $"{preset}, {page.Name}: {lines} rows");
            }
        }
    }

    [Theory]
    [InlineData("thickness, ±0.1 mm", 20, "thickness,|±0.1 mm")]
    [InlineData("upper width of 11 9/16 in", 30, "upper width of|11 9/16 in")]
    [InlineData("45 % humidity", 3, "45 %|humidity")]
    public void Lines_NeverPartANumberFromItsUnit(string text, double width, string lines) => Assert.Equal(lines.Split('|'), StepText.Lines(text, width));

    /// <summary>The design's humidity, 42, with the tolerance; never a range that the checks know nothing of.</summary>
    [Fact]
    public void Cautions_NameTheDesignsHumidity()
    {
        var steps = StepList.Of(Top("inches").Layout).ToList();

        Assert.Equal(2, steps.SelectMany(s => s.Cautions).Count(c => c.StartsWith("Glue at 42\u00a0% relative humidity (±3 %)", StringComparison.Ordinal)));
        Assert.DoesNotContain(steps.SelectMany(s => s.Cautions), c => c.Contains("between 40", StringComparison.Ordinal));
    }

    /// <summary>Ledges are cut where there is a binding, and drilled where there are pins: the arc chain has both.</summary>
    [Theory]
    [InlineData("arc-chain", true)]
    [InlineData("parlour", false)]
    public void Cautions_StandOnlyWhereTheyApply(string preset, bool applies)
    {
        var steps = StepList.Of(Top(preset).Layout).ToList();

        Assert.Equal(applies, steps.Single(s => s.Name == "5-box").Cautions.Contains(StepCautions.Ledge));
        Assert.Equal(applies, steps.Single(s => s.Name == "6-bridge-place").Cautions.Contains(StepCautions.Drill));
    }

    /// <summary>The rim is there: nothing is bent, no strip and no mould; the binding of 1.8 that stays, and the plate's own edge.</summary>
    [Fact]
    public void FirstStep_OfATopForAnOldRim_FitsThePlateToIt()
    {
        var step = StepList.Of(Top("measured").Layout).First();

        Assert.Equal("1-outline-on-the-rim", step.Name);
        Assert.DoesNotContain(step.Rows, r => r.What.Contains("strip", StringComparison.Ordinal));
        Assert.DoesNotContain(StepCautions.Heat, step.Cautions);
        Assert.Contains(new StepRow("binding left in place, width", "1.80 mm", "±0.1 mm", "the plate ends at it"), step.Rows);
        Assert.Contains(step.Rows, r => r is { What: "largest difference, drawn to measured half-width", Tolerance: "at most 0.8 mm" });
        Assert.Contains(step.Grids[0].Rows, r => r[0] == "plate, waist" && r[1].Length > 0 && r[3].Length > 0);
    }

    /// <summary>Classical: three channels, so not "the channel"; each cut with its bit and setting; five rings, 0.6 the first, once round at 48.3 and 15 to spare; 96 tiles.</summary>
    [Fact]
    public void SecondStep_OfTheClassical_HasWhatIsSetAtTheBench()
    {
        var step = StepList.Of(Top("classical").Layout).Single(s => s.Name == "2-hole-and-rosette");

        Assert.Contains("the channels of the rosette", step.Does, StringComparison.Ordinal);
        Assert.Equal(["rosette channel 2", "49.10 mm", "58.90 mm", "1.00 mm; 1.20 mm when cut"], [.. step.Grids[0].Rows[1]]);
        Assert.Equal(["rosette channel 3, outer wall", "1 mm", "60.00 mm", "59.50 mm", "61.50 mm over", "1.40 mm"], [.. step.Grids[1].Rows[0]]);
        Assert.Equal("57.40 mm between", step.Grids[1].Rows[1][4]);
        Assert.Equal(7, step.Grids[1].Rows.Length);
        Assert.Equal(["ring 1, line", "48.00 mm", "0.60 mm", "318.48 mm"], [.. step.Grids[2].Rows[0]]);
        Assert.Equal(["ring 3, tiles", "96", "3.21 mm", "3.85 mm", "9.70 mm", "1.20 mm", "1.88°"], [.. step.Grids[3].Rows[0]]);
    }

    /// <summary>Flat parts stand before braces, as they are glued; both edges of a part that lies over the centre line are one number.</summary>
    [Fact]
    public void ThirdStep_HasFlatPartsBeforeBraces()
    {
        var step = StepList.Of(Top("classical").Layout).Single(s => s.Name == "3-bracing");

        Assert.StartsWith("flat part", step.Grids[0].Headings[0], StringComparison.Ordinal);
        Assert.Equal(["bridge plate", "317.75 to 348.75 mm", "±70.00 mm", "1.50 mm"], [.. step.Grids[0].Rows[0]]);
        Assert.Contains(new StepRow("notch over the bridge plate", "1.50 mm deep", "±0.1 mm", "in the glued face of fan struts 2 to 6, from the plate's front to its rear edge"), step.Rows);
        Assert.Contains(
            new StepRow("X legs where they cross: half-lap, each", "8.00 mm deep", "±0.1 mm", "X leg, bass from its free face, glued on first; X leg, treble from its glued face, over it"),
            StepList.Of(Top("arc-chain").Layout).Single(s => s.Name == "3-bracing").Rows);
    }

    /// <summary>Bits, spare lengths and tolerances as a rule and a drill index have them: 1/8, 3/4 to 1 1/2, 1/32.</summary>
    [Fact]
    public void Steps_InInches_AreInFractionsAMakerKnows()
    {
        var steps = StepList.Of(Top("inches").Layout).ToList();

        Assert.Contains(new StepRow("upper bout width", "11 9/16 in", "±1/32 (0.031) in"), steps[0].Rows);
        Assert.Contains(steps[0].Rows, r => r.What.StartsWith("one side strip", StringComparison.Ordinal) && r.Tolerance == "+3/4 to 1 1/2 in");
        Assert.All(steps[1].Grids[1].Rows, r => Assert.Equal("1/8 in", r[1]));
    }

    /// <summary>The cut table says what the numbers sheet says.</summary>
    [Theory]
    [InlineData("classical")]
    [InlineData("inches")]
    public void SecondStep_Caliper_IsThatOfTheNumbers(string preset)
    {
        var layout = Top(preset).Layout;
        var numbers = BenchNumbers.Of(layout).Single(t => t.Key == "rosette_cuts");
        var grid = StepList.Of(layout).Single(s => s.Name == "2-hole-and-rosette").Grids[1];

        var unit = layout.Design.Units == LengthUnit.Inch ? "in" : "mm";
        Assert.Equal(numbers.Rows.Select(r => $"{CellText.Of(r[4], layout.Design.Units)} {unit}"), grid.Rows.Select(r => r[4].Replace(" over", "", StringComparison.Ordinal).Replace(" between", "", StringComparison.Ordinal)));
        Assert.All(numbers.Rows.Zip(grid.Rows), r => Assert.Equal(((Cell.Words)r.First[^1]).Text.StartsWith("caliper over", StringComparison.Ordinal), r.Second[4].EndsWith("over", StringComparison.Ordinal)));
    }

    /// <summary>Blocks of the classical are 90 and 92 deep: less 16, 74 hold 4 layers of 18.</summary>
    [Fact]
    public void FirstStep_SaysTheMouldsHeightInLayers() => Assert.EndsWith(
        "the mould that holds the bent sides: 72 mm high, 4 layers of 18 mm plywood or fibreboard, so that the sides, 90 mm deep at the neck, 92 mm deep at the tail, stand out of it for the linings.",
        StepList.Of(Top("classical").Layout).First().Does,
        StringComparison.Ordinal);

    /// <summary>The bridge of the classical is tied to, and its holes are not among those through the top.</summary>
    [Fact]
    public void SixthStep_OfATieBlock_HasItsHolesAlongTheBody()
    {
        var step = StepList.Of(Top("classical").Layout).Single(s => s.Name == "6-bridge-place");
        var grid = Assert.Single(step.Grids, g => g.Headings[0].StartsWith("hole through the tie block, along the body", StringComparison.Ordinal));

        Assert.Equal(["tie hole 6", "29.00 bass", "4.00 mm", "1.60 mm"], [.. grid.Rows[0]]);
        Assert.Equal(6, grid.Rows.Length);
        Assert.Contains(StepCautions.TieHoles, step.Cautions);
        Assert.DoesNotContain(StepCautions.TieHoles, StepList.Of(Top("auditorium").Layout).Single(s => s.Name == "6-bridge-place").Cautions);
    }

    /// <summary>Every end in the linings has its pocket: both of each leg and of the brace above, one of each side bar; the height is that of step 3.</summary>
    [Fact]
    public void FifthStep_HasAPocketForEveryBraceEndAtTheRim()
    {
        var steps = StepList.Of(Top("arc-chain").Layout).ToList();
        var grid = Assert.Single(steps.Single(s => s.Name == "5-box").Grids);

        Assert.True(grid.HasBoxes);
        Assert.EndsWith("depth, ±0.1 mm", grid.Headings[3], StringComparison.Ordinal);
        Assert.Equal(["X leg, bass", "X leg, treble", "upper transverse brace", "bar 1", "bar 2"], grid.Rows.Select(r => r[0]));
        Assert.All(grid.Rows, r => Assert.EndsWith("wide, 2.80 mm deep", r[3], StringComparison.Ordinal));
        Assert.Equal([false, false, false, true, false], grid.Rows.Select(r => r[1].Length == 0));
        Assert.Equal([false, false, false, false, true], grid.Rows.Select(r => r[2].Length == 0));
        Assert.Contains(steps.Single(s => s.Name == "3-bracing").Rows, r => r is { What: "brace ends at the rim, height", Value: "2.80 mm", Tolerance: "±0.1 mm" });
    }

    /// <summary>A truss rod whose slot ends before tongue and brace says how its key comes to it.</summary>
    [Fact]
    public void FourthStep_OfATrussRod_SaysTheWayForItsKey()
    {
        Assert.Contains(" Truss rod: for a key through the soundhole cut a notch 4 mm deep", StepList.Of(Top("tapered-tongue").Layout).Single(s => s.Name.StartsWith('4')).Does, StringComparison.Ordinal);
        Assert.DoesNotContain("Truss rod", StepList.Of(Top("auditorium").Layout).Single(s => s.Name.StartsWith('4')).Does, StringComparison.Ordinal);
    }

    /// <summary>The block of an old rim is not made again.</summary>
    [Fact]
    public void FourthStep_OfATopForAnOldRim_KeepsTheBlock()
    {
        var (old, made) = (StepList.Of(Top("measured").Layout).Single(s => s.Name == "4-neck-block"), StepList.Of(Top("classical").Layout).Single(s => s.Name == "4-neck-block"));

        Assert.StartsWith("The blocks stay in the rim", old.Does, StringComparison.Ordinal);
        Assert.Equal(("Old blocks of neck and tail", "Neck block and tail block"), (old.Title, made.Title));
        Assert.DoesNotContain(StepCautions.Router, old.Cautions);
        Assert.StartsWith("Make both blocks", made.Does, StringComparison.Ordinal);
    }

    /// <summary>Square of 25 and 1.5 thick, on the legs: not among the flat parts, which are glued to the top before them.</summary>
    [Fact]
    public void ThirdStep_XCap_LiesOverTheCrossing()
    {
        var step = StepList.Of(Top("auditorium").Layout).Single(s => s.Name == "3-bracing");

        Assert.Contains(step.Rows, r => r is { What: "X cap, over the crossing", Value: "25.00 mm square, 1.50 mm thick", Tolerance: "±0.5 mm" });
        Assert.DoesNotContain(step.Grids.SelectMany(g => g.Rows), r => r[0] == "X cap");
    }

    /// <summary>A straight tongue runs along the grain and fails; the auditorium passes.</summary>
    [Theory]
    [InlineData("straight-tongue", true)]
    [InlineData("auditorium", false)]
    public void FirstStep_SaysThatTemplatesAreWithheld(string preset, bool isWithheld)
    {
        var top = Top(preset);

        Assert.Equal(isWithheld, Words(StepSheets.Draw(top).First()).Contains("--cut-anyway", StringComparison.Ordinal));
        Assert.Equal(isWithheld, ReportContent.Of(top).OfType<ReportBlock.Paragraph>().Any(p => p.Text.Contains("--cut-anyway", StringComparison.Ordinal)));

        static string Words(Sheet sheet) => string.Join(' ', sheet.Shapes.OfType<LabelShape>().Select(l => l.Text));
    }

    /// <summary>From the nut it is the scale length and what each outer string is compensated by.</summary>
    [Fact]
    public void Steps_FindTheSaddleFromTheNut()
    {
        var layout = Top("auditorium").Layout;
        var saddle = StepList.Of(layout).Single(s => s.Name == "6-bridge-place").Grids[0];

        var scale = layout.Design[Lutherie.Parts.Scale.Length].Value;
        Assert.Equal(["theoretical saddle", "under the outer treble string", "under the outer bass string"], saddle.Rows.Select(r => r[0]));
        Assert.Equal(
            new[] { 0, layout.Design[Lutherie.Parts.Scale.CompensationTreble].Value, layout.Design[Lutherie.Parts.Scale.CompensationBass].Value }.Select(c => FormattableString.Invariant($"{scale + c:0.00} mm")),
            saddle.Rows.Select(r => r[1]));
    }

    /// <summary>A row that says nothing by a zero is not there.</summary>
    [Fact]
    public void Steps_OfEveryPreset_HaveNoLengthOfNothing()
    {
        foreach (var preset in Built.PresetNames)
        {
            foreach (var row in StepList.Of(Top(preset).Layout).SelectMany(s => s.Rows))
            {
                Assert.False(row.Value is "0.00 mm" or "0.0 mm" or "0 in", $"{preset}: {row}");
            }
        }
    }

    /// <summary>A break leaves two rows or more of a table on either side of it.</summary>
    [Fact]
    public void Steps_OfEveryPreset_LeaveNoRowOfATableAlone()
    {
        foreach (var preset in Built.PresetNames)
        {
            foreach (var step in StepList.Of(Top(preset).Layout))
            {
                var whole = step.Tables(isTight: false).Select(t => t.Count).Where(n => n > 1).ToList();
                var pages = StepPages.Of(step, 105, 196);
                if (whole.Count > 0)
                {
                    Assert.True(pages.SelectMany(p => p).Count(t => t.Count == 1) <= step.Tables(isTight: false).Count(t => t.Count == 1), $"{preset}, {step.Name}");
                }
            }
        }
    }

    private static IEnumerable<Sheet> Draw(string preset) => StepSheets.Draw(Top(preset));

    private static ReviewedTop Top(string preset) => Pipeline.Check(Built.PresetText(preset), preset).Top!;
}
