using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The end of a brace, or of a flat part glued like one, that is let into the linings.</summary>
/// <param name="Bar">The brace.</param>
/// <param name="Side">Which half of the rim: "bass" or "treble".</param>
/// <param name="FromMm">Along the inner face of the sides from the tail seam to where the nearer long side of the brace, drawn on, meets it, mm.</param>
/// <param name="ToMm">The same to the other long side, mm.</param>
/// <param name="ToRim">Between the brace and the sides, at most 90°.</param>
/// <param name="WidthMm">The brace's width, square to it, mm.</param>
/// <param name="HeightMm">How high its end is left, and how deep the pocket is, mm.</param>
public sealed record BraceEnd(Member Bar, string Side, double FromMm, double ToMm, Angle ToRim, double WidthMm, double HeightMm);

/// <summary>
/// Brace ends and their pockets in the linings. An end is carved down to a height that the pocket repeats: deeper, and the brace hangs in the
/// air; shallower, and it holds the top off the lining.
/// </summary>
public static class BraceEnds
{
    // Midway between what is usually left: 2.3 to 3.2 on guitars, 1.5 to 2.2 on a ukulele. Common practice, no source.
    private const double EndMm = 2.8;
    private const double UkuleleEndMm = 1.8;

    // Further than any lining is wide: a long side drawn on meets the sides before.
    private const double ReachMm = 100;

    /// <summary>All of them, brace by brace, the end nearer to the neck first; a flat part is not carved, so its end is as high as it is thick.</summary>
    public static IReadOnlyList<BraceEnd> Of(Layout layout)
    {
        var design = layout.Design;
        var left = design.Find(Body.Type)?.Value == BodyType.TenorUkulele ? UkuleleEndMm : EndMm;
        var inLining = design[Rim.SideThickness].Value + (design[Rim.LiningWidth].Value / 2);
        var inside = Region.Inside(layout.Outline).Offset(-design[Rim.SideThickness].Value).Outer;
        return
        [
            .. from bar in layout.Members
               where bar.Kind is MemberKind.Bar or MemberKind.Plate && bar.JoinedWith.Any(n => layout.Find(n)?.Kind == MemberKind.Lining)
               let axis = Axis(bar)
               from end in (Point2[])[axis.Upper, axis.Lower]
               where layout.Outline.DistanceTo(end) <= inLining
               select End(inside, bar, end, axis.WidthMm, bar.Kind == MemberKind.Plate ? bar.ThicknessMm : Math.Min(left, bar.ThicknessMm)),
        ];
    }

    /// <summary>The ends of a brace's axis, the one nearer to the neck first, and its width, mm.</summary>
    public static (Point2 Upper, Point2 Lower, double WidthMm) Axis(Member bar)
    {
        var sides = Sides(bar);
        var (first, second) = (sides[0].Start.MidpointTo(sides[1].End), sides[0].End.MidpointTo(sides[1].Start));
        var isInOrder = first.Y > second.Y || (first.Y == second.Y && first.X < second.X);
        var width = Math.Abs((sides[1].Start - sides[0].Start).Cross(sides[0].TangentAt(0)));
        return isInOrder ? (first, second, width) : (second, first, width);
    }

    /// <summary>The long sides of a brace.</summary>
    public static Segment[] Sides(Member bar) => [.. bar.Footprint.Edges.Where(e => e.Label is "neck side" or "tail side" or "bass side" or "treble side")];

    // Its long sides and its axis drawn on to the inner face of the sides; that of the bass half lies mirrored.
    private static BraceEnd End(Contour inside, Member bar, Point2 end, double width, double height)
    {
        var side = end.X < 0 ? -1 : 1;
        var half = Contour.Chain(BodyWidths.Half(inside, side), isClosed: false);
        var places = Sides(bar).Select(s => s.Start.DistanceTo(end) < s.End.DistanceTo(end) ? s.Reversed() : s).Select(s => Reached(s.End, s.End - s.Start)).Order().ToList();
        var along = Sides(bar)[0].TangentAt(0);
        var middle = Reached(end, along.Dot(end - bar.Footprint.Bounds.Center) < 0 ? -along : along);
        var turn = Math.Abs(Trig.Turn(half.TangentAt(half.Length - middle), new Vec2(side * along.X, along.Y)).Degrees);
        return new BraceEnd(bar, side < 0 ? "bass" : "treble", places[0], places[^1], Angle.FromDegrees(Math.Min(turn, 180 - turn)), width, height);

        double Reached(Point2 from, Vec2 direction)
        {
            var (start, unit) = (new Point2(side * from.X, from.Y), new Vec2(side * direction.X, direction.Y).Unit);
            var place = half.Crossings(new Segment(start, start + (unit * ReachMm))) is [var first, ..] ? first : half.ClosestTo(start);
            return half.Length - half.LengthTo(place);
        }
    }
}
