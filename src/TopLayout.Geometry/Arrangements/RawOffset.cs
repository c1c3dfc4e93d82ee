namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// The raw offset of closed loops to their right, corners gone round in arcs: every edge moved along its normal, joined at corners. An
/// arc keeps its bulge, also when its radius passes zero (it then lies inside out), and a join on the inner side of a corner is an arc
/// about it run backwards: so the curve is the limit of the parallels of a rounded one. A point further from the loops than the offset
/// keeps its winding number; where the front has passed it changes by one for each near stretch (Chen and McMains 2005). That fails where
/// a whole loop is passed, front and back cancelling; there faces are judged by their distance (<see cref="Nearness"/>).
/// </summary>
internal sealed class RawOffset
{
    private readonly double _rightMm;
    private readonly List<Strand> _strands = [];
    private readonly Nearness _near;

    private RawOffset(double rightMm) => (_rightMm, _near) = (rightMm, new(Math.Abs(rightMm)));

    /// <summary>
    /// The area reached: of an area grown, shrunk (negative to the right), or of paths to both sides. At joints of a loop that
    /// <paramref name="endAfter"/> names a path turns back, ending as it says.
    /// </summary>
    public static Region Of(IEnumerable<IReadOnlyList<Segment>> loops, double rightMm, Func<int, BandEnd?> endAfter)
    {
        var raw = new RawOffset(rightMm);
        foreach (var loop in loops)
        {
            raw.Add(loop, endAfter);
        }

        var arrangement = Arrangement.Of(raw._strands);
        arrangement.Overrule(rightMm > 0
            ? (winding, p) => winding < 1 && raw._near.IsNear(p) ? 1 : winding
            : (winding, p) => winding >= 1 && raw._near.IsNear(p) ? 0 : winding);
        return Outlines.Region(arrangement, winding => winding >= 1);
    }

    private void Add(IReadOnlyList<Segment> loop, Func<int, BandEnd?> endAfter)
    {
        var sides = new Parallel[loop.Count];
        for (var i = 0; i < sides.Length; i++)
        {
            sides[i] = new Parallel(Curve.Of(loop[i]), _rightMm, loop[i].Label);
        }

        var cuts = InnerCorners.Cuts(sides, _rightMm, i => endAfter(i) is not null);
        for (var i = 0; i < sides.Length; i++)
        {
            var (side, next) = (sides[i], sides[(i + 1) % sides.Length]);
            Add(side.Between(cuts[(i + sides.Length - 1) % sides.Length], cuts[i]));
            var end = endAfter(i);
            _near.Add(side.Base, endCounts: end != BandEnd.Flat);
            if (cuts[i] is null && side.End != next.Start)
            {
                Join(side, next, end);
            }
        }
    }

    private void Join(Parallel side, Parallel next, BandEnd? end)
    {
        var (from, to, label) = (side.End, next.Start, side.Label);
        if (end == BandEnd.Flat)
        {
            Add(new Segment(from, to, 0, label));
        }
        else
        {
            var isLeft = end is not null || InnerCorners.TurnsLeft(side.Base, next.Base);
            AddArc(new Segment(from, to, 0, label), side.Base.EndTangent, next.Base.StartTangent, side.Base.End, isLeft);
        }
    }

    // The arc of a join. With φ the turn from t to u: sin²(φ/2) = (1 − t·u)/2 and sin φ = 2 sin(φ/2) cos(φ/2); its bulge is
    // tan(φ/4) = sin(φ/2)/(1 + cos(φ/2)). Over a right angle it is halved, as it may exceed half a turn by a rounding.
    private void AddArc(Segment chord, Vec2 t, Vec2 u, Point2 center, bool isLeft)
    {
        var (cross, dot, sign) = (t.Cross(u), t.Dot(u), isLeft ? 1 : -1);
        if (dot >= 0)
        {
            Add(chord with { Bulge = sign * Curve.HalfOfHalf(Math.Abs(cross), dot, 1) });
            return;
        }

        var sine = Math.Sqrt((1 - dot) / 2);
        var bulge = sine / (1 + (sign * cross / (2 * sine)));
        var half = sign * bulge / (1 + Math.Sqrt(1 + (bulge * bulge)));
        var middle = center + ((t - u).Unit * (sign * _rightMm));
        Add(chord with { End = middle, Bulge = half });
        Add(chord with { Start = middle, Bulge = half });
    }

    private void Add(Segment segment)
    {
        if (segment.Start != segment.End)
        {
            _strands.Add(new Strand(segment));
        }
    }
}
