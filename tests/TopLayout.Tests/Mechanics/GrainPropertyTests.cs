using CsCheck;
using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Mechanics;

/// <summary>What must hold for every layout, wood and season: samples from a fixed seed.</summary>
public class GrainPropertyTests
{
    private static readonly Calibration Shipped = Calibration.Default;

    [Fact]
    public void Run_OfAStraightEdge_NeverGrowsWithItsAngle()
    {
        foreach (var (length, a, b) in Shapes.Samples(Gen.Select(Gen.Double[1, 300], Gen.Double[0, 89], Gen.Double[0, 89]), 300))
        {
            var (flat, steep) = (Edge(length, Math.Min(a, b)), Edge(length, Math.Max(a, b)));
            Assert.True(steep <= flat + 1e-9, $"length {length:R}: {flat:R} at {Math.Min(a, b):R}°, {steep:R} at {Math.Max(a, b):R}°");
        }
    }

    [Fact]
    public void Run_OfAMember_NeverGrowsWhenABarCrossesIt()
    {
        var samples = Gen.Select(Shapes.Blobs, Gen.Double[-80, 80], Gen.Double[50, 130], Gen.Double[3, 20]);
        foreach (var (blob, y, grain, width) in Shapes.Samples(samples, 150))
        {
            var plate = Members.Make("plate", MemberKind.Plate, blob, 3, "sugar_maple", joinedWith: "bar");
            var half = GrainAngle.Direction(Angle.FromDegrees(grain)) * 250;
            var bar = Members.Make(
                "bar", MemberKind.Bar, Shapes.Bar(new Point2(0, y) - half, new Point2(0, y) + half, width), 8, "sitka_spruce", grain: grain);
            var (alone, crossed) = (Runs([plate]), Runs([plate, bar]));
            foreach (var side in alone.Keys)
            {
                Assert.True(crossed.GetValueOrDefault(side) <= alone[side] + 1e-6, $"{side}: {alone[side]:R} alone, {crossed.GetValueOrDefault(side):R} with a bar at {y:R}, {grain:R}°, for {Text(blob)}");
            }
        }
    }

    [Fact]
    public void Index_OfAPieceInDrierAir_NeverFalls()
    {
        var woods = WoodTable.All;
        var samples = Gen.Select(
            Gen.Int[0, woods.Length - 1], Gen.Double[1, 40], Gen.Double[2, 60], Gen.Double[-90, 90], Gen.Double[25, 80], Gen.Double[5, 80], Gen.Double[5, 80]);
        foreach (var (wood, thickness, halfWidth, grain, glued, a, b) in Shapes.Samples(samples, 300))
        {
            var (damp, dry) = (Math.Min(glued, Math.Max(a, b)), Math.Min(glued, Math.Min(a, b)));
            double Index(double used) => Mismatch.Of(
                Members.Top, new Material(woods[wood], GrainLie.InPlane, Sawing.Unknown), thickness, Angle.FromDegrees(grain), halfWidth,
                new Season(glued, used, 21).MoistureLossPercent, Shipped).Index;
            Assert.True(Index(dry) >= Index(damp) - 1e-12, $"{woods[wood].Key} {thickness:R} x {halfWidth:R} at {grain:R}°, glued at {glued:R}: {Index(damp):R} at {damp:R} %, {Index(dry):R} at {dry:R} %");
        }
    }

    [Fact]
    public void Pieces_OfSkewedHalves_AreTurnedByTheSkew()
    {
        foreach (var (degrees, skew) in Shapes.Samples(Gen.Select(Gen.Double[20, 70], Gen.Double[-8, 8]), 100))
        {
            var axis = GrainAngle.Direction(Angle.FromDegrees(degrees)) * 40;
            foreach (var side in (int[])[-1, 1])
            {
                var bar = Members.Make("bar", MemberKind.Bar, Shapes.Bar(new Point2(side * 90, -200) - axis, new Point2(side * 90, -200) + axis, 6), 8, "sitka_spruce", grain: degrees);
                double Least(double lean) => GrainRuns.PerSide(
                    GluedEdges.Of([bar], TopGrain.Halves(Angle.FromDegrees(lean), Angle.FromDegrees(lean)), null, Shipped), Shipped)
                    .SelectMany(r => r.Contributions).Where(c => c.Label == "side").Min(c => c.LeastAngle).Degrees;

                // Outward towards the tail: the right half's grain turns with the bar, the left one's against it.
                Check.Near(Least(0) - (side * skew), Least(skew), 1e-9, $"{degrees:R}°, skew {skew:R}°, side {side}");
            }
        }
    }

    private static double Edge(double length, double degrees)
    {
        var edge = new Segment(new Point2(20, -100), new Point2(20, -100) + (GrainAngle.Direction(Angle.FromDegrees(degrees)) * length));
        return GrainRuns.Longest(EdgePiece.Of(edge, Angle.Zero, "a"), Shipped)!.LengthMm;
    }

    private static Dictionary<EdgeSide, double> Runs(IReadOnlyList<Member> members) => GrainRuns
        .PerSide(GluedEdges.Of(members, Members.Straight, null, Shipped).Where(p => p.Member == "plate"), Shipped)
        .ToDictionary(r => r.Contributions[0].Side, r => r.LengthMm);

    private static string Text(Region region) => string.Join(' ', region.Outer.Vertices);
}
