using BenchmarkDotNet.Attributes;
using TopLayout.Drawing;
using TopLayout.Drawing.Dxf;
using TopLayout.Drawing.Svg;
using TopLayout.Geometry;

namespace TopLayout.Benchmarks;

/// <summary>
/// A drawing of some 600 lines and arcs with nothing judged and no label placed, as any drawing library makes it: an outline of eight arcs,
/// a hole, six rings, 120 tiles, 16 bars clipped to the outline, 40 words at fixed places. Built, and written as DXF and SVG.
/// </summary>
[MemoryDiagnoser]
public class PlainDrawingBenchmarks
{
    private static readonly Point2 Hole = new(0, 240);
    private static readonly Region Body = Figures.Body();

    private readonly Sheet _sheet = Built();

    [Benchmark]
    public Sheet Build() => Built();

    [Benchmark]
    public long Dxf()
    {
        using var bytes = new MemoryStream();
        DxfWriter.Write(_sheet, bytes);
        return bytes.Length;
    }

    [Benchmark]
    public long Svg()
    {
        using var bytes = new MemoryStream();
        SvgWriter.Write(_sheet, bytes);
        return bytes.Length;
    }

    private static Sheet Built()
    {
        List<Shape> shapes = [new ContourShape("outline", Role.Mark, Body.Outer), new ContourShape("hole", Role.Cut, Contour.Circle(Hole, 49))];
        shapes.AddRange(Enumerable.Range(0, 6).Select(i => new ContourShape($"ring {i + 1}", Role.Mark, Contour.Circle(Hole, 52 + (3 * i)))));
        shapes.AddRange(Enumerable.Range(0, 120).Select(i => new ContourShape("tiles", Role.Engrave, Tile(52.25 + (3 * (i / 20)), i % 20))));
        foreach (var (number, bar) in Figures.Bars().Take(16).Index())
        {
            shapes.AddRange(bar.Intersect(Body).Loops.Select(l => new ContourShape($"bar {number + 1}", Role.Mark, l)));
        }

        shapes.AddRange(Enumerable.Range(0, 40).Select(i => new LabelShape("words", Role.Text, $"word {i + 1}", new Point2(-400, 10 * i), 3)));
        return Sheet.Around("plain", "Plain", "A drawing to measure.", shapes);
    }

    private static Contour Tile(double radius, int number)
    {
        Point2 At(double r, double degrees) => Hole + (Trig.Direction(Angle.FromDegrees(degrees)) * r);
        var (from, to, turn) = (18.0 * number, (18.0 * number) + 17, Math.Tan(17 * Math.PI / 720));
        return new Contour(
            [
                new Vertex(At(radius, from)), new Vertex(At(radius + 2.5, from), turn), new Vertex(At(radius + 2.5, to)), new Vertex(At(radius, to), -turn),
            ],
            isClosed: true);
    }
}
