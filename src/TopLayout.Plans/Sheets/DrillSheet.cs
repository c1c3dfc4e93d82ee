using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>Every hole to drill through the top, at full size on its outside face, each with its name, place and diameter.</summary>
internal static class DrillSheet
{
    private const double OffMm = 12;

    /// <summary>The sheet; null when there is nothing to drill but the rosette's pivot, which its own sheets have.</summary>
    public static Sheet? Draw(ReviewedTop top)
    {
        var layout = top.Layout;
        if (layout.DrillPoints.All(p => p.Name == Rosette.PivotName))
        {
            return null;
        }

        var board = new SheetBoard();
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        var outline = view.Map(layout.Outline);
        board.Draw("outline", Role.Mark, outline);
        var body = outline.Bounds;
        board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 5), new Point2(0, body.Min.Y - 6));
        board.Draw("soundhole", Role.Mark, view.Map(layout.Hole.Edge), Emphasis.Faint);
        if (layout.Find(Bridge.Name) is { } bridge)
        {
            board.Draw(Bridge.Name, Role.Mark, view.Map(bridge.Footprint.Outer), Emphasis.Faint);
        }

        foreach (var point in layout.DrillPoints)
        {
            Fittings.Cross(board, point, view.Map(point.At));
            board.Name(Name(layout, point, view.Map(point.At)));
        }

        FaceMarks.Draw(board, view, body);
        Measures(board, layout, body);
        var drawn = board.Extents;
        board.Write(Cautions.Part, $"drill from the outside, waste wood behind{(layout.DrillPoints.Any(BenchNumbers.IsThroughBridge) ? "; what goes through the bridge last, in step 6, once its place is proved" : "")}", new Point2(drawn.Min.X, drawn.Min.Y - 7));
        TitleBlock.Draw(board, top, "Holes to drill, full size", FaceMarks.Reading(view), new Point2(drawn.Min.X, drawn.Min.Y - 12), board.Extents.Width);
        return board.Finish("drill-points", $"Holes to drill - {layout.Design[Identity.Name].Value}", "Every hole to drill through the top, at full size.");
    }

    // Of a row each hole has its number, above it or below; the list at the side says the rest.
    private static LabelRequest Name(Layout layout, DrillPoint point, Point2 at)
    {
        var space = point.Name.LastIndexOf(' ');
        var (stem, last) = (point.Name[..(space + 1)], point.Name[(space + 1)..]);
        var isRow = last.All(char.IsAsciiDigit) && layout.DrillPoints.Count(p => p.Name.StartsWith(stem, StringComparison.Ordinal)) > 1;
        if (!isRow)
        {
            return new LabelRequest(point.Name, Role.Text, point.Name, SheetBoard.TextMm, at);
        }

        var up = new Vec2(0, point.RadiusMm + Fittings.CrossMm + SheetBoard.TextMm);
        return new LabelRequest(point.Name, Role.Text, last, SheetBoard.TextMm, at) { Preferred = [at + up, at - up], Priority = 1 };
    }

    private static void Measures(SheetBoard board, Layout layout, Box2 body)
    {
        string Of(double mm) => LengthText.Of(mm, layout.Design.Units);
        var ladder = new Ladder("drill measures", body.Max.X + OffMm, outward: 1);
        foreach (var point in layout.DrillPoints)
        {
            var side = Math.Abs(point.At.X) <= Tolerances.ShortestMm ? "centre" : $"{Of(Math.Abs(point.At.X))} {(point.At.X > 0 ? "treble" : "bass")}";
            ladder.Add(point.At.Y, $"{point.Name}: {Of(-point.At.Y)}, {side}, dia {Of(point.DiameterMm)}");
        }

        ladder.Draw(board);
    }
}
