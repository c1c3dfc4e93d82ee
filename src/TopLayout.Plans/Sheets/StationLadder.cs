using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>Half-widths of an outline at even stations from the neck edge, beside one half of it.</summary>
internal static class StationLadder
{
    private const double StepMm = 25;
    private const double StepInchMm = 25.4;
    private const double OffMm = 12;

    /// <summary>Distance of the stations, mm: a round number of the design's unit.</summary>
    public static double Step(Layout layout) => layout.Design.Units == LengthUnit.Inch ? StepInchMm : StepMm;

    /// <summary>What the numbers beside the outline are.</summary>
    public static string Meaning(Layout layout) =>
        $"beside the outline: distance from the neck edge, and half-width there ({LengthText.Word(layout.Design.Units)})";

    /// <summary>The stations that cross the outline and the half-widths there, mm.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="outline">Counter-clockwise, in layout coordinates.</param>
    /// <param name="side">−1 for the bass half, +1 for the treble half.</param>
    public static IEnumerable<(double At, double Half)> Of(Layout layout, Contour outline, int side)
    {
        var (step, end) = (Step(layout), -outline.Bounds.Min.Y - 1);
        return Enumerable.Range(1, (int)(end / step)).Select(n => (n * step, OutlineNumbers.HalfWidth(outline, n * step, side)));
    }

    /// <summary>A ladder with the half-widths on the outer side of that half; more may be added before it is drawn.</summary>
    public static Ladder Beside(Layout layout, Contour outline, int side, FaceView view)
    {
        var outward = Outward(view, side);
        var ladder = new Ladder("half-widths", outward * (BodyWidths.Half(outline, side).Max(s => s.Bounds().Max.X) + OffMm), outward);
        foreach (var (at, half) in Of(layout, outline, side))
        {
            ladder.Add(-at, $"{Text(layout, at)}: {Text(layout, half)}", outward * (half + 2));
        }

        return ladder;
    }

    /// <summary>Which way a half lies on the sheet: −1 to the left, +1 to the right.</summary>
    public static int Outward(FaceView view, int side) => view.IsBassLeft ? side : -side;

    /// <summary>A length as the rule shows it.</summary>
    public static string Text(Layout layout, double mm) => LengthText.OnRule(mm, layout.Design.Units);
}
