using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class TangentTests
{
    [Fact]
    public void CircleThrough_ThreePoints_HoldsThem() => Trials.Run(500, r =>
    {
        var (a, b, c) = (RandomCurves.Point(r), RandomCurves.Point(r), RandomCurves.Point(r));
        if (Circle.Through(a, b, c) is { } circle)
        {
            Assert.All([a, b, c], p => Check.Near(0, circle.SignedDistanceTo(p), 1e-10 * circle.Radius, "on it"));
        }
    });

    [Fact]
    public void CircleThrough_CollinearOrEqualPoints_IsNone()
    {
        Assert.Null(Circle.Through(default, new(1, 1), new(3, 3)));
        Assert.Null(Circle.Through(default, default, new(3, 3)));
        Assert.Null(Circle.Through(default, default, default));
        Assert.Null(Circle.Through(default, new(double.NaN, 1), new(3, 3)));
    }

    [Fact]
    public void ArcThrough_AnyPointOfAnArc_GivesItBack() => Trials.Run(500, r =>
    {
        var (center, radius) = (RandomCurves.Point(r), r.Between(1, 100));
        var (from, sweep) = (r.Between(0, 360), r.Pick(1, -1) * r.Between(1, 355));
        Point2 At(double share) => center + (Trig.Direction(Angle.FromDegrees(from + (sweep * share))) * radius);
        var arc = Arcs.Through(At(0), At(r.Between(0.05, 0.95)), At(1))!;

        Check.Near(radius * Math.Abs(sweep) * Math.PI / 180, arc.Length, 1e-7 * radius, "length");
        Check.Near(0, arc.PointAt(arc.Length / 3).DistanceTo(At(1 / 3.0)), 1e-7 * radius, "a third of the way");
        Assert.Equal((At(0), At(1)), (arc.Vertices[0].Position, arc.Vertices[^1].Position));
    });

    [Fact]
    public void ArcThrough_CollinearPoints_IsALineOrNone()
    {
        Assert.False(Arcs.Through(default, new(5, 5), new(10, 10))!.Segments.Single().IsArc);
        Assert.Null(Arcs.Through(default, new(15, 15), new(10, 10)));
        Assert.Null(Arcs.Through(default, default, new(10, 10)));
        Assert.Null(Arcs.Through(default, new(5, 5), default));
    }

    [Fact]
    public void LeavingToTouch_LineOrCircle_TouchesItAndTurnsSmoothly()
    {
        var count = 0;
        Trials.Run(500, r =>
        {
            var (start, tangent) = (RandomCurves.Point(r), Trig.Direction(Angle.FromDegrees(r.Between(0, 360))));
            Given given = r.Next(2) == 0 ? Line.Through(RandomCurves.Point(r), RandomCurves.Point(r)) : new Circle(RandomCurves.Point(r), r.Between(1, 60));
            var arcs = Arcs.LeavingToTouch(start, tangent, given);
            count += arcs.Count;
            for (var i = 0; i < arcs.Count; i++)
            {
                var (arc, end) = (arcs[i], arcs[i].Vertices[^1].Position);
                var sense = given.Line is { } line ? line.Direction.Unit : (end - given.Circle!.Value.Center).Unit.Left;
                Check.Near(0, given.Gap(new Circle(end, 0)), 1e-7, "ends on it");
                Check.Near(1, arc.TangentAt(0).Dot(tangent), 1e-9, "leaves along the tangent");
                Check.Near(arcs.Count == 2 && i == 0 ? 1 : Math.Sign(arc.TangentAt(arc.Length).Dot(sense)), arc.TangentAt(arc.Length).Dot(sense), 1e-6, "touches");
            }
        });
        Assert.InRange(count, 950, 1000);
    }

    [Fact]
    public void LeavingToTouch_StraightAhead_IsALine()
    {
        var line = Arcs.LeavingToTouch(default, Vec2.UnitX, new Circle(new(50, 20), 20))[0];

        Assert.False(Assert.Single(line.Segments).IsArc);
        Assert.Equal(new Point2(50, 0), line.Vertices[^1].Position);
    }

    [Theory]
    [InlineData(50, 4)]
    [InlineData(30, 3)]
    [InlineData(25, 2)]
    [InlineData(10, 1)]
    [InlineData(5, 0)]
    [InlineData(0, 0)]
    public void CommonTangents_OfRadii20And10_AreAsManyAsTheyLie(double distance, int count)
    {
        var (a, b) = (new Circle(new(3, 4), 20), new Circle(new(3, 4 + distance), 10));
        var found = CommonTangents.Of(a, b);

        Assert.Equal(count, found.Count);
        Assert.All(found, t =>
        {
            Check.Near(20, Math.Abs(new Line(t.OnFirst, t.Direction).SignedDistanceTo(a.Center)), 1e-9);
            Check.Near(10, Math.Abs(new Line(t.OnFirst, t.Direction).SignedDistanceTo(b.Center)), 1e-9);
            Check.Near(0, t.Direction.Cross(t.OnSecond - t.OnFirst), 1e-9);
            Assert.True(t.Direction.Dot(t.OnSecond - t.OnFirst) >= 0);
        });
    }

    // Outer tangent length √(d² − (R − r)²), inner √(d² − (R + r)²): standard formulas of the belt drive, from memory.
    [Fact]
    public void CommonTangents_Lengths_AreThoseOfTheBelt() => Trials.Run(300, r =>
    {
        var (a, b) = (new Circle(RandomCurves.Point(r), r.Between(1, 20)), new Circle(new(r.Between(150, 200), 0), r.Between(1, 20)));
        var d = a.Center.DistanceTo(b.Center);
        var lengths = CommonTangents.Of(a, b).Select(t => t.OnFirst.DistanceTo(t.OnSecond)).ToList();

        Check.Near(Math.Sqrt((d * d) - Math.Pow(a.Radius - b.Radius, 2)), lengths[0], 1e-9);
        Check.Near(lengths[0], lengths[1], 1e-9);
        Check.Near(Math.Sqrt((d * d) - Math.Pow(a.Radius + b.Radius, 2)), lengths[2], 1e-9);
        Check.Near(lengths[2], lengths[3], 1e-9);
        Assert.Equal(2, CommonTangents.Of(new Circle(a.Center, 0), b).Count);
    });
}
