using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>The edges of holes that are not round, as lines and arcs.</summary>
public static class HoleShapes
{
    /// <summary>
    /// An oval of four arcs that meet without a corner, round a centre. Derivation: with half axes p ≥ q and h = √(p² + q²), lay p − q off on the
    /// chord from the end of q towards the end of p; the perpendicular in the middle of what is left of the chord, h − (p − q), meets both axes,
    /// and both meetings are centres: the one on p is r = h(h − (p − q))/2p from its end, the one on q is R = h(h + (p − q))/2q from its end. Both
    /// centres lie on one line, so the arcs meet on it with one tangent. Equal axes give a circle.
    /// </summary>
    /// <param name="center">The middle.</param>
    /// <param name="halfAcross">Half the width, mm, &gt; 0.</param>
    /// <param name="halfAlong">Half the length, mm, &gt; 0.</param>
    /// <param name="label">The label of every edge.</param>
    public static Contour Oval(Point2 center, double halfAcross, double halfAlong, string label)
    {
        var upper = UpperHalf(center, halfAcross, halfAlong, label);
        var about = new Placement(new Vec2(2 * center.X, 2 * center.Y), Angle.FromDegrees(180), false);
        return upper is [var whole]
            ? Contour.Circle(center, whole.ChordLength / 2, label)
            : Contour.Chain([.. upper, .. upper.Select(s => s.Placed(about))], isClosed: true);
    }

    /// <summary>
    /// A D: a straight side, a quarter turn at each of its ends up to the widest place, and half an oval from there. Exactly as wide and as long as
    /// asked. Null where the corners are wider than half the hole, or leave no bow.
    /// </summary>
    /// <param name="middle">The middle of the straight side.</param>
    /// <param name="halfAcross">Half the width, mm.</param>
    /// <param name="along">From the straight side to the far end of the bow, mm.</param>
    /// <param name="towardTail">The bow lies towards the tail.</param>
    /// <param name="cornerMm">Radius of the two corners, mm, &gt; 0.</param>
    /// <param name="label">The label of every edge.</param>
    public static Contour? D(Point2 middle, double halfAcross, double along, bool towardTail, double cornerMm, string label)
    {
        if (cornerMm > halfAcross - Tolerances.ShortestMm || cornerMm > along - Tolerances.ShortestMm)
        {
            return null;
        }

        var bow = UpperHalf(middle + (Vec2.UnitY * cornerMm), halfAcross, along - cornerMm, label);
        var (left, right) = (middle - (Vec2.UnitX * (halfAcross - cornerMm)), middle + (Vec2.UnitX * (halfAcross - cornerMm)));
        var upright = Contour.Chain(
            [
                .. bow,
                Segment.Leaving(bow[^1].End, -Vec2.UnitY, left, label),
                new Segment(left, right, 0, label),
                Segment.Arriving(right, bow[0].Start, Vec2.UnitY, label),
            ],
            isClosed: true);

        // It is its own mirror image in the line square to the straight side, so half a turn lays the bow to the other side.
        return towardTail ? upright.Placed(new Placement(new Vec2(2 * middle.X, 2 * middle.Y), Angle.FromDegrees(180), false)) : upright;
    }

    // From the treble end over the neck end to the bass end: one half turn where the axes are equal, else four arcs.
    private static Segment[] UpperHalf(Point2 center, double halfAcross, double halfAlong, string label)
    {
        var (east, north, west) = (center + (Vec2.UnitX * halfAcross), center + (Vec2.UnitY * halfAlong), center - (Vec2.UnitX * halfAcross));
        if (Math.Abs(halfAcross - halfAlong) <= Tolerances.ShortestMm)
        {
            return [Segment.Leaving(east, Vec2.UnitY, west, label)];
        }

        var joint = Joint(halfAcross, halfAlong);
        var (right, left) = (center + joint, center + new Vec2(-joint.X, joint.Y));
        return
        [
            Segment.Leaving(east, Vec2.UnitY, right, label),
            Segment.Arriving(right, north, -Vec2.UnitX, label),
            Segment.Leaving(north, -Vec2.UnitX, left, label),
            Segment.Arriving(left, west, -Vec2.UnitY, label),
        ];
    }

    // Of the quarter towards +x and +y: on the line through both centres, R from the one on the shorter axis.
    private static Vec2 Joint(double a, double b)
    {
        var (p, q) = (Math.Max(a, b), Math.Min(a, b));
        var h = Math.Sqrt((p * p) + (q * q));
        var (r, far) = (h * (h - (p - q)) / (2 * p), h * (h + (p - q)) / (2 * q));
        var toward = new Vec2(p - r, far - q).Unit;
        var joint = new Vec2(p - r, 0) + (toward * r);
        return a >= b ? joint : new Vec2(joint.Y, joint.X);
    }
}
