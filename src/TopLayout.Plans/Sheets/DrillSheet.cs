using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>Every hole to drill through the top, at full size on its outside face, each with its name, place and diameter.</summary>
internal static class DrillSheet
{
    private const double OffMm = 12;

    /// <summary>The sheet; null when there is nothing to drill.</summary>
    public static Sheet? Draw(ReviewedTop top)
    {
        var layout = top.Layout;
        if (layout.DrillPoints.IsEmpty)
        {
            return null;
        }

        var board = new SheetBoard();
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        var outline = view.Map(layout.Outline);
        board.Draw("outline", Role.Mark, outline);
        var body = outline.Bounds;
        board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 5), new Point2(0, body.Min.Y - 6));
        foreach (var point in layout.DrillPoints)
        {
            var at = view.Map(point.At);
            Fittings.Cross(board, point, at);
            board.Name(new LabelRequest(point.Name, Role.Text, point.Name, SheetBoard.TextMm, at));
        }

        FaceMarks.Draw(board, view, body);
        Measures(board, layout, body);
        var drawn = board.Extents;
        board.Write(Cautions.Part, "drill from the outside, waste wood behind", new Point2(drawn.Min.X, drawn.Min.Y - 7));
        TitleBlock.Draw(board, top, "Holes to drill, full size", FaceMarks.Reading(view), new Point2(drawn.Min.X, drawn.Min.Y - 12), board.Extents.Width);
        return board.Finish("drill-points", $"Holes to drill - {layout.Design[Identity.Name].Value}", "Every hole to drill through the top, at full size.");
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
