using BenchmarkDotNet.Attributes;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using TopLayout.Geometry;
using Flat = NetTopologySuite.Geometries.Geometry;

namespace TopLayout.Benchmarks;

/// <summary>
/// How time grows with the number of edges, beside straight copies in the same run, and beside a sort of the edges by the place they
/// start at: n log n by the book, whose growth by the clock tells what caches and foreseen branches make of n log n here.
/// </summary>
[MemoryDiagnoser]
public class GrowthBenchmarks
{
    private const int Seed = 20261;
    private static readonly Comparison<Record> ByX = (a, b) => a.Edge.Start.X.CompareTo(b.Edge.Start.X);

    private Region _gear = Region.Empty;
    private Region _turned = Region.Empty;
    private Flat _flatGear = null!;
    private Flat _flatTurned = null!;
    private Record[] _shuffled = [];

    [Params(1_000, 10_000, 100_000)]
    public int Edges { get; set; }

    [GlobalSetup]
    public void Make()
    {
        (_gear, _turned) = (Figures.Gear(Edges / 2), Figures.Gear(Edges / 2, 0.7));
        (_flatGear, _flatTurned) = (Figures.Flattened(_gear), Figures.Flattened(_turned));
        _shuffled = [.. _gear.Edges.Select(e => new Record(e))];
        new Random(Seed).Shuffle(_shuffled);
    }

    [Benchmark]
    public double Union() => _gear.Union(_turned).Area;

    [Benchmark]
    public double UnionFlat() => OverlayNGRobust.Overlay(_flatGear, _flatTurned, SpatialFunction.Union).Area;

    [Benchmark]
    public double Offset() => _gear.Offset(0.4).Area;

    [Benchmark]
    public double OffsetFlat() => _flatGear.Buffer(0.4, quadrantSegments: 8).Area;

    [Benchmark]
    public object Sort()
    {
        var sorted = (Record[])_shuffled.Clone();
        Array.Sort(sorted, ByX);
        return sorted;
    }

    private sealed record Record(Segment Edge);
}
