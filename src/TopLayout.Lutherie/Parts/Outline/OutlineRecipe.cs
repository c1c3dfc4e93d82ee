using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The outline from three widths and their stations, as tangent arcs in closed form. Every shape choice is a fraction of what the
/// widths allow, so that every combination is legal once the stations are. Mm; distances from the neck edge, positive to the tail.
/// Derived for this project from three lemmas: the arc that leaves a point and touches a circle; two arcs between parallel
/// headings (the inflection lies on the chord, at the share of the first radius); the quarter from the widest point to the body's end.
/// </summary>
public sealed record OutlineRecipe
{
    /// <summary>Body length on the centre line, mm.</summary>
    public required double Length { get; init; }

    /// <summary>Widest place of the upper bout.</summary>
    public required Station Upper { get; init; }

    /// <summary>Narrowest place of the waist.</summary>
    public required Station Waist { get; init; }

    /// <summary>Widest place of the lower bout.</summary>
    public required Station Lower { get; init; }

    /// <summary>The waist arc's share of the radii between upper bout and waist, in (0, 1).</summary>
    public required double WaistShareUpper { get; init; }

    /// <summary>The waist arc's share of the radii between waist and lower bout, in (0, 1).</summary>
    public required double WaistShareLower { get; init; }

    /// <summary>Shape of the neck end.</summary>
    public required EndShape Neck { get; init; }

    /// <summary>Shape of the tail end.</summary>
    public required EndShape Tail { get; init; }

    /// <summary>A width and where it stands.</summary>
    /// <param name="Width">Whole width, mm.</param>
    /// <param name="At">Distance from the neck edge, mm.</param>
    public readonly record struct Station(double Width, double At)
    {
        /// <summary>Half the width, mm.</summary>
        public double Half => Width / 2;
    }

    /// <summary>The shape of one end of the body.</summary>
    /// <param name="Corner">Corner radius as a fraction of the largest, in (0, 1]: small is a pointed corner, 1 a flat end.</param>
    /// <param name="SideReach">How far the side arc runs on past the widest point, fraction of the possible, in [0, 1).</param>
    /// <param name="FlatHalf">Half-width of the straight piece across the centre line, mm, ≥ 0.</param>
    public readonly record struct EndShape(double Corner, double SideReach, double FlatHalf);

    /// <summary>Sum of side and waist radius between two stations D apart along and H apart across: (D² + H²)/(2H).</summary>
    public static double RadiusSum(Station bout, Station waist)
    {
        var (along, across) = (waist.At - bout.At, bout.Half - waist.Half);
        return ((along * along) + (across * across)) / (2 * across);
    }

    /// <summary>The side radius left at the upper bout, mm.</summary>
    public double UpperSideRadius => (1 - WaistShareUpper) * RadiusSum(Upper, Waist);

    /// <summary>The side radius left at the lower bout, mm.</summary>
    public double LowerSideRadius => (1 - WaistShareLower) * RadiusSum(Lower, Waist);

    /// <summary>
    /// The outline as one closed contour, counter-clockwise, in layout coordinates (x across, treble at +x; y = 0 at the neck edge,
    /// body below). The stations must be in order and legal; <see cref="Contradictions"/> says whether they are.
    /// </summary>
    public Contour Build()
    {
        var half = TrebleHalf();
        var mirrored = half.Select(s => s.Placed(Placement.MirroredAcrossY).Reversed()).Reverse();
        return Contour.Chain([.. half, .. mirrored], isClosed: true).Oriented(counterClockwise: true);
    }

    /// <summary>What makes the stations impossible: the sentence, the cure, and the keys on both sides of it; empty when all is well.</summary>
    public IEnumerable<(string Sentence, string Cure, Parameter<double>[] Keys)> Contradictions()
    {
        if (!(0 < Upper.At && Upper.At < Waist.At && Waist.At < Lower.At && Lower.At < Length))
        {
            yield return (
                "the stations must come in order from the neck: upper bout, waist, lower bout, tail",
                "raise or lower `upper_at`, `waist_at` and `lower_at` until they do, below `length`",
                [Outline.UpperAt, Outline.WaistAt, Outline.LowerAt, Outline.Length]);
        }

        if (!(Waist.Width < Upper.Width && Waist.Width < Lower.Width))
        {
            yield return (
                "the waist must be narrower than both bouts",
                "make `waist_width` smaller than `upper_width` and `lower_width`",
                [Outline.WaistWidth, Outline.UpperWidth, Outline.LowerWidth]);
        }

        if (Upper.At > Upper.Half - Neck.FlatHalf)
        {
            yield return (
                "`upper_at` must not exceed half of `upper_width` less half of `neck_flat`, or no round shoulder fits",
                "move the upper bout nearer to the neck edge, or widen it",
                [Outline.UpperAt, Outline.UpperWidth, Outline.NeckFlat]);
        }

        if (Length - Lower.At > Lower.Half - Tail.FlatHalf)
        {
            yield return (
                "`length` less `lower_at` must not exceed half of `lower_width` less half of `tail_flat`, or no round tail fits",
                "move the lower bout nearer to the tail, or widen it",
                [Outline.LowerAt, Outline.Length, Outline.LowerWidth, Outline.TailFlat]);
        }
    }

