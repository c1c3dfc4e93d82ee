using TopLayout.Geometry;
using Station = TopLayout.Lutherie.Parts.OutlineRecipe.Station;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The closed forms that halves of outlines are built from; derived for this project. Layout coordinates, mm: the treble half is
/// travelled from the neck to the tail, clockwise round the body. An arc that leaves a point along a heading and touches a circle, two
/// arcs between parallel headings, and the quarter from the widest point to the body's end.
/// </summary>
internal static class HalfLemmas
{
    // An end arc that rises less than this share of the half-width is a straight end.
    private const double FlatShare = 1e-7;

    /// <summary>Names of the pieces of a quarter.</summary>
    public readonly record struct QuarterNames(string End, string Corner, string Side);

    /// <summary>A place on the treble half.</summary>
    public static Point2 Place(double fromNeckEdge, double half) => new(half, -fromNeckEdge);

    /// <summary>A whole outline from the treble half and the half to be mirrored to the bass side, counter-clockwise.</summary>
    public static Contour Whole(IReadOnlyList<Segment> treble, IReadOnlyList<Segment> bass)
    {
        var mirrored = bass.Select(s => s.Placed(Placement.MirroredAcrossY).Reversed()).Reverse();
        return Contour.Chain([.. treble, .. mirrored], isClosed: true).Oriented(counterClockwise: true);
    }

    /// <summary>Two arcs from one heading along the body to another; the inflection lies on the chord, at the share of the first radius.</summary>
    public static Segment[] Bend(Point2 from, Point2 to, double firstShare, string first, string second)
    {
        var inflection = from + ((to - from) * firstShare);
        return [Segment.Leaving(from, -Vec2.UnitY, inflection, first), Segment.Arriving(inflection, to, -Vec2.UnitY, second)];
    }

    /// <summary>Sum of the two radii of a <see cref="Bend"/> whose ends lie D apart along and H apart across: (D² + H²)/(2H).</summary>
    public static double RadiusSum(double along, double across) => ((along * along) + (across * across)) / (2 * across);

    /// <summary>From the centre line at the neck to the widest point of the bout: [flat] end arc, corner, [side run on].</summary>
    public static List<Segment> Quarter(Station bout, double sideRadius, OutlineRecipe.EndShape shape, QuarterNames names)
    {
        var half = bout.Half;
        var reach = LargestReach(bout, sideRadius, shape.FlatHalf) * shape.SideReach;
        var (sin, cos) = (Trig.Sin(reach), Trig.Cos(reach));
        var sideEnd = Place(bout.At - (sideRadius * sin), half - (sideRadius * (1 - cos)));
        var corner = shape.Corner * -sideEnd.Y / (1 - sin);
        var cornerCenter = sideEnd - (new Vec2(cos, sin) * corner);
        var (rise, run) = (-cornerCenter.Y - corner, cornerCenter.X - shape.FlatHalf);
        var chain = new List<Segment>();
        var flatEnd = Place(0, rise < FlatShare * half ? cornerCenter.X : shape.FlatHalf);
        if (flatEnd.X > 0)
        {
            chain.Add(new Segment(Place(0, 0), flatEnd, 0, names.End));
        }

        var endOfEnd = flatEnd;
        if (rise >= FlatShare * half)
        {
            var endRadius = corner + (((rise * rise) + (run * run)) / (2 * rise));
            var scale = endRadius / ((rise * rise) + (run * run));
            endOfEnd = Place(endRadius + (((rise * rise) - (run * run)) * scale), shape.FlatHalf + (2 * rise * run * scale));
            chain.Add(Segment.Leaving(flatEnd, Vec2.UnitX, endOfEnd, names.End));
        }

        chain.Add(Segment.Arriving(endOfEnd, sideEnd, new Vec2(sin, -cos), names.Corner));
        if (reach > Angle.Zero)
        {
            chain.Add(Segment.Arriving(sideEnd, Place(bout.At, half), -Vec2.UnitY, names.Side));
        }

        return chain;
    }

    /// <summary>From the widest point of the lower bout to the centre line at the tail.</summary>
    public static IEnumerable<Segment> TailQuarter(double length, Station lower, double sideRadius, OutlineRecipe.EndShape shape)
    {
        var flip = new Placement(new Vec2(0, -length), Angle.FromDegrees(180), Mirrored: true);
        return Quarter(lower with { At = length - lower.At }, sideRadius, shape, new("tail", "lower corner", "lower side"))
            .Select(s => s.Placed(flip).Reversed()).Reverse();
    }

    // How far the side arc may run on past the widest point before the end arc would have to turn in.
    private static Angle LargestReach(Station bout, double sideRadius, double flatHalf)
    {
        var reach = Trig.Asin(Math.Min(1, bout.At / sideRadius));
        if (sideRadius < bout.At)
        {
            var other = Angle.FromDegrees(90) - (Trig.Atan2(bout.At - sideRadius, bout.Half - flatHalf - sideRadius) * 2);
            reach = other < reach ? other : reach;
        }

        return reach < Angle.Zero ? Angle.Zero : reach;
    }
}
