namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Takes edges shorter than <see cref="Tolerances.ShortestMm"/> out of a loop. Where it moves the border by no more than
/// <see cref="Tolerances.UnseenMm"/> on the average, the neighbours are drawn out to where they meet, or the shorter neighbour takes the
/// short edge's far end. Everywhere else the area is kept: one arc takes the place of the short edge and of the next
/// <see cref="ReachMm"/> of its longer neighbour, bent so that it bounds the same area as they did.
/// </summary>
internal static class Shortening
{
    // Long against the short edge, so that the arc is a flat one and stays near; the rest of the neighbour must not be short in turn.
    private const double ReachMm = 3 * Tolerances.ShortestMm;

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
        var isPrior = p.Shape.ChordLength < n.Shape.ChordLength;
        var bent = isPrior ? p.Bent(p.Start, shortest.End) : n.Bent(shortest.Start, n.End);
        if (Meeting(p, shortest, n) is { } x && IsUnseen([p, shortest, n], [p.Along(p.Start, x), n.Along(x, n.End)]))
        {
            (loop[before], loop[after]) = (p.Along(p.Start, x), n.Along(x, n.End));
        }
        else if (IsUnseen([isPrior ? p : n, shortest], [bent]))
        {
            loop[isPrior ? before : after] = bent;
        }
        else
        {
            Balance(loop, at, isPrior ? after : before);
            return;
        }

        loop.RemoveAt(at);
    }

    // One arc for the short edge and what it takes of a neighbour, before or after it: the whole where little would be left.
    private static void Balance(List<Piece> loop, int at, int neighbour)
    {
        var (shortest, giver) = (loop[at], loop[neighbour]);
        var isAfter = giver.Start == shortest.End;
        var isWhole = giver.Shape.ChordLength < ReachMm + Tolerances.ShortestMm;
        var cut = (isAfter ? giver.Shape : giver.Shape.Reversed()).Ahead(ReachMm);
        var taken = isWhole ? giver : isAfter ? giver.Along(giver.Start, cut) : giver.Along(cut, giver.End);
        var (start, end) = isAfter ? (shortest.Start, taken.End) : (taken.Start, shortest.End);
        if (start == end)
        {
            loop.RemoveAt(Math.Max(at, neighbour));
            loop.RemoveAt(Math.Min(at, neighbour));
            return;
        }

        loop[at] = giver.Bent(start, end, Curve.BulgeOfCap(AreaFrom(start, [shortest, taken]) / (end - start).Dot(end - start)));
        if (isWhole)
        {
            loop.RemoveAt(neighbour);
        }
        else
        {
            loop[neighbour] = isAfter ? giver.Along(cut, giver.End) : giver.Along(giver.Start, cut);
        }
    }

    private static bool IsUnseen(ReadOnlySpan<Piece> before, ReadOnlySpan<Piece> after)
    {
        var (origin, length) = (before[0].Start, 0.0);
        foreach (var p in before)
        {
            length += p.Shape.ChordLength;
        }

        return Math.Abs(AreaFrom(origin, before) - AreaFrom(origin, after)) <= Tolerances.UnseenMm * length;
    }

    // Swept by the ray from a point to the pieces, mm²; of pieces from that point on, what lies between them and the chord across.
    private static double AreaFrom(Point2 origin, ReadOnlySpan<Piece> pieces)
    {
        var area = 0.0;
        foreach (var p in pieces)
        {
            area += ((p.Start - origin).Cross(p.End - origin) / 2) + p.Shape.CapArea;
        }

        return area;
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
