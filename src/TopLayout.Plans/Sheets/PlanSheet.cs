using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>The plan of one face: what is cut and marked on it, what lies behind it, running measures, findings and the grain profile.</summary>
internal static class PlanSheet
{
    private const double GapMm = 14;
    private const string LinerPart = "soundhole liner";

    /// <summary>Name of the plan of the face seen.</summary>
    public const string OutsideName = "outside-plan";

    /// <summary>Name of the plan of the braced face.</summary>
    public const string InsideName = "inside-plan";

    /// <summary>The plan of the outside face.</summary>
    public static Sheet Outside(ReviewedTop top) => Draw(top, TopFace.Outside, OutsideName, "Outside plan");

    /// <summary>The plan of the braced face.</summary>
    public static Sheet Inside(ReviewedTop top) => Draw(top, TopFace.Inside, InsideName, "Inside plan: bracing");

    private static Sheet Draw(ReviewedTop top, TopFace face, string name, string title)
    {
        var board = new SheetBoard();
        var layout = top.Layout;
        var view = new FaceView(face, layout.Design.Get(Identity.Handed).Value);
        var body = view.Map(layout.Outline).Bounds;
        Geometry(board, layout, view);
        var marks = FindingMarks.OnPlan(top);
        marks.Draw(board, view);
        Names(board, layout, view);
        FaceMarks.Draw(board, view, body);
        PlanMeasures.Draw(board, layout, view, body);
        PlateEdges.NameRim(board, "binding left in place", layout, view);
        var foot = ProfilePlot.Draw(board, top, view, body, body.Min.Y - GapMm, marks.Count);
        marks.GrainLines(board, view, body.Min.Y, foot);
        foot = marks.List(board, new Point2(body.Min.X, foot - 4), layout.Design.Units);
        foot = TitleBlock.Draw(board, top, title, FaceMarks.Reading(view), new Point2(body.Min.X, foot - 8), body.Width);
        var hasLinings = layout.Members.Any(m => m.Face == face && m.Kind == MemberKind.Lining);
        Legend.Draw(board, new Point2(body.Min.X, foot - 4), hasLinings ? "glued (linings too)" : "glued");
        return board.Finish(name, $"{title} - {layout.Design[Identity.Name].Value}", Description(view, title));
    }

    private static string Description(FaceView view, string title) =>
        $"{title} at full size, {view.Word.ToLowerInvariant()} face, {(view.Hand == Hand.Left ? "left" : "right")}-handed, neck up.";

    private static void Geometry(SheetBoard board, Layout layout, FaceView view)
    {
        board.Draw("outline", Role.Cut, view.Map(layout.Body.PlateEdge));
        if (layout.Body.PlateEdge != layout.Outline)
        {
            board.Draw("binding left in place", Role.Mark, view.Map(layout.Outline), Emphasis.Faint);
        }

        board.Draw("soundhole", Role.Cut, view.Map(layout.Hole.Edge));
        if (layout.HoleLiner is { } liner)
        {
            board.Draw(LinerPart, Role.Mark, view.Map(liner));
            var places = view.Map(liner).Segments.SelectMany(s => new[] { s.PointAt(0.5), s.PointAt(0.25), s.PointAt(0.75) }).ToList();
            board.Name(new LabelRequest(LinerPart, Role.Text, LinerPart, SheetBoard.TextMm, places[0]) { Elsewhere = [.. places], WantsLeader = true });
        }

        var box = view.Map(layout.Outline).Bounds;
        board.Line("centre line", Role.Centre, new Point2(0, box.Max.Y + 6), new Point2(0, box.Min.Y - 6));
        board.Line("datum", Role.Centre, new Point2(box.Min.X, 0), new Point2(box.Max.X, 0));
        var walls = ChannelWalls.Of(layout).ToLookup(w => w.Channel, w => w.Wall);
        foreach (var member in layout.Members)
        {
            Member(board, member, member.Kind == MemberKind.Channel ? walls[member] : member.Footprint.Loops, view);
        }

        if (view.Face == TopFace.Inside)
        {
            GlueAreas.Draw(board, layout, view);
        }

        var (saddle, emphasis) = view.Face == TopFace.Outside ? (Role.Mark, Emphasis.Normal) : (Role.Hidden, Emphasis.Faint);
        board.Line("saddle", saddle, view.Map(layout.Saddle.Bass), view.Map(layout.Saddle.Treble), emphasis);
        Fittings.Draw(board, layout, view);
        Mitres.Draw(board, layout, view, isOfBinding: view.Face == TopFace.Outside);
    }

    private static void Member(SheetBoard board, Member member, IEnumerable<Contour> loops, FaceView view)
    {
        var isNear = member.Face == view.Face;
        var role = (isNear, member.Kind) switch
        {
            (true, MemberKind.Channel) => Role.Pocket,
            (true, _) => Role.Mark,
            _ => Role.Hidden,
        };
        foreach (var loop in loops)
        {
            board.Draw(member.Name, role, view.Map(loop), isNear ? Emphasis.Normal : Emphasis.Faint);
        }
    }

    private static void Names(SheetBoard board, Layout layout, FaceView view)
    {
        var face = layout.Members.Where(m => m.Face == view.Face).ToList();
        var rows = LabelRow.Of(face, view, board);
        var left = new List<Member>(face);
        while (left is [var member, ..])
        {
            left.Remove(member);
            var twin = rows.ContainsKey(member) ? null : left.Find(o => MemberLabel.AreMirrored(member, o) && !rows.ContainsKey(o));
            var mirrored = twin is null ? null : MemberLabel.For(twin, face, view);
            board.Name(MemberLabel.For(member, face, view, rows.TryGetValue(member, out var middle) ? middle : null, mirrored));
            if (mirrored is not null)
            {
                left.Remove(twin!);
                board.Name(mirrored);
            }
        }
    }
}
