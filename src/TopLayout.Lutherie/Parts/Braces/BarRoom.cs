using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>What a bar must keep to: the hole, the outline, and the two lines inside it.</summary>
/// <param name="Outline">Outer face of the sides, counter-clockwise.</param>
/// <param name="Hole">The soundhole.</param>
/// <param name="InsideOfSides">Inside of the sides, counter-clockwise.</param>
/// <param name="LiningLine">Inner line of the linings, counter-clockwise.</param>
internal sealed record BarRoom(Contour Outline, Hole Hole, Contour InsideOfSides, Contour LiningLine)
{
    // Longer than any top.
    private const double ReachMm = 2000;

    /// <summary>The area inside the sides, its edges not named.</summary>
    public Region Inside { get; } = Region.Inside(InsideOfSides.Labelled(BarStrip.RimEdge));

    /// <summary>Where a ray from a point inside first meets the linings; null when the point does not lie inside them.</summary>
    public Point2? LiningFrom(Point2 inside, Vec2 along)
    {
        var crossings = LiningLine.Crossings(Ray(inside, along));
        return LiningLine.Contains(inside) && crossings.Count > 0 ? crossings[0].Point : null;
    }

    /// <summary>A straight line from a point, longer than any top.</summary>
    public static Segment Ray(Point2 from, Vec2 along) => new(from, from + (along.Unit * ReachMm));
}
