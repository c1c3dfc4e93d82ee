using BenchmarkDotNet.Attributes;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using TopLayout.Geometry;
using Flat = NetTopologySuite.Geometries.Geometry;

namespace TopLayout.Benchmarks;

/// <summary>
/// How time grows with the number of edges, beside straight copies in the same run: what both pay for memory that no cache holds shows in
/// both.
/// </summary>
[MemoryDiagnoser]
public class GrowthBenchmarks
{
    private Region _gear = Region.Empty;
    private Region _turned = Region.Empty;
    private Flat _flatGear = null!;
    private Flat _flatTurned = null!;

    [Params(1_000, 10_000, 100_000)]
    public int Edges { get; set; }

    [GlobalSetup]
    public void Make()
    {
        (_gear, _turned) = (Figures.Gear(Edges / 2), Figures.Gear(Edges / 2, 0.7));
        (_flatGear, _flatTurned) = (Figures.Flattened(_gear), Figures.Flattened(_turned));
    }

    [Benchmark]
    public double Union() => _gear.Union(_turned).Area;

    [Benchmark]
    public double UnionFlat() => OverlayNGRobust.Overlay(_flatGear, _flatTurned, SpatialFunction.Union).Area;

    [Benchmark]
    public double Offset() => _gear.Offset(0.4).Area;

    [Benchmark]
    public double OffsetFlat() => _flatGear.Buffer(0.4, quadrantSegments: 8).Area;
}
