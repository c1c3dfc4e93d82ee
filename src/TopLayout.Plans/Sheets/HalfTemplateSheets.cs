using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets;

/// <summary>Half-templates of the plate, to cut out and turn over on the centre line; one for each half where the halves differ.</summary>
internal static class HalfTemplateSheets
{
    private const double TickMm = 6;

    // A line level with an end begins where the outline has left it by this.
    private const double LeftMm = 2;

    private const double NarrowMm = 2;
    private const string Horn = "horn";

    /// <summary>One template, or two.</summary>
    public static IEnumerable<Sheet> Draw(ReviewedTop top) => OutlineNumbers.IsEven(top.Layout)
        ? [Draw(top, 1, "half-template", "both halves alike", "treble half; turn over for bass")]
        : [Draw(top, -1, "half-template-bass", "bass half", "bass half"), Draw(top, 1, "half-template-treble", "treble half", "treble half")];

    private static Sheet Draw(ReviewedTop top, int side, string name, string which, string over)
    {
        var (layout, edge) = (top.Layout, top.Layout.Body.PlateEdge);
        var board = new SheetBoard();
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        var outward = StationLadder.Outward(view, side);
        var half = BodyWidths.Half(edge, side);
        var mirror = outward < 0 ? Placement.MirroredAcrossY : Placement.Identity;
        var template = Contour.Chain([.. half, new Segment(half[^1].End, half[0].Start, 0, "centre line")], isClosed: true).Placed(mirror);
        board.Draw("half-template", Role.Cut, template);
        foreach (var (at, width) in StationLadder.Of(layout, edge, side))
        {
            board.Line("stations", Role.Mark, new Point2(0, -at), new Point2(outward * TickMm, -at));
            board.Line("stations", Role.Mark, new Point2(outward * (width - TickMm), -at), new Point2(outward * width, -at));
        }

        var body = template.Bounds;
        var ladder = StationLadder.Beside(layout, edge, side, view);
        var (neck, tail) = (-body.Max.Y, -body.Min.Y);
        var ofThePlate = IsInset(layout) ? " end of the plate" : " edge";
        ladder.Add(-neck, $"{StationLadder.Text(layout, neck)}: neck{ofThePlate}", outward * OutlineNumbers.HalfWidth(edge, neck + LeftMm, side));
        ladder.Add(-tail, $"{StationLadder.Text(layout, tail)}: tail{ofThePlate}", outward * OutlineNumbers.HalfWidth(edge, tail - LeftMm, side));
        Places(ladder, layout, edge, side, outward);
        ladder.Draw(board, hasUpright: false);
        board.Write("notes", "centre line", new Point2(outward * (TickMm + 5), body.Center.Y - (StationLadder.Step(layout) / 2)), rotation: Angle.FromDegrees(90));
        FaceMarks.Draw(board, view, body, over);
        var foot = board.Extents;
        board.Write("notes", StationLadder.Meaning(layout), new Point2(foot.Min.X, foot.Min.Y - 7));
        var next = WrappedText.Write(board, Cautions.Part, Cautions.Cutting, new Point2(foot.Min.X, foot.Min.Y - 12), Balanced(Cautions.Cutting, foot.Width));
        TitleBlock.Draw(board, top, $"Half-template of the {What(layout)}, {which}, full size", FaceMarks.Reading(view), new Point2(foot.Min.X, next), foot.Width);
        return board.Finish(name, $"Half-template, {which} - {layout.Design[Identity.Name].Value}", "Half of the plate at full size, to cut out, its straight edge the centre line.");
    }

    // Bouts and waist, corners, and the ends of what is straight: where a template is set right by one number.
    private static void Places(Ladder ladder, Layout layout, Contour edge, int side, int outward)
    {
        void Add(double at, double width, string what) =>
            ladder.Add(-at, $"{StationLadder.Text(layout, at)}: {StationLadder.Text(layout, width)} {what}", outward * (width + LeftMm));
        foreach (var w in BodyWidths.Of(edge).Where(w => w.Side is null || w.Side == (side < 0 ? "bass" : "treble")))
        {
            Add(w.FromNeckEdge, w.Half, w.Name == Horn ? $"{Horn}, furthest out" : w.Name);
        }

        Rounded(layout, edge, side, Add);

        var corners = Mitres.Corners(edge).Where(p => p.X * side > Tolerances.ShortestMm).Select(p => new Point2(Math.Abs(p.X), p.Y)).ToList();
        var straights = BodyWidths.Half(edge, side).Where(s => !s.IsArc && s.Length > LeftMm).SelectMany(s => (Point2[])[s.Start, s.End])
            .Where(p => p.X > Tolerances.ShortestMm && !corners.Exists(c => c.IsNear(p, Tolerances.TouchMm)));
        foreach (var (p, what) in corners.Select(p => (p, "corner")).Concat(straights.Select(p => (p, "end of the straight"))))
        {
            Add(-p.Y, p.X, what);
        }
    }

    // Where the horn's radius begins and ends, and its point furthest up, where that is neither.
    private static void Rounded(Layout layout, Contour edge, int side, Action<double, double, string> add)
    {
        foreach (var arc in BodyWidths.Half(edge, side).Where(s => s.IsArc && s.Label == Horn))
        {
            var radius = $"the horn's radius, {StationLadder.Text(layout, arc.Radius)}";
            add(-arc.Start.Y, arc.Start.X, $"start of {radius}");
            add(-arc.End.Y, arc.End.X, $"end of {radius}");
            if (arc.FractionOfDirection(Vec2.UnitY) is > 0 and < 1 and var top && arc.PointAt(top) is var point)
            {
                add(-point.Y, point.X, $"{Horn}, furthest up");
            }
        }
    }

    // The narrowest width that takes no more lines than the whole: no word is left alone on the last.
    private static double Balanced(string text, double widthMm)
    {
        var lines = WrappedText.Lines(text, widthMm).Count;
        return Enumerable.Range(1, (int)(widthMm / NarrowMm)).Select(n => n * NarrowMm).Where(w => WrappedText.Lines(text, w).Count <= lines).DefaultIfEmpty(widthMm).First();
    }

    private static bool IsInset(Layout layout) => layout.Body.PlateEdge != layout.Outline;

    private static string What(Layout layout) => IsInset(layout)
        ? $"plate, {LengthText.WithUnit(layout.Design[Ledge.Binding].Value, layout.Design.Units)} inside the rim's outer face"
        : "plate";
}
