using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace TopLayout.Geometry;

/// <summary>
/// A chain of lines and circular arcs, open or closed, as vertices with bulges: a gap between neighbours cannot be written.
/// Mm, y up. A closed contour does not repeat its first vertex; the last vertex of an open one has neither bulge nor label. Two contours are equal when their vertices are, one by one. An arc
/// flatter than <see cref="Tolerances.FlatSagittaMm"/> is made a line: its centre would lie too far off to be computed with.
/// </summary>
public sealed partial class Contour : IEquatable<Contour>
{
    private readonly ImmutableArray<Segment> _segments;
    private StrongBox<Box2>? _bounds;

    /// <summary>A contour from its vertices.</summary>
    /// <exception cref="ArgumentException">Fewer than two vertices, a coordinate that is not finite, or a bulge outside [−1, 1].</exception>
    public Contour(IEnumerable<Vertex> vertices, bool isClosed)
    {
        Vertex[] corners = [.. vertices];
        if (corners.Length < 2)
        {
            throw new ArgumentException("a contour has at least two vertices", nameof(vertices));
        }

        foreach (var v in corners)
        {
            if (!v.Position.IsFinite || !(Math.Abs(v.Bulge) <= 1))
            {
                throw new ArgumentException($"a vertex is finite and its bulge lies in [-1, 1]; found {v}", nameof(vertices));
            }
        }

        if (!isClosed)
        {
            corners[^1] = new Vertex(corners[^1].Position);
        }

        var segments = new Segment[isClosed ? corners.Length : corners.Length - 1];
        for (var i = 0; i < segments.Length; i++)
        {
            var end = corners[(i + 1) % corners.Length];
            if (IsFlat(corners[i], end))
            {
                corners[i] = corners[i] with { Bulge = 0 };
            }

            segments[i] = new Segment(corners[i].Position, end.Position, corners[i].Bulge, corners[i].Label);
        }

        IsClosed = isClosed;
        Vertices = ImmutableCollectionsMarshal.AsImmutableArray(corners);
        _segments = ImmutableCollectionsMarshal.AsImmutableArray(segments);
    }

    /// <summary>The corners in order.</summary>
    public ImmutableArray<Vertex> Vertices { get; }

    /// <summary>True when the last vertex is joined to the first.</summary>
    public bool IsClosed { get; }

    /// <summary>The pieces in order; one per vertex when closed, one fewer when open.</summary>
    public ImmutableArray<Segment> Segments => _segments;

    /// <summary>Length along the contour, mm.</summary>
    public double Length => _segments.Sum(s => s.Length);

    /// <summary>Enclosed area, mm²: positive counter-clockwise. Only meaningful when closed and free of crossings.</summary>
    public double SignedArea => _segments.Sum(s => s.AreaTerm());

    /// <summary>The smallest axis-parallel box.</summary>
    public Box2 Bounds => (_bounds ??= new StrongBox<Box2>(BoundsOf(_segments))).Value;

    /// <summary>A whole circle, counter-clockwise, as two half turns; the first vertex lies at +x.</summary>
    public static Contour Circle(Point2 center, double radiusMm, string label = "") => new(
        [
            new Vertex(new Point2(center.X + radiusMm, center.Y), 1, label),
            new Vertex(new Point2(center.X - radiusMm, center.Y), 1, label),
        ],
        isClosed: true);

    /// <summary>A closed contour of straight edges through the points.</summary>
    public static Contour Polygon(params IEnumerable<Point2> points) => new(points.Select(p => new Vertex(p)), isClosed: true);

    /// <summary>The border of a box, counter-clockwise from its lower left corner.</summary>
    public static Contour Rectangle(Box2 box) => Polygon(box.Min, new Point2(box.Max.X, box.Min.Y), box.Max, new Point2(box.Min.X, box.Max.Y));

    /// <summary>An open contour of connected segments; each starts where the one before ended.</summary>
    /// <exception cref="ArgumentException">A gap over <see cref="Tolerances.TouchMm"/> between neighbours.</exception>
    public static Contour Chain(IEnumerable<Segment> segments, bool isClosed)
    {
        var list = segments.ToList();
        for (var i = 1; i < list.Count + (isClosed ? 1 : 0); i++)
        {
            if (!list[i - 1].End.IsNear(list[i % list.Count].Start))
            {
                throw new ArgumentException($"segment {i} does not start where the one before ends", nameof(segments));
            }
        }

        var vertices = list.Select(s => new Vertex(s.Start, s.Bulge, s.Label));
        return new Contour(isClosed ? vertices : vertices.Append(new Vertex(list[^1].End)), isClosed);
    }

    /// <summary>The same contour travelled the other way; each segment keeps its label.</summary>
    public Contour Reversed() => Chain(_segments.Reverse().Select(s => s.Reversed()), IsClosed);

    /// <summary>The contour after a rigid move.</summary>
    public Contour Placed(Placement placement) => Chain(_segments.Select(s => s.Placed(placement)), IsClosed);

    /// <summary>The contour drawn larger or smaller about the origin, factor &gt; 0; arcs stay arcs.</summary>
    public Contour Scaled(double factor) => new(Vertices.Select(v => v with { Position = new Point2(v.Position.X * factor, v.Position.Y * factor) }), IsClosed);

    /// <summary>The contour travelled counter-clockwise (or clockwise); itself when it already is.</summary>
    public Contour Oriented(bool counterClockwise) => SignedArea > 0 == counterClockwise ? this : Reversed();

    /// <summary>Every segment named <paramref name="label"/>.</summary>
    public Contour Labelled(string label) => new(Vertices.Select(v => v with { Label = label }), IsClosed);

    private static Box2 BoundsOf(ImmutableArray<Segment> segments)
    {
        var box = Box2.Empty;
        foreach (var segment in segments)
        {
            box = box.Union(segment.Bounds());
        }

        return box;
    }

    // The sagitta of a chord d with bulge b is d|b|/2.
    private static bool IsFlat(Vertex from, Vertex to) =>
        from.Bulge != 0 && Math.Abs(from.Bulge) * from.Position.DistanceTo(to.Position) / 2 < Tolerances.FlatSagittaMm;

    /// <inheritdoc/>
    public bool Equals(Contour? other) => other is not null && IsClosed == other.IsClosed && Vertices.SequenceEqual(other.Vertices);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Contour);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Vertices.Length, Vertices[0], IsClosed);
}
