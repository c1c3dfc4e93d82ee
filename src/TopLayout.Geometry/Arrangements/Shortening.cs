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

    /// <summary>The same for a chain, whose ends stay; empty when the whole is short.</summary>
    public static List<Piece> WithoutShortInOpen(List<Piece> chain)
    {
        while (chain.Count > 0)
        {
            var at = chain.FindIndex(p => p.Shape.ChordLength < Tolerances.ShortestMm);
            if (at < 0)
            {
                break;
            }

            if (at > 0 && at < chain.Count - 1)
            {
                TakeOut(chain, at);
                continue;
            }

            var shortest = chain[at];
            chain.RemoveAt(at);
            if (chain.Count > 0 && at == 0)
            {
                chain[0] = chain[0].Bent(shortest.Start, chain[0].End);
            }
            else if (chain.Count > 0)
            {
                chain[^1] = chain[^1].Bent(chain[^1].Start, shortest.End);
            }
        }

        return chain;
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
