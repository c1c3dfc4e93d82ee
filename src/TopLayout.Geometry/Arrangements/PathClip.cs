namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// The stretches of a path inside an area or along its border. The border of a region is an arrangement already: only the edges near the
/// path are cut with it, and each stretch between contacts is judged by a ray from its middle (<see cref="Insides"/>).
/// </summary>
internal static class PathClip
{
    public static IReadOnlyList<Contour> Of(Region area, Contour path)
    {
        var (fragments, trail, carriers, strands) = Cut(area, path);
        var isInside = Insides.Of(area, [.. trail.Select(t => fragments[t.Half >> 1].Curve.Middle)]);
        var runs = new List<List<Piece>>();
        for (var k = 0; k < trail.Count; k++)
        {
            var (half, strand) = trail[k];
            var along = fragments[half >> 1];
            if (along.Weight == 0 && !isInside[k])
            {
                continue;
            }

            var shape = (half & 1) == 0 ? along.Curve : along.Curve.Reversed();
            var piece = new Piece(shape, carriers[strand], strand, strands[strand].Segment.Label);
            if (runs.Count == 0 || runs[^1][^1].End != piece.Start)
            {
                runs.Add([]);
            }

            runs[^1].Add(piece);
        }

        return Contours(runs, path.IsClosed, trail.Count);
    }

    private static (ArraySegment<Fragment> Fragments, IReadOnlyList<(int Half, int Strand)> Trail, Curve[] Carriers, List<Strand> Strands) Cut(Region area, Contour path)
    {
        var strands = Near(area, path);
        strands.AddRange(Strands.Of(path));
        var (_, parts, carriers) = Noder.Cut(strands, Tolerances.TouchMm);
        return (parts, Merging.Coincident(parts, strands, Tolerances.TouchMm).Trail, carriers, strands);
    }

    private static List<Strand> Near(Region area, Contour path)
    {
        var curves = path.Segments.Where(s => s.ChordLength > 0).Select(Curve.Of).ToArray();
        var grid = new CurveGrid(curves, Tolerances.TouchMm);
        var (near, candidates) = (new List<Strand>(), new List<int>());
        foreach (var loop in area.Loops)
        {
            foreach (var edge in loop.Segments)
            {
                var reach = (Math.Abs(edge.Bulge) * edge.ChordLength / 2) + Tolerances.TouchMm;
                var box = Box2.Around(edge.Start, edge.End).Grown(reach);
                grid.Within(box, candidates);
                if (candidates.Exists(c => MayMeet(curves[c], edge, box, reach)))
                {
                    near.Add(new Strand(edge));
                }
            }
        }

        return near;
    }

    // An edge lies within its sagitta of its chord; a chord wholly on one side of a line keeps the least distance of its ends.
    private static bool MayMeet(Curve along, Segment edge, Box2 box, double reach)
    {
        if (along.IsArc || !along.Bounds.Overlaps(box))
        {
            return along.Bounds.Overlaps(box);
        }

        var (from, to) = (along.LeftDistance(edge.Start), along.LeftDistance(edge.End));
        return from * to <= 0 || Math.Min(Math.Abs(from), Math.Abs(to)) <= reach;
    }

    private static IReadOnlyList<Contour> Contours(List<List<Piece>> runs, bool isClosed, int pieces)
    {
        if (isClosed && runs.Count == 1 && runs[0].Count == pieces && runs[0][0].Start == runs[0][^1].End)
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
}
