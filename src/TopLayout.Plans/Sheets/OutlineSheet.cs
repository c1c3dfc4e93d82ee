using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>The outline alone: its arcs with their radii, its widths, and half-widths at stations to draw it from.</summary>
internal static class OutlineSheet
{
    private const double TickMm = 3;

    /// <summary>The sheet.</summary>
    public static Sheet Draw(ReviewedTop top)
    {
        var (layout, outline) = (top.Layout, top.Layout.Outline);
        var board = new SheetBoard();
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        board.Draw("outline", Role.Mark, view.Map(outline));
        if (layout.Body.PlateEdge != outline)
        {
            board.Draw("plate edge", Role.Mark, view.Map(layout.Body.PlateEdge));
        }

        var body = view.Map(outline).Bounds;
        board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 6), new Point2(0, body.Min.Y - 6));
        foreach (var ((at, bass), (_, treble)) in StationLadder.Of(layout, outline, -1).Zip(StationLadder.Of(layout, outline, 1)))
        {
            board.Line("stations", Role.Dimension, view.Map(new Point2(-bass, -at)), view.Map(new Point2(treble, -at)), Emphasis.Faint);
        }

        foreach (var side in (ReadOnlySpan<int>)(OutlineNumbers.IsEven(layout) ? [1] : [-1, 1]))
        {
            Arcs(board, layout, view, side);
        }

        Measures(board, layout, view, body);
        FaceMarks.Draw(board, view, body);
        return Finished(board, top, view, body);
    }

    // The ends of every arc, and its radius beside its middle.
    private static void Arcs(SheetBoard board, Layout layout, FaceView view, int side)
    {
        var mirror = side < 0 ? Placement.MirroredAcrossY : Placement.Identity;
        foreach (var arc in OutlineNumbers.Arcs(layout.Outline, side))
        {
            var (middle, end) = (arc.Longest.Placed(mirror).PointAt(0.5), arc.Last.Placed(mirror));
            var tick = end.TangentAt(1).Left * TickMm;
            if (side > 0 || Math.Abs(end.End.X) > Tolerances.ShortestMm)
            {
                // Both halves end on the centre line: one tick does for them.
                board.Line("ends of arcs", Role.Mark, view.Map(end.End - tick), view.Map(end.End + tick));
            }

            board.Name(new LabelRequest("radii", Role.Dimension, $"R {StationLadder.Text(layout, arc.Radius)}", SheetBoard.TextMm, view.Map(middle)));
        }
    }

    private static void Measures(SheetBoard board, Layout layout, FaceView view, Box2 body)
    {
        // Half-widths on the left; on the right those of a half that differs, and the widths.
        var leftSide = view.IsBassLeft ? -1 : 1;
        StationLadder.Beside(layout, layout.Outline, leftSide, view).Draw(board, hasUpright: false);
        var right = OutlineNumbers.IsEven(layout) ? new Ladder("half-widths", body.Max.X + 12, outward: 1) : StationLadder.Beside(layout, layout.Outline, -leftSide, view);
        right.Add(0, "0 neck edge");
        foreach (var w in BodyWidths.Of(layout.Outline))
        {
            var what = w.Side is null ? $"{w.Name} {StationLadder.Text(layout, 2 * w.Half)}" : $"{w.Name}, {w.Side} {StationLadder.Text(layout, w.Half)}";
            right.Add(-w.FromNeckEdge, $"{what} at {StationLadder.Text(layout, w.FromNeckEdge)}");
        }

        right.Add(body.Min.Y, $"{StationLadder.Text(layout, -body.Min.Y)} tail");
        right.Draw(board, hasUpright: false);
    }

    private static Sheet Finished(SheetBoard board, ReviewedTop top, FaceView view, Box2 body)
    {
        var layout = top.Layout;
        var all = LengthText.WithUnit(layout.Outline.Length, layout.Design.Units);
        board.Write("notes", StationLadder.Meaning(layout), new Point2(body.Min.X, body.Min.Y - 14));
        board.Write("notes", $"outer face of sides and binding, all round {all}; sides follow it, so does the mould", new Point2(body.Min.X, body.Min.Y - 19));
        TitleBlock.Draw(board, top, "Outline: radii and half-widths, full size", FaceMarks.Reading(view), new Point2(body.Min.X, body.Min.Y - 25), body.Width);
        return board.Finish("outline", $"Outline - {layout.Design[Identity.Name].Value}", "The outline of the body at full size, with radii and half-widths.");
    }
}
