using TopLayout.Benchmarks;
using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>
/// What an operation allocates is a count of what it makes: parts, nodes, cells, loops. It grows no faster than n log n; how the time
/// grows beside it is measured in the benchmarks, on the same figures, where caches count too.
/// </summary>
public class GrowthTests
{
    private const int Small = 1000;
    private const int Large = 30_000;

    [Fact]
    public void Union_OfGears_MakesNoMoreThanInProportion() =>
        AssertGrowth(edges => (Figures.Gear(edges), Figures.Gear(edges, 0.7)), pair => pair.Item1.Union(pair.Item2));

    [Fact]
    public void Offset_OfAGear_MakesNoMoreThanInProportion() => AssertGrowth(edges => Figures.Gear(edges), gear => gear.Offset(0.4));

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
}
