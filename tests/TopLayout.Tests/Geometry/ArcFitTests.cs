using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class ArcFitTests
{
    private static readonly Angle Corner = Angle.FromDegrees(35);

    private static List<Point2> Scattered(Random r, Contour c, int count, double noise) =>
    [
        .. Enumerable.Range(0, count).Select(i =>
        {
            var at = c.Length * i / (c.IsClosed ? count : count - 1);
            return c.PointAt(at) + (c.TangentAt(at).Left * r.Between(-noise, noise));
        }),
    ];

    private static double Residual(Contour fit, IEnumerable<Point2> points) => points.Max(fit.DistanceTo);

    private static double Curvature(Segment s) => s.IsArc ? Math.Sign(s.Bulge) / s.Radius : 0;

    private static void AssertSmooth(Contour fit, string what = "")
    {
        for (var i = fit.IsClosed ? 0 : 1; i < fit.Segments.Length; i++)
        {
            var (a, b) = (fit.Segments[(i + fit.Segments.Length - 1) % fit.Segments.Length], fit.Segments[i]);
            Check.Near(1, a.TangentAt(1).Dot(b.TangentAt(0)), 1e-9, $"{what} joint {i} of {fit.Segments.Length}");
        }
    }

    // The fit ends at scattered points: an arc's sagitta may be wrong by a few times the noise, its curvature by 8/chord² of that.
    [Fact]
    public void Through_ScatteredArcChain_ComesBackArcForArc()
    {
        var right = 0;
        Trials.Run(60, r =>
        {
            const double Noise = 0.02;
            var known = Contour.Chain(RandomCurves.Smooth(r, r.Next(1, 6)), isClosed: false);
            var points = Scattered(r, known, 60 * known.Segments.Length, Noise);
            var fit = ArcFit.Through(points, false, 2 * Noise, Corner);

            Assert.True(Residual(fit, points) <= 2 * Noise);
            AssertSmooth(fit);
            Assert.Equal((points[0], points[^1]), (fit.Vertices[0].Position, fit.Vertices[^1].Position));
            Assert.True(fit.Segments.Length <= known.Segments.Length, $"{fit.Segments.Length} for {known.Segments.Length}");
            if (fit.Segments.Length == known.Segments.Length)
            {
                right++;
                Assert.All(known.Segments.Zip(fit.Segments), p => Check.Near(
                    Curvature(p.First), Curvature(p.Second), 8 * 5 * Noise / (p.First.ChordLength * p.First.ChordLength), "curvature"));
            }
        });
        Assert.True(right >= 55, $"{right} of 60");
    }

    [Fact]
    public void Through_ExactSamples_AreExact() => Trials.Run(40, r =>
    {
        var known = Contour.Chain(RandomCurves.Smooth(r, 3), isClosed: false);
        var fit = ArcFit.Through(Scattered(r, known, 150, 0), false, 1e-3, Corner);

        Assert.Equal(3, fit.Segments.Length);
        Assert.All(known.Segments.Zip(fit.Segments), p => Check.Near(0, p.First.PointAt(0.5).DistanceTo(p.Second.PointAt(0.5)), 1e-6, "middle"));
    });

    [Fact]
    public void Through_PointsOfACircle_IsTheCircle() => Trials.Run(50, r =>
    {
        var circle = new Circle(RandomCurves.Point(r), r.Between(5, 80));
        var points = Scattered(r, r.Next(2) == 0 ? circle.ToContour() : circle.ToContour().Reversed(), 90, 0.01);
        var fit = ArcFit.Through(points, true, 0.02, Corner);

        Assert.Equal(2, fit.Segments.Length);
        Check.Near(circle.Radius, fit.Segments[0].Radius, 0.01);
        Check.Near(0, fit.Segments[0].Center.DistanceTo(circle.Center), 0.01);
        Assert.Equal(Math.Sign(Contour.Polygon(points).SignedArea), Math.Sign(fit.SignedArea));
    });

    [Fact]
    public void Through_Stadium_HasItsFourPieces()
    {
        var stadium = new Contour([new Vertex(new(-30, -20)), new Vertex(new(30, -20), 1), new Vertex(new(30, 20)), new Vertex(new(-30, 20), 1)], true);
        var points = Scattered(new Random(1), stadium, 200, 0.02);
        var fit = ArcFit.Through(points, true, 0.05, Corner);

        // Its half turns may come a hair over half, and then in two halves.
        Assert.InRange(fit.Segments.Length, 4, 6);
        Assert.True(Residual(fit, points) <= 0.05);
        AssertSmooth(fit);
    }

    [Fact]
    public void Through_SmoothCurves_KeepTheirResidualBound()
    {
        var arcs = 0;
        Trials.Run(1000, r =>
        {
            var isClosed = r.Next(2) == 0;
            var points = Waves(r, isClosed, r.Next(40, 80));
            var tolerance = Math.Pow(10, -r.Between(0.3, 1.3));
            var fit = ArcFit.Through(points, isClosed, tolerance, Angle.FromDegrees(100));

            Assert.True(Residual(fit, points) <= tolerance, $"{Residual(fit, points)} > {tolerance}");
            AssertSmooth(fit, $"closed {isClosed}");
            Assert.Equal(isClosed, fit.IsClosed);
            arcs += fit.Segments.Length;
        });
        Assert.True(arcs < 11000, $"{arcs} arcs for 1000 curves");
    }

    // So tight a tolerance on so few points that biarcs through the points are all that is left.
    [Fact]
    public void Through_SparsePoints_KeepTheirResidualBound() => Trials.Run(40, r =>
    {
        var isClosed = r.Next(2) == 0;
        var points = Waves(r, isClosed, r.Next(12, 30));
        var fit = ArcFit.Through(points, isClosed, 1e-3, Angle.FromDegrees(120));

        Assert.True(Residual(fit, points) <= 1e-3);
        AssertSmooth(fit, $"closed {isClosed}");
    });

    private static List<Point2> Waves(Random r, bool isClosed, int count)
    {
        var waves = Enumerable.Range(1, 4).Select(k => (K: k, A: r.Between(-4, 4) / k, P: r.Between(0, 7))).ToList();
        return
        [
            .. Enumerable.Range(0, count).Select(i =>
            {
                var t = (double)i / (isClosed ? count : count - 1);
                var wave = waves.Sum(w => w.A * Math.Sin((2 * Math.PI * w.K * t) + w.P));
                return isClosed ? default(Point2) + (Trig.Direction(Angle.FromDegrees(360 * t)) * (40 + wave)) : new Point2(150 * t, 2 * wave);
            }),
        ];
    }

    [Fact]
    public void Through_SquareWithRoundedCorner_KeepsTheThreeCorners()
    {
        var square = Contour.Polygon(new(0, 0), new(100, 0), new(100, 60), new(0, 60)).TryFillet(2, 15)!;
        var points = Scattered(new Random(5), square, 320, 0);
        var fit = ArcFit.Through(points, true, 0.02, Corner);

        Assert.All([new Point2(0, 0), new(100, 0), new(0, 60)], p => Assert.Contains(fit.Vertices, v => v.Position.IsNear(p, 1.1)));
        Assert.True(Residual(fit, points) <= 0.02);
        Assert.InRange(fit.Segments.Length, 5, 9);
    }

    [Fact]
    public void Through_NoiseWithoutAForm_StaysWithinTheTolerance() => Trials.Run(20, r =>
    {
        var points = Enumerable.Range(0, 40).Select(_ => RandomCurves.Point(r)).ToList();

        Assert.True(Residual(ArcFit.Through(points, r.Next(2) == 0, 0.05, Angle.FromDegrees(180)), points) <= 0.05);
    });

    [Fact]
    public void Through_PointsNearerThanTheShortestSegment_StayWithinTheTolerance() => Trials.Run(20, r =>
    {
        var arc = Contour.Chain(RandomCurves.Smooth(r, 2, 1, 2), isClosed: false);
        var points = Scattered(r, arc, 400, 0.001);
        var fit = ArcFit.Through(points, false, 0.005, Corner);

        Assert.True(Residual(fit, points) <= 0.005);
        Assert.Equal(points[^1], fit.Vertices[^1].Position);
    });

    [Fact]
    public void Through_FewOrEqualPoints_AreALineAnArcOrRefused()
    {
        Assert.Single(ArcFit.Through([default, new(5, 0)], false, 0.1, Corner).Segments);
        Assert.Single(ArcFit.Through([default, default, new(5, 0), new(5, 0)], false, 0.1, Corner).Segments);
        Assert.False(ArcFit.Through([.. Enumerable.Range(0, 30).Select(i => new Point2(i, 2 * i))], false, 0.01, Corner).Segments.Single().IsArc);
        Assert.Throws<ArgumentException>(() => ArcFit.Through([default, default], false, 0.1, Corner));
        Assert.Throws<ArgumentException>(() => ArcFit.Through([default, new(double.NaN, 0)], false, 0.1, Corner));
        Assert.Throws<ArgumentException>(() => ArcFit.Through([default, new(5, 0)], false, 0, Corner));
    }

    // The customary four cubics of a circle, handles 0.5523 r: radius wrong by up to 2.7e-4 of itself.
    [Fact]
    public void Along_FourBeziersOfACircle_IsACircle()
    {
        const double H = 0.5522847498 * 50;
        CubicBezier[] quarters =
        [
            new(new(50, 0), new(50, H), new(H, 50), new(0, 50)), new(new(0, 50), new(-H, 50), new(-50, H), new(-50, 0)),
            new(new(-50, 0), new(-50, -H), new(-H, -50), new(0, -50)), new(new(0, -50), new(H, -50), new(50, -H), new(50, 0)),
        ];
        var fit = ArcFit.Along(quarters, 0.03, Corner);
        Assert.NotNull(fit);

        Assert.Equal(2, fit.Segments.Length);
        Check.Near(50, fit.Segments[0].Radius, 0.02);
        Assert.True(fit.IsClosed && fit.SignedArea > 0);
    }

    [Fact]
    public void Along_RandomBeziers_StayWithinTheTolerance() => Trials.Run(60, r =>
    {
        var (at, heading) = (RandomCurves.Point(r), r.Between(0, 360));
        var curves = new List<CubicBezier>();
        for (var i = r.Next(1, 4); i > 0; i--)
        {
            var (from, turn, length) = (at, r.Between(-70, 70), r.Between(30, 80));
            at += Trig.Direction(Angle.FromDegrees(heading + (turn / 2))) * length;
            curves.Add(new CubicBezier(
                from,
                from + (Trig.Direction(Angle.FromDegrees(heading)) * (length * r.Between(0.2, 0.5))),
                at - (Trig.Direction(Angle.FromDegrees(heading + turn)) * (length * r.Between(0.2, 0.5))),
                at));
            heading += turn + (r.Next(4) == 0 ? 80 : 0);
        }

        var tolerance = Math.Pow(10, -r.Between(0.5, 2.5));
        var fit = ArcFit.Along(curves, tolerance, Corner);
        Assert.NotNull(fit);

        Assert.All(curves, c => Assert.True(Enumerable.Range(0, 1001).Max(i => fit.DistanceTo(c.PointAt(i / 1000.0))) <= tolerance));
        Assert.Equal((curves[0].Start, curves[^1].End), (fit.Vertices[0].Position, fit.Vertices[^1].Position));
    });

    [Fact]
    public void Along_GapOrNoCurve_IsRefused()
    {
        var curve = new CubicBezier(default, new(1, 1), new(2, 1), new(3, 0));

        Assert.Throws<ArgumentException>(() => ArcFit.Along([], 0.1, Corner));
        Assert.Throws<ArgumentException>(() => ArcFit.Along([curve, curve], 0.1, Corner));
        Assert.Throws<ArgumentException>(() => ArcFit.Along([curve with { End = new(double.NaN, 0) }], 0.1, Corner));
    }
}
