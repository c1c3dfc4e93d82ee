namespace TopLayout.Geometry.Arrangements;

/// <summary>Makes one fragment of all that run between the same two nodes within the touch distance.</summary>
internal static class Merging
{
    /// <summary>The merged fragments, and the half-edges along which strands of weight 0 run, in order.</summary>
    public static (Fragment[] Fragments, IReadOnlyList<(int Half, int Strand)> Trail) Coincident(
        NodeTable nodes, Fragment[] parts, IReadOnlyList<Strand> strands, double touchMm)
    {
        var merged = new List<Fragment>(parts.Length);
        var firsts = new int[System.Numerics.BitOperations.RoundUpToPowerOf2((uint)parts.Length + 1)];
        Array.Fill(firsts, -1);
        var nexts = new List<int>(parts.Length);
        var trail = new List<(int Half, int Strand)>();
        foreach (var part in parts)
        {
            ref var first = ref firsts[Bucket(part.From, part.To) & (firsts.Length - 1)];
            var found = first;
            while (found >= 0 && !IsAlong(merged[found], part, touchMm))
            {
                found = nexts[found];
            }

            if (found < 0)
            {
                found = merged.Count;
                merged.Add(part);
                nexts.Add(first);
                first = found;
            }
            else
            {
                merged[found] = Joined(merged[found], merged[found].From == part.From ? part : Turned(part), strands);
            }

            if (part.IsPath)
            {
                trail.Add(((2 * found) + (merged[found].From == part.From ? 0 : 1), part.With));
            }
        }

        return WithoutIdle(merged, trail);
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

    private static Fragment Joined(Fragment a, Fragment b, IReadOnlyList<Strand> strands) => a with
    {
        Weight = a.Weight + b.Weight,
        With = Prior(a.With, b.With, strands, byRank: false),
        Against = Prior(a.Against, b.Against, strands, byRank: false),
        NameWith = Prior(a.NameWith, b.NameWith, strands, byRank: true),
        NameAgainst = Prior(a.NameAgainst, b.NameAgainst, strands, byRank: true),
        IsPath = a.IsPath || b.IsPath,
    };

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
    private static (Fragment[] Fragments, IReadOnlyList<(int Half, int Strand)> Trail) WithoutIdle(List<Fragment> merged, List<(int Half, int Strand)> trail)
    {
        if (merged.TrueForAll(f => f.Weight != 0 || f.IsPath))
        {
            return ([.. merged], trail);
        }

        var numbers = new int[merged.Count];
        var kept = new List<Fragment>(merged.Count);
        for (var i = 0; i < merged.Count; i++)
        {
            numbers[i] = kept.Count;
            if (merged[i].Weight != 0 || merged[i].IsPath)
            {
                kept.Add(merged[i]);
            }
        }

        return ([.. kept], [.. trail.Select(t => ((2 * numbers[t.Half >> 1]) + (t.Half & 1), t.Strand))]);
    }
}
