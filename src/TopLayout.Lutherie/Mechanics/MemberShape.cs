using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>The footprint of a member made ready for many questions, in top coordinates.</summary>
internal sealed class MemberShape(Member member)
{
    private MonotoneEdge[]? _monotone;

    public Member Member => member;

    public EdgeSet Outline { get; } = new(member.Footprint.Edges);

    public Box2 Bounds => Outline.Bounds;

    private MonotoneEdge[] Monotone => _monotone ??= Parts(Outline.Edges);

    /// <summary>True when the point lies inside; points on the border may go either way. A ray towards −x counts the crossings.</summary>
    public bool Contains(Point2 p)
    {
        if (!Bounds.Contains(p))
        {
            return false;
        }

        var isInside = false;
        foreach (var edge in Monotone)
        {
            isInside ^= edge.MinY <= p.Y && p.Y < edge.MaxY && edge.XAt(p.Y) < p.X;
        }

        return isInside;
    }

    /// <summary>True when the point lies inside or within a reach of the border, mm.</summary>
    public bool IsWithin(Point2 p, double reachMm) =>
        Bounds.Grown(reachMm).Contains(p) && (Contains(p) || Outline.IsWithin(p, reachMm));

    /// <summary>Where the line at an x enters and leaves the member, mm; null when it misses it.</summary>
    public (double Low, double High)? CrossedAt(double x) => CrossedAt(Monotone, x);

    /// <summary>The lowest and highest crossing of the line at an x with some edges, mm; null when it misses all.</summary>
    public static (double Low, double High)? CrossedAt(MonotoneEdge[] edges, double x)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var edge in edges)
        {
            if (edge.MinX <= x && x <= edge.MaxX)
            {
                var (from, to) = edge.Within(x, x);
                (low, high) = (Math.Min(low, from), Math.Max(high, to));
            }
        }

        return low <= high ? (low, high) : null;
    }

    /// <summary>Edges in parts that run one way in x and in y.</summary>
    public static MonotoneEdge[] Parts(ReadOnlySpan<Segment> edges)
    {
        var (parts, cuts) = (new List<MonotoneEdge>(edges.Length * 2), new List<double>());
        foreach (var edge in edges)
        {
            cuts.Clear();
            cuts.AddRange((ReadOnlySpan<double>)[0, 1]);
            Cuts.AtTurns(edge, Angle.Zero, cuts);
            Cuts.Order(cuts);
            for (var i = 1; i < cuts.Count; i++)
            {
                parts.Add(new MonotoneEdge(edge.Part(cuts[i - 1], cuts[i])));
            }
        }

        return [.. parts];
    }
}
