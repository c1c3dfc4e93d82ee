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
        Of(new MemberShapes(members), grain, rim, calibration);

    /// <summary>The same of members whose shapes are made ready.</summary>
    internal static ImmutableArray<EdgePiece> Of(MemberShapes shapes, TopGrain grain, Contour? rim, Calibration calibration)
    {
        var edges = rim is null ? null : new EdgeSet(rim.Segments);
        var pieces = ImmutableArray.CreateBuilder<EdgePiece>();
        var cuts = new List<double>();
        foreach (var shape in shapes.All)
        {
            var support = new EdgeSupport(
                shape, shapes.Near(shape.Bounds.Grown(calibration.SupportReachMm + Tolerances.TouchMm)), grain, edges, calibration);
            foreach (var edge in shape.Outline.Edges)
            {
                if (!shape.Member.UngluedEdges.Contains(edge.Label))
                {
                    AddEdge(edge, shape.Member, support, grain, cuts, pieces);
                }
            }
        }

        return pieces.DrainToImmutable();
    }

    private static void AddEdge(
        Segment edge, Member member, EdgeSupport support, TopGrain grain, List<double> cuts, ImmutableArray<EdgePiece>.Builder pieces)
    {
        cuts.Clear();
        cuts.AddRange((ReadOnlySpan<double>)[0, 1]);
        Cuts.AtTurns(edge, grain.LeftGrain, cuts);
        if (!grain.IsOnePlate)
        {
            Cuts.AtCenter(edge, cuts);
            if (grain.LeftGrain != grain.RightGrain)
            {
                Cuts.AtTurns(edge, grain.RightGrain, cuts);
            }
        }

        Cuts.Order(cuts);
        double[] turns = [.. cuts];
        support.AddCuts(edge, cuts);
        Cuts.Order(cuts);
        var (from, turn, holder) = (0.0, 1, HolderOf(edge, cuts[0], cuts[1], support));
        for (var i = 1; i < cuts.Count; i++)
        {
            // A cut at which nothing changes is passed over, so that pieces are few.
            var isTurn = cuts[i] >= turns[turn] - Cuts.Smallest;
            turn += isTurn ? 1 : 0;
            var next = i + 1 < cuts.Count ? HolderOf(edge, cuts[i], cuts[i + 1], support) : null;
            if (isTurn || next != holder)
            {
                AddPart(edge.Part(from, cuts[i]), member, holder, grain, pieces);
                from = cuts[i];
            }

            holder = next;
        }
    }

    private static string? HolderOf(Segment edge, double from, double to, EdgeSupport support) => support.Holder(edge, (from + to) / 2);

    private static void AddPart(Segment part, Member member, string? holder, TopGrain grain, ImmutableArray<EdgePiece>.Builder pieces)
    {
        if (part.ChordLength > LeastPartMm)
        {
            var middle = part.PointAt(0.5);
            pieces.Add(EdgePiece.Placed(part, member.Name, grain.HalfAt(middle), grain.At(middle), holder, IsLongSide(part, member)));
        }
    }

    private static bool IsLongSide(Segment part, Member member) => GrainAngle.IsMoreAlong(part.TangentAt(0.5), member.Grain);
}
