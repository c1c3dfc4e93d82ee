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
    private readonly Calibration _calibration;
    private readonly MemberShapes _supports;
    private readonly MonotoneEdge[] _rim;
    private readonly List<double> _levels = [];

    public SupportBays(MemberShapes shapes, TopGrain grain, Contour? rim, Calibration calibration)
    {
        (_calibration, _supports) = (calibration, new MemberShapes(shapes.All.Where(s => IsSupport(s.Member, grain, calibration))));
        _rim = rim is null ? [] : MemberShape.Parts(rim.Segments.AsSpan());
    }

    /// <summary>
    /// The length of the bay beside a member that most of it lies in, mm, from support to support, on the side where it is shorter, and
    /// at most <see cref="Calibration.UsualSupportSpacingMm"/>.
    /// </summary>
    public double Beside(MemberShape shape)
    {
        var (left, right) = (shape.Bounds.Min.X - _calibration.BandHalfWidthMm, shape.Bounds.Max.X + _calibration.BandHalfWidthMm);
        return Math.Min(_calibration.UsualSupportSpacingMm, Math.Min(Bay(shape, left), Bay(shape, right)));
    }

    private static bool IsSupport(Member member, TopGrain grain, Calibration calibration) =>
        member.Kind is not (MemberKind.Channel or MemberKind.Fretboard or MemberKind.Lining)
        && member.ThicknessMm >= calibration.FlatSupportHeightMm
        && Supporter.StandsAcross(member, grain.Under(member.Footprint), calibration);

    private double Bay(MemberShape shape, double x)
    {
        FindLevels(shape, x);
        var (overlap, length) = (0.0, double.PositiveInfinity);
        for (var i = 0; i + 1 < _levels.Count; i++)
        {
            var shared = Math.Min(_levels[i + 1], shape.Bounds.Max.Y) - Math.Max(_levels[i], shape.Bounds.Min.Y);
            if (shared > overlap)
            {
                (overlap, length) = (shared, _levels[i + 1] - _levels[i]);
            }
        }

        return length;
    }

    // Where the supports and the rim cross the line x, from the tail up; a support by its middle.
    private void FindLevels(MemberShape shape, double x)
    {
        _levels.Clear();
        var line = new Box2(new Point2(x, double.NegativeInfinity), new Point2(x, double.PositiveInfinity));
        foreach (var support in _supports.Near(line))
        {
            if (support != shape && support.CrossedAt(x) is { } at)
            {
                _levels.Add((at.Low + at.High) / 2);
            }
        }

        if (MemberShape.CrossedAt(_rim, x) is { } ends)
        {
            _levels.AddRange([ends.Low, ends.High]);
        }

        _levels.Sort();
    }
}
