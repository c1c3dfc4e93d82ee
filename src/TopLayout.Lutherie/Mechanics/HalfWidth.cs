using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// b: the half-width across the grain that acts, ∫b² dy / ∫b dy over an area; for a ring half its mean width, area over perimeter.
/// Calibration of this project: it makes tapered, round and hollow members comparable with straight ones.
/// </summary>
public static class HalfWidth
{
    /// <summary>Nodes and weights of the 8-point Gauss rule on [−1, 1] (Abramowitz and Stegun 1964, Table 25.4), positive half.</summary>
    private static readonly (double Node, double Weight)[] Gauss =
    [
        (0.1834346424956498, 0.3626837833783620), (0.5255324099163290, 0.3137066458778873),
        (0.7966664774136267, 0.2223810344533745), (0.9602898564975363, 0.1012285362903763),
    ];

    /// <summary>b of a member, mm: what its builder says acts, else measured on the footprint.</summary>
    public static double Of(Member member, TopGrain grain) =>
        member.ActingHalfWidthMm ?? Of(member.Footprint, grain.Under(member.Footprint));

    /// <summary>b of an area, mm, exact to about 1e-9 of itself.</summary>
    public static double Of(Region area, Angle grain)
    {
        if (area.Loops.Length > 1)
        {
            return area.Area / area.Loops.Sum(l => l.Length);
        }

        var (edges, levels, cuts) = (new List<MonotoneEdge>(), new List<double>(), new List<double>());
        foreach (var edge in area.Outer.Segments)
        {
            Add(edge, grain, edges, levels, cuts);
        }

        levels.Sort();
        var (squares, active) = (0.0, new List<MonotoneEdge>());
        for (var i = 1; i < levels.Count; i++)
        {
            if (levels[i] > levels[i - 1])
            {
                squares += Integral(edges, active, levels[i - 1], levels[i]);
            }
        }

        return squares / (area.Area / 2);
    }

    // The parts of an edge that run along the grain, in its frame, and the levels of their ends.
    private static void Add(Segment edge, Angle grain, List<MonotoneEdge> edges, List<double> levels, List<double> cuts)
    {
        cuts.Clear();
        cuts.AddRange((ReadOnlySpan<double>)[0, 1]);
        Cuts.AtTurns(edge, grain, cuts);
        Cuts.Order(cuts);
        for (var i = 1; i < cuts.Count; i++)
        {
            var piece = EdgePiece.Placed(edge.Part(cuts[i - 1], cuts[i]), "", TopHalf.Whole, grain, supportedBy: null, isLongSide: false);
            if (piece.Side != EdgeSide.Neither)
            {
                var part = new MonotoneEdge(piece.Edge);
                edges.Add(part);
                levels.Add(part.MinY);
                levels.Add(part.MaxY);
            }
        }
    }

    // ∫ Σb² dy, every stretch of a line square to the grain counted by itself, between two levels with no edge end between. Edges end square
    // to the grain as roots of y; y = middle + half·sin t turns them into smooth functions of t, which the rule takes on two halves.
    private static double Integral(List<MonotoneEdge> edges, List<MonotoneEdge> active, double low, double high)
    {
        var (middle, half, hasArc) = ((low + high) / 2, (high - low) / 2, false);
        active.Clear();
        foreach (var edge in edges)
        {
            if (edge.MinY <= low && edge.MaxY >= high)
            {
                active.Add(edge);
                hasArc |= edge.IsArc;
            }
        }

        if (!hasArc)
        {
            // Straight edges: b² is a parabola of y, which Simpson's rule takes exactly.
            return half / 3 * (Squares(active, low) + (4 * Squares(active, middle)) + Squares(active, high));
        }

        var sum = 0.0;
        foreach (var start in (ReadOnlySpan<double>)[-90, 0])
        {
            foreach (var (node, weight) in Gauss)
            {
                foreach (var sign in (ReadOnlySpan<double>)[-1, 1])
                {
                    var t = Angle.FromDegrees(start + 45 + (45 * sign * node));
                    sum += weight * Math.PI / 4 * half * Trig.Cos(t) * Squares(active, middle + (half * Trig.Sin(t)));
                }
            }
        }

        return sum;
    }

    private static double Squares(List<MonotoneEdge> active, double y)
    {
        Span<double> crossings = active.Count <= 16 ? stackalloc double[active.Count] : new double[active.Count];
        for (var i = 0; i < crossings.Length; i++)
        {
            crossings[i] = active[i].XAt(y);
        }

        crossings.Sort();
        var sum = 0.0;
        for (var i = 0; i + 1 < crossings.Length; i += 2)
        {
            var b = (crossings[i + 1] - crossings[i]) / 2;
            sum += b * b;
        }

        return sum;
    }
}
