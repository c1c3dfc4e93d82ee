using System.Collections.Immutable;

namespace TopLayout.Geometry;

/// <summary>
/// An area: one outer loop counter-clockwise and its holes clockwise. Mm, y up. Made by its factories only; they orient the loops.
/// </summary>
public sealed class Region
{
    private Region(IEnumerable<Contour> loops) => Loops = [.. loops];

    /// <summary>The outer loop first, then the holes.</summary>
    public ImmutableArray<Contour> Loops { get; }

    /// <summary>The outer loop, counter-clockwise.</summary>
    public Contour Outer => Loops[0];

    /// <summary>All edges of all loops; the area lies to the left of each.</summary>
    public IEnumerable<Segment> Edges => Loops.SelectMany(l => l.Segments);

    /// <summary>Area, mm², &gt; 0.</summary>
    public double Area => Loops.Sum(l => l.SignedArea);

    /// <summary>The smallest axis-parallel box.</summary>
    public Box2 Bounds => Outer.Bounds;

    /// <summary>The area inside one closed contour.</summary>
    /// <exception cref="ArgumentException">The contour is open.</exception>
    public static Region Inside(Contour outer) => new([Closed(outer).Oriented(counterClockwise: true)]);

    /// <summary>The area between an outer contour and holes that lie inside it, apart from each other (not checked).</summary>
    /// <exception cref="ArgumentException">A contour is open.</exception>
    public static Region Between(Contour outer, params IEnumerable<Contour> holes) =>
        new([Closed(outer).Oriented(counterClockwise: true), .. holes.Select(h => Closed(h).Oriented(counterClockwise: false))]);

    /// <summary>True when the point lies inside; points on the border may go either way.</summary>
    public bool Contains(Point2 p) => Outer.Contains(p) && !Loops.Skip(1).Any(h => h.Contains(p));

    /// <summary>Distance from a point to the area, mm: 0 inside it.</summary>
    public double DistanceTo(Point2 p) => Contains(p) ? 0 : Loops.Min(l => l.DistanceTo(p));

    /// <summary>The area after a rigid move; loops keep their orientation.</summary>
    public Region Placed(Placement placement) => Between(Outer.Placed(placement), Loops.Skip(1).Select(h => h.Placed(placement)));

    private static Contour Closed(Contour contour) => contour.IsClosed
        ? contour
        : throw new ArgumentException("a region is bounded by closed contours", nameof(contour));
}
