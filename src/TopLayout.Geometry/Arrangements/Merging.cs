namespace TopLayout.Geometry.Arrangements;

/// <summary>Makes one fragment of all that run between the same two nodes within the touch distance.</summary>
internal static class Merging
{
    /// <summary>
    /// Merges the parts in their own array: how many of them stay, at its beginning, and the half-edges along which strands of weight 0
    /// run, in order.
    /// </summary>
    public static (int Count, IReadOnlyList<(int Half, int Strand)> Trail) Coincident(
        Span<Fragment> parts, IReadOnlyList<Strand> strands, double touchMm)
    {
        var firsts = new int[System.Numerics.BitOperations.RoundUpToPowerOf2((uint)parts.Length + 1)];
        Array.Fill(firsts, -1);
        var nexts = new int[parts.Length];
        var trail = new List<(int Half, int Strand)>();
        var count = 0;
        foreach (ref readonly var part in parts)
        {
            ref var first = ref firsts[Bucket(part.From, part.To) & (firsts.Length - 1)];
            var (found, own, isPath) = (first, part.With, part.IsPath);
            while (found >= 0 && !IsAlong(parts[found], part, touchMm))
            {
                found = nexts[found];
            }

            var isWith = found < 0 || parts[found].From == part.From;
            if (found < 0)
            {
                (nexts[count], found, first) = (first, count, count);
                parts[count++] = part;
            }
            else
            {
                Join(ref parts[found], isWith ? part : Turned(part), strands);
            }

            if (isPath)
            {
                trail.Add(((2 * found) + (isWith ? 0 : 1), own));
            }
        }

        return WithoutIdle(parts[..count], trail);
    }

    // One number for a pair of nodes in either order; pairs that share it cost a comparison, no more.
    private static int Bucket(int from, int to) => unchecked((Math.Min(from, to) * 73856093) ^ (Math.Max(from, to) * 19349663));

    private static bool IsAlong(in Fragment f, in Fragment part, double touchMm)
    {
        var turned = f.From == part.To && f.To == part.From;
        return (turned || (f.From == part.From && f.To == part.To))
            && Math.Abs((turned ? -f.Curve.Bulge : f.Curve.Bulge) - part.Curve.Bulge) * part.Curve.ChordLength <= 4 * touchMm;
    }

    // Its curve, which the fragment it joins has already, stays.
    private static Fragment Turned(Fragment f) => f with
    {
        From = f.To,
        To = f.From,
        Weight = -f.Weight,
        With = f.Against,
        Against = f.With,
        NameWith = f.NameAgainst,
        NameAgainst = f.NameWith,
    };

    private static void Join(ref Fragment a, in Fragment b, IReadOnlyList<Strand> strands)
    {
        a.Weight += b.Weight;
        a.With = Prior(a.With, b.With, strands, byRank: false);
        a.Against = Prior(a.Against, b.Against, strands, byRank: false);
        a.NameWith = Prior(a.NameWith, b.NameWith, strands, byRank: true);
        a.NameAgainst = Prior(a.NameAgainst, b.NameAgainst, strands, byRank: true);
        a.IsPath |= b.IsPath;
    }

    // Areas before paths, then by rank or as they come.
    private static int Prior(int a, int b, IReadOnlyList<Strand> strands, bool byRank)
    {
        if (a < 0 || b < 0)
        {
            return Math.Max(a, b);
        }

        var (s, t) = (strands[a], strands[b]);
        return (s.Weight == 0) != (t.Weight == 0) ? (s.Weight == 0 ? b : a) : byRank && t.Rank < s.Rank ? b : a;
    }

    // Fragments whose weights cancel divide nothing.
    private static (int Count, IReadOnlyList<(int Half, int Strand)> Trail) WithoutIdle(Span<Fragment> merged, List<(int Half, int Strand)> trail)
    {
        var first = 0;
        while (first < merged.Length && !IsIdle(merged[first]))
        {
            first++;
        }

        if (first == merged.Length)
        {
            return (merged.Length, trail);
        }

        var numbers = new int[merged.Length];
        var kept = 0;
        for (var i = 0; i < merged.Length; i++)
        {
            numbers[i] = kept;
            if (!IsIdle(merged[i]))
            {
                merged[kept++] = merged[i];
            }
        }

        return (kept, [.. trail.Select(t => ((2 * numbers[t.Half >> 1]) + (t.Half & 1), t.Strand))]);
    }

    private static bool IsIdle(in Fragment f) => f.Weight == 0 && !f.IsPath;
}
