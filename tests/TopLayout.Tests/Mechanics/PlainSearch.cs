using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Tests.Mechanics;

/// <summary>Λ by brute force, written without the program's scan: points every 0.05 mm of edge, grain lines every 0.05 mm.</summary>
internal static class PlainSearch
{
    private const double Step = 0.05;

    public static double Longest(IEnumerable<Segment> edges, Calibration calibration)
    {
        var points = edges.SelectMany(e =>
        {
            var n = (int)Math.Ceiling(e.Length / Step);
            return Enumerable.Range(0, n + 1).Select(i => e.PointAt(i / (double)n));
        }).ToList();
        var byY = points.OrderBy(p => p.Y).ToList();
        var (min, max) = (points.Min(p => p.X) - 3, points.Max(p => p.X) + 3);
        var longest = 0.0;
        for (var x = min; x <= max; x += Step)
        {
            double start = double.NaN, last = double.NaN;
            foreach (var p in byY.Where(p => Math.Abs(p.X - x) <= calibration.BandHalfWidthMm))
            {
                start = p.Y - last <= calibration.MergeGapMm ? start : p.Y;
                last = p.Y;
                longest = Math.Max(longest, last - start);
            }
        }

        return longest;
    }
}
