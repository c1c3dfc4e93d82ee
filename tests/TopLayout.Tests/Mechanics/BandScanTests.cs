using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Tests.Mechanics;

/// <summary>What the scan passes over, and what it must not.</summary>
public class BandScanTests
{
    private const double WeighedFromMm = 30;
    private static readonly Calibration Shipped = Calibration.Default;

    /// <summary>
    /// By hand: a line of slope 2 below an arc of radius 200 that rises from slope 1.7 to 3.5. The band of a grain line at x cuts the line at
    /// 2x + 6 and the arc at its height at x − 3; between them lie 4.97 mm where the arc's slope is 2, at x = 0, and 5 mm at 1.02 mm to either
    /// side: only there are they one run. The scan's stations lie at ±1.44 mm and in the middle, so that the run is longest at neither.
    /// </summary>
    [Fact]
    public void Longest_RunsThatJoinBetweenTwoStations_AreFollowedToWhereTheyPart()
    {
        const double w = 3;
        var (radius, middleX) = (200.0, -3 - (400 / Math.Sqrt(5)));
        var middleY = 10.97 + (200 / Math.Sqrt(5));
        double Arc(double x) => middleY - Math.Sqrt((radius * radius) - ((x - middleX) * (x - middleX)));
        double Gap(double x) => Arc(x - w) - (2 * (x + w));
        Point2 OnArc(double x) => new(x, Arc(x));
        EdgePiece[] pieces =
        [
            .. EdgePiece.Of(new Segment(new Point2(-50, -100), new Point2(50, 100)), Angle.Zero, "line"),
            .. EdgePiece.Of(Segment.Around(new Point2(middleX, middleY), OnArc(-10.2), OnArc(10.2), counterClockwise: true), Angle.Zero, "arc"),
        ];
        var (near, far) = (0.0, 1.44);
        for (var i = 0; i < 60; i++)
        {
            (near, far) = Gap((near + far) / 2) < Shipped.MergeGapMm ? ((near + far) / 2, far) : (near, (near + far) / 2);
        }

        var run = GrainRuns.Longest(pieces, Shipped)!;

        Check.Near(4.97, Gap(0), 1e-9);
        Assert.InRange(near, 1.02, 1.03);
        Check.Near(near, run.X, 1e-3);
        Check.Near(Arc(near + w) - (2 * (near - w)), run.LengthMm, 1e-3);
    }

    [Fact]
    public void Distinct_WhereNoShortRunWeighs_OnlyLongOnesAreLookedFor()
    {
        EdgePiece[] pieces =
        [
            .. EdgePiece.Of(new Segment(new Point2(-60, 0), new Point2(-60, 29)), Angle.Zero, "short"),
            .. EdgePiece.Of(new Segment(new Point2(0, 0), new Point2(0, 31)), Angle.Zero, "long"),
            .. EdgePiece.Of(new Segment(new Point2(60, 0), new Point2(60, 29)), Angle.Zero, "wanted"),
        ];
        var weights = new GrainRuns.Weights(_ => 1, WeighedFromMm, 2) { WhereShort = (_, box) => box.Min.X > 50 };

        Assert.Equal(["long", "wanted"], Members(weights));
        Assert.Equal(["long", "short", "wanted"], Members(weights with { WhereShort = (_, _) => true }));

        IEnumerable<string> Members(GrainRuns.Weights w) =>
            GrainRuns.Distinct(pieces, new BandScan(Shipped), 10, w).Select(r => r.Contributions.Single().Member).Order();
    }

    // What is passed over by the bound on a cluster's runs holds none that is longer: random edges, every third of them supported.
    [Fact]
    public void Distinct_RandomEdgesFreeAndSupported_NoLongRunIsPassedOver()
    {
        var random = new Random(Seed);
        var long30 = 0;
        for (var i = 0; i < 300; i++)
        {
            EdgePiece[] pieces = [.. Enumerable.Range(0, 12).SelectMany(n => Edge(random, n))];
            var all = Lengths(pieces, null);
            var looked = Lengths(pieces, new GrainRuns.Weights(_ => 0, WeighedFromMm, 1) { WhereShort = (_, _) => false });
            long30 += all.Count;

            Assert.True(all.TrueForAll(a => looked.Exists(l => Math.Abs(l - a) < 1e-6)), $"seed {Seed}, trial {i}: {string.Join(' ', all)} but {string.Join(' ', looked)}");
        }

        Assert.True(long30 > 100, $"only {long30} runs were long");
    }

    private const int Seed = 20261126;

    private static List<double> Lengths(EdgePiece[] pieces, GrainRuns.Weights? weights) =>
        [.. GrainRuns.Distinct(pieces, new BandScan(Shipped), 10, weights).Select(r => r.LengthMm).Where(l => l > WeighedFromMm + 1e-6)];

    private static IEnumerable<EdgePiece> Edge(Random random, int number)
    {
        var start = new Point2(random.NextDouble() * 40, random.NextDouble() * 80);
        var end = start + new Vec2((random.NextDouble() * 20) - 10, (random.NextDouble() * 60) - 30);
        var pieces = EdgePiece.Of(new Segment(start, end, (random.NextDouble() - 0.5) * (number % 2)), Angle.Zero, "m" + number);
        return number % 3 == 0 ? pieces.Select(p => p with { SupportedBy = "other" }) : pieces;
    }
}
