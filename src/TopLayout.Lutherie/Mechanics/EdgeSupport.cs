using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// What supports the edges of one member: a member that crosses them, the line on which the sides stand, a lining it enters. Support
/// stops a crack that follows the edge; it does not relieve the top. The rules are common practice, no source; their numbers stand in
/// <see cref="Calibration"/>.
/// </summary>
internal sealed class EdgeSupport
{
    private readonly Calibration _calibration;
    private readonly TopGrain _grain;
    private readonly List<Supporter> _crossing = [];
    private readonly List<MemberShape> _linings = [];
    private readonly EdgeSet? _rim;

    /// <summary>The support of a member by others near it and by the inside line of the sides, if the member ends on it.</summary>
    public EdgeSupport(MemberShape shape, IEnumerable<MemberShape> near, TopGrain grain, EdgeSet? rim, Calibration calibration)
    {
        (_calibration, _grain) = (calibration, grain);
        var member = shape.Member;
        var box = shape.Bounds.Grown(calibration.SupportReachMm + Tolerances.TouchMm);
        foreach (var other in near)
        {
            if (other.Member != member && box.Overlaps(other.Bounds))
            {
                if (MaySupport(other.Member, member, grain, calibration))
                {
                    _crossing.Add(new Supporter(other, grain, calibration));
                }
                else if (EntersLining(shape, other))
                {
                    _linings.Add(other);
                }
            }
        }

        _rim = member.Kind != MemberKind.Lining && rim is not null && rim.Touches(shape.Outline) ? rim : null;
    }

    /// <summary>Adds the fractions of an edge at which its support may change.</summary>
    public void AddCuts(Segment edge, List<double> cuts)
    {
        foreach (var supporter in _crossing)
        {
            Cuts.AtReach(edge, supporter.Outline, _calibration.SupportReachMm, cuts);
        }

        foreach (var lining in _linings)
        {
            Cuts.AtReach(edge, lining.Outline, _calibration.SupportReachMm, cuts);
        }

        if (_rim is not null)
        {
            Cuts.AtReach(edge, _rim, _calibration.SupportReachMm, cuts);
        }
    }

    /// <summary>What supports an edge at a fraction of its length and up to the cuts round it, by name; null when nothing does.</summary>
    public string? Holder(Segment edge, double fraction)
    {
        var p = edge.PointAt(fraction);
        var reach = _calibration.SupportReachMm + Tolerances.TouchMm;
        if (_rim is not null && _rim.IsWithin(p, reach))
        {
            return Rim.Sides.Key;
        }

        foreach (var lining in _linings)
        {
            if (lining.IsWithin(p, reach))
            {
                return lining.Member.Name;
            }
        }

        foreach (var supporter in _crossing)
        {
            if (supporter.Reaches(p) && supporter.Crosses(p, edge.TangentAt(fraction).Left, _grain.At(p)) && supporter.IsStiff(edge))
            {
                return supporter.Member.Name;
            }
        }

        return null;
    }

    private static bool MaySupport(Member supporter, Member member, TopGrain grain, Calibration calibration) =>
        supporter.Kind is not (MemberKind.Channel or MemberKind.Fretboard or MemberKind.Lining)
        && (supporter.Face != member.Face
            || member.JoinedWith.Contains(supporter.Name)
            || supporter.JoinedWith.Contains(member.Name))
        && (Supporter.StandsAcross(supporter, grain.LeftGrain, calibration) || Supporter.StandsAcross(supporter, grain.RightGrain, calibration));

    private static bool EntersLining(MemberShape shape, MemberShape lining) =>
        lining.Member.Kind == MemberKind.Lining
        && shape.Member.Kind is MemberKind.Bar or MemberKind.Plate
        && shape.Member.Face == lining.Member.Face
        && (Array.Exists(shape.Outline.Edges, e => lining.IsWithin(e.Start, Tolerances.ShortestMm)) || lining.Outline.Touches(shape.Outline));
}
