using BenchmarkDotNet.Attributes;
using TopLayout.Geometry;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Benchmarks;

/// <summary>The whole grain check of the auditorium in memory, and on top of it cleats in rows on a field that grows with their number.</summary>
[MemoryDiagnoser]
public class GrainBenchmarks
{
    private const double PitchMm = 40;
    private Layout _layout = null!;

    [Params(0, 100, 1_000, 10_000)]
    public int Cleats { get; set; }

    [GlobalSetup]
    public void Make()
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "auditorium.toml"));
        var layout = LayoutBuilder.Build(DesignReader.Read(text, "auditorium.toml", Parameters.Table).Design!).Layout!;
        _layout = new Layout
        {
            Design = layout.Design,
            Top = layout.Top,
            SkewBass = layout.SkewBass,
            SkewTreble = layout.SkewTreble,
            Body = layout.Body,
            InsideOfSides = layout.InsideOfSides,
            LiningLine = layout.LiningLine,
            Frets = layout.Frets,
            Saddle = layout.Saddle,
            Hole = layout.Hole,
            Members = [.. layout.Members, .. Enumerable.Range(0, Cleats).Select(i => Cleat(i, layout))],
        };
    }

    [Benchmark]
    public int Check() => GrainCheck.Of(_layout).Findings.Length;

    [Benchmark]
    public int CheckAndProfile() => GrainCheck.Of(_layout).Profile.Length;

    // A turned square with one rounded corner, below the body.
    private Member Cleat(int i, Layout layout)
    {
        var row = (int)Math.Ceiling(Math.Sqrt(Cleats));
        var middle = new Point2(PitchMm * ((i % row) - (row / 2.0)), -600 - (PitchMm * (i / row)));
        var turn = new Placement(middle - default(Point2), Angle.FromDegrees(37 * i % 90), false);
        var outline = new Contour(
            [new Vertex(new Point2(-8, -8)), new Vertex(new Point2(8, -8)), new Vertex(new Point2(8, 4), 0.4), new Vertex(new Point2(4, 8)), new Vertex(new Point2(-8, 8))],
            isClosed: true);
        return new Member
        {
            Name = $"cleat {i}",
            Kind = MemberKind.Plate,
            Face = TopFace.Inside,
            Footprint = Region.Inside(outline.Placed(turn)),
            ThicknessMm = 2.5,
            Material = new Material(layout.Top.Wood, GrainLie.InPlane, Sawing.Quarter),
            Grain = turn.Rotation,
            Places = [layout.Members[0].Places[0]],
        };
    }
}
