using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>The glued edges of members as pieces that a scan along the grain can measure.</summary>
public static class GluedEdges
{
    /// <summary>Parts shorter than this are dropped, mm.</summary>
    private const double LeastPartMm = 1e-7;

    /// <summary>Every glued edge of every member, in order, split where its half, its direction or its support changes.</summary>
    /// <param name="members">All members: those that do not support still have edges.</param>
    /// <param name="grain">The top's grain.</param>
    /// <param name="rim">The inside line of the sides; null when there is none. What ends on it is supported there.</param>
    /// <param name="calibration">The settings.</param>
    public static ImmutableArray<EdgePiece> Of(IReadOnlyList<Member> members, TopGrain grain, Contour? rim, Calibration calibration) =>
        [.. members.SelectMany(m => OfMember(m, new EdgeSupport(m, members, grain, rim, calibration), grain))];

    private static IEnumerable<EdgePiece> OfMember(Member member, EdgeSupport support, TopGrain grain) => member.Footprint.Edges
        .Where(e => !member.UngluedEdges.Contains(e.Label))
        .SelectMany(e => OfEdge(e, member, support, grain));

    private static IEnumerable<EdgePiece> OfEdge(Segment edge, Member member, EdgeSupport support, TopGrain grain)
    {
        var cuts = Cuts.Ordered([
            0, 1,
            .. Cuts.AtTurns(edge, grain.LeftGrain), .. Cuts.AtTurns(edge, grain.RightGrain),
            .. grain.IsOnePlate ? [] : Cuts.AtCenter(edge),
            .. support.Cuts(edge),
        ]);
        foreach (var (from, to) in cuts.Zip(cuts.Skip(1)))
        {
            var part = edge.Part(from, to);
            var middle = part.PointAt(0.5);
            if (part.ChordLength > LeastPartMm)
            {
                yield return EdgePiece.Placed(
                    part, member.Name, grain.HalfAt(middle), grain.At(middle), support.Holder(edge, part), IsLongSide(part, member));
            }
        }
    }

    private static bool IsLongSide(Segment part, Member member) => GrainAngle.Of(part.TangentAt(0.5), member.Grain).Degrees < 45;
}
