using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class SegmentTests
{
    [Fact]
    public void Bounds_ArcOverTop_IncludesQuadrantPoint()
    {
        var bounds = new Segment(new Point2(10, 0), new Point2(-10, 0), 1).Bounds();

        Check.Near(10, bounds.Max.Y, 1e-12, "top of a half circle of radius 10");
    }

    [Fact]
    public void ReversedAndMirrored_Twice_AreTheIdentity() => Trials.Run(500, r =>
    {
        var s = RandomCurves.Segment(r);

        Assert.Equal(s, s.Reversed().Reversed());
        Assert.Equal(s, s.Placed(Placement.MirroredAcrossY).Placed(Placement.MirroredAcrossY));
        Assert.False(double.IsNegative(new Segment(s.Start, s.End).Reversed().Bulge));
    });

    [Fact]
    public void Bounds_HoldEverySampleAndTouchThem() => Trials.Run(500, r =>
    {
        var s = RandomCurves.Segment(r);
        var bounds = s.Bounds();
        var samples = Box2.Around(RandomCurves.Samples(s, 2000).Select(p => new Box2(p, p)));

        Assert.True(bounds.Grown(1e-9).Contains(samples.Min) && bounds.Grown(1e-9).Contains(samples.Max), $"{s}");
        Check.Near(bounds.Width, samples.Width, 2e-4, $"{s}");
        Check.Near(bounds.Height, samples.Height, 2e-4, $"{s}");
    });

    // A flat arc of chord 1000 and sagitta 2e-6 has its centre 6e10 mm away.
    [Fact]
    public void Measures_FlatArcWithAFarCentre_LoseNoDigits()
    {
        var s = new Segment(new Point2(3, 7), new Point2(1003, 7), -4e-9);

        Check.Near(7 + 2e-6, s.PointAt(0.5).Y, 1e-12, "crown");
        Check.Near(7 + 2e-6, s.Bounds().Max.Y, 1e-12, "top");
        Check.Near(0.3, s.NearestFraction(s.PointAt(0.3) + new Vec2(0, 5)), 1e-9, "nearest");
        Check.Near(-2.0 / 3 * 1000 * 2e-6, s.CapArea(), 1e-12, "cap of a flat arc: 2/3 chord · sagitta");
    }

    [Fact]
    public void CapArea_SeriesAndClosedForm_AgreeWhereTheyMeet()
    {
        double At(double bulge) => new Segment(default, new Point2(100, 0), bulge).CapArea();

        Check.Near((At(0.1 - 1e-9) + At(0.1 + 1e-9)) / 2, At(0.1), 1e-9, "either side of 0.1");
        Check.Near(Math.PI * 50 * 50 / 2, At(1), 1e-11, "half circle");
        Check.Near(-At(0.05), At(-0.05), 0, "odd");
    }

    [Fact]
    public void PointTangentAndPart_Agree() => Trials.Run(500, r =>
    {
        var s = RandomCurves.Segment(r);
        var (from, to) = (r.Between(0, 0.45), r.Between(0.55, 1));
        var part = s.Part(from, to);
        var f = r.NextDouble();
        var h = 1e-5;

        Check.Near(0, part.PointAt(f).DistanceTo(s.PointAt(from + (f * (to - from)))), 1e-9, $"{s}");
        Check.Near(s.Length * (to - from), part.Length, 1e-9, "length");
        Check.Near(0, (part.TangentAt(f) - s.TangentAt(from + (f * (to - from)))).Length, 1e-9, "tangent");
        var difference = (s.PointAt(from + h) - s.PointAt(from - h)) / (2 * h * s.Length);
        Check.Near(0, (difference - s.TangentAt(from)).Length, 1e-6, "tangent against difference");
        Assert.Equal((s.Start, s.End), (s.PointAt(0), s.PointAt(1)));
    });

    [Fact]
    public void PointAt_Arc_LiesAtTheRadius() => Trials.Run(500, r =>
    {
        var s = RandomCurves.Arc(r);

        Check.Near(s.Radius, s.Center.DistanceTo(s.PointAt(r.NextDouble())), 1e-12 * Math.Max(100, s.Radius), $"{s}");
    });

    [Fact]
    public void NearestFraction_IsNearestAgainstDenseSampling() => Trials.Run(500, r =>
    {
        var s = RandomCurves.Segment(r);
        var p = r.Next(6) switch { 0 => s.IsArc ? s.Center : s.Start, 1 => s.Start.MidpointTo(s.End), _ => RandomCurves.Point(r) };

        var sampled = RandomCurves.Samples(s, 2000).Min(q => q.DistanceTo(p));
        Assert.InRange(s.NearestFraction(p), 0, 1);
        Assert.True(s.DistanceTo(p) <= sampled + 1e-9, $"{s} {p}");
        Assert.True(s.DistanceTo(p) >= sampled - (s.Length / 2000), $"{s} {p}");
    });

    // By definition; the nearest fraction of a very flat arc is known to some 1e-11 of it, its distance better.
    [Fact]
    public void DistanceTo_IsTheDistanceToTheNearestPoint() => Trials.Run(2000, r =>
    {
        var s = RandomCurves.Segment(r);
        var arc = s with { Bulge = r.Next(4) switch { 0 => 1, 1 => -1, 2 => Math.CopySign(1e-6 * (1 + r.NextDouble()), s.Bulge), _ => s.Bulge } };
        var p = r.Next(3) == 0 ? arc.Start.MidpointTo(arc.End) : RandomCurves.Point(r);

        Check.Near(p.DistanceTo(arc.PointAt(arc.NearestFraction(p))), arc.DistanceTo(p), 1e-8, $"{arc} {p}");
        Check.Near(0, arc.DistanceTo(arc.PointAt(r.NextDouble())), 1e-12 * Math.Max(100, arc.ChordLength), $"{arc}");
    });

    [Fact]
    public void Holds_IsTheDirectionsOnTheArc() => Trials.Run(2000, r =>
    {
        var arc = RandomCurves.Arc(r);
        var direction = Trig.Direction(Angle.FromDegrees(360 * r.NextDouble()));
        var fraction = arc.FractionOfDirection(direction);

        Assert.True(arc.Holds(direction) == fraction is >= 0 and <= 1 || Math.Min(Math.Abs(fraction), Math.Abs(fraction - 1)) < 1e-9, $"{arc} {direction}");
        Assert.True(arc.Holds(arc.PointAt(0.5) - arc.Center) && !arc.Holds(arc.Center - arc.PointAt(0.5)), $"{arc}");
    });

    [Fact]
    public void Segment_NoLength_HasAPointAndADistance()
    {
        var s = new Segment(new Point2(1, 2), new Point2(1, 2));

        Assert.Equal(0, s.NearestFraction(new Point2(4, 6)));
        Assert.Equal(5, s.DistanceTo(new Point2(4, 6)));
        Assert.Equal(0, Segment.Leaving(s.Start, Vec2.UnitX, s.End).Bulge);
    }

    [Fact]
    public void Leaving_ArcsOwnTangent_GivesTheArcBack() => Trials.Run(500, r =>
    {
        var s = RandomCurves.Segment(r);

        Check.Near(s.Bulge, Segment.Leaving(s.Start, s.TangentAt(0), s.End).Bulge, 1e-7, $"{s}");
        Check.Near(s.Bulge, Segment.Arriving(s.Start, s.End, s.TangentAt(1)).Bulge, 1e-7, $"{s}");
    });
}
