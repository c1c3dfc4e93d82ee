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
    private readonly List<Supporter> _crossing;
    private readonly List<Member> _linings;
    private readonly Contour? _rim;

    /// <summary>The support of a member by others and by the inside line of the sides, if the member ends on it.</summary>
    public EdgeSupport(Member member, IEnumerable<Member> members, TopGrain grain, Contour? rim, Calibration calibration)
    {
        (_calibration, _grain) = (calibration, grain);
        var others = members.Where(m => m != member).ToList();
        _crossing = [.. others.Where(o => MaySupport(o, member)).Select(o => new Supporter(o, grain, calibration))];
        _linings = [.. others.Where(o => EntersLining(member, o))];
        _rim = member.Kind != MemberKind.Lining && rim is not null && EndsOn(member.Footprint, rim) ? rim : null;
    }

    /// <summary>The fractions of an edge at which its support may change.</summary>
    public IEnumerable<double> Cuts(Segment edge) => _crossing.Select(s => s.Member.Footprint.Edges)
        .Concat(_linings.Select(l => l.Footprint.Edges))
        .Concat(_rim is null ? [] : [_rim.Segments])
        .SelectMany(edges => Mechanics.Cuts.AtReach(edge, edges, _calibration.SupportReachMm));

    /// <summary>What supports the part of <paramref name="edge"/> between two of its cuts, by name; null when nothing does.</summary>
    public string? Holder(Segment edge, Segment part)
    {
        var p = part.PointAt(0.5);
        var reach = _calibration.SupportReachMm + Tolerances.TouchMm;
        if (_rim is not null && _rim.DistanceTo(p) <= reach)
        {
            return Rim.Sides.Key;
        }

        return _linings.Find(l => l.Footprint.DistanceTo(p) <= reach)?.Name
            ?? _crossing.Find(s => s.Reaches(p) && s.Crosses(p, part.TangentAt(0.5).Left, _grain.At(p)) && s.IsStiff(edge))?.Member.Name;
    }

    private static bool MaySupport(Member supporter, Member member) =>
        supporter.Kind is not (MemberKind.Channel or MemberKind.Fretboard or MemberKind.Lining)
        && (supporter.Face != member.Face
            || member.JoinedWith.Contains(supporter.Name)
            || supporter.JoinedWith.Contains(member.Name));

    private static bool EntersLining(Member member, Member lining) =>
        lining.Kind == MemberKind.Lining
        && member.Kind is MemberKind.Bar or MemberKind.Plate
        && member.Face == lining.Face
        && member.Footprint.Edges.Any(e => lining.Footprint.DistanceTo(e.Start) <= Tolerances.ShortestMm
            || lining.Footprint.Edges.Any(l => Intersections.Of(e, l).Count > 0));

    private static bool EndsOn(Region footprint, Contour rim) => footprint.Edges.Any(e =>
        rim.DistanceTo(e.Start) <= Tolerances.ShortestMm || rim.Segments.Any(r => Intersections.Of(e, r).Count > 0));
}
