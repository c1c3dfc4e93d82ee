using TopLayout.Geometry;

namespace TopLayout.Drawing.Letters;

/// <summary>
/// The white a letter needs beside it: a straight side the most, a round or slanting one less, because its own hollows are white
/// already. Measured as the mean depth of the side over bands of the letter's height.
/// </summary>
internal static class SideMargins
{
    private const double Straight = 15;
    private const double Least = 4;
    private const double ShareOfHollow = 0.5;
    private const double DeepestHollow = 30;
    private const double Band = 10;
    private const int SamplesPerSegment = 24;

    /// <summary>Left and right margin in hundredths of the capital height.</summary>
    public static (double Left, double Right) Of(IReadOnlyList<Contour> strokes)
    {
        var points = strokes.SelectMany(s => s.Segments).SelectMany(Samples).ToList();
        var (min, max) = (points.Min(p => p.X), points.Max(p => p.X));
        var bands = points.GroupBy(p => Math.Floor(p.Y / Band)).ToList();
        return (Margin(bands.Select(b => b.Min(p => p.X) - min)), Margin(bands.Select(b => max - b.Max(p => p.X))));
    }

    private static double Margin(IEnumerable<double> hollows) =>
        Math.Max(Least, Straight - (ShareOfHollow * hollows.Average(d => Math.Min(d, DeepestHollow))));

    private static IEnumerable<Point2> Samples(Segment segment) =>
        Enumerable.Range(0, SamplesPerSegment + 1).Select(i => segment.PointAt((double)i / SamplesPerSegment));
}
