using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Pairs of small regions that meet in an awkward way, made on purpose from a seed.</summary>
internal static class HardPairs
{
    public static readonly string[] Kinds =
    [
        "general", "shared edge", "coincident arcs", "tangent circles", "tangent line", "touching vertex", "near tangent", "full circles",
        "tiny segments", "hole touches outline", "turned copy", "moved copy",
    ];

    public static (Region A, Region B) Make(string kind, Random random)
    {
        var frame = Frame(random);
        var (a, b) = kind switch
        {
            "general" => (Blob(random), Blob(random)),
            "shared edge" => SharedEdge(random),
            "coincident arcs" => (Sector(random, 7, "a"), Sector(random, 7, "b")),
            "tangent circles" => TangentCircles(random, 0),
            "tangent line" => TangentLine(random, 0),
            "touching vertex" => TouchingVertex(random),
            "near tangent" => NearTangent(random),
            "full circles" => FullCircles(random),
            "tiny segments" => (Tiny(random), Tiny(random)),
            "hole touches outline" => HoleTouches(random),
            "turned copy" => TurnedCopy(random),
            "moved copy" => MovedCopy(random),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
        return (a.Placed(frame), b.Placed(frame));
    }

    public static Placement Frame(Random random) => new(
        new Vec2(Range(random, -50, 50), Range(random, -50, 50)),
        random.Next(3) == 0 ? Angle.Zero : Angle.FromDegrees(random.Next(2) == 0 ? random.Next(24) * 15 : Range(random, 0, 360)),
        random.Next(2) == 0);

    /// <summary>A round-about outline of lines and arcs, about 10 mm across; it may cross itself and is resolved.</summary>
    public static Region Blob(Random random)
    {
        var count = random.Next(3, 8);
        var center = new Point2(Range(random, -4, 4), Range(random, -4, 4));
        var vertices = Enumerable.Range(0, count).Select(i => new Vertex(
            center + (Trig.Direction(Angle.FromDegrees((i + Range(random, 0, 0.9)) * 360 / count)) * Range(random, 2, 9)),
            random.Next(2) == 0 ? 0 : Range(random, -0.7, 0.9),
            $"e{i}"));
        return Region.Covered(new Contour([.. vertices], isClosed: true));
    }

    public static double Range(Random random, double low, double high) => low + (random.NextDouble() * (high - low));

    public static Region Rectangle(double x0, double y0, double x1, double y1, string label = "") => Region.Inside(
        Contour.Polygon(new Point2(x0, y0), new Point2(x1, y0), new Point2(x1, y1), new Point2(x0, y1)).Labelled(label));

    public static Region Disc(double x, double y, double radius, string label = "") =>
        Region.Inside(Contour.Circle(new Point2(x, y), radius, label));

    private static (Region A, Region B) SharedEdge(Random random)
    {
        var a = Rectangle(-5, -4, 3, 4, "a");
        var (y0, y1) = (Math.Round(Range(random, -7, 0)), Math.Round(Range(random, 1, 7)));
        return random.Next(2) == 0
            ? (a, Rectangle(3, y0, 8, y1, "b"))
            : (a, Rectangle(Range(random, -2, 2), y0, 3, y1, "b"));
    }

    // A piece of pie, or a piece of ring, on one circle about the origin; ends at multiples of 15° so that some coincide.
    private static Region Sector(Random random, double radius, string label)
    {
        var from = Angle.FromDegrees(random.Next(24) * 15);
        var sweep = Angle.FromDegrees(random.Next(2, 23) * 15);
        Point2 At(double r, Angle a) => default(Point2) + (Trig.Direction(a) * r);
        var other = random.Next(4) switch { 0 => 3.0, 1 => 10, 2 => 0, _ => 5 };
        var bulge = Trig.Tan(sweep / 8);
        var (middle, to) = (from + (sweep / 2), from + sweep);
        var contour = other == 0
            ? new Contour([new Vertex(At(radius, from), bulge, label), new Vertex(At(radius, middle), bulge, label), new Vertex(At(radius, to), 0, label), new Vertex(default, 0, label)], true)
            : new Contour(
                [
                    new Vertex(At(radius, from), bulge, label), new Vertex(At(radius, middle), bulge, label), new Vertex(At(radius, to), 0, label),
                    new Vertex(At(other, to), -bulge, label), new Vertex(At(other, middle), -bulge, label), new Vertex(At(other, from), 0, label),
                ],
                true);
        return Region.Inside(contour);
    }

    private static (Region A, Region B) TangentCircles(Random random, double overlap)
    {
        var (ra, rb) = (Range(random, 1, 9), Range(random, 1, 9));
        var away = Trig.Direction(Angle.FromDegrees(random.Next(2) == 0 ? random.Next(12) * 30 : Range(random, 0, 360)));
        var d = random.Next(2) == 0 ? ra + rb - overlap : Math.Abs(ra - rb) + overlap;
        return (Disc(0, 0, ra, "a"), Disc(away.X * d, away.Y * d, rb, "b"));
    }

    private static (Region A, Region B) TangentLine(Random random, double overlap)
    {
        var r = Range(random, 1, 6);
        var disc = Disc(Range(random, -6, 6), random.Next(2) == 0 ? -r + overlap : r - overlap, r, "a");
        return (disc, Rectangle(-5, 0, 5, Range(random, 1, 15), "b"));
    }

    private static (Region A, Region B) NearTangent(Random random)
    {
        var overlap = (random.Next(2) == 0 ? 1 : -1) * Math.Pow(10, -Range(random, 3, 9));
        return random.Next(2) == 0 ? TangentCircles(random, overlap) : TangentLine(random, overlap);
    }

    private static (Region A, Region B) TouchingVertex(Random random)
    {
        var (a, b) = (Blob(random), Blob(random));
        if (a.IsEmpty || b.IsEmpty)
        {
            return (a, b);
        }

        var from = b.Edges.ElementAt(random.Next(b.Edges.Count())).Start;
        var edge = a.Edges.ElementAt(random.Next(a.Edges.Count()));
        var to = random.Next(2) == 0 ? edge.Start : edge.PointAt(0.5);
        return (a, b.Placed(Placement.Moved(to.X - from.X, to.Y - from.Y)));
    }

    private static (Region A, Region B) FullCircles(Random random)
    {
        var (r, s) = (random.Next(1, 8), random.Next(1, 8));
        var turned = new Placement(default, Angle.FromDegrees(random.Next(36) * 10), false);
        var ring = random.Next(2) == 0 && s > 1
            ? Region.Between(Contour.Circle(default, s, "b"), Contour.Circle(default, s / 2.0, "b"))
            : Disc(random.Next(-3, 4), random.Next(-3, 4), s, "b");
        return (Disc(0, 0, r, "a"), ring.Placed(turned));
    }

    private static Region Tiny(Random random)
    {
        var size = Math.Pow(10, -Range(random, 1, 7));
        var points = new List<Vertex>();
        foreach (var corner in (ReadOnlySpan<Point2>)[new(-5, -5), new(5, -5), new(5, 5), new(-5, 5)])
        {
            var p = corner + new Vec2(Range(random, -1, 1), Range(random, -1, 1));
            for (var k = random.Next(1, 4); k > 0; k--)
            {
                points.Add(new Vertex(p, random.Next(3) == 0 ? Range(random, -0.6, 0.6) : 0, $"t{points.Count}"));
                p += new Vec2(Range(random, -size, size), Range(random, -size, size));
            }
        }

        return Region.Covered(new Contour(points, isClosed: true));
    }

    private static (Region A, Region B) HoleTouches(Random random)
    {
        var (r, s) = (Range(random, 3, 8), Range(random, 0.5, 2.5));
        var away = Trig.Direction(Angle.FromDegrees(random.Next(24) * 15)) * (r - s);
        var holed = Region.Between(Contour.Circle(default, r, "a"), Contour.Circle(new Point2(away.X, away.Y), s, "hole"));
        var other = random.Next(3) switch
        {
            0 => Disc(away.X, away.Y, s, "b"),
            1 => Rectangle(-r, -r, Range(random, -2, 2), r, "b"),
            _ => Blob(random),
        };
        return (holed, other);
    }

    private static (Region A, Region B) TurnedCopy(Random random)
    {
        var a = Blob(random);
        var degrees = random.Next(4) switch { 0 => 180, 1 => 1e-3, 2 => 1e-5, _ => Math.Pow(10, -Range(random, 3, 12)) };
        return (a, a.Placed(new Placement(default, Angle.FromDegrees(degrees), random.Next(3) == 0)));
    }

    private static (Region A, Region B) MovedCopy(Random random)
    {
        var a = Blob(random);
        var size = Math.Pow(10, -Range(random, 0, 12));
        return (a, a.Placed(Placement.Moved(Range(random, -size, size), random.Next(2) == 0 ? 0 : size)));
    }
}
