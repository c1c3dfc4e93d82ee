using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>What operations on areas owe each other and the points of the plane, on seeded pairs of every hard kind.</summary>
public class RegionPropertyTests
{
    private const double ClearMm = 2 * Tolerances.ShortestMm;

    private static (Region A, Region B) Pair(Random random) => HardPairs.Make(random.Pick(HardPairs.Kinds), random);

    private static Region Third(Random random) => HardPairs.Blob(random).Placed(HardPairs.Frame(random));

    private static double Scale(params Region[] regions) => Math.Max(1, regions.Sum(r => r.Area));

    private static double Edge(params Region[] regions) => regions.SelectMany(r => r.Edges).Sum(e => e.Length);

    // Points round the borders, clear of what short edges and touching borders may move.
    private static IEnumerable<Point2> Points(Random random, params Region[] regions)
    {
        var edges = regions.SelectMany(r => r.Edges).ToList();
        for (var k = 0; k < 25 && edges.Count > 0; k++)
        {
            var p = edges[random.Next(edges.Count)].PointAt(random.NextDouble()) + new Vec2(random.Between(-2, 2), random.Between(-2, 2));
            if (edges.TrueForAll(e => e.DistanceTo(p) > ClearMm))
            {
                yield return p;
            }
        }
    }

    private static void Same(Region expected, Region actual, Random random, string what, params Region[] operands)
    {
        // A border within the touch distance of another's may be either.
        Check.Near(expected.Area, actual.Area, (1e-6 * Scale(operands)) + (2 * Tolerances.TouchMm * Edge(operands)), what);
        foreach (var p in Points(random, operands))
        {
            Assert.True(expected.Contains(p) == actual.Contains(p), $"{what} at {p}");
        }
    }

    [Fact]
    public void Points_LieInAResult_AsTheyLieInTheOperands() => Trials.Run(3000, random =>
    {
        var (a, b) = Pair(random);
        var (union, common, less) = (a.Union(b), a.Intersect(b), a.Subtract(b));
        foreach (var p in Points(random, a, b))
        {
            var (inA, inB) = (a.Contains(p), b.Contains(p));
            Assert.True(union.Contains(p) == (inA || inB), $"union at {p}");
            Assert.True(common.Contains(p) == (inA && inB), $"intersection at {p}");
            Assert.True(less.Contains(p) == (inA && !inB), $"difference at {p}");
        }
    });

    [Fact]
    public void Pieces_PutTogether_RestoreTheWhole() => Trials.Run(2000, random =>
    {
        var (a, b) = Pair(random);
        var (common, onlyA, onlyB) = (a.Intersect(b), a.Subtract(b), b.Subtract(a));

        Same(a, onlyA.Union(common), random, "A from its pieces", a, b);
        Same(a.Union(b), Region.Union([onlyA, common, onlyB]), random, "union from three pieces", a, b);
        Same(a, a.Union(b).Subtract(onlyB), random, "A from the union", a, b);
        Same(Region.Empty, onlyA.Intersect(b), random, "nothing of B in A less B", a, b);
    });

    [Fact]
    public void ThreeOperands_InAnyOrderAndGrouping_GiveTheSame() => Trials.Run(1500, random =>
    {
        var (a, b) = Pair(random);
        var c = Third(random);

        Same(Region.Union([a, b, c]), Region.Union([c, a, b]), random, "union in another order", a, b, c);
        Same(Region.Union([a, b, c]), a.Union(b).Union(c), random, "union one by one", a, b, c);
        Same(a.Intersect(b).Intersect(c), c.Intersect(b).Intersect(a), random, "intersection in another order", a, b, c);
        Same(a.Subtract(b.Union(c)), a.Subtract(c).Subtract(b), random, "difference one by one", a, b, c);
        Same(a.Subtract(b.Intersect(c)), a.Subtract(b).Union(a.Subtract(c)), random, "difference of what is common", a, b, c);
        Same(a.Intersect(b.Union(c)), a.Intersect(b).Union(a.Intersect(c)), random, "intersection spread over a union", a, b, c);
    });

    [Fact]
    public void Results_PutInAgain_ComeBackAsTheyAre() => Trials.Run(1500, random =>
    {
        var (a, b) = Pair(random);
        var union = a.Union(b);

        Same(union, union.Union(union), random, "union with itself", a, b);
        Same(union, union.Union(a), random, "union with a part", a, b);
        Same(a, a.Intersect(union), random, "intersection with the whole", a, b);
    });

    [Fact]
    public void ReversedOrMirroredTwice_IsTheSame() => Trials.Run(2000, random =>
    {
        var c = RandomCurves.Contour(random, isClosed: true);
        var (a, _) = Pair(random);
        var mirror = Placement.MirroredAcrossY;

        Assert.Equal(c, c.Reversed().Reversed());
        Assert.Equal(a.Loops.AsEnumerable(), a.Placed(mirror).Placed(mirror).Loops);
        var (covered, reversed) = (Region.Covered(c), Region.Covered(c.Reversed()));
        Check.Near(covered.Area, reversed.Area, 1e-6 * Scale(covered), "covered by the reversed loop");
        foreach (var p in Points(random, Region.Between(c)))
        {
            Assert.True(covered.Contains(p) == (c.WindingNumber(p) != 0), $"covered at {p}");
            Assert.True(reversed.Contains(p) == (c.WindingNumber(p) != 0), $"covered by the reversed loop at {p}");
        }
    });

