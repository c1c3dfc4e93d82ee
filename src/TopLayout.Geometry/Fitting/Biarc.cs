namespace TopLayout.Geometry.Fitting;

/// <summary>
/// Two arcs with one tangent at their joint that lead from a point and tangent to another (K. M. Bolton 1975, Biarc curves). With the
/// handles d and e along the tangents the joint divides their ends' line as d to e, which demands that this line be d + e long:
/// |v|² − 2d v·t − 2e v·u − 2de(1 − t·u) = 0 for the chord v and the unit tangents t, u.
/// </summary>
internal static class Biarc
{
    /// <summary>The joint for a given first handle, mm; null where the second handle would not be positive.</summary>
    public static Point2? Joint(Point2 start, Vec2 t, Point2 end, Vec2 u, double handle)
    {
        var v = end - start;
        var other = (v.Dot(v) - (2 * handle * v.Dot(t))) / (2 * (v.Dot(u) + (handle * (1 - t.Dot(u)))));
        return handle > 0 && other > 0 && double.IsFinite(other) ? Between(start + (t * handle), end - (u * other), handle / (handle + other)) : null;
    }

    /// <summary>The joint with two equal handles: the positive root of 2(1 − t·u)d² + 2 v·(t + u)d − |v|² = 0.</summary>
    public static Point2 EvenJoint(Point2 start, Vec2 t, Point2 end, Vec2 u)
    {
        var v = end - start;
        var (a, b, c) = (1 - t.Dot(u), v.Dot(t + u) / 2, v.Dot(v) / 2);
        var root = Math.Sqrt((b * b) + (a * c));
        var handle = b + root > 0 ? c / (b + root) : a > 0 ? (root - b) / a : v.Length;
        return Between(start + (t * handle), end - (u * handle), 0.5);
    }

    private static Point2 Between(Point2 a, Point2 b, double share) => a + ((b - a) * share);
}
