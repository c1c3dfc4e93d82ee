using NetTopologySuite.Geometries;
using TopLayout.Geometry;

namespace TopLayout.Benchmarks;

/// <summary>The figures measured, and their flattened copies.</summary>
internal static class Figures
{
    /// <summary>Flattening of the copies, mm.</summary>
    public const double FlatMm = 0.01;

    private static readonly GeometryFactory Factory = new();

    /// <summary>A closed outline of eight tangent arcs, about 500 × 400 mm, waisted.</summary>
    public static Region Body()
    {
        Contour[] bouts = [Contour.Circle(new Point2(0, 0), 200, "lower"), Contour.Circle(new Point2(0, 260), 145, "upper")];
        return Region.Union(bouts.Select(Region.Inside)).Offset(40).Offset(-40);
    }

    /// <summary>Twenty straight bars across the body, each 6 to 12 mm wide, at varied slopes; they reach past the outline.</summary>
    public static IReadOnlyList<Region> Bars() =>
        [.. Enumerable.Range(0, 20).Select(i =>
        {
            var (y, slope) = (-180 + (29.0 * i), Angle.FromDegrees((i * 37 % 50) - 25));
            var half = Trig.Direction(slope) * 260;
            var axis = new Contour([new Vertex(new Point2(0, y) - half, 0, $"bar {i}"), new Vertex(new Point2(0, y) + half)], isClosed: false);
            return axis.Band(3 + (i % 4), BandEnd.Flat);
        })];

    /// <summary>A toothed ring of so many edges, half of them arcs, of 3 mm length each.</summary>
    public static Region Gear(int edges, double turn = 0)
    {
        var radius = edges * 3 / (2 * Math.PI);
        return Region.Inside(new Contour(
            Enumerable.Range(0, edges).Select(i => new Vertex(
                default(Point2) + (Trig.Direction(Angle.FromDegrees((i + turn) * 360 / edges)) * (radius + (i % 4 < 2 ? 1.5 : 0))),
                i % 2 == 0 ? 0.3 : 0,
                i % 2 == 0 ? "tip" : "flank")),
            isClosed: true));
    }

    /// <summary>The straight copy of a region in one part without touching loops.</summary>
    public static NetTopologySuite.Geometries.Geometry Flattened(Region region)
    {
        var rings = region.Loops.Select(l => Ring(l)).ToArray();
        return Factory.CreatePolygon(rings[0], rings[1..]);
    }

    public static NetTopologySuite.Geometries.Geometry Flattened(Contour path) =>
        Factory.CreateLineString([.. path.Flattened(FlatMm).Select(p => new Coordinate(p.X, p.Y))]);

    private static LinearRing Ring(Contour loop)
    {
        var points = loop.Flattened(FlatMm).Select(p => new Coordinate(p.X, p.Y)).ToList();
        return Factory.CreateLinearRing([.. points, points[0].Copy()]);
    }
}
