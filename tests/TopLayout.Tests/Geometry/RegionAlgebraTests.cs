using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Union, intersection and difference on pairs made to be hard; the seed of a failing pair stands in the message.</summary>
public class RegionAlgebraTests
{
    private const int Pairs = 10_000;

    // Of copies moved by less than the touch distance, borders that near become one; elsewhere no pair may miss 1e-6.
    private static readonly string[] MayTouchThroughout = ["turned copy", "moved copy"];

    public static TheoryData<string> Kinds => [.. HardPairs.Kinds];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Algebra_OfHardPairs_KeepsAreasAndStaysValid(string kind)
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
            var touched = MayTouchThroughout.Contains(kind) ? Tolerances.TouchMm * a.Edges.Concat(b.Edges).Sum(e => e.Length) : 0;
            Check.Near(0, off, (1e-6 * (a.Area + b.Area)) + touched, $"{kind}, seed {seed}: area");
        }

        Assert.True(inexact * 1000 <= Pairs, $"{kind}: {inexact} of {Pairs} areas are off by more than 1e-6");
    }
}
