namespace TopLayout.Geometry;

/// <summary>Straight copies of a contour.</summary>
public sealed partial class Contour
{
    /// <summary>
    /// Points on the contour whose joining lines stay within <paramref name="toleranceMm"/> of it: every vertex exactly, every arc
    /// cut into the fewest equal parts whose sagitta R(1 − cos(θ/2)) is no greater. A closed contour does not repeat its first point.
    /// A cap of sweep θ is (θ − sin θ)/(2θ(1 − cos(θ/2))) times its arc's length times its sagitta, a factor that falls from ⅔ (flat) to
    /// ½ (half turn): so the areas differ by less than ⅔ · length · tolerance.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not above zero.</exception>
    public IReadOnlyList<Point2> Flattened(double toleranceMm)
    {
        if (!(toleranceMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(toleranceMm), "a tolerance is above zero");
        }

        var points = new List<Point2>();
        foreach (var s in _segments)
        {
            var parts = Parts(s, toleranceMm);
            points.AddRange(Enumerable.Range(0, parts).Select(i => s.PointAt((double)i / parts)));
        }

        if (!IsClosed)
        {
            points.Add(_segments[^1].End);
        }

        return points;
    }

    // A part of sweep θ has sagitta R(1 − cos(θ/2)) = 2R sin²(θ/4); solved for θ with the sine, for 1 − cos loses digits.
    private static int Parts(Segment s, double toleranceMm)
    {
        if (!s.IsArc)
        {
            return 1;
        }

        var widest = Trig.Asin(Math.Sqrt(Math.Min(1, toleranceMm / (2 * s.Radius)))) * 4;
        return Math.Max(1, (int)Math.Ceiling(Math.Abs(s.Sweep.Degrees) / widest.Degrees));
    }
}
