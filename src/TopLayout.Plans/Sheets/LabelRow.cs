using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>Names of bars of one kind, numbered, that stand in one row across them: where most of them are free of every line.</summary>
internal static class LabelRow
{
    private const double StepMm = 2;
    private const double ClearPerHeight = 0.25;
    private const int Least = 3;

    /// <summary>The middles of the names, for the bars of a face that are in a row; those that have no room in it are left out.</summary>
    public static IReadOnlyDictionary<Member, Point2> Of(IEnumerable<Member> face, FaceView view, SheetBoard board)
    {
        var rows = new Dictionary<Member, Point2>();
        foreach (var group in face.Where(m => m.Kind == MemberKind.Bar && char.IsAsciiDigit(m.Name[^1])).GroupBy(m => m.Name[..m.Name.LastIndexOf(' ')]))
        {
            var bars = group.Select(m => (Member: m, Footprint: m.Footprint.Placed(view.Placement))).ToList();
            if (bars.Count >= Least)
            {
                foreach (var (member, middle) in Best(bars, view, board))
                {
                    rows[member] = middle;
                }
            }
        }

        return rows;
    }

    private static List<(Member Member, Point2 Middle)> Best(List<(Member Member, Region Footprint)> bars, FaceView view, SheetBoard board)
    {
        var isUpright = bars.Count(b => b.Footprint.Bounds.Height > b.Footprint.Bounds.Width) * 2 > bars.Count;
        double Low(Box2 box) => isUpright ? box.Min.Y : box.Min.X;
        double High(Box2 box) => isUpright ? box.Max.Y : box.Max.X;
        var (from, to) = (bars.Max(b => Low(b.Footprint.Bounds)), bars.Min(b => High(b.Footprint.Bounds)));
        var steps = Math.Max(0, (int)((to - from) / 2 / StepMm));
        return Enumerable.Range(-steps, (2 * steps) + 1).OrderBy(Math.Abs)
            .Select(n => Free(bars, view, board, isUpright, ((from + to) / 2) + (n * StepMm)))
            .MaxBy(f => f.Count) ?? [];
    }

    private static List<(Member Member, Point2 Middle)> Free(List<(Member Member, Region Footprint)> bars, FaceView view, SheetBoard board, bool isUpright, double at)
    {
        var free = new List<(Member, Point2)>();
        foreach (var (member, footprint) in bars)
        {
            var (box, far) = (footprint.Bounds, 1.0);
            var line = isUpright
                ? new Segment(new Point2(box.Min.X - far, at), new Point2(box.Max.X + far, at))
                : new Segment(new Point2(at, box.Min.Y - far), new Point2(at, box.Max.Y + far));
            if (footprint.Outer.Crossings(line) is [var first, .., var last])
            {
                var middle = first.Point.MidpointTo(last.Point);
                var frame = Frame(member.Name, middle, MemberLabel.Upright(member.Grain, view));
                if (frame.Corners.All(footprint.Contains) && board.IsFree(frame, MemberLabel.LiesOnAxis(member, footprint)))
                {
                    free.Add((member, middle));
                }
            }
        }

        return free;
    }

    private static TurnedBox Frame(string text, Point2 middle, Angle rotation) =>
        TurnedBox.Around(middle, Lettering.Measure(text, SheetBoard.TextMm), rotation).Grown(SheetBoard.TextMm * ClearPerHeight);
}
