using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Points, segments and contours at random, with the awkward ones on purpose: half turns, flat arcs, right angles, whole numbers.</summary>
internal static class RandomCurves
{
    public static Point2 Point(Random r, double reach = 100) => r.Next(4) == 0
        ? new Point2(r.Next((int)-reach, (int)reach), r.Next((int)-reach, (int)reach))
        : new Point2(r.Between(-reach, reach), r.Between(-reach, reach));

    public static double Bulge(Random r) => r.Next(8) switch
    {
        0 => 0,
        1 => r.Pick(1.0, -1.0),
        2 => r.Pick(1, -1) * Math.Pow(10, -r.Between(1, 6.5)),
        3 => r.Pick(1, -1) * Math.Tan(Math.PI / 8),
        _ => r.Between(-1, 1),
    };

    public static Segment Segment(Random r, double reach = 100)
    {
        var start = Point(r, reach);
        var end = r.Next(5) == 0 ? start + (r.Pick(Vec2.UnitX, Vec2.UnitY, -Vec2.UnitX, -Vec2.UnitY) * r.Between(1, reach)) : Point(r, reach);
        return start.IsNear(end, 0.5) ? Segment(r, reach) : new Contour([new Vertex(start, Bulge(r), "a"), new Vertex(end)], false).Segments[0];
    }

    public static Segment Arc(Random r, double reach = 100) => Segment(r, reach) is { IsArc: true } arc ? arc : Arc(r, reach);

    public static Placement Placement(Random r) => new(
        new Vec2(r.Between(-100, 100), r.Between(-100, 100)),
        Angle.FromDegrees(r.Next(3) == 0 ? 30 * r.Next(-12, 13) : r.Between(-400, 400)),
        r.Next(2) == 0);

    /// <summary>Any chain; it may cross itself.</summary>
    public static Contour Contour(Random r, bool isClosed)
    {
        var vertices = new List<Vertex>();
        var count = r.Next(2, 9);
        for (var i = 0; i < count; i++)
        {
            var p = Point(r);
            if (vertices.TrueForAll(v => !v.Position.IsNear(p, 0.5)))
            {
                vertices.Add(new Vertex(p, Bulge(r), $"e{i}"));
            }
        }

        return vertices.Count < 2 ? Contour(r, isClosed) : new Contour(vertices, isClosed);
    }

    /// <summary>A loop round a centre without crossings: vertices in order of their direction, arcs flat enough to stay in their sector.</summary>
    public static Contour Loop(Random r)
    {
        var center = Point(r);
        var count = r.Next(3, 9);
        var vertices = Enumerable.Range(0, count).Select(i =>
        {
            var direction = Trig.Direction(Angle.FromDegrees((i + r.Between(0.1, 0.6)) * 360 / count));
            return new Vertex(center + (direction * r.Between(40, 50)), r.Next(3) == 0 ? 0 : r.Between(-0.15, 0.3));
        }).ToList();
        return new Contour(vertices, isClosed: true);
    }

    /// <summary>A chain of arcs and lines without corners, and its first tangent.</summary>
    public static List<Segment> Smooth(Random r, int count, double shortest = 20, double longest = 60)
    {
        var segments = new List<Segment>();
        var (at, heading, last) = (Point(r), r.Between(-180, 180), 0.0);
        for (var i = 0; i < count; i++)
        {
            var length = r.Between(shortest, longest);
            double sweep;
            do
            {
                sweep = r.Next(5) == 0 ? 0 : r.Pick(1, -1) * r.Between(25, 150);
            }
            while (Math.Abs((sweep / length) - last) < 0.6);

            last = sweep / length;
            var radius = length / Math.Max(1e-12, Math.Abs(sweep) * Math.PI / 180);
            var chord = sweep == 0 ? length : 2 * radius * Math.Sin(Math.Abs(sweep) * Math.PI / 360);
            var end = at + (Trig.Direction(Angle.FromDegrees(heading + (sweep / 2))) * chord);
            segments.Add(new Segment(at, end, Math.Tan(sweep * Math.PI / 720)));
            (at, heading) = (end, heading + sweep);
        }

        return segments;
    }

    public static IEnumerable<Point2> Samples(Segment s, int count) => Enumerable.Range(0, count + 1).Select(i => s.PointAt((double)i / count));
}
