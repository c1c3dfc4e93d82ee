namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// A segment with what the arrangement asks of it again and again, computed once with + − × ÷ √: chord, curvature, centre, bounds.
/// Its carrier is the whole line or circle it lies on. With q from the start to a point, n the left normal there and κ the signed
/// curvature, F = κ|q|²/2 − q·n vanishes on the carrier; |q − n/κ|² = 1/κ² + 2F/κ gives the left distance −2F/(1 + √(1 + 2κF)),
/// which holds for lines (κ = 0) and needs no far centre.
/// </summary>
internal sealed class Curve
{
    public Curve(Point2 start, Point2 end, double bulge)
    {
        (Start, End, Bulge) = (start, end, bulge);
        ChordLength = start.DistanceTo(end);
        Along = (end - start) / ChordLength;
        if (bulge == 0)
        {
            (StartTangent, Radius, Bounds) = (Along, double.PositiveInfinity, Box2.Around(start, end));
            return;
        }

        var (squared, half) = (bulge * bulge, HalfTurn);
        StartTangent = new Vec2((Along.X * half.X) + (Along.Y * half.Y), (Along.Y * half.X) - (Along.X * half.Y));
        Curvature = 4 * bulge / (ChordLength * (1 + squared));
        Radius = 1 / Math.Abs(Curvature);
        Center = start.MidpointTo(end) + (Along.Left * (ChordLength * (1 - squared) / (4 * bulge)));
        Bounds = ArcBounds();
    }

    public Point2 Start { get; }

    public Point2 End { get; }

    /// <summary>tan(sweep/4), as in <see cref="Segment"/>.</summary>
    public double Bulge { get; }

    public double ChordLength { get; }

    /// <summary>Unit vector from start to end.</summary>
    public Vec2 Along { get; }

    /// <summary>Cosine and sine of half the sweep.</summary>
    public Vec2 HalfTurn => new Vec2(1 - (Bulge * Bulge), 2 * Bulge) / (1 + (Bulge * Bulge));

    public Vec2 StartTangent { get; }

    /// <summary>The point halfway along.</summary>
    public Point2 Middle => Start.MidpointTo(End) - (Along.Left * (Bulge * ChordLength / 2));

    /// <summary>1/radius, positive when it turns left; 0 for a line. 1/mm.</summary>
    public double Curvature { get; }

    public double Radius { get; }

    public Point2 Center { get; }

    public Box2 Bounds { get; }

    public bool IsArc => Bulge != 0;

    public Vec2 EndTangent
    {
        get
        {
            var half = HalfTurn;
            return new Vec2((Along.X * half.X) - (Along.Y * half.Y), (Along.Y * half.X) + (Along.X * half.Y));
        }
    }

    /// <summary>Signed area between curve and chord, mm², positive when it turns left. Series in the bulge where the closed form cancels.</summary>
    public double CapArea
    {
        get
        {
            var b = Bulge;
            var share = Math.Abs(b) < 0.01
                ? b * ((1 / 3.0) + (b * b * ((1 / 15.0) - (b * b / 105))))
                : Math.Sign(b) * (Math.Abs(Trig.Atan(b).Radians * 4) - Math.Abs(2 * HalfTurn.X * HalfTurn.Y)) / 2
                  * (Radius / ChordLength) * (Radius / ChordLength);
            return share * ChordLength * ChordLength;
        }
    }

    /// <summary>Signed area between the curve and the origin, mm²: the sum over a closed loop is its area.</summary>
    public double AreaTerm => (((Start.X * End.Y) - (End.X * Start.Y)) / 2) + CapArea;

    public static Curve Of(Segment s) => new(s.Start, s.End, s.Bulge);

    /// <summary>The same run through the other way.</summary>
    public Curve Reversed() => new(End, Start, -Bulge);

    /// <summary>Distance from the carrier, mm, positive to the left of the sense of travel.</summary>
    public double LeftDistance(Point2 p)
    {
        var q = p - Start;
        if (!IsArc)
        {
            return Along.Cross(q);
        }

        var f = (Curvature * q.Dot(q) / 2) - q.Dot(StartTangent.Left);
        return -2 * f / (1 + Math.Sqrt(Math.Max(0, 1 + (2 * Curvature * f))));
    }

