using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// A body without a waist: from a flat at the neck the shoulder leaves at an angle and runs into the side's circle, which passes the widest
/// place and ends in the tail. Mm. The corner where the flat meets the shoulder is meant.
/// </summary>
/// <param name="Length">Body length on the centre line, mm.</param>
/// <param name="NeckHalf">Half-width of the flat at the neck, mm.</param>
/// <param name="Shoulder">Angle of the shoulder to the centre line where it leaves the flat, in (0°, 90°).</param>
/// <param name="Lower">The widest place.</param>
/// <param name="SideRadius">Radius of the side at the widest place, mm.</param>
/// <param name="Tail">Shape of the tail.</param>
public sealed record TeardropRecipe(
    double Length, double NeckHalf, Angle Shoulder, OutlineRecipe.Station Lower, double SideRadius, OutlineRecipe.EndShape Tail)
{
    /// <summary>Whether a round tail fits between the widest place and the body's end.</summary>
    public bool IsTailLegal => Lower.At > 0 && Lower.At < Length && Length - Lower.At <= Lower.Half - Tail.FlatHalf;

    /// <summary>The treble half from the neck to the tail; null when no tail fits, or when no shoulder arc leaves the flat and touches the side's circle on the way.</summary>
    internal IReadOnlyList<Segment>? Half()
    {
        if (!IsTailLegal)
        {
            return null;
        }

        var start = HalfLemmas.Place(0, NeckHalf);
        var widest = HalfLemmas.Place(Lower.At, Lower.Half);
        var (heading, center) = (new Vec2(Trig.Sin(Shoulder), -Trig.Cos(Shoulder)), widest - new Vec2(SideRadius, 0));

        // The arc that leaves Q with outward normal u and touches the circle (C, B): r = (B² − |d|²)/(2(B − d·u)), d = Q − C.
        var (outward, d) = (heading.Left, start - center);
        var radius = ((SideRadius * SideRadius) - d.Dot(d)) / (2 * (SideRadius - d.Dot(outward)));
        if (!double.IsFinite(radius) || Math.Abs(radius - SideRadius) < Tolerances.ShortestMm)
        {
            return null;
        }

        var touch = center + ((start - (outward * radius) - center) * (SideRadius / (SideRadius - radius)));
        return Chain(start, heading, touch, widest);
    }

    private List<Segment>? Chain(Point2 start, Vec2 heading, Point2 touch, Point2 widest)
    {
        var isOnTheWay = touch.Y < start.Y && touch.Y > widest.Y && touch.X > 0 && (touch - start).Dot(heading) > 0;
        if (!isOnTheWay)
        {
            return null;
        }

        return
        [
            new Segment(new Point2(0, 0), start, 0, "neck flat"),
            Segment.Leaving(start, heading, touch, "shoulder"),
            Segment.Arriving(touch, widest, -Vec2.UnitY, "lower side"),
            .. HalfLemmas.TailQuarter(Length, Lower, SideRadius, Tail),
        ];
    }
}
