using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Plans.Sheets;

/// <summary>A template of every flat part on its own, to cut out: plates, patches, cleats, blocks. Parts alike in all share one.</summary>
internal static class PartSheets
{
    private const double ArrowHeadMm = 3;

    /// <summary>The templates, in building order.</summary>
    public static IEnumerable<Sheet> Draw(ReviewedTop top)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var alike in top.Layout.Members.Where(IsFlat).GroupBy(Likeness))
        {
            yield return Draw(top, [.. alike], Free(Stem(alike.First().Name), taken));
        }
    }

    private static bool IsFlat(Member member) => member.Kind is MemberKind.Plate or MemberKind.Block;

    // Same outline wherever it lies, same stuff: lengths of the edges in order, from the first.
    private static string Likeness(Member member)
    {
        var edges = member.Footprint.Loops.SelectMany(l => l.Segments).Select(s => $"{NumberFormat.Trimmed(s.Length, 3)}/{NumberFormat.Trimmed(s.Bulge, 5)}");
        return $"{member.Kind} {member.Face} {member.ThicknessMm} {member.Material} {member.Grain.Degrees} {string.Join(' ', edges)}";
    }

    private static Sheet Draw(ReviewedTop top, IReadOnlyList<Member> alike, string name)
    {
        var (layout, member) = (top.Layout, alike[0]);
        var board = new SheetBoard();
        var view = new FaceView(member.Face, layout.Design.Get(Identity.Handed).Value);
        var footprint = member.Footprint.Placed(view.Placement);
        foreach (var loop in footprint.Loops)
        {
            board.Draw(member.Name, Role.Cut, loop);
        }

        var body = footprint.Bounds;
        if (body.Min.X < 0 && body.Max.X > 0)
        {
            board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 5), new Point2(0, body.Min.Y - 6));
        }

        var foot = GrainArrow(board, member, view, new Point2(body.Center.X, body.Min.Y - 12));
        FaceMarks.Draw(board, view, body);
        Measures(board, layout, member, body);
        var drawn = board.Extents;
        var title = alike.Count == 1 ? $"{Capital(member.Name)}: template, full size" : $"{Capital(member.Name)} and {NumberFormat.Whole(alike.Count - 1)} alike: template, full size";
        board.Write(Cautions.Part, Cautions.Cutting, new Point2(drawn.Min.X, foot - 7));
        TitleBlock.Draw(board, top, title, FaceMarks.Reading(view), new Point2(drawn.Min.X, foot - 12), board.Extents.Width);
        return board.Finish(name, $"{Capital(member.Name)} - {layout.Design[Identity.Name].Value}", $"The {member.Name} at full size, to cut out.");
    }

    private static void Measures(SheetBoard board, Layout layout, Member member, Box2 body)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        var ladder = new Ladder("part measures", body.Max.X + 8, outward: 1);
        ladder.Add(body.Max.Y, $"{Of(-body.Max.Y)} from neck edge");
        ladder.Add(body.Center.Y, $"{Of(body.Width)} x {Of(body.Height)}, {Of(member.ThicknessMm)} thick, {member.Material!.Wood.Name}");
        ladder.Add(body.Min.Y, $"{Of(-body.Min.Y)} from neck edge");
        ladder.Draw(board);
    }

    // Below the part; returns the height of what is lowest.
    private static double GrainArrow(SheetBoard board, Member member, FaceView view, Point2 at)
    {
        const string Part = "grain arrow";
        if (member.Material!.Lie == GrainLie.Upright)
        {
            board.Write(Part, "grain upright, through the depth of the rim", at, alignment: Alignment.Centre);
            return at.Y;
        }

        var along = view.Placement.Apply(new Vec2(-Trig.Sin(member.Grain), Trig.Cos(member.Grain)));
        var half = along * 12;
        var middle = at - new Vec2(0, Math.Abs(half.Y));
        foreach (var way in (ReadOnlySpan<Vec2>)[half, -half])
        {
            var (tip, back) = (middle + way, way.Unit * -ArrowHeadMm);
            board.Line(Part, Role.Mark, middle, tip);
            board.Line(Part, Role.Mark, tip, tip + back + (back.Left * 0.4));
            board.Line(Part, Role.Mark, tip, tip + back - (back.Left * 0.4));
        }

        board.Write(Part, "long grain", middle + new Vec2(Math.Abs(half.X) + 5, -(SheetBoard.TextMm / 2)));
        return middle.Y - Math.Abs(half.Y);
    }

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Stem(string name) => string.Join('-', PlainAscii.Of(name).ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries));

    private static string Free(string stem, HashSet<string> taken)
    {
        var name = stem;
        for (var n = 2; !taken.Add(name); n++)
        {
            name = $"{stem}-{NumberFormat.Whole(n)}";
        }

        return name;
    }
}
