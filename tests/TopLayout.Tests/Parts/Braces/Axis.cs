using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts.Braces;

/// <summary>The axis of a bar as its footprint alone tells it, and what a straight line through two points gives.</summary>
internal static class Axis
{
    /// <summary>The middles of the two end edges, the start first.</summary>
    public static (Point2 Start, Point2 End) Of(Member bar, string start, string end) => (Middle(bar, start), Middle(bar, end));

    /// <summary>The middle of an edge.</summary>
    public static Point2 Middle(Member member, string label)
    {
        var edge = member.Footprint.Edges.Single(e => e.Label == label);
        return edge.Start.MidpointTo(edge.End);
    }

    /// <summary>Sine of an angle in degrees, from the runtime and not from the kernel.</summary>
    public static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    /// <summary>Cosine of an angle in degrees.</summary>
    public static double Cos(double degrees) => Math.Cos(degrees * Math.PI / 180);

    /// <summary>Tangent of an angle in degrees.</summary>
    public static double Tan(double degrees) => Math.Tan(degrees * Math.PI / 180);

    /// <summary>Neck edge to a fret, mm: S(2^(−n/12) − 2^(−k/12)).</summary>
    public static double Fret(double scale, int join, int fret) => scale * (Math.Pow(2, -join / 12.0) - Math.Pow(2, -fret / 12.0));

    /// <summary>Two points agree.</summary>
    public static void Near(double x, double y, Point2 found, string what)
    {
        Check.Near(x, found.X, 1e-7, what + ", across");
        Check.Near(y, found.Y, 1e-7, what + ", along");
    }
}
