namespace TopLayout.Geometry;

/// <summary>
/// One piece of a contour: a line (bulge 0) or a circular arc of at most half a turn. Bulge = tan(sweep/4), |bulge| ≤ 1,
/// positive turns left (counter-clockwise). Mm, y up. Source of the relations: the bulge of a chord d gives
/// radius = d(1+b²)/(4|b|) and centre = midpoint + left normal·d(1−b²)/(4b), from tan(4·atan b) and the chord's half.
/// </summary>
/// <param name="Start">Start point.</param>
/// <param name="End">End point.</param>
/// <param name="Bulge">tan(sweep/4), in [−1, 1].</param>
/// <param name="Label">The builder's name for the edge; empty when it has none.</param>
public readonly record struct Segment(Point2 Start, Point2 End, double Bulge = 0, string Label = "")
{
    /// <summary>
    /// The one arc or line that leaves <paramref name="start"/> along <paramref name="tangent"/> and reaches <paramref name="end"/>.
    /// The angle between tangent and chord is half the sweep, so its half-angle tangent is the bulge: no trigonometry. A chord or a
    /// tangent of no length gives a line.
    /// </summary>
    /// <exception cref="ArgumentException">The end lies behind the start, so that the arc would exceed half a turn.</exception>
    public static Segment Leaving(Point2 start, Vec2 tangent, Point2 end, string label = "")
    {
        var chord = end - start;
        var (along, size) = (tangent.Dot(chord), tangent.Length * chord.Length);
        if (along < -Tolerances.SmoothRadians * size)
        {
            throw new ArgumentException("an arc of more than half a turn is not one segment", nameof(end));
        }

        var bulge = size > 0 ? tangent.Cross(chord) / (size + along) : 0;
        var straight = Math.Abs(bulge) * chord.Length / 2 < Tolerances.FlatSagittaMm;
        return new Segment(start, end, straight ? 0 : Math.Clamp(bulge, -1, 1), label);
    }

    /// <summary>The one arc or line from <paramref name="start"/> that reaches <paramref name="end"/> along <paramref name="tangent"/>.</summary>
    /// <inheritdoc cref="Leaving" path="/exception"/>
    public static Segment Arriving(Point2 start, Point2 end, Vec2 tangent, string label = "") =>
        Leaving(end, -tangent, start, label).Reversed();

    /// <summary>The arc round a centre, at most half a turn; the ends' distances to the centre must agree (not checked).</summary>
    public static Segment Around(Point2 center, Point2 start, Point2 end, bool counterClockwise, string label = "")
    {
        var left = (start - center).Left;
        return Leaving(start, counterClockwise ? left : -left, end, label);
    }

    /// <summary>True for a circular arc, false for a straight line.</summary>
    public bool IsArc => Bulge != 0;

    /// <summary>Length of the straight line from start to end, mm.</summary>
    public double ChordLength => Start.DistanceTo(End);

    /// <summary>The turn from start to end, in [−180°, 180°]; 0 for a line.</summary>
    public Angle Sweep => Trig.Atan(Bulge) * 4;

    /// <summary>Radius in mm, &gt; 0; infinite for a line.</summary>
    public double Radius => IsArc ? ChordLength * (1 + (Bulge * Bulge)) / (4 * Math.Abs(Bulge)) : double.PositiveInfinity;

    /// <summary>Centre of the arc. Only meaningful when <see cref="IsArc"/>.</summary>
    public Point2 Center => Start.MidpointTo(End) + ((End - Start).Left * ((1 - (Bulge * Bulge)) / (4 * Bulge)));

    /// <summary>Length along the segment, mm.</summary>
    public double Length => IsArc ? Radius * Math.Abs(Sweep.Radians) : ChordLength;

    /// <summary>
    /// The point at a fraction of the length, 0 = start, 1 = end, both exactly. The chord to it is the whole chord turned back by the
    /// sweep still to come, halved, and as long as the ratio of the half sweeps' sines: no centre, so a flat arc loses no digits. The
    /// middle of an arc is its apex, half the bulge times the chord beside it.
    /// </summary>
    public Point2 PointAt(double fraction)
    {
        if (fraction == 0 || fraction == 1)
        {
            return fraction == 0 ? Start : End;
        }

        var chord = End - Start;
        if (!IsArc)
        {
            return Start + (chord * fraction);
        }

        if (fraction == 0.5)
        {
            return Start.MidpointTo(End) - (chord.Left * (Bulge / 2));
        }

        var half = Sweep / 2;
        return Start + (Turned(chord, half * (fraction - 1)) * (Trig.Sin(half * fraction) / Trig.Sin(half)));
    }

    /// <summary>The unit tangent, in the sense of travel, at a fraction of the length; not a number where the chord has no length.</summary>
    public Vec2 TangentAt(double fraction)
    {
        var chord = (End - Start).Unit;
        return IsArc && fraction != 0.5 ? Turned(chord, Sweep * (fraction - 0.5)) : chord;
    }

    /// <summary>The part between two fractions, 0 ≤ from &lt; to ≤ 1, with the same label.</summary>
    public Segment Part(double from, double to) => from == 0 && to == 1
        ? this
        : this with
        {
            Start = PointAt(from),
            End = PointAt(to),
            Bulge = IsArc ? Trig.Tan(Sweep * ((to - from) / 4)) : 0,
        };

    /// <summary>The same piece travelled the other way; a line keeps bulge +0.</summary>
    public Segment Reversed() => this with { Start = End, End = Start, Bulge = 0 - Bulge };

    /// <summary>The piece after a rigid move; a mirror turns the bulge round.</summary>
    public Segment Placed(Placement placement) => this with
    {
        Start = placement.Apply(Start),
        End = placement.Apply(End),
        Bulge = placement.Mirrored ? 0 - Bulge : Bulge,
    };

    /// <summary>
    /// The fraction of the length at which the segment passes nearest to <paramref name="p"/>, in [0, 1]: the middle of an arc seen
    /// from its centre, the start of a segment of no length.
    /// </summary>
    public double NearestFraction(Point2 p)
    {
        var chord = End - Start;
        if (!IsArc)
        {
            var square = chord.Dot(chord);
            return square > 0 ? Math.Clamp((p - Start).Dot(chord) / square, 0, 1) : 0;
        }

        // 4b times the direction from the centre, which is midpoint + left of chord·(1 − b²)/4b; so are the arcs' middles.
        var outward = ((p - Start.MidpointTo(End)) * (4 * Bulge)) - (chord.Left * (1 - (Bulge * Bulge)));
        var fraction = 0.5 + (Trig.Turn(-chord.Left, outward).Degrees / Sweep.Degrees);
        if (fraction is >= 0 and <= 1)
        {
            return fraction;
        }

        return p.DistanceTo(Start) <= p.DistanceTo(End) ? 0 : 1;
    }

    /// <summary>
    /// Distance from a point to the segment, mm. Beside an arc it is |d − R|, with d the distance to the centre: written as
    /// |d² − R²|/(d + R), both times the bulge, so that no centre is needed and a flat arc loses no digits.
    /// </summary>
    public double DistanceTo(Point2 p)
    {
        if (!IsArc)
        {
            return p.DistanceTo(PointAt(NearestFraction(p)));
        }

        var (chord, fromStart, square) = (End - Start, p - Start, Bulge * Bulge);
        var outward = (fromStart - (chord / 2)) * Bulge - (chord.Left * ((1 - square) / 4));
        if (!Holds(outward * Math.Sign(Bulge)))
        {
            return Math.Min(p.DistanceTo(Start), p.DistanceTo(End));
        }

        var power = (Bulge * fromStart.Dot(fromStart - chord)) - (fromStart.Dot(chord.Left) * ((1 - square) / 2));
        return Math.Abs(power) / (outward.Length + (chord.Length * ((1 + square) / 4)));
    }

    /// <summary>
    /// True when the arc, seen from its centre, lies in a direction: the direction is turned from the arc's middle by no more than half
    /// the sweep, whose tangent is 2b/(1 − b²). Only meaningful when <see cref="IsArc"/>.
    /// </summary>
    public bool Holds(Vec2 direction)
    {
        var middle = (End - Start).Left * -Math.Sign(Bulge);
        return Math.Abs(middle.Cross(direction)) * (1 - (Bulge * Bulge)) <= 2 * Math.Abs(Bulge) * middle.Dot(direction);
    }

    /// <summary>
    /// The signed share of a fraction at which an arc looks from its centre along <paramref name="direction"/>: in [0, 1] on the
    /// arc, outside it beyond the ends. Only meaningful when <see cref="IsArc"/>.
    /// </summary>
    public double FractionOfDirection(Vec2 direction)
    {
        var middle = (End - Start).Left * -Math.Sign(Bulge);
        return 0.5 + (Trig.Turn(middle, direction).Degrees / Sweep.Degrees);
    }

    /// <summary>
    /// Signed area between the segment and the origin, mm²: the sum over a closed contour is its area, + counter-clockwise. It is
    /// the triangle of the chord and the cap between chord and arc.
    /// </summary>
    public double AreaTerm() => (((Start.X * End.Y) - (End.X * Start.Y)) / 2) + CapArea();

    /// <summary>
    /// Signed area between chord and arc, mm², positive where the arc turns left. R²(θ − sin θ)/2 with R = d(1+b²)/4b and θ = 4·atan b
    /// is d²((1+b²)²·atan b − b(1−b²))/8b²; on flat arcs the difference loses digits and its series in b takes over.
    /// </summary>
    public double CapArea()
    {
        var (b, square) = (Bulge, (End - Start).Dot(End - Start));
        var b2 = b * b;
        if (Math.Abs(b) < 0.1)
        {
            return square * b * ((1.0 / 3) + (b2 * ((1.0 / 15) - (b2 * ((1.0 / 105) - (b2 * ((1.0 / 315) - (b2 * ((1.0 / 693) - (b2 / 1287))))))))));
        }

        return square * (((1 + b2) * (1 + b2) * Trig.Atan(b).Radians) - (b * (1 - b2))) / (8 * b2);
    }

    /// <summary>The smallest axis-parallel box round the segment; on arcs the quadrant points count.</summary>
    public Box2 Bounds()
    {
        var box = Box2.Around(Start, End);
        if (!IsArc)
        {
            return box;
        }

        var (center, radius) = (Center, Radius);
        foreach (var axis in (ReadOnlySpan<Vec2>)[Vec2.UnitX, Vec2.UnitY, -Vec2.UnitX, -Vec2.UnitY])
        {
            if (Holds(axis))
            {
                // From the centre it is exact on a half turn; a flat arc's centre lies too far off.
                var p = Math.Abs(Bulge) < 0.1 ? PointAt(Math.Clamp(FractionOfDirection(axis), 0, 1)) : center + (axis * radius);
                box = box.Union(new Box2(p, p));
            }
        }

        return box;
    }

    private static Vec2 Turned(Vec2 v, Angle by)
    {
        var (c, s) = (Trig.Cos(by), Trig.Sin(by));
        return new Vec2((v.X * c) - (v.Y * s), (v.X * s) + (v.Y * c));
    }
}
