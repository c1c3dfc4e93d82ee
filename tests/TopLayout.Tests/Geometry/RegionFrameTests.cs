using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>What must not change a result: the order of operands, a rigid move, a mirror; and labels, which must survive.</summary>
public class RegionFrameTests
{
    // Pairs whose contacts lie clear of the tolerances; there a result is the same to 1e-7 in any frame.
    private static readonly string[] Clear = ["general", "shared edge", "coincident arcs", "full circles"];

    // Labels are taken off: of coincident edges the first operand's label stays, and only edges of one label are joined.
    [Fact]
    public void Operands_InEitherOrder_GiveTheSame() => Trials.Run(2000, random =>
    {
        var (a, b) = HardPairs.Make(random.Pick(HardPairs.Kinds), random);
        (a, b) = (Unlabelled(a), Unlabelled(b));

        SameLoops.Assert(a.Union(b), b.Union(a), 1e-7);
        SameLoops.Assert(a.Intersect(b), b.Intersect(a), 1e-7);
        Check.Near(a.Union(b).Area, b.Union(a).Area, 1e-9 * Math.Max(1, a.Area + b.Area), "union");
    });

    [Fact]
    public void Results_AreTheSame_OnASecondRun() => Trials.Run(200, random =>
    {
        var (a, b) = HardPairs.Make(random.Pick(HardPairs.Kinds), random);

        Assert.Equal(a.Union(b).Loops.AsEnumerable(), a.Union(b).Loops);
    });

    [Fact]
    public void Frame_MovedTurnedAndMirrored_MovesTheResult()
    {
        var different = 0;
        Trials.Run(2000, random =>
        {
            var (a, b) = HardPairs.Make(random.Pick(Clear), random);
            var frame = HardPairs.Frame(random);
            foreach (var operation in (Func<Region, Region, Region>[])[(x, y) => x.Union(y), (x, y) => x.Intersect(y), (x, y) => x.Subtract(y)])
            {
                var (here, there) = (operation(a, b).Placed(frame), operation(a.Placed(frame), b.Placed(frame)));
                if (Math.Abs(here.Area - there.Area) > 1e-9 * Math.Max(1, here.Area))
                {
                    different++;
                    Check.Near(here.Area, there.Area, Tolerances.ShortestMm * here.Edges.Sum(e => e.Length), "area");
                }
                else
                {
                    SameLoops.Assert(here, there, 1e-7);
                }
            }
        });

        // Where an edge is as long as the shortest length allowed, the last digit decides whether it stays.
        Assert.True(different <= 6, $"{different} of 6000 results differ");
    }

    [Fact]
    public void Labels_OfEveryOperation_AreThoseOfTheEdgesTheyLieOn() => Trials.Run(2000, random =>
    {
        var (a, b) = HardPairs.Make(random.Pick(Clear), random);
        foreach (var result in (Region[])[a.Union(b), a.Intersect(b), a.Subtract(b)])
        {
            foreach (var edge in result.Edges)
            {
                var p = edge.PointAt(0.5);
                Assert.Contains(a.Edges.Concat(b.Edges), e => e.Label == edge.Label && e.DistanceTo(p) <= Tolerances.ShortestMm);
            }
        }
    });

    [Fact]
    public void Union_OfSharedEdge_KeepsTheFirstLabelAndJoinsCollinearEdges()
    {
        var union = HardPairs.Rectangle(0, 0, 5, 4, "side").Union(HardPairs.Rectangle(5, 0, 9, 4, "side"));

        Assert.Equal(4, union.Edges.Count());
        Assert.Equal(new Point2(0, 0), union.Outer.Vertices[0].Position);
        Assert.Equal(["first", "first", "first", "first"], HardPairs.Disc(0, 0, 3, "first").Union(HardPairs.Disc(0, 0, 3, "second")).Edges.Concat(HardPairs.Disc(0, 0, 3, "first").Intersect(HardPairs.Disc(0, 0, 3, "second")).Edges).Select(e => e.Label));
    }

    [Fact]
    public void Results_HaveNoNegativeZero() => Trials.Run(500, random =>
    {
        var (a, b) = HardPairs.Make(random.Pick(HardPairs.Kinds), random);

        Assert.All(a.Subtract(b).Edges, e => Assert.False(e.Bulge == 0 && double.IsNegative(e.Bulge)));
    });

    private static Region Unlabelled(Region region) => region.IsEmpty ? region
        : Region.Between(region.Outer.Labelled(""), region.Loops.Skip(1).Where(l => l.SignedArea < 0).Select(l => l.Labelled("")));
}
