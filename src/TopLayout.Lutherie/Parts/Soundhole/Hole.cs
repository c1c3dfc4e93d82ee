using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>The soundhole as it is cut into the top, in layout coordinates, mm; convex, whatever its shape.</summary>
/// <param name="edge">Its edge, closed.</param>
public sealed class Hole(Contour edge)
{
    private readonly Box2 _box = edge.Bounds;

    /// <summary>Its edge, counter-clockwise.</summary>
    public Contour Edge { get; } = edge.Oriented(counterClockwise: true);

    /// <summary>Its area.</summary>
    public Region Area => Region.Inside(Edge);

    /// <summary>The middle of its length and width.</summary>
    public Point2 Center => _box.Center;

    /// <summary>Half its width across the body, mm; the radius of a round one.</summary>
    public double HalfWidth => _box.Width / 2;

    /// <summary>Half its length along the body, mm; the radius of a round one.</summary>
    public double HalfLength => _box.Height / 2;

    /// <summary>Neck edge to the hole's edge nearest to the neck, mm.</summary>
    public double NearEdge => -_box.Max.Y;

    /// <summary>Neck edge to the hole's edge nearest to the tail, mm.</summary>
    public double FarEdge => -_box.Min.Y;

    /// <summary>Its radius where it is round, else null.</summary>
    public double? Radius => Edge.Segments.Length == 2 && Edge.Segments.All(s => Math.Abs(s.Bulge) == 1) ? HalfWidth : null;

    /// <summary>The line at a distance outside its edge, every edge of it under one label; a circle outside a round hole.</summary>
    /// <param name="mm">From the edge outward, mm, ≥ 0.</param>
    /// <param name="label">The label of all its edges.</param>
    public Contour LineOutside(double mm, string label) =>
        Radius is { } radius ? Contour.Circle(Center, radius + mm, label) : Area.Offset(mm).Outer.Labelled(label);

    /// <summary>The line at a distance inside its edge; null where the hole is too small for it.</summary>
    /// <param name="mm">From the edge inward, mm, ≥ 0.</param>
    /// <param name="label">The label of all its edges.</param>
    public Contour? LineInside(double mm, string label)
    {
        if (Radius is { } radius)
        {
            return radius > mm ? Contour.Circle(Center, radius - mm, label) : null;
        }

        return Area.Offset(-mm) is { IsEmpty: false } inside ? inside.Outer.Labelled(label) : null;
    }

    /// <summary>
    /// From the hole's edge to a part, mm. Negative where the part reaches into the hole: then it is how far the hole would have to shrink all
    /// round to be clear of it, and on from its centre to the part's edge where the part covers that. Exact for a round hole; else found by
    /// halving to <see cref="Tolerances.TouchMm"/>.
    /// </summary>
    public double ClearanceOf(Region part)
    {
        var toBorder = part.Loops.Min(l => l.DistanceTo(Center));
        var isCovered = part.Contains(Center);
        if (Radius is { } radius)
        {
            return (isCovered ? -toBorder : toBorder) - radius;
        }

        var distance = Distances.Between(Area, part);
        return distance > 0 ? distance : isCovered ? -(Math.Min(HalfWidth, HalfLength) + toBorder) : -DepthOf(part);
    }

    private double DepthOf(Region part)
    {
        bool Reaches(double depth) => LineInside(depth, "") is { } smaller && Distances.Between(Region.Inside(smaller), part) == 0;
        var (less, more) = (0.0, Math.Min(HalfWidth, HalfLength));
        while (more - less > Tolerances.TouchMm)
        {
            var middle = (less + more) / 2;
            (less, more) = Reaches(middle) ? (middle, more) : (less, middle);
        }

        return less;
    }
}
