using BenchmarkDotNet.Attributes;
using TopLayout.Geometry;

namespace TopLayout.Benchmarks;

/// <summary>How time grows with the number of edges: twice as many edges should take little more than twice as long.</summary>
public class GrowthBenchmarks
{
    private Region _gear = Region.Empty;
    private Region _turned = Region.Empty;

    [Params(1_000, 10_000, 100_000)]
    public int Edges { get; set; }

    [GlobalSetup]
    public void Make() => (_gear, _turned) = (Figures.Gear(Edges / 2), Figures.Gear(Edges / 2, 0.7));

    [Benchmark]
    public double Union() => _gear.Union(_turned).Area;

    [Benchmark]
    public double Offset() => _gear.Offset(0.4).Area;
}
