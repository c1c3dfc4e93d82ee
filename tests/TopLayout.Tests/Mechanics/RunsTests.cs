using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Tests.Mechanics;

/// <summary>From stretches on one line to runs, by hand: a merging gap of 5 mm.</summary>
public class RunsTests
{
    private readonly Runs _runs = new(mergeGapMm: 5);

    private List<(double, double)> Found(params (bool IsSupported, double Low, double High)[] stretches)
    {
        _runs.Clear();
        foreach (var (isSupported, low, high) in stretches)
        {
            _runs.Add(isSupported, low, high);
        }

        var found = new List<Stretch>();
        _runs.Into(found);
        return found.ConvertAll(s => (s.Low, s.High));
    }

    [Fact]
    public void Runs_OverAShortGap_AreOne() => Assert.Equal([(0, 20)], Found((false, 14, 20), (false, 0, 10)));

    [Fact]
    public void Runs_OverALongGap_AreTwo() => Assert.Equal([(0, 10), (15.1, 20)], Found((false, 15.1, 20), (false, 0, 10)));

    [Fact]
    public void Runs_OverAShortGapThatHoldsSupport_AreTwo() =>
        Assert.Equal([(0, 10), (14, 20)], Found((false, 0, 10), (true, 11, 13), (false, 14, 20)));

    [Fact]
    public void Runs_WhereSupportLiesOnThem_AreCut() =>
        Assert.Equal([(0, 4), (9, 20)], Found((false, 0, 20), (true, 4, 8), (true, 7, 9)));

    [Fact]
    public void MakeUp_ChangesWhereRunsJoinOrSupportPassesAnEnd()
    {
        int MakeUpOf(params (bool, double, double)[] stretches)
        {
            Found(stretches);
            return _runs.MakeUp;
        }

        Assert.Equal(MakeUpOf((false, 0, 10), (false, 14, 20)), MakeUpOf((false, 1, 9), (false, 12, 30)));
        Assert.NotEqual(MakeUpOf((false, 0, 10), (false, 14, 20)), MakeUpOf((false, 0, 10), (false, 16, 20)));
        Assert.NotEqual(MakeUpOf((false, 0, 10), (true, 9, 12)), MakeUpOf((false, 0, 10), (true, 10.5, 12)));
        Assert.NotEqual(MakeUpOf((false, 0, 10), (true, -1, 2)), MakeUpOf((false, 0, 10), (true, 1, 2)));
    }
}
