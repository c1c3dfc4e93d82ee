using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The grain check on one sheet, seen from outside: every edge that stays on a grain line, drawn by its verdict whichever face it is on, the
/// runs with their numbers, notes too, and the profile under the body.
/// </summary>
internal static class GrainSheet
{
    private const double GapMm = 14;
    private const double NameMm = 2.2;

    /// <summary>The sheet.</summary>
    public static Sheet Draw(ReviewedTop top)
    {
        var board = new SheetBoard();
        var layout = top.Layout;
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        var body = view.Map(layout.Outline).Bounds;
        board.Draw("outline", Role.Mark, view.Map(layout.Outline));
        board.Draw("soundhole", Role.Mark, view.Map(layout.Hole.Edge));
        board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 6), new Point2(0, body.Min.Y - 6));
        foreach (var member in layout.Members)
        {
            Edges(board, member, Verdicts(top, member), view);
        }

        var marks = FindingMarks.OnGrainSheet(top);
        marks.Draw(board, view);
        FaceMarks.Draw(board, view, body);
        Names(board, top, view);
        var foot = ProfilePlot.Draw(board, top, view, body, body.Min.Y - GapMm, marks.Count);
        marks.GrainLines(board, view, body.Min.Y, foot);
        foot = marks.List(board, new Point2(body.Min.X, foot - 4), layout.Design.Units);
        const string Title = "Grain: glued edges along it, and what they are up against";
        foot = TitleBlock.Draw(board, top, Title, FaceMarks.Reading(view), new Point2(body.Min.X, foot - 8), body.Width);
        Legend.Draw(board, new Point2(body.Min.X, foot - 4));
        return board.Finish("grain", $"Grain - {layout.Design[Identity.Name].Value}", "Glued edges of both faces by the verdict of the grain check, full size, seen from outside, neck up.");
    }

    // Of the parts that the check speaks of, light, so that those of a list are found.
    private static void Names(SheetBoard board, ReviewedTop top, FaceView view)
    {
        var spoken = top.Grain.Sides.Select(s => s.Member).Concat(top.Findings.SelectMany(f => f.Edges).Select(e => e.Part)).ToHashSet(StringComparer.Ordinal);
        foreach (var member in top.Layout.Members.Where(m => spoken.Contains(m.Name)))
        {
            board.Name(MemberLabel.For(member, top.Layout.Members, view, heightMm: NameMm, emphasis: Emphasis.Faint));
        }
    }

    // By edge: the verdict on its side, and those of the findings that speak of it.
    private static ILookup<string, Severity> Verdicts(ReviewedTop top, Member member) => top.Grain.Sides.Where(s => s.Member == member.Name).Select(s => (s.Edge, s.Severity))
        .Concat(top.Findings.SelectMany(f => f.Edges.Where(e => e.Part == member.Name).Select(e => (e.Edge, f.Severity))))
        .ToLookup(v => v.Edge, v => v.Severity, StringComparer.Ordinal);

    // The edges that give most to a run by the verdict on it, noted ones like the mark of a note, the others faint.
    private static void Edges(SheetBoard board, Member member, ILookup<string, Severity> verdicts, FaceView view)
    {
        foreach (var edge in member.Footprint.Edges)
        {
            var own = verdicts[edge.Label].Select(s => (Severity?)s).DefaultIfEmpty(null).Max();
            var contour = new Contour([new Vertex(edge.Start, edge.Bulge), new Vertex(edge.End)], isClosed: false);
            board.Draw(member.Name, own == Severity.Note ? Role.Finding : Role.Mark, view.Map(contour), Of(own));
        }
    }

    private static Emphasis Of(Severity? severity) => severity switch
    {
        null => Emphasis.Faint,
        Severity.Fail => Emphasis.Bad,
        Severity.Warning => Emphasis.Doubtful,
        Severity.Note => Emphasis.Normal,
        _ => Emphasis.Good,
    };
}
