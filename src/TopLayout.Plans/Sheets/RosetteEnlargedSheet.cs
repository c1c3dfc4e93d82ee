using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>The rosette enlarged: the part of it at the tail end of the hole with every ring named, and a section through its channels.</summary>
internal static class RosetteEnlargedSheet
{
    private const string Part = "enlarged";
    private const string SectionPart = "section";
    private const string WoodPart = "wood";
    private const string LinerPart = "soundhole liner";
    private const double HoleOffMm = 3;
    private const int Times = 5;
    private const double HalfWidthMm = 18;
    private const double BeyondMm = 3;

    /// <summary>The sheet; null without a channel.</summary>
    public static Sheet? Draw(ReviewedTop top)
    {
        var layout = top.Layout;
        var channels = Rosette.Channels(layout.Design, layout.Hole.Radius);
        if (channels.Length == 0)
        {
            return null;
        }

        var board = new SheetBoard();
        if (layout.Hole.Radius is { } hole)
        {
            Plan(board, layout, channels, hole);
            Section(board, layout, channels, new Point2(board.Extents.Min.X, board.Extents.Min.Y - 16));
        }
        else
        {
            Section(board, layout, channels, new Point2(0, 0));
        }

        var drawn = board.Extents;
        var (foot, scale) = (new Point2(drawn.Min.X, drawn.Min.Y - 8), $"{NumberFormat.Whole(Times)} times full size");
        var title = layout.Hole.Radius is null ? "Rosette, enlarged: section at the tail end of the hole" : "Rosette, enlarged: outside face at the tail end of the hole, and a section there";
        TitleBlock.Draw(board, top, title, "to read from, not to cut from", foot, drawn.Width, isFullSize: false, scale);
        return board.Finish("rosette-enlarged", $"Rosette, enlarged - {layout.Design[Identity.Name].Value}", $"The rings of the rosette, seen from outside, and a section through them, {scale}.");
    }

    // Round the hole's centre at the origin, tail end down, so wide that the sector of the outermost wall is twice HalfWidthMm across.
    private static void Plan(SheetBoard board, Layout layout, IReadOnlyList<RingChannel> channels, double hole)
    {
        var half = Trig.Asin(HalfWidthMm / (hole + channels[^1].OuterMm));
        var ladder = new Ladder("ring names", (HalfWidthMm + 4) * Times, outward: 1);
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        void Arc(string part, double radius, Role role, string? name = null, Emphasis emphasis = Emphasis.Normal)
        {
            var end = new Point2(radius * Trig.Sin(half) * Times, -radius * Trig.Cos(half) * Times);
            board.Draw(part, role, new Contour([new Vertex(new Point2(-end.X, end.Y), Trig.Tan(half / 2)), new Vertex(end)], isClosed: false), emphasis);
            if (name is not null)
            {
                ladder.Add(end.Y, name, end.X + 1);
            }
        }

        if (layout.HoleLiner is not null)
        {
            var liner = layout.Design[Soundhole.Liner].Value;
            Arc(LinerPart, hole - liner, Role.Mark, $"{LinerPart}: {Of(liner)} thick");
        }

        Arc("soundhole", hole, Role.Mark, $"hole: radius {Of(hole)}");
        foreach (var (i, channel) in channels.Index())
        {
            var name = channels.Count == 1 ? "channel" : $"channel {NumberFormat.Whole(i + 1)}";
            if (i == 0 || channels[i - 1].OuterMm != channel.InnerMm)
            {
                Arc(Rosette.NameOf(i, channels.Count), hole + channel.InnerMm, Role.Mark, $"{name}: inner wall, radius {Of(hole + channel.InnerMm)}");
            }

            foreach (var ring in channel.Rings)
            {
                if (ring != channel.Rings[0])
                {
                    Arc($"{Part} {ring.Name}", hole + ring.InnerMm, Role.Mark, emphasis: Emphasis.Faint);
                }

                var middle = hole + ((ring.InnerMm + ring.OuterMm) / 2);
                ladder.Add(-middle * Trig.Cos(half) * Times, Words(layout.Design, ring), (middle * Trig.Sin(half) * Times) + 1);
            }

            Arc(Rosette.NameOf(i, channels.Count), hole + channel.OuterMm, Role.Mark, $"{name}: outer wall, radius {Of(hole + channel.OuterMm)}");
        }

        bool IsShown((Point2 Inner, Point2 Outer) joint) => joint.Outer.Y < 0 && Math.Abs(joint.Outer.X) <= -joint.Outer.Y * Trig.Tan(half);
        foreach (var (ring, tile) in TileJoints.Rows(layout))
        {
            foreach (var (inner, outer) in TileJoints.Of(tile, new Point2(0, 0)).Where(IsShown))
            {
                var (from, to) = (new Point2(inner.X * Times, inner.Y * Times), new Point2(outer.X * Times, outer.Y * Times));
                board.Line($"{Part} {ring.Name}", Role.Mark, from, to, Emphasis.Faint);
            }
        }

        var (near, far) = (-(hole * Trig.Cos(half)) + BeyondMm, -(hole + channels[^1].OuterMm + BeyondMm));
        foreach (var (from, to) in TileJoints.AxisOffTiles(layout, near, far, 0))
        {
            board.Line("centre line", Role.Centre, new Point2(0, from * Times), new Point2(0, to * Times));
        }

        ladder.Draw(board, hasUpright: false);
    }

