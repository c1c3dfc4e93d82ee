using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>The order in which free bars are built: in file order, but none before the bars that its points are told from.</summary>
internal static class FreeBarOrder
{
    // So many bars of a circle are named, and no more.
    private const int MostNamed = 6;

    /// <summary>The sections of the free bars in that order; bars that hang on each other in a circle are said and left out.</summary>
    public static IEnumerable<DesignSection> Of(Bench bench)
    {
        var sections = bench.Design.Each(FreeBars.Section);
        var needs = sections.Select(s => Needs(s, sections.Length, bench.Design.Units)).ToList();
        var hangers = needs.SelectMany((list, i) => list.Select(need => (need.Bar, Hanger: i))).ToLookup(n => n.Bar, n => n.Hanger);
        var open = needs.Select(n => n.Count).ToList();
        var isDone = new bool[sections.Length];
        var ready = new Queue<int>(Enumerable.Range(0, sections.Length).Where(i => open[i] == 0));
        for (var left = sections.Length; left > 0;)
        {
            var isCircle = ready.Count == 0;
            var next = isCircle ? Circle(needs, isDone) : [ready.Dequeue()];
            foreach (var bar in next)
            {
                (isDone[bar], left) = (true, left - 1);
            }

            if (isCircle)
            {
                var links = next.Take(MostNamed).Select((bar, i) => needs[bar].First(n => n.Bar == next[(i + 1) % next.Count]));
                SayCircle(bench, next.Count, [.. links.Select((link, i) => (sections[next[i]].Number, sections[link.Bar].Number, link.Place))]);
            }
            else
            {
                yield return sections[next[0]];
            }

            foreach (var hanger in next.SelectMany(bar => hangers[bar]))
            {
                if (--open[hanger] == 0 && !isDone[hanger])
                {
                    ready.Enqueue(hanger);
                }
            }
        }
    }

    // The free bars that a bar's points name, by index, and where. What cannot be read, or is not there, is said when the bar is built.
    private static List<(int Bar, SourcePlace Place)> Needs(DesignSection section, int count, LengthUnit units)
    {
        var found = new List<(int Bar, SourcePlace Place)>();
        foreach (var said in new[] { section.Find(FreeBars.From), section.Find(FreeBars.To) }.OfType<Sourced<string>>())
        {
            if (AnchorPhrase.Read(said.Value, units).Phrase?.Bar is { } bar && bar.Section == FreeBars.Section && bar.Number <= count)
            {
                found.Add((bar.Number - 1, said.Place));
            }
        }

        return [.. found.DistinctBy(f => f.Bar)];
    }

    // From the first bar that waits, along what each waits for, until one comes round again.
    private static List<int> Circle(List<List<(int Bar, SourcePlace Place)>> needs, bool[] isDone)
    {
        var (way, place) = (new List<int>(), new Dictionary<int, int>());
        for (var at = Array.IndexOf(isDone, false); ; at = needs[at].First(n => !isDone[n.Bar]).Bar)
        {
            if (!place.TryAdd(at, way.Count))
            {
                return way[place[at]..];
            }

            way.Add(at);
        }
    }

    private static void SayCircle(Bench bench, int count, IReadOnlyList<(int Bar, int On, SourcePlace Place)> links)
    {
        var chain = links.Select((l, i) => $"{Say.TheLast(FreeBars.NameOf(l.Bar))} {(i == 0 ? "hangs " : "")}on {Say.TheLast(FreeBars.NameOf(l.On))}");
        bench.LeaveOut(
            FreeBars.NameOf(links[0].Bar),
            count == 1
                ? $"{Say.TheLast(FreeBars.NameOf(links[0].Bar))} hangs on itself"
                : $"{string.Join(", ", chain)}{(count > MostNamed ? ", and so on round to the first" : "")}: none of them has a place",
            "tell the place of one of them from a landmark, or in numbers",
            [.. links.Select(l => l.Place)]);
    }
}
