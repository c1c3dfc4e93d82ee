namespace TopLayout.Geometry.Fitting;

/// <summary>One arc of a chain: where it leaves, along which unit tangent, its curvature (1/mm, positive to the left) and length, mm.</summary>
internal readonly record struct ArcPiece(Point2 Start, Vec2 Tangent, double Curvature, double Length)
{
    /// <summary>The arc's turn, radians.</summary>
    public double Turn => Curvature * Length;

    /// <summary>Where it ends and along which tangent: the chord is turned by half the turn and 2 sin(turn/2)/κ long.</summary>
    public (Point2 Point, Vec2 Tangent) End()
    {
        var half = Angle.FromRadians(Turn / 2);
        var (c, s) = (Trig.Cos(half), Trig.Sin(half));
        var chord = Math.Abs(Turn) < Tolerances.StraightRadians ? Length : 2 * s / Curvature;
        var along = (Tangent * c) + (Tangent.Left * s);
        return (Start + (along * chord), (along * c) + (along.Left * s));
    }

    /// <summary>The arc that leaves along a tangent and reaches a point.</summary>
    public static ArcPiece Reaching(Point2 start, Vec2 tangent, Point2 end)
    {
        var chord = end - start;
        var turn = 2 * Trig.Turn(tangent, chord).Radians;
        var curvature = 2 * tangent.Cross(chord) / chord.Dot(chord);
        return new ArcPiece(start, tangent, curvature, Math.Abs(turn) < Tolerances.StraightRadians ? chord.Length : turn / curvature);
    }

    /// <summary>
    /// Signed distance of a point to the whole circle, positive to the left: with w from the start and n the left normal, 1/κ less the
    /// distance to the centre is −(κ|w|² − 2w·n)/(1 + √(1 − 2κ w·n + κ²|w|²)), which holds for a line too.
    /// </summary>
    public double Distance(Point2 p)
    {
        var w = p - Start;
        var value = (Curvature * w.Dot(w)) - (2 * Tangent.Cross(w));
        return -value / (1 + Math.Sqrt(Math.Max(0, 1 + (Curvature * value))));
    }
}
