using System.Collections.Immutable;
using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The label that names a member on a plan: inside it where it fits, along it when it is a bar. A leader ends in its middle, clear of the
/// other members of the face.
/// </summary>
internal static class MemberLabel
{
    // A leader's dot keeps this off every edge.
    private const double ClearMm = 0.5;

    // A bar nearer to the centre line's direction may have its name on the centre line.
    private const double AlongAxisDegrees = 30;
    private const int GridColumns = 12;
    private const int GridRows = 8;

    /// <summary>The request for a member's name.</summary>
    /// <param name="member">The member.</param>
    /// <param name="face">All members of its face.</param>
    /// <param name="view">The face.</param>
    /// <param name="row">Where the name stands in a row of names; null without one.</param>
    /// <param name="mirrored">The request for the like member on the other side of the centre line; null without one.</param>
    /// <param name="heightMm">Height of the letters.</param>
    /// <param name="emphasis">How strongly it speaks.</param>
    public static LabelRequest For(
        Member member, IEnumerable<Member> face, FaceView view, Point2? row = null, LabelRequest? mirrored = null, double heightMm = SheetBoard.TextMm, Emphasis emphasis = Emphasis.Normal)
    {
        var footprint = member.Footprint.Placed(view.Placement);
        var others = face.Where(o => o != member).Select(o => o.Footprint.Placed(view.Placement)).Where(o => o.Bounds.Overlaps(footprint.Bounds)).ToList();
        var points = Points(member, footprint).ToList();
        var clear = points.Where(p => IsClear(p, footprint, others)).DefaultIfEmpty(points[0]).ToList();

        // A ring too narrow for its name has it beside, level, and a leader to say which ring is meant.
        var isThin = footprint.Loops.Length > 1 && footprint.Edges.Min(e => e.DistanceTo(points[0])) < heightMm;
        return new LabelRequest(member.Name, Role.Text, member.Name, heightMm, row ?? clear[0])
        {
            Emphasis = emphasis,
            WantsLeader = isThin,
            Elsewhere = [.. clear],
            Preferred = row is { } place ? [place] : member.Kind == MemberKind.Fretboard ? Quarters(footprint.Bounds) : [],
            Inside = isThin ? null : footprint,
            Mirrored = mirrored,
            Rotation = member.Kind is MemberKind.Bar or MemberKind.Fretboard ? Upright(member.Grain, view) : Angle.Zero,
            BreaksLines = member.Kind == MemberKind.Fretboard || LiesOnAxis(member, footprint),
            Priority = member.Kind == MemberKind.Channel ? 2 : 1,
        };
    }

    /// <summary>True for two members of a kind that are the mirror of each other across the centre line, and for the linings, also beside a cutaway.</summary>
    public static bool AreMirrored(Member one, Member other)
    {
        var (a, b) = (one.Footprint.Bounds, other.Footprint.Bounds);
        return (one.Kind == MemberKind.Lining && other.Kind == MemberKind.Lining) || (one.Kind == other.Kind && IsSame(a.Min.X, -b.Max.X) && IsSame(a.Max.X, -b.Min.X) && IsSame(a.Min.Y, b.Min.Y) && IsSame(a.Max.Y, b.Max.Y)
            && !IsSame(a.Center.X, b.Center.X) && Math.Abs(one.Footprint.Area - other.Footprint.Area) <= Tolerances.ShortestMm * (a.Width + a.Height));
    }

    private static bool IsSame(double a, double b) => Math.Abs(a - b) <= Tolerances.ShortestMm;

    /// <summary>Along the grain, letters never upside down.</summary>
    public static Angle Upright(Angle grain, FaceView view)
    {
        var turn = grain.Degrees + 90;
        var degrees = view.Placement.Mirrored ? 180 - turn : turn;
        return Angle.FromDegrees(degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees);
    }

    /// <summary>True for a bar that the centre line runs along.</summary>
    public static bool LiesOnAxis(Member member, Region footprint) => member.Kind == MemberKind.Bar
        && footprint.Bounds.Min.X < 0 && footprint.Bounds.Max.X > 0 && Math.Abs(Math.IEEERemainder(member.Grain.Degrees, 180)) < AlongAxisDegrees;

    // Points of the member, good for a leader's end, the best first.
    private static IEnumerable<Point2> Points(Member member, Region footprint)
    {
        var box = footprint.Bounds;
        if (footprint.Loops.Length > 1)
        {
            return Enumerable.Range(0, GridColumns).Select(i => Across(footprint, box.Center, Trig.Direction(Angle.FromDegrees(-30 + (i * 360.0 / GridColumns)))));
        }

        if (member.Kind is MemberKind.Bar or MemberKind.Lining)
        {
            var edge = footprint.Edges.MaxBy(e => e.Length);
            return ((double[])[0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9]).Select(t => Across(footprint, edge.PointAt(t), edge.TangentAt(t).Left));
        }

        return Grid(footprint);
    }

    /// <summary>Points of an area on a grid, the nearest to its middle first; the middle of its box where none lies in it.</summary>
    public static IEnumerable<Point2> Grid(Region footprint)
    {
        var box = footprint.Bounds;
        var grid = from i in Enumerable.Range(0, GridColumns + 1)
                   from j in Enumerable.Range(0, GridRows + 1)
                   let p = new Point2(box.Min.X + (box.Width * i / GridColumns), box.Min.Y + (box.Height * j / GridRows))
                   where footprint.Contains(p)
                   orderby p.DistanceTo(box.Center)
                   select p;
        return grid.DefaultIfEmpty(box.Center);
    }

    // The middle of the stuff on a ray: between the last two edges out of a ring, between both sides of a strip.
    private static Point2 Across(Region footprint, Point2 from, Vec2 direction)
    {
        var box = footprint.Bounds;
        var ray = new Segment(from, from + (direction * (box.Width + box.Height)));
        var met = footprint.Edges.SelectMany(e => Intersections.Of(ray, e)).Select(m => m.First * ray.Length).Where(d => d > Tolerances.ShortestMm).Order().ToList();
        return from + (direction * (met switch
        {
            [] => 0,
            [var only] => only / 2,
            [.., var inner, var outer] when footprint.Loops.Length > 1 => (inner + outer) / 2,
            [var first, ..] => first / 2,
        }));
    }

    private static bool IsClear(Point2 p, Region footprint, List<Region> others) =>
        footprint.Contains(p) && footprint.Edges.All(e => IsClear(p, e.Bounds(), e.DistanceTo)) && others.All(o => IsClear(p, o.Bounds, o.DistanceTo));

    // What lies in a box is no nearer than the box is.
    private static bool IsClear(Point2 p, Box2 bounds, Func<Point2, double> distanceTo) => !bounds.Grown(ClearMm).Contains(p) || distanceTo(p) >= ClearMm;

    // A quarter of the width off the centre line.
    private static ImmutableArray<Point2> Quarters(Box2 box) =>
        [new Point2(box.Center.X + (box.Width / 4), box.Center.Y), new Point2(box.Center.X - (box.Width / 4), box.Center.Y)];
}
