using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>
/// What an operation allocates is a count of what it makes: parts, nodes, cells, loops. It grows no faster than n log n; how the time
/// grows beside it is measured in the benchmarks, where caches count too.
/// </summary>
public class GrowthTests
{
    private const int Small = 1000;
    private const int Large = 30_000;

    [Fact]
    public void Union_OfGears_MakesNoMoreThanInProportion() =>
        AssertGrowth(edges => (Gear(edges, 0), Gear(edges, 0.7)), pair => pair.Item1.Union(pair.Item2));

    [Fact]
    public void Offset_OfAGear_MakesNoMoreThanInProportion() => AssertGrowth(edges => Gear(edges, 0), gear => gear.Offset(0.4));

    private static void AssertGrowth<T>(Func<int, T> make, Func<T, Region> operation)
    {
        var (small, large) = (make(Small), make(Large));
        Assert.False(operation(small).IsEmpty);
        var ratio = (double)Allocated(() => operation(large)) / Allocated(() => operation(small));

        Assert.InRange(ratio, 1, (double)Large / Small * Math.Log(Large) / Math.Log(Small));
    }

    private static long Allocated(Func<Region> operation)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        GC.KeepAlive(operation());
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    // A toothed ring, half of its edges arcs, each 3 mm long.
    private static Region Gear(int edges, double turn)
    {
        var radius = edges * 3 / (2 * Math.PI);
        return Region.Inside(new Contour(
            Enumerable.Range(0, edges).Select(i => new Vertex(
                default(Point2) + (Trig.Direction(Angle.FromDegrees((i + turn) * 360 / edges)) * (radius + (i % 4 < 2 ? 1.5 : 0))),
                i % 2 == 0 ? 0.3 : 0,
                i % 2 == 0 ? "tip" : "flank")),
            isClosed: true));
    }
}
