using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Lutherie.Checks;

/// <summary>Where a run lies on the edges that make it: the pieces of them in its band, which a drawing can mark.</summary>
internal static class EdgeTraces
{
    // A run goes on over a short gap; a wall that leaves the band there leaves it by less than this, mm.
    private const double BeyondMm = 0.12;

    /// <summary>
    /// The unsupported pieces of the named edges within the band and between the ends of the run, in top coordinates, the member to the left; pieces
    /// that go on in one another follow each other.
    /// </summary>
    public static ImmutableArray<Segment> Of(GrainScene scene, GrainRun run, IEnumerable<Contribution> named)
    {
        var edges = named.Select(c => (c.Member, c.Side, c.Label)).ToHashSet();
        var (reach, past) = (scene.Calibration.BandHalfWidthMm + BeyondMm, Tolerances.ShortestMm);
        var band = new Box2(new Point2(run.X - reach, run.FromY - past), new Point2(run.X + reach, run.ToY + past));
        var toTop = new Placement(default, run.Grain, false);
        var pieces = from piece in scene.Pieces
                     where !piece.IsSupported && piece.Grain == run.Grain && band.Overlaps(Box2.Around(piece.Edge.Start, piece.Edge.End))
                         && edges.Contains((piece.Member, piece.Side, piece.Label))
                     from segment in Within(band, piece.Edge)
                     where segment.Length > 2 * Tolerances.ShortestMm
                     select segment.Placed(toTop) with { Label = piece.Label };
        return InOrder([.. pieces]);
    }

    // A piece runs one way in x and in y: its ends are the corners of its box.
    private static IEnumerable<Segment> Within(Box2 band, Segment piece) =>
        band.Contains(piece.Start) && band.Contains(piece.End) ? [piece]
        : Region.Inside(Contour.Rectangle(band)).Clip(Contour.Chain([piece], isClosed: false)).SelectMany(c => c.Segments);

    private static ImmutableArray<Segment> InOrder(List<Segment> pieces)
    {
        var ordered = ImmutableArray.CreateBuilder<Segment>(pieces.Count);
        while (pieces.Count > 0)
        {
            // A piece that no other runs into; of a closed chain any.
            var first = Math.Max(0, pieces.FindIndex(p => !pieces.Exists(o => o != p && GoesOn(o, p))));
            for (var next = first; next >= 0; next = pieces.FindIndex(p => GoesOn(ordered[^1], p)))
            {
                ordered.Add(pieces[next]);
                pieces.RemoveAt(next);
            }
        }

        return ordered.ToImmutable();
    }

    private static bool GoesOn(Segment one, Segment next) => one.Label == next.Label && one.End.IsNear(next.Start, Tolerances.ShortestMm);
}