    // Growing then shrinking loses nothing of the area and shrinking then growing adds nothing; done again, neither changes anything.
    [Fact]
    public void Offset_OutAndIn_OnlyFillsAndInAndOut_OnlyTakes() => Trials.Run(800, random =>
    {
        var (a, _) = Pair(random);
        var mm = random.Between(0.1, 2);
        var (closed, opened) = (a.Offset(mm).Offset(-mm), a.Offset(-mm).Offset(mm));
        var tolerance = Tolerances.ShortestMm * Edge(a, closed, opened);

        Check.Near(0, a.Subtract(closed).Area, tolerance * 0.1, "lost by closing");
        Check.Near(0, opened.Subtract(a).Area, tolerance * 0.1, "added by opening");
        Check.Near(closed.Area, closed.Offset(mm).Offset(-mm).Area, tolerance, "closed twice");
        Check.Near(opened.Area, opened.Offset(-mm).Offset(mm).Area, tolerance, "opened twice");
        foreach (var p in Points(random, a, closed, opened))
        {
            Assert.True(closed.Contains(p) || !a.Contains(p), $"lost by closing at {p}");
            Assert.True(a.Contains(p) || !opened.Contains(p), $"added by opening at {p}");
        }
    });

    // A convex polygon shrunk by less than its edges allow and grown with mitres is itself again.
    [Fact]
    public void Offset_InThenOutWithMitres_RestoresAConvexPolygon() => Trials.Run(1000, random =>
    {
        var count = random.Next(3, 8);
        var polygon = Region.Inside(Contour.Polygon(Enumerable.Range(0, count).Select(i =>
            default(Point2) + (Trig.Direction(Angle.FromDegrees((i + random.Between(0, 0.4)) * 360 / count)) * 10)))).Placed(HardPairs.Frame(random));
        var mm = random.Between(0.05, 0.8);

        SameLoops.Assert(polygon.Union(Region.Empty), polygon.Offset(-mm).Offset(mm, Corner.Mitre(Corner.LargestMitreLimit)), 1e-7);
    });

    [Fact]
    public void Split_AlongAnyPathEitherWay_SharesOutTheWhole() => Trials.Run(1500, random =>
    {
        var (a, _) = Pair(random);
        var path = HardPairs.Blob(random) is { IsEmpty: false } blob && random.Next(3) == 0 ? blob.Outer : Path(random, a);
        var (parts, back) = (a.Split(path), a.Split(path.Reversed()));

        Check.Near(a.Area, parts.Sum(p => p.Area), (1e-6 * Scale(a)) + (2 * Tolerances.TouchMm * Edge(a)), "sum of the parts");
        Assert.Equal(parts.Count, back.Count);
        Check.Near(0, parts.Zip(back, (p, q) => Math.Abs(p.Area - q.Area)).DefaultIfEmpty().Max(), 1e-6 * Scale(a), "parts along the reversed path");
        foreach (var p in Points(random, a, Region.Between(path.IsClosed ? path : new Contour(path.Vertices, isClosed: true))))
        {
            Assert.True(parts.Count(part => part.Contains(p)) == (a.Contains(p) ? 1 : 0), $"parts at {p}");
        }
    });

    // Lengths inside and outside make up the whole path, either way along it.
    [Fact]
    public void Clip_ByAnAreaAndByItsSurroundings_SharesOutThePath() => Trials.Run(1500, random =>
    {
        var (a, _) = Pair(random);
        var path = Path(random, a);
        var around = Region.Inside(Contour.Circle(default, 500)).Subtract(a);
        var inside = a.Clip(path).Sum(c => c.Length);

        Check.Near(path.Length, inside + around.Clip(path).Sum(c => c.Length), 20 * Tolerances.ShortestMm, "inside and outside");
        Check.Near(inside, a.Clip(path.Reversed()).Sum(c => c.Length), Tolerances.ShortestMm, "the reversed path");
    });

    [Fact]
    public void Frame_MovedTurnedAndMirrored_MovesOffsetsSplitsClipsAndBands() => Trials.Run(1000, random =>
    {
        var area = HardPairs.Blob(random);
        var frame = HardPairs.Frame(random);
        var (path, mm) = (Path(random, area), random.Between(-1.5, 2));
        var corner = random.Pick(Corner.Round, Corner.Mitre());
        var there = area.Placed(frame);

        Moved(area.Offset(mm, corner), there.Offset(mm, corner), "offset");
        Moved(path.Band(1, BandEnd.Flat, corner), path.Placed(frame).Band(1, BandEnd.Flat, corner), "band");
        Check.Near(area.Clip(path).Sum(c => c.Length), there.Clip(path.Placed(frame)).Sum(c => c.Length), 1e-6, "clip");
        var (parts, moved) = (area.Split(path), there.Split(path.Placed(frame)));
        Assert.Equal(parts.Count, moved.Count);
        Check.Near(0, parts.Select(p => p.Area).Order().Zip(moved.Select(p => p.Area).Order(), (p, q) => Math.Abs(p - q)).DefaultIfEmpty().Max(), 1e-6, "parts");

        void Moved(Region here, Region other, string what)
        {
            Check.Near(here.Area, other.Area, 1e-6 * Scale(here), what);
            foreach (var p in Points(random, here))
            {
                Assert.True(here.Contains(p) == other.Contains(frame.Apply(p)), $"{what} at {p}");
            }
        }
    });

    // Any path about the area, its ends inside or outside.
    private static Contour Path(Random random, Region area)
    {
        var box = (area.IsEmpty ? Third(random) : area).Bounds;
        var (center, reach) = (box.Center, Math.Max(box.Width, box.Height));
        var vertices = Enumerable.Range(0, random.Next(2, 6)).Select(_ => new Vertex(
            center + new Vec2(random.Between(-reach, reach), random.Between(-reach, reach)), random.Next(2) == 0 ? 0 : random.Between(-0.8, 0.8), "cut"));
        return new Contour(vertices, isClosed: false);
    }
}
