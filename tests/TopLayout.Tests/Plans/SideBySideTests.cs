using TopLayout.Plans;

namespace TopLayout.Tests.Plans;

public class SideBySideTests
{
    [Fact]
    public void Each_JobsThatEndLastFirst_AnswersInTheOrderOfTheItems()
    {
        var items = Enumerable.Range(0, 40).ToArray();

        var answers = SideBySide.Each(items, i =>
        {
            Thread.SpinWait(1000 * (40 - i));
            return i * i;
        });

        Assert.Equal(items.Select(i => i * i), answers);
    }

    [Fact]
    public void Each_TellsEveryItemOnceAndCountsThem()
    {
        var (told, counts) = (new List<string>(), new List<int>());

        SideBySide.Each(["a", "b", "c", "d"], s => s, (item, n) =>
        {
            told.Add(item);
            counts.Add(n);
        });

        Assert.Equal(["a", "b", "c", "d"], told.Order());
        Assert.Equal([1, 2, 3, 4], counts);
    }

    [Fact]
    public void Each_WithAMost_RunsNoMoreAtOnce()
    {
        var (running, most) = (0, 0);

        SideBySide.Each(
            Enumerable.Range(0, 50).ToArray(),
            i =>
            {
                var now = Interlocked.Increment(ref running);
                most = Math.Max(most, now);
                Thread.Sleep(1);
                return Interlocked.Decrement(ref running);
            },
            most: 1);

        Assert.Equal(1, most);
    }

    [Fact]
    public void Each_AJobThatFails_ThrowsItsExceptionAsItIs()
    {
        var thrown = Assert.Throws<InvalidDataException>(() => SideBySide.Each([1, 2, 3], i => i == 2 ? throw new InvalidDataException("two") : i));

        Assert.Equal("two", thrown.Message);
    }

    [Fact]
    public void Each_OfNothing_IsNothing() => Assert.Empty(SideBySide.Each(Array.Empty<int>(), i => i));
}
