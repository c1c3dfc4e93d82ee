namespace TopLayout.Geometry.Arrangements;

/// <summary>Makes strands of regions and contours.</summary>
internal static class Strands
{
    public static IEnumerable<Strand> Of(Region region, int rank) => region.Edges.Select(s => new Strand(s, 1, rank));

    public static IEnumerable<Strand> Of(Contour path) => path.Segments.Select(s => new Strand(s, 0));

    /// <summary>
    /// Strands of several regions in an order that does not depend on the order of the regions, so that equal operands give equal bytes;
    /// the rank keeps the order for labels.
    /// </summary>
    public static IReadOnlyList<Strand> Of(IReadOnlyList<Region> regions)
    {
        var strands = new List<Strand>(regions.Sum(r => r.Loops.Sum(l => l.Segments.Length)));
        foreach (var i in Enumerable.Range(0, regions.Count).Order(Comparer<int>.Create((a, b) => Compare(regions[a], regions[b]))))
        {
            strands.AddRange(Of(regions[i], i));
        }

        return strands;
    }

    private static int Compare(Region a, Region b)
    {
        foreach (var (s, t) in a.Edges.Zip(b.Edges))
        {
            var order = (s.Start.Y, s.Start.X, s.End.Y, s.End.X, s.Bulge).CompareTo((t.Start.Y, t.Start.X, t.End.Y, t.End.X, t.Bulge));
            if (order != 0)
            {
                return order;
            }
        }

        return a.Edges.Count().CompareTo(b.Edges.Count());
    }
}
