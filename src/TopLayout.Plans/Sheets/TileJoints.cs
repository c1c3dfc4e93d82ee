using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Plans.Sheets;

/// <summary>The sides of a row of tiles as they lie: one line a joint of wedges, both sides of each straight tile.</summary>
internal static class TileJoints
{
    /// <summary>The rows of tiles round a round hole; none round another.</summary>
    public static IEnumerable<(Ring Ring, Tile Tile)> Rows(Layout layout) => layout.Hole.Radius is not { } hole
        ? []
        : from ring in Rosette.Channels(layout.Design, hole).SelectMany(c => c.Rings)
          where ring.Kind == RingKind.Tiles
          select (ring, new Tile(ring.Tiles!, hole + ring.InnerMm, hole + ring.OuterMm));

    /// <summary>The pieces of the centre line between two heights that cross no row of tiles, which may have a joint on it.</summary>
    public static IEnumerable<(double From, double To)> AxisOffTiles(Layout layout, double from, double to, double centre)
    {
        var hole = layout.Hole.Radius ?? 0;
        var rows = Rows(layout).SelectMany(r => new[] { (centre + hole + r.Ring.OuterMm, centre + hole + r.Ring.InnerMm), (centre - hole - r.Ring.InnerMm, centre - hole - r.Ring.OuterMm) });
        var at = from;
        foreach (var (top, bottom) in rows.Where(r => r.Item1 < from && r.Item2 > to).OrderByDescending(r => r.Item1))
        {
            yield return (at, top);
            at = bottom;
        }

        yield return (at, to);
    }

    /// <summary>From the inner end to the outer, round a centre.</summary>
    public static IEnumerable<(Point2 Inner, Point2 Outer)> Of(Tile tile, Point2 center)
    {
        for (var i = 0; i < tile.Row.Count && tile.FinishedDepthMm > Tolerances.ShortestMm; i++)
        {
            var corners = tile.Laid(i, center);
            yield return (corners[0], corners[1]);
            if (tile.Row.Shape == TileShape.Straight)
            {
                yield return (corners[3], corners[2]);
            }
        }
    }
}
