namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Takes edges shorter than <see cref="Tolerances.ShortestMm"/> out of a loop: the neighbours are drawn out to where they meet when that
/// is close by, so that both stay on their lines; otherwise the shorter neighbour takes the short edge's far end.
/// </summary>
internal static class Shortening
{
    /// <summary>The loop without short edges; empty when nothing wider is left.</summary>
    public static List<Piece> WithoutShort(List<Piece> loop, out bool isMoved)
    {
        isMoved = false;
        while (loop.Count > 0)
        {
            var at = loop.FindIndex(p => p.Shape.ChordLength < Tolerances.ShortestMm);
            if (at < 0)
            {
                break;
            }

            isMoved = true;
            if (loop.Count <= 2)
            {
                return [];
            }

            TakeOut(loop, at);
        }

        return loop;
    }

    private static void TakeOut(List<Piece> loop, int at)
    {
        var (before, after) = ((at + loop.Count - 1) % loop.Count, (at + 1) % loop.Count);
        var (p, shortest, n) = (loop[before], loop[at], loop[after]);
        if (Meeting(p, shortest, n) is { } x)
        {
            loop[before] = p.Along(p.Start, x);
            loop[after] = n.Along(x, n.End);
        }
        else if (p.Shape.ChordLength < n.Shape.ChordLength)
        {
            loop[before] = p.Bent(p.Start, shortest.End);
        }
        else
        {
            loop[after] = n.Bent(shortest.Start, n.End);
        }

        loop.RemoveAt(at);
    }

    private static Point2? Meeting(Piece p, Piece shortest, Piece n)
    {
        var crossings = Crossings.Of(p.Carrier, n.Carrier, Tolerances.TouchMm);
        var (near, middle) = (crossings.First, shortest.Shape.Middle);
        if (crossings.Count > 1 && crossings.Second.DistanceTo(middle) < near.DistanceTo(middle))
        {
            near = crossings.Second;
        }

        var isClose = crossings.Count > 0 && near.DistanceTo(middle) <= Tolerances.ShortestMm
            && near.DistanceTo(p.Start) > Tolerances.ShortestMm && near.DistanceTo(n.End) > Tolerances.ShortestMm;
        return isClose ? near : null;
    }
}
