using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class ApolloniusTests
{
    private static Given RandomGiven(Random r) => r.Next(3) switch
    {
        0 => RandomCurves.Point(r),
        1 => Line.Through(RandomCurves.Point(r), RandomCurves.Point(r)),
        _ => new Circle(RandomCurves.Point(r), r.Between(1, 50)),
    };

    // A given that the planted circle touches, from any side.
    private static Given Touching(Random r, Circle planted)
    {
        var direction = Trig.Direction(Angle.FromDegrees(r.Between(0, 360)));
        var touch = planted.Center + (direction * planted.Radius);
        var radius = r.Between(1, 60);
        return r.Next(4) switch
        {
            0 => touch,
            1 => new Line(touch, direction.Left * r.Pick(1, -1)),
            2 => new Circle(touch + (direction * radius), radius),
            _ => new Circle(touch - (direction * radius), radius),
        };
    }

    [Fact]
    public void ToThree_EveryCircle_IsTangent() => Trials.Run(1000, r =>
    {
        var (a, b, c) = (RandomGiven(r), RandomGiven(r), RandomGiven(r));
        var found = TangentCircles.To(a, b, c);

        Assert.InRange(found.Count, 0, 8);
        Assert.All(found, s => Assert.All([a, b, c], g => Check.Near(0, g.Gap(s), 2e-9 * Math.Max(400, s.Radius), $"{s} {g}")));
    });

    [Fact]
    public void ToThree_PlantedCircle_IsFound() => Trials.Run(2000, r =>
    {
        var planted = new Circle(RandomCurves.Point(r), r.Between(2, 50));
        var (a, b, c) = (Touching(r, planted), Touching(r, planted), Touching(r, planted));

        Assert.Contains(TangentCircles.To(a, b, c), s => s.Center.IsNear(planted.Center, 1e-4) && Math.Abs(s.Radius - planted.Radius) < 1e-4);
    });

    [Fact]
    public void ToTwo_PlantedCircle_IsFoundAndEachIsTangent() => Trials.Run(2000, r =>
    {
        var planted = new Circle(RandomCurves.Point(r), r.Between(2, 50));
        var (a, b) = (Touching(r, planted), Touching(r, planted));
        var found = TangentCircles.To(a, b, planted.Radius);

        Assert.Contains(found, s => s.Center.IsNear(planted.Center, 1e-4));
        Assert.All(found, s => Assert.All([a, b], g => Check.Near(0, g.Gap(s), 1e-7, $"{s} {g}")));
        Assert.All(found, s => Assert.Equal(planted.Radius, s.Radius));
    });

    public static TheoryData<string, int> Counts => new()
    {
        { "PPP", 1 }, { "PPL", 2 }, { "PPC", 2 }, { "PLL", 2 }, { "PLC", 4 }, { "PCC", 4 }, { "LLL", 4 }, { "LLC", 4 }, { "LCC", 8 }, { "CCC", 8 },
    };

    // Points, lines and circles at the corners of a triangle, each line beyond the others' reach: the textbook number of solutions,
    // but four of the eight for two lines and a circle that neither of them meets.
    [Theory]
    [MemberData(nameof(Counts))]
    public void ToThree_GenericCase_HasTheTextbookCount(string kinds, int count) => Trials.Run(100, r =>
    {
        var givens = kinds.Select((kind, i) =>
        {
            var direction = Trig.Direction(Angle.FromDegrees((120 * i) + r.Between(-15, 15)));
            var p = new Point2(0, 0) + (direction * 60);
            return (Given)(kind switch
            {
                'P' => p,
                'L' => new Line(p + (direction * r.Between(0, 20)), direction.Left),
                _ => new Circle(p + (direction * r.Between(-5, 5)), r.Between(5, 20)),
            });
        }).ToList();

        Assert.Equal(count, TangentCircles.To(givens[0], givens[1], givens[2]).Count);
    });

    // Descartes' circle theorem: three unit circles that touch each other hold one of radius 2/√3 − 1 and lie in one of 2/√3 + 1.
    [Fact]
    public void ToThree_MutuallyTouchingCircles_AreDescartes()
    {
        Circle[] c = [new(new(-1, 0), 1), new(new(1, 0), 1), new(new(0, Math.Sqrt(3)), 1)];
        var found = TangentCircles.To(c[0], c[1], c[2]);

        Assert.Equal(2, found.Count);
        Check.Near((2 / Math.Sqrt(3)) - 1, found[0].Radius, 1e-9);
        Check.Near((2 / Math.Sqrt(3)) + 1, found[1].Radius, 1e-9);
    }

    // The incircle and the three excircles of the triangle 3-4-5: 1, 2, 3, 6.
    [Fact]
    public void ToThree_SidesOfATriangle_AreItsFourCircles()
    {
        var found = TangentCircles.To(Line.Through(new(0, 0), new(4, 0)), Line.Through(new(4, 0), new(0, 3)), Line.Through(new(0, 3), new(0, 0)));

        Assert.Equal([1, 2, 3, 6], found.Select(f => Math.Round(f.Radius, 9)).Order());
        Check.Near(1, found[0].Radius, 1e-12, "left of all three comes first");
    }

    [Fact]
    public void To_NoEndOfSolutionsOrNone_IsEmpty()
    {
        var line = Line.Through(new(0, 0), new(4, 0));

        Assert.Empty(TangentCircles.To(line, line, line));
        Assert.Empty(TangentCircles.To(line, line.Parallel(5), line.Parallel(9)));
        Assert.Empty(TangentCircles.To(new Point2(0, 0), new Point2(0, 0), new Point2(0, 0)));
        Assert.Empty(TangentCircles.To(new Point2(0, 0), new Point2(1, 1), new Point2(2, 2)));
        Assert.Empty(TangentCircles.To(new Circle(default, 3), new Circle(default, 5), new Circle(default, 9)));
        Assert.Empty(TangentCircles.To(new Point2(0, 0), new Point2(20, 0), 9.999));
        Assert.Single(TangentCircles.To(new Point2(0, 0), new Point2(20, 0), 10));
        Assert.Empty(TangentCircles.To(new Point2(0, 0), new Point2(20, 0), double.NaN));
        Assert.Equal(8, TangentCircles.To(new Circle(default, 10), new Circle(new(30, 0), 10), 60).Count);
    }

    [Fact]
    public void To_Order_GoesBySideThenRadius()
    {
        var found = TangentCircles.To(new Circle(new(-40, 0), 10), new Circle(new(40, 0), 12), new Circle(new(0, 60), 14));

        Assert.True(found[0].Radius < found[^1].Radius);
        Check.Near(0, new Circle(new(-40, 0), 10).SignedDistanceTo(found[0].Center) - found[0].Radius, 1e-9, "outside the first");
    }
}
