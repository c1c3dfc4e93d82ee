using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class IntersectionTests
{
    [Fact]
    public void Of_Meetings_LieOnBothAndAreTheSameEitherWay() => Trials.Run(1000, r =>
    {
        var (a, b) = (RandomCurves.Segment(r, 30), RandomCurves.Segment(r, 30));
        var found = Intersections.Of(a, b);

        foreach (var m in found)
        {
            Assert.True(a.DistanceTo(m.Point) <= 1e-6 && b.DistanceTo(m.Point) <= 1e-6, $"{a} {b}");
            Check.Near(0, a.PointAt(m.First).DistanceTo(m.Point), 1e-6, "first");
            Check.Near(0, b.PointAt(m.Second).DistanceTo(m.Point), 1e-6, "second");
        }

        Assert.Equal(found.Count, Intersections.Of(b, a).Count);
        Assert.Equal(found.Count, Intersections.Of(a.Reversed(), b).Count);
    });

    // Between two samples the side of the other segment's line or circle changes only at a meeting or past its ends.
    [Fact]
    public void Of_AgainstDenseSampling_MissesNone() => Trials.Run(600, r =>
    {
        var (a, b) = (RandomCurves.Segment(r, 30), RandomCurves.Segment(r, 30));
        var found = Intersections.Of(a, b);
        var samples = RandomCurves.Samples(a, 1500).ToList();
        for (var i = 1; i < samples.Count; i++)
        {
            var (f, g) = (b.NearestFraction(samples[i - 1]), b.NearestFraction(samples[i]));
            var isBeside = f is > 0 and < 1 && g is > 0 and < 1;
            if (isBeside && Side(b, f, samples[i - 1]) * Side(b, g, samples[i]) < 0 && b.DistanceTo(samples[i]) < 1)
            {
                Assert.True(found.Any(m => m.Point.DistanceTo(samples[i]) < 1.1 * a.Length / 1500), $"{a} {b} near {samples[i]}");
            }
        }
    });

    private static double Side(Segment s, double fraction, Point2 p) => s.TangentAt(fraction).Cross(p - s.PointAt(fraction));

    [Theory]
    [InlineData(0)]
    [InlineData(5e-7)]
    [InlineData(-5e-7)]
    public void Of_CirclesNearerThanTouch_GiveOnePointOnTheNormal(double gap)
    {
        var a = Segment.Around(default, new Point2(0, -10), new Point2(0, 10), true);
        var b = Segment.Around(new Point2(15 + gap, 0), new Point2(15 + gap, 5), new Point2(15 + gap, -5), true);

        var meeting = Assert.Single(Intersections.Of(a, b));

        Check.Near(10, meeting.Point.X, 1e-6);
        Check.Near(0, meeting.Point.Y, 1e-6);
    }

    // Radius 0.01 on a circle of radius 1000: the radical line lies 5e-8 off the tangent, and both crossings were taken for one touch.
    [Fact]
    public void Of_TinyArcAcrossALargeOne_FindsBothCrossings()
    {
        var large = Segment.Around(default, new Point2(0, -1000), new Point2(0, 1000), true);
        var tiny = Segment.Around(new Point2(1000.001, 0), new Point2(1000.001, -0.01), new Point2(1000.001, 0.01), false);

        Assert.Equal(2, Intersections.Of(large, tiny).Count);
    }

    // 1000 mm long, 5e-7 radians apart: the ends stand 200 and 300 times the touch apart, yet they were taken for parallel.
    [Fact]
    public void Of_NearlyParallelLines_Cross()
    {
        var a = new Segment(default, new Point2(1000, 0));
        var b = new Segment(new Point2(0, -2e-4), new Point2(1000, 3e-4));

        Check.Near(400, Assert.Single(Intersections.Of(a, b)).Point.X, 1e-6);
    }

    // The gap of 1e-9 between the circles puts the touching point of the normal 1 µm and more past the ends of both arcs.
    [Fact]
    public void Of_ArcsThatRunOnSmoothly_MeetAtTheirSharedEnd() => Trials.Run(300, r =>
    {
        var a = RandomCurves.Arc(r);
        var noisy = a.TangentAt(1) + (a.TangentAt(1).Left * r.Between(-1e-9, 1e-9));
        var b = Segment.Leaving(a.End, noisy, a.End + (noisy * r.Between(5, 50)) + (noisy.Left * r.Between(-20, 20)));

        Assert.Contains(Intersections.Of(a, b), m => m.Point.IsNear(a.End, 0.5) && a.DistanceTo(m.Point) <= 1e-6);
    });

    [Fact]
    public void Of_SegmentsOnOneCarrier_MeetOnlyWhereOneGoesOn()
    {
        var line = new Segment(default, new Point2(10, 0));
        var circle = Contour.Circle(default, 5).Segments;

        Assert.Equal(new Point2(10, 0), Assert.Single(Intersections.Of(line, new Segment(new Point2(30, 0), new Point2(10, 0)))).Point);
        Assert.Empty(Intersections.Of(line, new Segment(new Point2(5, 0), new Point2(20, 0))));
        Assert.Equal(2, Intersections.Of(circle[0], circle[1]).Count);
        Assert.Empty(Intersections.Of(circle[0], circle[0].Part(0.2, 0.7)));
    }

    [Fact]
    public void Of_FlatArcWithAFarCentre_IsCrossedWhereItLies()
    {
        var flat = new Segment(new Point2(0, 0), new Point2(1000, 0), -4e-9);
        var cut = new Segment(new Point2(500, -3), new Point2(504, 3));

        var meeting = Assert.Single(Intersections.Of(flat, cut));

        Check.Near(2e-6, meeting.Point.Y, 1e-9);
    }
}
