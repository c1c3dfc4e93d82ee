using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Offsets and bands against their definition: distances of points, sampled on the border and anywhere.</summary>
public class OffsetTests
{
    private const int Shapes = 10_000;
    private static readonly double[] Fractions = [0.2, 0.5, 0.8];

    // Random blobs, rings, and outlines touched by their hole; offsets run past the radius of every arc and past half of every width.
    private static (Region Area, double Offset) Make(Random random)
    {
        var area = random.Next(3) switch
        {
            0 => HardPairs.Make("full circles", random).B,
            1 => HardPairs.Make("hole touches outline", random).A.Union(HardPairs.Make("general", random).A),
            _ => HardPairs.Blob(random),
        };
        var mm = random.Between(-4, 5);
        return (area, random.Next(5) == 0 ? Math.Round(mm * 2) / 2 : mm);
    }

    [Fact]
    public void Offset_OfAnyArea_LiesAtItsDistanceAndIsValid()
    {
        var inexact = 0;
        Trials.Run(Shapes, random =>
        {
            var (area, mm) = Make(random);
            var offset = area.Offset(mm);
            Assert.Null(RegionValidity.FirstFault(offset));
            var error = mm == 0 ? 0 : offset.Edges.SelectMany(e => Fractions.Select(e.PointAt))
                .Select(p => Math.Abs(Distance(area, p) - Math.Abs(mm))).DefaultIfEmpty().Max();
            inexact += error > 1e-9 ? 1 : 0;
            Check.Near(0, error, Tolerances.ShortestMm, "distance of the border");
            for (var k = 0; k < 10; k++)
            {
                var p = new Point2(random.Between(-60, 60), random.Between(-60, 60));
                var depth = Distance(area, p) * (area.Contains(p) ? -1 : 1);
                Assert.True(Math.Abs(depth - mm) < 2 * Tolerances.ShortestMm || offset.Contains(p) == depth < mm, $"offset {mm}, depth {depth}");
            }
        });

        // The rest have an edge that fell under the shortest length, near which an arc stands for it, or parallels that touch.
        Assert.True(inexact <= Shapes / 500, $"{inexact} of {Shapes} borders are off by more than 1e-9");
    }

    [Fact]
    public void Offset_OutThenIn_RestoresAnAreaWithoutInwardCorners() => Trials.Run(1000, random =>
    {
        // Convex: nothing is lost on the way out.
        var box = HardPairs.Rectangle(0, 0, random.Between(1, 9), random.Between(1, 9), "side").Placed(HardPairs.Frame(random));
        var round = random.Next(2) == 0 ? box.Offset(random.Between(0.1, 3)) : box;
        var mm = random.Between(0.1, 5);

        var back = round.Offset(mm).Offset(-mm);

        SameLoops.Assert(round.Union(Region.Empty), back, 1e-7);
    });

    [Fact]
    public void Offset_InBeyondHalfTheWidth_IsEmpty()
    {
        Assert.True(HardPairs.Disc(3, 4, 5).Offset(-5.01).IsEmpty);
        Assert.True(HardPairs.Disc(3, 4, 5).Offset(-50).IsEmpty);
        Assert.True(HardPairs.Rectangle(0, 0, 10, 4).Offset(-2.01).IsEmpty);
        Assert.True(Region.Empty.Offset(3).IsEmpty);
    }

    [Fact]
    public void Offset_OutBeyondAHole_ClosesIt()
    {
        var ring = Region.Between(Contour.Circle(default, 10), Contour.Circle(default, 3));

        Check.Near(Math.PI * 13.5 * 13.5, ring.Offset(3.5).Area, 1e-9, "disc");
        Check.Near(Math.PI * ((12 * 12) - (1 * 1)), ring.Offset(2).Area, 1e-9, "ring");
    }

