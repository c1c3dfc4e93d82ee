using BenchmarkDotNet.Attributes;
using TopLayout.Drawing;
using TopLayout.Drawing.Dxf;
using TopLayout.Drawing.Svg;
using TopLayout.Plans;

namespace TopLayout.Benchmarks;

/// <summary>The auditorium from its text to the bytes of both plans as DXF and SVG, in memory; and the stages by themselves.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private static readonly DrawOptions BothPlans = DrawOptions.Default with { Only = ["outside-plan", "inside-plan"] };

    private readonly string _text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "auditorium.toml"));
    private ReviewedTop _top = null!;
    private Sheet[] _plans = [];

    [GlobalSetup]
    public void Make()
    {
        _top = Pipeline.Check(_text, "auditorium.toml").Top!;
        _plans = Plans(_top);
    }

    [Benchmark]
    public long TextToPlans() => Write(Plans(Pipeline.Check(_text, "auditorium.toml").Top!));

    [Benchmark]
    public object CheckOnly() => Pipeline.Check(_text, "auditorium.toml");

    [Benchmark]
    public object SheetsOnly() => Plans(_top);

    [Benchmark]
    public long WriteOnly() => Write(_plans);

    private static Sheet[] Plans(ReviewedTop top) => [.. Pipeline.Sheets(top, BothPlans).Select(s => s.Sheet)];

    private static long Write(Sheet[] plans)
    {
        List<Action<Stream>> files = [.. plans.SelectMany(p => (Action<Stream>[])[s => DxfWriter.Write(p, s), s => SvgWriter.Write(p, s)])];
        return SideBySide.Each(files, f => OutputFile.Written("plan", f)).Sum(f => f.Content.LongLength);
    }
}
