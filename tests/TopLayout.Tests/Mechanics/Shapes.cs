using CsCheck;
using TopLayout.Geometry;

namespace TopLayout.Tests.Mechanics;

/// <summary>Footprints built by hand for tests of the grain. The neck edge is y = 0; parts hang down from it, about x = 0. Mm.</summary>
internal static class Shapes
{
    /// <summary>Smooth and cornered closed outlines of two to eight arcs and lines, up to about 200 mm.</summary>
    public static Gen<Region> Blobs => Gen.Select(Gen.Double[20, 100], Gen.Double[-0.6, 0.6], Gen.Int[0, 3])
        .Array[3, 8]
        .Select(spokes => Region.Inside(new Contour(
            spokes.Select((s, i) => new Vertex(
                new Point2(0, 0) + (Trig.Direction(Angle.FromDegrees((360.0 * i / spokes.Length) + 3)) * s.Item1),
                s.Item3 == 0 ? 0 : s.Item2)),
            isClosed: true)));

    /// <summary>So many values of a generator, the same on every run.</summary>
    public static IEnumerable<T> Samples<T>(Gen<T> gen, int count, uint stream = 1)
    {
        var random = new PCG(stream, 20250611);
        return Enumerable.Range(0, count).Select(_ => gen.Generate(random, null, out var _));
    }

    public static Region Rectangle(double width, double height, double left = double.NaN, double bottom = double.NaN)
    {
        var (x, y) = (double.IsNaN(left) ? -width / 2 : left, double.IsNaN(bottom) ? -height : bottom);
        return Labelled(
            [new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)], [0, 0, 0, 0], ["tip", "right", "root", "left"]);
    }

    /// <summary>A bar of a width about a centre line from one point to another, square ends.</summary>
    public static Region Bar(Point2 from, Point2 to, double width)
    {
        var aside = (to - from).Unit.Left * (width / 2);
        return Labelled([from - aside, to - aside, to + aside, from + aside], [0, 0, 0, 0], ["side", "end", "side", "end"]);
    }

    /// <summary>A tongue whose tip is a half circle of a radius: flanks at an angle to the grain, so many mm long along it.</summary>
    public static Region HalfRoundTongue(double radius, Angle theta, double flank) =>
        Tongue(radius, flank * Trig.Tan(theta), flank, bulge: 1);

    /// <summary>A tongue whose round tip runs on from its flanks without a corner.</summary>
    public static Region TangentTongue(double radius, Angle theta, double flank) => Tongue(
        radius * Trig.Cos(theta), flank * Trig.Tan(theta), flank, Trig.Tan(Angle.FromDegrees(180) / 4 - (theta / 2)));

    /// <summary>Half an ellipse, in arcs that follow it closely; its sides start along the grain at the neck edge.</summary>
    public static Region HalfEllipse(double width, double length)
    {
        const int Steps = 64;
        Point2 At(double t) => new(
            width / 2 * Trig.Cos(Angle.FromDegrees(180 * t / Steps)), -length * Trig.Sin(Angle.FromDegrees(180 * t / Steps)));
        var vertices = new List<Vertex> { new(At(0), 0, "root") };
        for (var i = Steps; i > 0; i--)
        {
            var (a, m, b) = (At(i), At(i - 0.5), At(i - 1));
            var chord = b - a;
            var sagitta = chord.Unit.Cross(m - a);
            vertices.Add(new Vertex(a, -2 * sagitta / chord.Length, "side"));
        }

        return Region.Inside(new Contour(vertices, isClosed: true));
    }

    public static Region Labelled(Point2[] points, double[] bulges, string[] labels) =>
        Region.Inside(new Contour(points.Select((p, i) => new Vertex(p, bulges[i], labels[i])), isClosed: true));

    private static Region Tongue(double half, double spread, double flank, double bulge) => Labelled(
        [new(half + spread, 0), new(-half - spread, 0), new(-half, -flank), new(half, -flank)],
        [0, 0, bulge, 0],
        ["root", "flank left", "tip", "flank right"]);
}