    // Area of the parallel set of a convex figure (Steiner): A + P·d + π·d²; with mitres at right angles each corner adds a square.
    [Fact]
    public void Offset_OfARectangle_HasSteinersArea()
    {
        var rectangle = HardPairs.Rectangle(0, 0, 10, 4, "side");

        Check.Near(40 + (28 * 1.5) + (Math.PI * 2.25), rectangle.Offset(1.5).Area, 1e-9, "round");
        Check.Near(13 * 7, rectangle.Offset(1.5, Corner.Mitre()).Area, 1e-9, "mitred");
        Check.Near(7 * 1, rectangle.Offset(-1.5).Area, 1e-9, "inward");
        Assert.All(rectangle.Offset(1.5).Edges, e => Assert.Equal("side", e.Label));
        Assert.Equal(4, rectangle.Offset(1.5, Corner.Mitre()).Edges.Count());
    }

    // A tip of 20° half angle has its mitre at 1/sin 20° = 2.92 times the offset.
    [Fact]
    public void Offset_OfASharpTip_IsCutBeyondTheLimit()
    {
        var tip = Region.Inside(Contour.Polygon(default, new Point2(-10, 10 * Math.Tan(Math.PI / 9)), new Point2(-10, -10 * Math.Tan(Math.PI / 9))));

        Check.Near(1 / Math.Sin(Math.PI / 9), tip.Offset(1, Corner.Mitre(3)).Bounds.Max.X, 1e-9, "mitre");
        Check.Near(Math.Sin(Math.PI / 9), tip.Offset(1, Corner.Mitre(2)).Bounds.Max.X, 1e-9, "cut");
    }

    [Fact]
    public void Band_OfAnyPath_IsWhatLiesNear() => Trials.Run(2000, random =>
    {
        var isClosed = random.Next(3) == 0;
        var path = RandomPath(random, isClosed);
        var half = random.Between(0.1, 4);

        var band = path.Band(half);

        Assert.Null(RegionValidity.FirstFault(band));
        for (var k = 0; k < 20; k++)
        {
            var p = new Point2(random.Between(-15, 15), random.Between(-15, 15));
            var distance = path.DistanceTo(p);
            Assert.True(Math.Abs(distance - half) < 2 * Tolerances.ShortestMm || band.Contains(p) == distance < half, $"{half} {distance}");
        }
    });

    [Fact]
    public void Band_WithFlatEndsAndMitres_StaysValidAndInsideTheMitreLimit() => Trials.Run(2000, random =>
    {
        var path = RandomPath(random, isClosed: false);
        var half = random.Between(0.1, 4);

        var (flat, mitred) = (path.Band(half, BandEnd.Flat), path.Band(half, BandEnd.Flat, Corner.Mitre(2)));

        Assert.Null(RegionValidity.FirstFault(flat));
        Assert.Null(RegionValidity.FirstFault(mitred));
        Assert.All(flat.Edges, e => Assert.True(path.DistanceTo(e.PointAt(0.5)) <= half + 1e-6));
        Assert.All(mitred.Edges, e => Assert.True(path.DistanceTo(e.PointAt(0.5)) <= (2 * half) + 1e-6));
    });

    // Length × width, and two half circles at round ends.
    [Fact]
    public void Band_OfALine_HasTheAreaOfAStadium()
    {
        var path = new Contour([new Vertex(default, 0, "axis"), new Vertex(new Point2(30, 0))], isClosed: false);

        Check.Near((30 * 6) + (Math.PI * 9), path.Band(3).Area, 1e-9, "round");
        Check.Near(30 * 6, path.Band(3, BandEnd.Flat).Area, 1e-9, "flat");
        Assert.All(path.Band(3).Edges, e => Assert.Equal("axis", e.Label));
    }

    private static Contour RandomPath(Random random, bool isClosed) => new(
        Enumerable.Range(0, random.Next(2, 7)).Select(_ => new Vertex(
            new Point2(random.Between(-10, 10), random.Between(-10, 10)), random.Next(2) == 0 ? 0 : random.Between(-1, 1), "path")),
        isClosed);

    private static double Distance(Region area, Point2 p) => area.Loops.Min(l => l.DistanceTo(p));
}