    // From the centre line at the neck to the centre line at the tail, on the treble side: clockwise round the body.
    private List<Segment> TrebleHalf()
    {
        var (upper, waist, lower) = (Place(Upper.At, Upper.Half), Place(Waist.At, Waist.Half), Place(Lower.At, Lower.Half));
        var chain = new List<Segment>();
        chain.AddRange(Quarter(Upper.Half, UpperSideRadius, Upper.At, Neck, "shoulder", "upper corner", "upper side"));
        chain.AddRange(Bend(upper, waist, 1 - WaistShareUpper, "upper side", "waist"));
        chain.AddRange(Bend(waist, lower, WaistShareLower, "waist", "lower side"));
        var tail = Quarter(Lower.Half, LowerSideRadius, Length - Lower.At, Tail, "tail", "lower corner", "lower side");
        var flip = new Placement(new Vec2(0, -Length), Angle.FromDegrees(180), Mirrored: true);
        chain.AddRange(tail.Select(s => s.Placed(flip).Reversed()).Reverse());
        return chain;
    }

    // Two arcs from one parallel heading to another; the inflection lies on the chord.
    private static Segment[] Bend(Point2 from, Point2 to, double firstShare, string first, string second)
    {
        var inflection = from + ((to - from) * firstShare);
        return [Segment.Leaving(from, -Vec2.UnitY, inflection, first), Segment.Arriving(inflection, to, -Vec2.UnitY, second)];
    }

    // From the centre line at a body's end to the widest point: [flat] end arc, corner, [side run on]. In neck coordinates.
    private static List<Segment> Quarter(
        double half, double sideRadius, double distance, EndShape shape, string endName, string cornerName, string sideName)
    {
        var reach = LargestReach(half, sideRadius, distance, shape.FlatHalf) * shape.SideReach;
        var (sin, cos) = (Trig.Sin(reach), Trig.Cos(reach));
        var sideEnd = Place(distance - (sideRadius * sin), half - (sideRadius * (1 - cos)));
        var outward = new Vec2(cos, sin);
        var corner = shape.Corner * -sideEnd.Y / (1 - sin);
        var cornerCenter = sideEnd - (outward * corner);
        var (rise, run) = (-cornerCenter.Y - corner, cornerCenter.X - shape.FlatHalf);
        var chain = new List<Segment>();
        var flatEnd = Place(0, rise < 1e-7 * half ? cornerCenter.X : shape.FlatHalf);
        if (flatEnd.X > 0)
        {
            chain.Add(new Segment(Place(0, 0), flatEnd, 0, endName));
        }

        var endOfEnd = flatEnd;
        if (rise >= 1e-7 * half)
        {
            var endRadius = corner + (((rise * rise) + (run * run)) / (2 * rise));
            var scale = endRadius / ((rise * rise) + (run * run));
            endOfEnd = Place(endRadius + (((rise * rise) - (run * run)) * scale), shape.FlatHalf + (2 * rise * run * scale));
            chain.Add(Segment.Leaving(flatEnd, Vec2.UnitX, endOfEnd, endName));
        }

        chain.Add(Segment.Arriving(endOfEnd, sideEnd, new Vec2(sin, -cos), cornerName));
        if (reach > Angle.Zero)
        {
            chain.Add(Segment.Arriving(sideEnd, Place(distance, half), -Vec2.UnitY, sideName));
        }

        return chain;
    }

    // How far the side arc may run on past the widest point before the end arc would have to turn in.
    private static Angle LargestReach(double half, double sideRadius, double distance, double flatHalf)
    {
        var reach = Trig.Asin(Math.Min(1, distance / sideRadius));
        if (sideRadius < distance)
        {
            var other = Angle.FromDegrees(90) - (Trig.Atan2(distance - sideRadius, half - flatHalf - sideRadius) * 2);
            reach = other < reach ? other : reach;
        }

        return reach < Angle.Zero ? Angle.Zero : reach;
    }

    private static Point2 Place(double fromNeckEdge, double half) => new(half, -fromNeckEdge);
}
