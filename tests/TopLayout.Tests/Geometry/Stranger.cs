using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Area algebra by a library that knows straight edges only, on copies flattened to a tolerance.</summary>
internal static class Stranger
{
    private static readonly GeometryFactory Factory = new();

    public static NetTopologySuite.Geometries.Geometry Flattened(Region region, double toleranceMm)
    {
        NetTopologySuite.Geometries.Geometry area = Factory.CreatePolygon();
        foreach (var loop in region.Loops)
        {
            var points = loop.Flattened(toleranceMm).Select(p => new Coordinate(p.X, p.Y)).ToList();
            if (!points[^1].Equals2D(points[0]))
            {
                points.Add(points[0].Copy());
            }

            area = Combine(area, Factory.CreatePolygon([.. points]), loop.SignedArea > 0 ? SpatialFunction.Union : SpatialFunction.Difference);
        }

        return area;
    }

    public static NetTopologySuite.Geometries.Geometry Combine(
        NetTopologySuite.Geometries.Geometry a, NetTopologySuite.Geometries.Geometry b, SpatialFunction how)
    {
        var all = OverlayNGRobust.Overlay(a, b, how);

        // Areas only: where borders touch the overlay also gives points and lines, and does not take them back.
        var areas = Enumerable.Range(0, all.NumGeometries).Select(all.GetGeometryN).OfType<Polygon>().Where(p => !p.IsEmpty).ToArray();
        return areas.Length == 1 ? areas[0] : Factory.CreateMultiPolygon(areas);
    }

    /// <summary>Grown or shrunk; its own simplification of the input, a hundredth of the distance by default, is turned down.</summary>
    public static NetTopologySuite.Geometries.Geometry Offset(NetTopologySuite.Geometries.Geometry area, double mm) =>
        area.Buffer(mm, new BufferParameters(200) { SimplifyFactor = 1e-6 });
}
