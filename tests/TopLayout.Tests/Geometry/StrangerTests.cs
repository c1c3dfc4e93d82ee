using NetTopologySuite.Operation.Overlay;
using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Areas of results against a stranger's, within what flattening may cost: tolerance times border.</summary>
public class StrangerTests
{
    private const double FlatMm = 1e-4;
    private const int Pairs = 40;

    public static TheoryData<string> Kinds => [.. HardPairs.Kinds];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Algebra_OfHardPairs_HasTheStrangersAreas(string kind)
    {
        var inexact = 0;
        Trials.Run(Pairs, random =>
        {
            var (a, b) = HardPairs.Make(kind, random);
            var (p, q) = (Stranger.Flattened(a, FlatMm), Stranger.Flattened(b, FlatMm));
            var border = a.Edges.Concat(b.Edges).Sum(e => e.Length);
            foreach (var (ours, how) in ((Region, SpatialFunction)[])
                [(a.Union(b), SpatialFunction.Union), (a.Intersect(b), SpatialFunction.Intersection), (a.Subtract(b), SpatialFunction.Difference)])
            {
                var theirs = Stranger.Combine(p, q, how).Area;
                Check.Near(theirs, ours.Area, (FlatMm + Tolerances.ShortestMm) * border, how.ToString());
                inexact += Math.Abs(theirs - ours.Area) > FlatMm * border ? 1 : 0;
            }
        });

        // The rest have an edge that fell under the shortest length.
        Assert.True(inexact <= 3 * Pairs / 20, $"{inexact} of {3 * Pairs} areas are off by more than flattening explains");
    }

    [Fact]
    public void Offset_OfBlobs_HasTheStrangersArea() => Trials.Run(60, random =>
    {
        var (area, mm) = (HardPairs.Blob(random), random.Between(-2, 3));
        var theirs = Stranger.Offset(Stranger.Flattened(area, FlatMm), mm);

        // 200 chords a quarter turn stay within r(1 − cos(π/800)) = 7.7e-6 r of the arc.
        var border = area.Edges.Concat(area.Offset(mm).Edges).Sum(e => e.Length);
        Check.Near(theirs.Area, area.Offset(mm).Area, border * (FlatMm + 3e-5), "offset");
    });
}
