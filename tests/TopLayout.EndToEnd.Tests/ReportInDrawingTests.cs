using System.Text.Json;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>
/// Every number of the report that the plans show too, measured there by a stranger: tests/readers/measure-dxf, which reads with ezdxf and has formulas
/// of its own.
/// </summary>
public class ReportInDrawingTests(ITestOutputHelper output)
{
    private const double Mm = 0.001;

    /// <summary>All agree; and were each number of the report a hundredth of a mm off, none would.</summary>
    [Theory]
    [InlineData("auditorium", 180)]
    [InlineData("tapered-tongue", 135)]
    [InlineData("cutaway", 190)]
    public void Numbers_OfTheReport_AreThoseOfTheDrawing(string preset, int least)
    {
        using var desk = new Desk();
        if (OutsideReader.MeasureDxf(output, [.. DrawnDxf.WriteWithReport(Toplayout.PresetFile(preset), desk.Folder, "outside-plan", "inside-plan", "bridge-place")]) is not { } text)
        {
            return;
        }

        using var drawn = JsonDocument.Parse(text);
        using var report = JsonDocument.Parse(File.ReadAllBytes(desk.At("report.json")));
        MeasuredPlan Plan(string sheet, bool isMirrored) => new(drawn.RootElement.GetProperty(desk.At(sheet + ".dxf")), isMirrored);
        var plans = new DrawnNumbers(Plan("outside-plan", false), Plan("inside-plan", true), Plan("bridge-place", false));
        var numbers = report.RootElement.GetProperty("numbers");

        var pairs = plans.Of(numbers, shift: 0).ToList();
        output.WriteLine($"{pairs.Count} numbers");
        Assert.Equal([], pairs.Where(p => !(Math.Abs(p.Said - p.Drawn) <= Mm)));
        Assert.True(pairs.Count >= least, $"only {pairs.Count} numbers are in both");
        Assert.Equal([], plans.Of(numbers, shift: 0.01).Where(p => Math.Abs(p.Said - p.Drawn) <= Mm));
    }
}
