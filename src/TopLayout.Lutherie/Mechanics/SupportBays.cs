using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// The transverse supports of a top: stiff members across the grain and the rim. Between two of them the top beside a member bends as
/// between two beams; the nearer they stand, the sharper its hinge. Measured along the top's y axis: a skew of 10° would make the
/// distances 1.5 % longer.
/// </summary>
internal sealed class SupportBays
{
    private const double ColumnMm = 25;

    private readonly Calibration _calibration;
    private readonly Contour? _rim;
    private readonly Dictionary<int, List<Member>> _columns = [];

    public SupportBays(IEnumerable<Member> members, TopGrain grain, Contour? rim, Calibration calibration)
    {
        (_calibration, _rim) = (calibration, rim);
        foreach (var member in members.Where(m => IsSupport(m, grain, calibration)))
        {
            var box = member.Footprint.Bounds;
            for (var column = Column(box.Min.X); column <= Column(box.Max.X); column++)
            {
                (_columns.TryGetValue(column, out var list) ? list : _columns[column] = []).Add(member);
            }
        }
    }

    /// <summary>
    /// The length of the bay beside a member that most of it lies in, mm, from support to support, on the side where it is shorter, and
    /// at most <see cref="Calibration.UsualSupportSpacingMm"/>.
    /// </summary>
    public double Beside(Member member)
    {
        var box = member.Footprint.Bounds;
        var (left, right) = (Bay(member, box, box.Min.X - _calibration.BandHalfWidthMm), Bay(member, box, box.Max.X + _calibration.BandHalfWidthMm));
        return Math.Min(_calibration.UsualSupportSpacingMm, Math.Min(left, right));
    }

    private static int Column(double x) => (int)Math.Floor(x / ColumnMm);

    private static bool IsSupport(Member member, TopGrain grain, Calibration calibration) =>
        member.Kind is not (MemberKind.Channel or MemberKind.Fretboard or MemberKind.Lining)
        && member.ThicknessMm >= calibration.FlatSupportHeightMm
        && Supporter.StandsAcross(member, grain.Under(member.Footprint), calibration);

    private double Bay(Member member, Box2 box, double x)
    {
        var levels = Levels(member, x);
        var best = (Overlap: 0.0, Length: double.PositiveInfinity);
        for (var i = 0; i + 1 < levels.Count; i++)
        {
            var overlap = Math.Min(levels[i + 1], box.Max.Y) - Math.Max(levels[i], box.Min.Y);
            if (overlap > best.Overlap)
            {
                best = (overlap, levels[i + 1] - levels[i]);
            }
        }

        return best.Length;
    }

    // Where the supports and the rim cross the line x, from the tail up; a support by its middle.
    private List<double> Levels(Member member, double x)
    {
        var levels = new List<double>();
        foreach (var support in _columns.TryGetValue(Column(x), out var list) ? list : [])
        {
            if (support != member && Crossing(support.Footprint.Edges, x) is { } at)
            {
                levels.Add((at.Low + at.High) / 2);
            }
        }

        if (_rim is not null && Crossing(_rim.Segments, x) is { } ends)
        {
            levels.AddRange([ends.Low, ends.High]);
        }

        levels.Sort();
        return levels;
    }

    private static (double Low, double High)? Crossing(IEnumerable<Segment> edges, double x)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var edge in edges)
        {
            var box = edge.Bounds();
            if (box.Min.X <= x && x <= box.Max.X)
            {
                foreach (var meeting in Intersections.Of(edge, new Segment(new Point2(x, box.Min.Y - 1), new Point2(x, box.Max.Y + 1))))
                {
                    (low, high) = (Math.Min(low, meeting.Point.Y), Math.Max(high, meeting.Point.Y));
                }
            }
        }

        return low <= high ? (low, high) : null;
    }
}
