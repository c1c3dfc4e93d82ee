using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>A template of every flat part on its own, to cut out: plates, patches, cleats, blocks, the bridge. Parts alike in all share one.</summary>
internal static class PartSheets
{
    private const double LineMm = 5;

    /// <summary>The templates, in building order.</summary>
    public static IEnumerable<Sheet> Draw(ReviewedTop top)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var alike in top.Layout.Members.Where(IsFlat).GroupBy(Likeness))
        {
            yield return Draw(top, [.. alike], Free(Stem(alike.First().Name), taken));
        }
    }

    private static bool IsFlat(Member member) => member.Kind is MemberKind.Plate or MemberKind.Block or MemberKind.Bridge;

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
        var isOld = IsOld(layout, member);
        var footprint = member.Footprint.Placed(view.Placement);
        foreach (var loop in footprint.Loops)
        {
            board.Draw(member.Name, isOld ? Role.Mark : Role.Cut, loop);
        }

        var besides = Besides(board, layout, member, view).ToList();
        var body = footprint.Bounds;
        if (body.Min.X < 0 && body.Max.X > 0)
        {
            board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 5), new Point2(0, body.Min.Y - 6));
        }

        PartMeasures.Draw(board, "part measures", footprint, layout.Design.Units);
        var foot = GrainArrow.Draw(board, member, view, new Point2(body.Center.X, Math.Min(body.Min.Y - 12, board.Extents.Min.Y - 4)));
        FaceMarks.Draw(board, view, body);
        var left = board.Extents.Min.X;
        board.Write("places", PartMeasures.Stuff(member, layout.Design.Units), new Point2(left, foot - 7));
        foot = Places(board, layout, alike, new Point2(left, foot - 7 - LineMm));
        foreach (var words in besides)
        {
            board.Write("places", words, new Point2(left, foot));
            foot -= LineMm;
        }

        if (!isOld)
        {
            board.Write(Cautions.Part, Cautions.Cutting, new Point2(left, foot));
        }

        var named = Capital(PartNames.Of(alike));
        TitleBlock.Draw(board, top, $"{named}:{Use(alike.Count, isOld)}, full size", FaceMarks.Reading(view), new Point2(left, foot - 5), board.Extents.Width);
        return board.Finish(name, $"{named} - {layout.Design[Identity.Name].Value}", $"The {PartNames.Of(alike)} at full size, {(isOld ? "to compare" : "to cut out")}.");
    }

    private static string Use(int count, bool isOld) => isOld ? " old block, to compare; do not make" : count == 1 ? " template" : $" make {NumberFormat.Whole(count)}; template";

    // A new top for an old rim: its blocks stay in it.
    private static bool IsOld(Layout layout, Member member) => member.Kind == MemberKind.Block && layout.Design.Has(Ledge.Section);

    // The tongue beside its block, without what lies on the block's face.
    private static void Light(SheetBoard board, Member tongue, Member block, FaceView view)
    {
        foreach (var edge in tongue.Footprint.Edges.Where(e => block.Footprint.Edges.All(own => own.DistanceTo(e.PointAt(0.5)) > Tolerances.ShortestMm)))
        {
            board.Draw(Tongue.Name, Role.Mark, view.Map(new Contour([new Vertex(edge.Start, edge.Bulge), new Vertex(edge.End)], isClosed: false)), Emphasis.Faint);
        }
    }

    // Draws what is on the part besides its outline; a line of words on each.
    private static IEnumerable<string> Besides(SheetBoard board, Layout layout, Member member, FaceView view)
    {
        foreach (var mark in layout.Marks.Where(m => m.IsCovered && m.Face == member.Face && !Region.Inside(m.Line).Intersect(member.Footprint).IsEmpty))
        {
            Covered(board, mark, member, view);
            yield return $"dashed: {mark.Name}, {LengthText.WithUnit(mark.Line.Bounds.Width, layout.Design.Units)} wide, {LengthText.WithUnit(mark.ThicknessMm, layout.Design.Units)} deep, in the face glued to the top";
        }

        var holes = member.Kind is MemberKind.Plate or MemberKind.Bridge ? layout.DrillPoints.Where(p => member.Footprint.Contains(p.At)).ToList() : [];
        holes.ForEach(p => Fittings.Cross(board, p, view.Map(p.At)));
        if (holes.Count > 0)
        {
            yield return "crosses: drilled later, through top and part together";
        }

        foreach (var words in member.Kind == MemberKind.Bridge ? BridgeTemplate.Besides(board, layout, view) : [])
        {
            yield return words;
        }

        if (member.Name == Block.Neck.Name && layout.Find(Tongue.Name) is { } tongue)
        {
            Light(board, tongue, member, view);
            yield return $"light: the tongue; {TongueSheet.Joint(tongue, member)}";
        }
    }

    // What of it crosses the part, without what lies on the part's own edge.
    private static void Covered(SheetBoard board, PlanMark mark, Member member, FaceView view)
    {
        var inside = Region.Inside(mark.Line).Intersect(member.Footprint).Edges;
        foreach (var edge in inside.Where(e => member.Footprint.Edges.All(own => own.DistanceTo(e.PointAt(0.5)) > Tolerances.ShortestMm)))
        {
            board.Draw(mark.Name, Role.Hidden, view.Map(new Contour([new Vertex(edge.Start, edge.Bulge), new Vertex(edge.End)], isClosed: false)));
        }
    }

    // Where each piece goes, one line each; returns the height of the line below.
    private static double Places(SheetBoard board, Layout layout, IReadOnlyList<Member> alike, Point2 at)
    {
        foreach (var member in alike)
        {
            var who = alike.Count == 1 ? "place" : member.Name;
            board.Write("places", $"{who}: {PartMeasures.Place(member, layout.Design.Units)}", at);
            at -= new Vec2(0, LineMm);
        }

        return at.Y;
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
