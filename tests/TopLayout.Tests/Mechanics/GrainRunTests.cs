using CsCheck;
using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Tests.Mechanics;

public class GrainRunTests
{
    private static readonly Calibration Shipped = Calibration.Default;
    private static readonly Calibration NoGap = Shipped with { MergeGapMm = 0 };

    // A line of length L at θ stays within ±w of one grain line for min(L cos θ, 2w/tan θ).
    [Theory]
    [InlineData(90, 0, 90)]
    [InlineData(200, 5, 68.58)]
    [InlineData(200, 10, 34.03)]
    [InlineData(200, 15, 22.39)]
    [InlineData(20, 15, 19.319)]
    [InlineData(100, 45, 6)]
    public void Longest_StraightEdge_IsTheClosedForm(double length, double degrees, double expected)
    {
        var edge = new Segment(new Point2(20, -100), new Point2(20, -100) + (GrainAngle.Direction(Angle.FromDegrees(degrees)) * length));
        var run = Longest([edge], Angle.Zero, Shipped)!;

        Check.Near(expected, run.LengthMm, 0.01);
        Check.Near(degrees, run.Contributions.Single().LeastAngle.Degrees, 1e-9);
        Check.Near(run.LengthMm, run.Contributions.Single().LengthMm, 1e-9);
    }

    // An arc of radius R that touches a grain line stays within ±w of one for 4√(w(R − w)).
    [Theory]
    [InlineData(10, 18.33)]
    [InlineData(25, 32.50)]
    [InlineData(50, 47.50)]
    [InlineData(70, 56.71)]
    [InlineData(80, 60.79)]
    public void Longest_CircleWithoutMerging_IsTheClosedForm(double radius, double expected)
    {
        var edges = Contour.Circle(new Point2(-30, -150), radius).Segments;

        Check.Near(expected, Longest(edges, Angle.Zero, NoGap)!.LengthMm, 0.01);
    }

