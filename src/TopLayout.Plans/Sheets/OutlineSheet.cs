using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>The outline alone: its arcs with their radii, its widths, and half-widths at stations to draw it from.</summary>
internal static class OutlineSheet
{
    private const string EndPart = "ends of arcs";
    private const double TickMm = 3;
    private const double OffMm = 2;

    /// <summary>The sheet.</summary>
    public static Sheet Draw(ReviewedTop top)
    {
        var (layout, outline) = (top.Layout, top.Layout.Outline);
        var board = new SheetBoard();
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        Edges(board, layout, view);
        var body = view.Map(outline).Bounds;
        board.Line("datum", Role.Centre, new Point2(body.Min.X, 0), new Point2(body.Max.X, 0));
        board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 6), new Point2(0, body.Min.Y - 6));
        foreach (var ((at, bass), (_, treble)) in StationLadder.Of(layout, outline, -1).Zip(StationLadder.Of(layout, outline, 1)))
        {
            board.Line("stations", Role.Dimension, view.Map(new Point2(-bass, -at)), view.Map(new Point2(treble, -at)), Emphasis.Faint);
        }

        Mitres.Draw(board, layout, view, isOfBinding: false);
        Measures(board, layout, view, body);
        PlateEdges.Name(board, layout, view);
        foreach (var side in (ReadOnlySpan<int>)(OutlineNumbers.IsEven(layout) ? [1] : [-1, 1]))
        {
            Arcs(board, layout, view, side);
            Straights(board, layout, view, side);
        }

        FaceMarks.Draw(board, view, body);
        return Finished(board, top, view, body);
    }

    // Where the plate is smaller than the body both edges are named, and the body's is dashed: it is not cut.
    private static void Edges(SheetBoard board, Layout layout, FaceView view)
    {
        var (outline, plate) = (view.Map(layout.Outline), view.Map(layout.Body.PlateEdge));
        if (layout.Body.PlateEdge == layout.Outline)
        {
            board.Draw("outline", Role.Mark, outline);
            return;
        }

        board.Draw("outline", Role.Hidden, outline);
        board.Draw(PlateEdges.Part, Role.Mark, plate);
    }

    // What is no arc: a flat at the neck, the wall of a cutaway.
    private static void Straights(SheetBoard board, Layout layout, FaceView view, int side)
    {
        var mirror = side < 0 ? Placement.MirroredAcrossY : Placement.Identity;
        string Of(double mm) => StationLadder.Text(layout, mm);
        foreach (var line in BodyWidths.Half(layout.Outline, side).Where(s => !s.IsArc && s.Length > Tolerances.ShortestMm))
        {
            var (across, along) = (Math.Abs(line.End.X - line.Start.X), Math.Abs(line.End.Y - line.Start.Y));
            var words = across <= Tolerances.ShortestMm ? $"straight, {Of(line.Start.X)} from the centre line, to {Of(-Math.Min(line.Start.Y, line.End.Y))} from neck edge"
                : along > Tolerances.ShortestMm ? $"straight, {Of(line.Length)} long"
                : line.Start.X <= Tolerances.ShortestMm && OutlineNumbers.IsEven(layout) ? $"flat, {Of(line.End.X)} to each side"
                : $"flat, {Of(line.Start.X)} to {Of(line.End.X)} from the centre line";
            board.Name(new LabelRequest("straights", Role.Dimension, words, SheetBoard.TextMm, view.Map(line.Placed(mirror).PointAt(0.5))) { Priority = 1 });
        }
    }

    // The ends of every arc with their places, and its radius beside its middle.
    private static void Arcs(SheetBoard board, Layout layout, FaceView view, int side)
    {
        var mirror = side < 0 ? Placement.MirroredAcrossY : Placement.Identity;
        foreach (var arc in OutlineNumbers.Arcs(layout.Outline, side))
        {
            var (longest, end) = (arc.Longest.Placed(mirror), arc.Last.Placed(mirror));
            var tick = end.TangentAt(1).Left * TickMm;
            if (side > 0 || Math.Abs(end.End.X) > Tolerances.ShortestMm)
            {
                // Both halves end on the centre line: one tick does for them.
                board.Line(EndPart, Role.Mark, view.Map(end.End - tick), view.Map(end.End + tick));
            }

            if (Math.Abs(end.End.X) > Tolerances.ShortestMm)
            {
                var place = $"{StationLadder.Text(layout, -end.End.Y)}; {StationLadder.Text(layout, Math.Abs(end.End.X))}";
                board.Name(new LabelRequest(EndPart, Role.Dimension, place, SheetBoard.TextMm, view.Map(end.End)) { Preferred = [.. ClearPlaces.Round(board, place, view.Map(end.End))] });
            }

            var words = $"R {StationLadder.Text(layout, arc.Radius)}";
            var places = ((double[])[0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74]).SelectMany(t => ClearPlaces.Beside(board, words, view.Map(longest.PointAt(t)), view.Placement.Apply(longest.TangentAt(t).Left)));
            board.Name(new LabelRequest("radii", Role.Dimension, words, SheetBoard.TextMm, view.Map(longest.PointAt(0.5))) { Preferred = [.. places] });
        }
    }

    private static void Measures(SheetBoard board, Layout layout, FaceView view, Box2 body)
    {
        // Half-widths on the left; on the right those of a half that differs, and the widths of the whole body. A width of one half stands on its side.
        var leftSide = view.IsBassLeft ? -1 : 1;
        var left = StationLadder.Beside(layout, layout.Outline, leftSide, view);
        var right = OutlineNumbers.IsEven(layout) ? new Ladder("half-widths", body.Max.X + 12, outward: 1) : StationLadder.Beside(layout, layout.Outline, -leftSide, view);
        right.Add(0, "0 neck edge", body.Max.X + OffMm);
        foreach (var w in BodyWidths.Of(layout.Outline))
        {
            var what = w.Side is null ? $"{w.Name} {StationLadder.Text(layout, 2 * w.Half)}" : $"{w.Name}, {w.Side} {StationLadder.Text(layout, w.Half)}";
            var isLeft = w.Side is not null && (w.Side == "bass") == view.IsBassLeft;
            (isLeft ? left : right).Add(-w.FromNeckEdge, $"{what} at {StationLadder.Text(layout, w.FromNeckEdge)}", (isLeft ? -1 : 1) * (w.Half + OffMm));
        }

        PlateEdges.Ends(layout, (y, text) => right.Add(y, text, OutlineNumbers.HalfWidth(layout.Outline, -y, -leftSide) + OffMm));

        // Level with the tail, from where the outline has left it.
        var tail = -body.Min.Y;
        right.Add(body.Min.Y, $"{StationLadder.Text(layout, tail)} tail", OutlineNumbers.HalfWidth(layout.Outline, tail - OffMm, -leftSide));
        left.Draw(board, hasUpright: false);
        right.Draw(board, hasUpright: false);
    }

    private static Sheet Finished(SheetBoard board, ReviewedTop top, FaceView view, Box2 body)
    {
        var layout = top.Layout;
        var all = LengthText.WithUnit(layout.Outline.Length, layout.Design.Units);
        string[] notes =
        [
            StationLadder.Meaning(layout),
            $"outer face of sides{(layout.Design.Has(Binding.Section) || layout.Design.Has(Ledge.Section) ? " and binding" : "")}, all round {all}; sides follow it, so does the mould",
            "at the ends of arcs: distance from the neck edge, then from the centre line",
            .. board.Has(Mitres.Part) ? (string[])[Mitres.Meaning] : [],
        ];
        var y = body.Min.Y - 14;
        foreach (var note in notes)
        {
            board.Write("notes", note, new Point2(body.Min.X, y));
            y -= 5;
        }

        TitleBlock.Draw(board, top, "Outline: radii and half-widths, full size", FaceMarks.Reading(view), new Point2(body.Min.X, y - 1), body.Width);
        return board.Finish("outline", $"Outline - {layout.Design[Identity.Name].Value}", "The outline of the body at full size, with radii and half-widths.");
    }
}
