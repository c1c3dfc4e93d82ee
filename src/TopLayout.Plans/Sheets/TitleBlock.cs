using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The block at the foot of a sheet: name, revision, what it shows, units and scale, wood and humidity assumed, hash of the resolved
/// parameters, failed checks, and a bar to check the print with. No clock and no version, so the same design gives the same bytes.
/// </summary>
internal static class TitleBlock
{
    /// <summary>The part it is drawn under.</summary>
    public const string Part = "title block";
    private static readonly (double StepMm, int Steps, string Length) Metric = (25, 4, "100 mm");
    private static readonly (double StepMm, int Steps, string Length) Inches = (25.4, 4, "4 in");

    /// <summary>Draws the block below a height, from a left edge, at least as wide as asked, mm; returns its lower edge.</summary>
    /// <param name="board">The sheet.</param>
    /// <param name="top">The top.</param>
    /// <param name="title">What the sheet shows.</param>
    /// <param name="reading">How to read it.</param>
    /// <param name="topLeft">Its upper left corner.</param>
    /// <param name="widthMm">Its least width.</param>
    /// <param name="isFullSize">Whether the drawing is one to measure: else the block says so, and has no bar.</param>
    /// <param name="elseScale">What it says then; nothing where there are tables alone.</param>
    public static double Draw(SheetBoard board, ReviewedTop top, string title, string reading, Point2 topLeft, double widthMm, bool isFullSize = true, string elseScale = "the drawing is not to scale")
    {
        var design = top.Layout.Design;
        var y = topLeft.Y - 9;
        var x = topLeft.X + 4;
        var labels = new List<LabelShape>
        {
            board.Write(Part, $"{design[Identity.Name].Value} - rev {design[Identity.Revision].Value}", new Point2(x, y), 5),
            board.Write(Part, title, new Point2(x, y -= 7.5), 3.5),
            board.Write(Part, reading, new Point2(x, y -= 5.5)),
            board.Write(Part, Assumed(top), new Point2(x, y -= 4.8)),
            board.Write(Part, $"{(isFullSize ? "full size 1:1, measure the bar; " : elseScale.Length > 0 ? elseScale + "; " : "")}design {top.Hash}", new Point2(x, y -= 4.8)),
        };
        if (Failed(top) is { } failed)
        {
            labels.Add(board.Write(Part, failed, new Point2(x, y -= 5.5), 3.5, role: Role.Finding, emphasis: Emphasis.Bad));
        }

        if (isFullSize)
        {
            y -= 9;
            Bar(board, new Point2(x, y), design.Units == LengthUnit.Inch ? Inches : Metric);
        }

        var right = Math.Max(topLeft.X + widthMm, labels.Max(l => l.Bounds.Max.X) + 4);
        board.Box(Part, Role.Text, new Box2(new Point2(topLeft.X, y - 4), new Point2(right, topLeft.Y)));
        return y - 4;
    }

    // On every sheet: whoever has only one of them must know.
    private static string? Failed(ReviewedTop top) => top.Findings.Count(f => f.Severity == Severity.Fail) switch
    {
        0 => null,
        1 => "1 CHECK FAILS: see the report before you cut",
        var n => $"{NumberFormat.Whole(n)} CHECKS FAIL: see the report before you cut",
    };

    private static string Assumed(ReviewedTop top)
    {
        var (layout, design) = (top.Layout, top.Layout.Design);
        string Percent(double value) => NumberFormat.Trimmed(value, 0);
        return $"top {layout.Top.Wood.Name}, {LengthText.WithUnit(layout.Top.ThicknessMm, design.Units)}; "
            + $"glued at {Percent(design[SeasonSection.GluedHumidity].Value)} %, used at {Percent(design[SeasonSection.UsedHumidity].Value)} %"
            + $" humidity, {Percent(design[SeasonSection.Temperature].Value)} °C";
    }

    private static void Bar(SheetBoard board, Point2 start, (double StepMm, int Steps, string Length) bar)
    {
        var end = start + new Vec2(bar.StepMm * bar.Steps, 0);
        board.Line(Part, Role.Dimension, start, end);
        for (var step = 0; step <= bar.Steps; step++)
        {
            var foot = start + new Vec2(step * bar.StepMm, 0);
            board.Line(Part, Role.Dimension, foot, foot + new Vec2(0, step == 0 || step == bar.Steps ? 4 : 2));
        }

        var words = board.Write(Part, bar.Length, end + new Vec2(3, 0), role: Role.Dimension);
        board.KeepWhole(new Box2(start, end + new Vec2(0, 4)).Union(words.Bounds));
    }
}
