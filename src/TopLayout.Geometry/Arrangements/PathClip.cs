namespace TopLayout.Geometry.Arrangements;

/// <summary>Collects the stretches of a path that run inside an area or along its border.</summary>
internal static class PathClip
{
    public static IReadOnlyList<Contour> Of(Arrangement arrangement, bool isClosed)
    {
        var runs = Runs(arrangement);
        var isWhole = runs.Count == 1 && runs[0].Count == arrangement.Trail.Count;
        if (isClosed && isWhole && runs[0][0].Start == runs[0][^1].End)
        {
            var loop = Shortening.WithoutShort(Joining.Joined(runs[0]), out _);
            return loop.Count < 2 ? [] : [Contour.Chain(loop.Select(p => p.ToSegment()), isClosed: true)];
        }

        if (isClosed && runs.Count > 1 && runs[^1][^1].End == runs[0][0].Start)
        {
            runs[0] = [.. runs[^1], .. runs[0]];
            runs.RemoveAt(runs.Count - 1);
        }

        return [.. runs.Select(run => Shortening.WithoutShortInOpen(Joining.JoinedOpen(run))).Where(run => run.Count > 0)
            .Select(run => Contour.Chain(run.Select(p => p.ToSegment()), isClosed: false))];
    }

    private static List<List<Piece>> Runs(Arrangement arrangement)
    {
        var runs = new List<List<Piece>>();
        foreach (var (half, strand) in arrangement.Trail)
        {
            if (arrangement.Winding(half) < 1 && arrangement.Winding(half ^ 1) < 1)
            {
                continue;
            }

            var piece = Outlines.PieceOf(arrangement, half, strand);
            if (runs.Count == 0 || runs[^1][^1].End != piece.Start)
            {
                runs.Add([]);
            }

            runs[^1].Add(piece);
        }

        return runs;
    }
}
