using BenchmarkDotNet.Attributes;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using TopLayout.Geometry;
using Flat = NetTopologySuite.Geometries.Geometry;

namespace TopLayout.Benchmarks;

/// <summary>Union, clip and offset on an outline with twenty bars and on regions of 1,000 edges, exact and on straight copies.</summary>
[MemoryDiagnoser]
public class AreaBenchmarks
{
    private readonly Region _body = Figures.Body();
    private readonly IReadOnlyList<Region> _bars = Figures.Bars();
    private readonly Region _gear = Figures.Gear(1000);
    private readonly Region _turned = Figures.Gear(1000, 0.7);
    private readonly Contour _line = new([new Vertex(new Point2(-900, -31)), new Vertex(new Point2(900, 17))], isClosed: false);
    private readonly Flat _flatBody = Figures.Flattened(Figures.Body());
    private readonly Flat[] _flatBars = [.. Figures.Bars().Select(Figures.Flattened)];
    private readonly Flat _flatGear = Figures.Flattened(Figures.Gear(1000));
    private readonly Flat _flatTurned = Figures.Flattened(Figures.Gear(1000, 0.7));
    private readonly Flat _flatLine;

    public AreaBenchmarks() => _flatLine = Figures.Flattened(_line);

    [Benchmark]
    public double UnionBarsExact() => Region.Union([_body, .. _bars]).Area;

    [Benchmark]
    public double UnionBarsFlat() => UnaryUnionNG.Union([_flatBody, .. _flatBars], new NetTopologySuite.Geometries.PrecisionModel()).Area;

    [Benchmark]
    public double ClipBarsExact() => _bars.Sum(b => _body.Intersect(b).Area);

    [Benchmark]
    public double ClipBarsFlat() => _flatBars.Sum(b => OverlayNGRobust.Overlay(_flatBody, b, SpatialFunction.Intersection).Area);

    [Benchmark]
    public double OffsetBodyExact() => _body.Offset(-2.1).Area;

    [Benchmark]
    public double OffsetBodyFlat() => _flatBody.Buffer(-2.1, quadrantSegments: 16).Area;

    [Benchmark]
    public double UnionGearsExact() => _gear.Union(_turned).Area;

    [Benchmark]
    public double UnionGearsFlat() => OverlayNGRobust.Overlay(_flatGear, _flatTurned, SpatialFunction.Union).Area;

    [Benchmark]
    public double ClipLineExact() => _gear.Clip(_line).Sum(c => c.Length);

    [Benchmark]
    public double ClipLineFlat() => OverlayNGRobust.Overlay(_flatGear, _flatLine, SpatialFunction.Intersection).Length;

    [Benchmark]
    public double OffsetGearExact() => _gear.Offset(0.4).Area;

    [Benchmark]
    public double OffsetGearFlat() => _flatGear.Buffer(0.4, quadrantSegments: 8).Area;
}
