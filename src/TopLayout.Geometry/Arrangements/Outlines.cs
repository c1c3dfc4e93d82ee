namespace TopLayout.Geometry.Arrangements;

/// <summary>From an arrangement to the loops of regions: walked, joined, freed of short edges and slivers, in canonical order.</summary>
internal static class Outlines
{
    private const int MostRounds = 8;

    /// <summary>The region of all faces whose winding number the rule keeps.</summary>
    public static Region Region(Arrangement arrangement, Func<int, bool> isInside) => Tidied(Loops(arrangement, isInside));

    /// <summary>One region for each face that the rule keeps, paths dividing.</summary>
    public static IReadOnlyList<Region> Faces(Arrangement arrangement, Func<int, bool> isInside) =>
        [.. Grouped(Loops(arrangement, isInside)).Select(Tidied).Where(r => !r.IsEmpty)
            .OrderBy(r => r.Bounds.Min.Y).ThenBy(r => r.Bounds.Min.X)];

    /// <summary>The connected parts of loops that bound an area: each outer loop with the holes in it.</summary>
    public static IReadOnlyList<Region> Parts(IEnumerable<Contour> loops) =>
        [.. Grouped([.. loops.Select(Pieces)]).Select(g => new Region(g.Select(Canonical)))];

    private static List<Piece> Pieces(Contour loop) =>
        [.. loop.Segments.Select((s, i) => Piece.Of(s, i))];

    private static List<List<Piece>> Loops(Arrangement arrangement, Func<int, bool> isInside) =>
        [.. LoopWalk.Of(arrangement, isInside).Select(loop => Joining.Joined([.. loop.Select(half => PieceOf(arrangement, half))]))];

    private static Piece PieceOf(Arrangement arrangement, int half)
    {
        var f = arrangement.Fragments[half >> 1];
        var (own, other, name, otherName) = (half & 1) == 0
            ? (f.With, f.Against, f.NameWith, f.NameAgainst)
            : (f.Against, f.With, f.NameAgainst, f.NameWith);
        var carrier = own >= 0 ? arrangement.Carriers[own] : arrangement.Carriers[other].Reversed();
        var label = arrangement.Strands[name >= 0 ? name : otherName].Segment.Label;
        return new Piece(ShapeOf(arrangement, half), carrier, own >= 0 ? own : other, label);
    }

    private static Curve ShapeOf(Arrangement arrangement, int half)
    {
        var along = arrangement.Curves[half >> 1];
        return (half & 1) == 0 ? along : along.Reversed();
    }

    // Taking out a short edge moves its neighbours, which may then meet others: the loops are arranged anew until nothing moves.
    private static Region Tidied(List<List<Piece>> loops)
    {
        for (var round = 0; ; round++)
        {
            var isMoved = false;
            var tidy = new List<List<Piece>>(loops.Count);
            foreach (var loop in loops)
            {
                var kept = Shortening.WithoutShort(loop, out var moved);
                isMoved |= moved;
                if (kept.Count > 1 && !IsSliver(kept))
                {
                    tidy.Add(kept);
                }
            }

            if (!isMoved || round == MostRounds)
            {
                return new Region(Sorted(tidy.Select(Canonical)));
            }

            var strands = tidy.SelectMany(loop => loop.Select(p => new Strand(p.ToSegment())));
            loops = Loops(Arrangement.Of([.. strands]), winding => winding >= 1);
        }
    }

    private static bool IsSliver(List<Piece> loop)
    {
        var (area, length) = (0.0, 0.0);
        foreach (var piece in loop)
        {
            area += piece.Shape.AreaTerm;
            length += piece.Shape.ChordLength;
        }

        return Math.Abs(area) <= Tolerances.TouchMm * length;
    }

    private static Contour Canonical(List<Piece> loop)
    {
        var first = Joining.Lowest(loop);
        return new Contour(
            Enumerable.Range(0, loop.Count).Select(k => loop[(first + k) % loop.Count])
                .Select(p => new Vertex(p.Start, p.Shape.Bulge + 0.0, p.Label)), // + 0.0: no −0
            isClosed: true);
    }

    private static IEnumerable<Contour> Sorted(IEnumerable<Contour> loops) => loops
        .OrderBy(l => l.SignedArea < 0).ThenBy(l => l.Vertices[0].Position.Y).ThenBy(l => l.Vertices[0].Position.X);

    // A hole belongs to the smallest outer loop round it, told by a point of the area beside it; where loops touch, such a point may lie
    // outside all.
    private static IEnumerable<List<List<Piece>>> Grouped(List<List<Piece>> loops)
    {
        var outers = new List<(double Area, Box2 Bounds, Contour Loop, List<List<Piece>> Group)>();
        var holes = new List<List<Piece>>();
        foreach (var loop in loops)
        {
            var area = loop.Sum(p => p.Shape.AreaTerm);
            if (area < 0)
            {
                holes.Add(loop);
            }
            else
            {
                var contour = Canonical(loop);
                outers.Add((area, contour.Bounds, contour, [loop]));
            }
        }

        outers.Sort((a, b) => a.Area.CompareTo(b.Area));
        foreach (var hole in holes)
        {
            var owner = hole.SelectMany(Beside).Select(p => outers.FindIndex(o => o.Bounds.Contains(p) && o.Loop.Contains(p)))
                .FirstOrDefault(o => o >= 0, -1);
            if (owner >= 0)
            {
                outers[owner].Group.Add(hole);
            }
        }

        return outers.Select(o => o.Group);
    }

    private static IEnumerable<Point2> Beside(Piece piece)
    {
        var left = piece.Shape.Along.Left * Tolerances.BesideMm;
        yield return piece.Shape.Middle + left;
        yield return piece.Along(piece.Start, piece.Shape.Middle).Shape.Middle + left;
    }
}
