using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Union, intersection and difference on pairs made to be hard; the seed of a failing pair stands in the message.</summary>
public class RegionAlgebraTests
{
    private const int Pairs = 10_000;

    // Per cent of the pairs in which some edge falls under the shortest length, so that an area may change by that length times the border.
    public static TheoryData<string, int> Kinds => new()
    {
        { "general", 2 },
        { "shared edge", 0 },
        { "coincident arcs", 0 },
        { "tangent circles", 1 },
        { "tangent line", 6 },
        { "touching vertex", 2 },
        { "near tangent", 8 },
        { "full circles", 0 },
        { "tiny segments", 5 },
        { "hole touches outline", 10 },
        { "turned copy", 25 },
        { "moved copy", 35 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Algebra_OfHardPairs_KeepsAreasAndStaysValid(string kind, int shortPercent)
    {
        var inexact = 0;
        for (var seed = 0; seed < Pairs; seed++)
        {
            var (a, b) = HardPairs.Make(kind, new Random(seed));
            var (union, common, less, other) = (a.Union(b), a.Intersect(b), a.Subtract(b), b.Subtract(a));
            foreach (var region in (Region[])[union, common, less, other])
            {
                Assert.True(RegionValidity.FirstFault(region) is not { } fault, $"{kind}, seed {seed}: {RegionValidity.FirstFault(region)}");
            }

            var off = Math.Max(
                Math.Abs(union.Area + common.Area - a.Area - b.Area),
                Math.Max(Math.Abs(less.Area + common.Area - a.Area), Math.Abs(other.Area + common.Area - b.Area)));
            inexact += off > 1e-6 * (a.Area + b.Area) ? 1 : 0;
            var border = new[] { union, common, less, other }.Sum(r => r.Edges.Sum(e => e.Length));
            Check.Near(0, off, (1e-6 * (a.Area + b.Area)) + (Tolerances.ShortestMm * border), $"{kind}, seed {seed}: area");
        }

        Assert.True(inexact * 100 <= Pairs * shortPercent, $"{kind}: {inexact} of {Pairs} areas are off by more than 1e-6");
    }
}
