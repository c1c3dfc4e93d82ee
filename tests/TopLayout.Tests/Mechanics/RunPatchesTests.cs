using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Tests.Mechanics;

/// <summary>How runs on neighbouring grain lines make patches.</summary>
public class RunPatchesTests
{
    // Two edges side by side along the grain that a third joins from 1 mm on: found edge by edge, read from left to right.
    [Fact]
    public void Patch_OfTwoClustersThatJoin_IsOneInOrderOfX()
    {
        var patches = new RunPatches();
        patches.Begin(floorMm: 5, onlyLongest: false);
        patches.BeginInterval();
        foreach (var run in new[] { new Stretch(0, 10), new Stretch(20, 30) })
        {
            patches.BeginCluster();
            patches.Add(0, [run]);
            patches.Add(1, [run]);
            patches.EndCluster();
        }

        patches.BeginInterval();
        patches.BeginCluster();
        patches.Add(1, [new Stretch(0, 30)]);
        patches.Add(2, [new Stretch(0, 30), new Stretch(40, 44)]);
        patches.EndCluster();
        patches.End();

        Assert.Equal(1, patches.Count);
        Assert.Equal([0, 0, 1, 1, 1, 2], patches[0].ToArray().Select(r => r.X));
    }

    [Fact]
    public void Patches_ApartAlongTheGrain_AreTwo()
    {
        var patches = new RunPatches();
        patches.Begin(floorMm: 5, onlyLongest: false);
        patches.BeginInterval();
        patches.BeginCluster();
        patches.Add(0, [new Stretch(0, 10), new Stretch(20, 30)]);
        patches.Add(1, [new Stretch(0, 12), new Stretch(18, 30)]);
        patches.EndCluster();
        patches.End();

        Assert.Equal(2, patches.Count);
        Assert.Equal([10, 12], patches[0].ToArray().Select(r => r.Run.High));
        Assert.Equal([20, 18], patches[1].ToArray().Select(r => r.Run.Low));
    }
}