    // With gaps of up to g joined the band may move on by δ = R − √(R² − g²/4): 2√(R² − (R − 2w − δ)²).
    [Theory]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(70)]
    public void Longest_CircleWithMerging_MovesOnUntilTheGapIsFull(double radius)
    {
        var on = radius - Math.Sqrt((radius * radius) - 6.25);
        var expected = 2 * Math.Sqrt((radius * radius) - Math.Pow(radius - 6 - on, 2));

        Check.Near(expected, Longest(Contour.Circle(new Point2(30, -150), radius).Segments, Angle.Zero, Shipped)!.LengthMm, 1e-4);
    }

    // A round tip of radius ρ that starts along the grain at the flank's end: 2w/tan θ + ρ tan(θ/2).
    [Theory]
    [InlineData(10, 16, 35.4)]
    [InlineData(13, 12, 27.4)]
    [InlineData(15, 16, 24.5)]
    [InlineData(28, 11, 14.0)]
    public void Longest_TongueWithHalfRoundTip_IsTheClosedForm(double degrees, double radius, double printed)
    {
        var theta = Angle.FromDegrees(degrees);
        var expected = (6 / Trig.Tan(theta)) + (radius * Trig.Tan(theta / 2));
        var edges = Shapes.HalfRoundTongue(radius, theta, 70).Edges.Where(e => e.Label != "root");

        Check.Near(printed, expected, 0.06, "the closed form");
        Check.Near(expected, Longest(edges, Angle.Zero, Shipped)!.LengthMm, 0.01);
    }

    // A tip that touches the flanks: 2w/tan θ, as long as the tip itself is shorter.
    [Theory]
    [InlineData(10, 34.0)]
    [InlineData(13, 26.0)]
    [InlineData(15, 22.4)]
    [InlineData(28, 11.3)]
    public void Longest_TongueWithTangentTip_IsTheFlankAlone(double degrees, double expected)
    {
        var theta = Angle.FromDegrees(degrees);
        var edges = Shapes.TangentTongue(14, theta, 80).Edges.Where(e => e.Label != "root");

        Check.Near(expected, Longest(edges, Angle.Zero, Shipped)!.LengthMm, 0.05);
    }

    [Fact]
    public void Longest_StraightEdge_NamesTheGrainLineAtTheEdge()
    {
        var run = Longest([new Segment(new Point2(20, -100), new Point2(20, -10), 0, "flank")], Angle.Zero, Shipped)!;

        Check.Near(20, run.X, 1e-9, "the middle of the equally bad grain lines");
        Check.Near(-100, run.From.Y, 1e-9);
        Check.Near(-10, run.To.Y, 1e-9);
        Assert.Equal("flank", run.Contributions.Single().Label);
        Assert.Equal(EdgeSide.Right, run.Contributions.Single().Side);
    }

    [Fact]
    public void Longest_EdgeAcrossTheGrain_HasNoRun() =>
        Assert.Null(Longest([new Segment(new Point2(0, -50), new Point2(80, -50))], Angle.Zero, Shipped));

    [Fact]
    public void Longest_TwoMembersInOneBand_JoinOverAShortGap()
    {
        ReadOnlySpan<EdgePiece> pieces =
        [
            .. EdgePiece.Of(new Segment(new Point2(20, -50), new Point2(20, -10)), Angle.Zero, "a"),
            .. EdgePiece.Of(new Segment(new Point2(23, -95), new Point2(23, -55)), Angle.Zero, "b"),
        ];
        var run = GrainRuns.Longest(pieces.ToArray(), Shipped)!;

        Check.Near(85, run.LengthMm, 1e-9);
        Check.Near(21.5, run.X, 1e-9);
        Assert.Equal(["a", "b"], run.Contributions.Select(c => c.Member).Order());
        Assert.Equal([40, 40], run.Contributions.Select(c => Math.Round(c.LengthMm, 6)));
    }

    [Fact]
    public void Longest_SupportedStretchInTheBand_CutsTheRunOfAnotherEdge()
    {
        var along = EdgePiece.Of(new Segment(new Point2(20, -100), new Point2(20, 0)), Angle.Zero, "a");
        var stop = EdgePiece.Of(new Segment(new Point2(22, -60), new Point2(22, -50)), Angle.Zero, "b").Select(p => p with { SupportedBy = "brace" });

        Check.Near(100, GrainRuns.Longest([.. along, .. stop], Shipped with { BandHalfWidthMm = 0.5 })!.LengthMm, 1e-9, "apart");
        var together = GrainRuns.Longest([.. along, .. stop], Shipped)!;
        Check.Near(100, together.LengthMm, 1e-9, "a grain line at 17.5 misses the support");
        Assert.True(together.X < 19);
        var both = GrainRuns.Longest([.. along, .. stop.Select(p => p with { Edge = p.Edge.Placed(Placement.Moved(-2, 0)) })], Shipped)!;
        Check.Near(50, both.LengthMm, 1e-9, "on the same line the longer part is left");
    }

    [Fact]
    public void Distinct_TwoEdgesApart_AreTwoRunsAndTheFloorHolds()
    {
        ReadOnlySpan<EdgePiece> pieces =
        [
            .. EdgePiece.Of(new Segment(new Point2(-60, -100), new Point2(-60, -60)), Angle.Zero, "a"),
            .. EdgePiece.Of(new Segment(new Point2(30, -100), new Point2(30, -30)), Angle.Zero, "b"),
            .. EdgePiece.Of(new Segment(new Point2(60, -100), new Point2(60, -90)), Angle.Zero, "c"),
        ];
        var runs = GrainRuns.Distinct(pieces.ToArray(), Shipped, 20);

        Assert.Equal(["b", "a"], runs.Select(r => r.Contributions.Single().Member));
    }

    /// <summary>
    /// By hand, w 3 mm: a from 0 to 100 at x 0, b from 95 to 101 at x 5, c from 100 to 140 at x 10. A band holds a and b together (101 mm) or b and
    /// c together (45 mm), never a and c; all of it is one run by its neighbours. The longest says nothing of c.
    /// </summary>
    [Fact]
    public void Distinct_RunsThatAreOne_TheHeaviestStandsForAll()
    {
        EdgePiece[] pieces =
        [
            .. EdgePiece.Of(new Segment(new Point2(0, 0), new Point2(0, 100)), Angle.Zero, "a"),
            .. EdgePiece.Of(new Segment(new Point2(5, 95), new Point2(5, 101)), Angle.Zero, "b"),
            .. EdgePiece.Of(new Segment(new Point2(10, 100), new Point2(10, 140)), Angle.Zero, "c"),
        ];
        GrainRun Only(GrainRuns.Weights? weights) => GrainRuns.Distinct(pieces, new BandScan(Shipped), 5, weights).Single();
        int OfC(GrainRun run) => run.Contributions.Any(c => c.Member == "c") ? 2 : 1;

        Assert.Equal(101, Only(null).LengthMm, 9);
        var heaviest = Only(new GrainRuns.Weights(OfC, 30, 2));
        Assert.Equal((95, 140), (Math.Round(heaviest.FromY, 9), Math.Round(heaviest.ToY, 9)));
        Assert.Equal(["c", "b"], heaviest.Contributions.Select(c => c.Member));
        Assert.Equal(101, Only(new GrainRuns.Weights(OfC, 46, 2)).LengthMm, 9);
    }

    [Fact]
    public void Distinct_LongSkewEdge_IsOneRun() =>
        Assert.Single(GrainRuns.Distinct(EdgePiece.Of(new Segment(new Point2(0, -200), new Point2(28, 0)), Angle.Zero, "a"), Shipped, 30));

    [Fact]
    public void Profile_OfASlantedEdge_RisesAndFallsAndIsSorted()
    {
        var profile = GrainRuns.Profile(EdgePiece.Of(new Segment(new Point2(0, -100), new Point2(30, 0)), Angle.Zero, "a"), Shipped);

        Assert.Equal(profile.Select(p => p.X).Order(), profile.Select(p => p.X));
        Check.Near(-3, profile[0].X, 1e-9);
        Check.Near(33, profile[^1].X, 1e-9);
        Check.Near(0, profile[0].LongestMm, 1e-9);
        Check.Near(20, profile.Max(p => p.LongestMm), 1e-9, "6 mm at a slope of 3.333");
    }

    [Fact]
    public void LengthWithin_CircleOfRadius10_IsTheShareOfItsHeadings()
    {
        var circle = Contour.Circle(default, 10).Segments;

        Check.Near(20 * Math.PI * 40 / 360, circle.Sum(s => GrainAngle.LengthWithin(s, Angle.FromDegrees(17), Angle.FromDegrees(10))), 1e-9);
        Check.Near(20 * Math.PI, circle.Sum(s => GrainAngle.LengthWithin(s, Angle.Zero, Angle.FromDegrees(90))), 1e-9);
        Assert.All(circle, s => Check.Near(0, GrainAngle.Least(s, Angle.FromDegrees(17)).Degrees, 1e-9));
    }

    [Fact]
    public void LengthWithin_StraightEdgeAt14Point9_IsAllOrNothing()
    {
        var edge = new Segment(default, new Point2(0, 0) + (GrainAngle.Direction(Angle.FromDegrees(14.9)) * 96));

        Check.Near(96, GrainAngle.LengthWithin(edge, Angle.Zero, Angle.FromDegrees(15)), 1e-9);
        Check.Near(0, GrainAngle.LengthWithin(edge, Angle.Zero, Angle.FromDegrees(14.5)), 1e-9);
        Check.Near(14.9, GrainAngle.Least(edge, Angle.Zero).Degrees, 1e-9);
        Check.Near(24.9, GrainAngle.Least(edge.Reversed(), Angle.FromDegrees(-10)).Degrees, 1e-9);
    }

    // A half-ellipse has ∫b² dy/∫b dy = 8/(3π) of its half-width; a circle too, a rectangle its half, an isosceles triangle 2/3 of its half-base.
    [Fact]
    public void HalfWidth_SimpleShapes_AreTheClosedForms()
    {
        Check.Near(30 * 8 / (3 * Math.PI), HalfWidth.Of(Region.Inside(Contour.Circle(new Point2(5, 7), 30)), Angle.FromDegrees(20)), 1e-8);
        Check.Near(30, HalfWidth.Of(Shapes.Rectangle(60, 90), Angle.Zero), 1e-9);
        Check.Near(45, HalfWidth.Of(Shapes.Rectangle(60, 90), Angle.FromDegrees(90)), 1e-9);
        Check.Near(20, HalfWidth.Of(Region.Inside(Contour.Polygon(new Point2(-30, 0), new Point2(30, 0), new Point2(0, 50))), Angle.Zero), 1e-9);
    }

    [Fact]
    public void Longest_MirroredLayout_IsMirrored()
    {
        foreach (var blob in Shapes.Samples(Shapes.Blobs, 200))
        {
            var run = Longest(blob.Edges, Angle.FromDegrees(7), Shipped)!;
            var mirrored = Longest(blob.Placed(Placement.MirroredAcrossY).Edges, Angle.FromDegrees(-7), Shipped)!;
            Check.Near(run.LengthMm, mirrored.LengthMm, 1e-9, Text(blob));
        }
    }

    [Fact]
    public void Longest_GrainAndLayoutTurnedTogether_IsTheSame()
    {
        foreach (var (blob, degrees) in Shapes.Samples(Gen.Select(Shapes.Blobs, Gen.Double[-180, 180]), 200))
        {
            var turn = Angle.FromDegrees(degrees);
            var run = Longest(blob.Edges, Angle.Zero, Shipped)!;
            var turned = Longest(blob.Placed(new Placement(new Vec2(11, -7), turn, false)).Edges, turn, Shipped)!;
            Check.Near(run.LengthMm, turned.LengthMm, 1e-9, Text(blob));
        }
    }

    // Against a plain search every 0.05 mm on points every 0.05 mm: never less than it finds, and not much more.
    [Fact]
    public void Longest_RandomShapes_AgreesWithAPlainSearch()
    {
        foreach (var blob in Shapes.Samples(Shapes.Blobs, 12))
        {
            var exact = Longest(blob.Edges, Angle.Zero, Shipped)!.LengthMm;
            var plain = PlainSearch.Longest(blob.Edges, Shipped);
            Assert.True(plain <= exact + 0.25 && exact <= plain + 1.5, $"plain {plain:R}, exact {exact:R} for {Text(blob)}");
        }
    }

    private static string Text(Region region) => string.Join(' ', region.Outer.Vertices);

    private static GrainRun? Longest(IEnumerable<Segment> edges, Angle grain, Calibration calibration) =>
        GrainRuns.Longest(edges.SelectMany(e => EdgePiece.Of(e, grain, "a")), calibration);
}