    private static string Words(Design design, Ring ring)
    {
        var (shelf, section) = (new WoodShelf(design), design.Each(Rings.Section)[ring.Number - 1]);
        string[] named = [.. new[] { section.Find(Rings.Wood), section.Find(Rings.SecondWood) }.Where(w => w is not null).Select(w => shelf[w!.Value].Name)];
        var woods = named.Length > 0 ? $", {string.Join(" and ", named)}" : "";
        var tiles = ring.Tiles is { } row ? $", {NumberFormat.Whole(row.Count)} of them{(row.Repeat > 1 ? $" in motifs of {NumberFormat.Whole(row.Repeat)}" : "")}" : "";
        return $"{ring.Name}: {LengthText.WithUnit(ring.WidthMm, design.Units)} wide{tiles}{woods}";
    }

    private static void Section(SheetBoard board, Layout layout, IReadOnlyList<RingChannel> channels, Point2 corner)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        var top = layout.Top.ThicknessMm;
        Point2 At(double x, double y) => new(corner.X + (x * Times), corner.Y - (y * Times));
        double Floor(RingChannel channel) => Math.Min(channel.DepthMm, top);
        var outside = channels.SelectMany(c => new[] { At(c.InnerMm, 0), At(c.InnerMm, Floor(c)), At(c.OuterMm, Floor(c)), At(c.OuterMm, 0) });
        var far = channels[^1].OuterMm + BeyondMm;
        Point2[] line = [At(far, top), At(0, top), At(0, 0), .. WithoutSpikes([.. outside]), At(far, 0)];
        board.Draw(SectionPart, Role.Mark, new Contour(line.Select(p => new Vertex(p)), isClosed: false));
        board.Hatch(WoodPart, Region.Inside(Contour.Polygon(line)), Angle.FromDegrees(45));
        if (layout.HoleLiner is not null)
        {
            var strip = new Box2(At(-layout.Design[Soundhole.Liner].Value, top), At(0, 0));
            board.Box(LinerPart, Role.Mark, strip);
            board.Hatch(WoodPart, Region.Inside(Contour.Rectangle(strip)), Angle.FromDegrees(135));
        }

        foreach (var ring in channels.SelectMany(c => c.Rings.Skip(1).Select(r => (r.InnerMm, c.DepthMm))))
        {
            board.Line(SectionPart, Role.Mark, At(ring.InnerMm, 0), At(ring.InnerMm, Math.Min(ring.DepthMm, top)));
        }

        board.Write(SectionPart, "hole", At(-layout.Design[Soundhole.Liner].Value, top / 2) - new Vec2(HoleOffMm, 1.4), alignment: Alignment.Right, role: Role.Dimension);
        board.Write(SectionPart, $"section: top {Of(top)} thick", At(far, top / 2) + new Vec2(6, 0), role: Role.Dimension);
        foreach (var (i, channel) in channels.Index())
        {
            var name = channels.Count == 1 ? "channel" : $"channel {NumberFormat.Whole(i + 1)}";
            board.Write(SectionPart, $"{name}: {RosetteSheet.Deep(channel, layout.Design)}, floor {Of(top - channel.DepthMm)}", At(0, top) - new Vec2(0, 6 + (i * 5)), role: Role.Dimension);
        }
    }

    // Channels that share a wall have no wood between them: the line runs from one floor to the other along it.
    private static IEnumerable<Point2> WithoutSpikes(IReadOnlyList<Point2> points)
    {
        for (var i = 0; i < points.Count; i++)
        {
            var isSpike = (i + 1 < points.Count && points[i] == points[i + 1]) || (i > 0 && points[i] == points[i - 1]);
            if (!isSpike)
            {
                yield return points[i];
            }
        }
    }
}