    /// <summary>F, which vanishes on the carrier, and its gradient, there of length 1.</summary>
    public (double Value, Vec2 Gradient) Implicit(Point2 p)
    {
        var (q, normal) = (p - Start, StartTangent.Left);
        return ((Curvature * q.Dot(q) / 2) - q.Dot(normal), (q * Curvature) - normal);
    }

    /// <summary>True when the foot of <paramref name="p"/> on the carrier lies strictly between the ends.</summary>
    public bool HasFoot(Point2 p)
    {
        if (!IsArc)
        {
            var s = (p - Start).Dot(Along);
            return s > 0 && s < ChordLength;
        }

        var q = p - Center;
        return (Start - Center).Cross(q) * Bulge > 0 && q.Cross(End - Center) * Bulge > 0;
    }

    /// <summary>True when the curve passes within <paramref name="mm"/> of the point, its ends not counted.</summary>
    public bool Passes(Point2 p, double mm) => Math.Abs(LeftDistance(p)) <= mm && HasFoot(p);

    /// <summary>Grows from 0 at the start to 1 at the end; for sorting points of the curve.</summary>
    public double Order(Point2 p)
    {
        var fromStart = p.DistanceTo(Start);
        return fromStart / (fromStart + p.DistanceTo(End));
    }

    /// <summary>The bulge of the part from <paramref name="p"/> to <paramref name="q"/>, both (nearly) on the curve, at most half a turn.</summary>
    public double BulgeBetween(Point2 p, Point2 q)
    {
        if (!IsArc)
        {
            return 0;
        }

        var (u, v) = (p - Center, q - Center);
        return HalfOfHalf(u.Cross(v) * Math.Sign(Bulge), u.Dot(v), u.Length * v.Length) * Math.Sign(Bulge);
    }

    /// <summary>The point of the curve midway between two of its points.</summary>
    public Point2 Between(Point2 p, Point2 q)
    {
        if (!IsArc)
        {
            return p.MidpointTo(q);
        }

        var sum = (p - Center) + (q - Center);
        return sum.Length < Radius * Tolerances.SmoothRadians ? Middle : Center + (sum.Unit * Radius);
    }

    /// <summary>The point so far from the start, mm, along the tangent there, brought back to the carrier along its normal.</summary>
    public Point2 Ahead(double mm)
    {
        var p = Start + (StartTangent * mm);
        return IsArc ? Center + ((p - Center).Unit * Radius) : p;
    }

    /// <summary>
    /// The bulge, at most 1, of a curve whose <see cref="CapArea"/> is so many times its chord squared, by Newton's method with the
    /// slope 1/3 + b²/5, of which it lacks 6 % at most.
    /// </summary>
    public static double BulgeOfCap(double share)
    {
        const int Steps = 12;
        var bulge = 0.0;
        for (var step = 0; step < Steps; step++)
        {
            var cap = new Segment(default, new Point2(1, 0), bulge).CapArea();
            bulge = Math.Clamp(bulge - ((cap - share) / ((1 / 3.0) + (bulge * bulge / 5))), -1, 1);
        }

        return bulge;
    }

    /// <summary>
    /// tan(φ/4) of the angle φ in [0, 180°] whose sine and cosine are cross/size and dot/size: tan(φ/2) by whichever quotient does not
    /// cancel, then halved once more.
    /// </summary>
    public static double HalfOfHalf(double cross, double dot, double size)
    {
        if (dot < 0 && cross <= 0)
        {
            return 1;
        }

        var half = dot >= 0 ? cross / (size + dot) : (size - dot) / cross;
        return double.IsInfinity(half) ? 1 : half / (1 + Math.Sqrt(1 + (half * half)));
    }

    private Box2 ArcBounds()
    {
        var box = Box2.Around(Start, End);
        foreach (var axis in (ReadOnlySpan<Vec2>)[Vec2.UnitX, Vec2.UnitY, -Vec2.UnitX, -Vec2.UnitY])
        {
            if ((Start - Center).Cross(axis) * Bulge > 0 && axis.Cross(End - Center) * Bulge > 0)
            {
                var p = Center + (axis * Radius);
                box = box.Union(new Box2(p, p));
            }
        }

        return box;
    }
}
