using TopLayout.Drawing;
using TopLayout.Drawing.Pdf;
using TopLayout.Lutherie.Designs;
using TopLayout.Plans;
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
    [InlineData("2-hole-and-rosette", "soundhole centre, off the centre line", "0.00 mm", "±0.3 mm")]
    [InlineData("2-hole-and-rosette", "soundhole diameter", "100.00 mm", "±0.5 mm")]
    [InlineData("6-bridge-place", "bridge square to the centre line, over its length", "square", "±0.25 mm")]
    public void Steps_OfThePreset_SayNumberAndTolerance(string step, string what, string value, string tolerance) =>
        Assert.Contains(new StepRow(what, value, tolerance), StepList.Of(Top("auditorium").Layout).Single(s => s.Name == step).Rows);

    /// <summary>0.5 mm is 1.26 sixty-fourths of an inch, 1 mm 2.52 of them; 0.25 / 25.4 = 0.0098, 0.3 / 25.4 = 0.0118.</summary>
    [Theory]
    [InlineData(1, LengthUnit.Inch, "±1/32 in (0.031)")]
    [InlineData(0.5, LengthUnit.Inch, "±1/64 in (0.016)")]
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
        var values = pages.SelectMany(p => p.Shapes.OfType<LabelShape>()).Where(l => l.Part == "numbers" && l.Anchor.X < 10).Select(l => l.Text).ToList();
        var first = step.Rows.Select(r => StepText.Lines(r.What, 48)[0]).Concat(step.Grids.SelectMany(g => g.Rows).Select(r => StepText.Lines(r[0], 43)[0])).ToList();
        Assert.Equal(first, values.Where(first.Contains));
    }

    private static IEnumerable<Sheet> Draw(string preset) => StepSheets.Draw(Top(preset));

    private static ReviewedTop Top(string preset) => Pipeline.Check(Built.PresetText(preset), preset).Top!;
}
