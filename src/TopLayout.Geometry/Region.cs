using System.Collections.Immutable;

namespace TopLayout.Geometry;

/// <summary>
/// An area: disjoint simple loops, outer ones counter-clockwise and holes clockwise; several outer loops, or none at all, are fine.
/// Loops may touch each other in single points. Mm, y up. Made by its factories and operations only; operations give loops that start
/// at their lowest, of those their leftmost, vertex, outer loops before holes, each from the bottom up.
/// </summary>
public sealed partial class Region
{
    internal Region(IEnumerable<Contour> loops) => Loops = [.. loops];

    /// <summary>The area without a point.</summary>
    public static Region Empty { get; } = new([]);

    /// <summary>The outer loops first, then the holes.</summary>
    public ImmutableArray<Contour> Loops { get; }

    /// <summary>True when there is no area at all.</summary>
    public bool IsEmpty => Loops.IsEmpty;

    /// <summary>The first loop, which is an outer one, counter-clockwise; of a region in one part it is the only outer one.</summary>
    /// <exception cref="InvalidOperationException">The region is empty.</exception>
    public Contour Outer => IsEmpty ? throw new InvalidOperationException("an empty region has no outer loop") : Loops[0];

    /// <summary>All edges of all loops; the area lies to the left of each.</summary>
    public IEnumerable<Segment> Edges => Loops.SelectMany(l => l.Segments);

    /// <summary>Area, mm², ≥ 0.</summary>
    public double Area => Loops.Sum(l => l.SignedArea);

    /// <summary>The smallest axis-parallel box; <see cref="Box2.Empty"/> for the empty region.</summary>
    public Box2 Bounds => Box2.Around(Loops.Select(l => l.Bounds));

    /// <summary>The area inside one closed contour that does not cross itself (not checked; <see cref="Covered"/> takes any).</summary>
    /// <exception cref="ArgumentException">The contour is open.</exception>
    public static Region Inside(Contour outer) => new([Closed(outer).Oriented(counterClockwise: true)]);

    /// <summary>The area between an outer contour and holes that lie inside it, apart from each other (not checked).</summary>
    /// <exception cref="ArgumentException">A contour is open.</exception>
    public static Region Between(Contour outer, params IEnumerable<Contour> holes) =>
        new([Closed(outer).Oriented(counterClockwise: true), .. holes.Select(h => Closed(h).Oriented(counterClockwise: false))]);

    /// <summary>True when the point lies inside; points on the border may go either way.</summary>
    public bool Contains(Point2 p)
    {
        var turns = 0;
        foreach (var loop in Loops)
        {
            turns += loop.WindingNumber(p);
        }

        return turns > 0;
    }

    /// <summary>Distance from a point to the area, mm: 0 inside it, infinite to the empty region.</summary>
    public double DistanceTo(Point2 p) => Contains(p) ? 0 : IsEmpty ? double.PositiveInfinity : Loops.Min(l => l.DistanceTo(p));

    /// <summary>The area after a rigid move; loops keep their orientation.</summary>
    public Region Placed(Placement placement) => new(Loops.Select(l => placement.Mirrored ? l.Placed(placement).Reversed() : l.Placed(placement)));

    private static Contour Closed(Contour contour) => contour.IsClosed
        ? contour
        : throw new ArgumentException("a region is bounded by closed contours", nameof(contour));
}
