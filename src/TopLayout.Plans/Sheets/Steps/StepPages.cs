using System.Collections.Immutable;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>
/// How the tables of a step are shared out over its pages: as few as may be, and never a last page with next to nothing on it, nor fewer than
/// three rows of a table before or after a break.
/// </summary>
internal static class StepPages
{
    /// <summary>Rows that a page after the first should have at least.</summary>
    public const int LeastRows = 3;

    /// <summary>Between two tables, mm.</summary>
    public const double GapMm = 4;

    private const int LeastTogether = 3;

    /// <summary>Height that a page with another after it may leave free, mm.</summary>
    private const double FreeMm = 30;

    /// <summary>The tables of every page: with closer rows where that saves a page, or fills the first.</summary>
    /// <param name="step">The step.</param>
    /// <param name="firstMm">Height for tables on the first page, mm.</param>
    /// <param name="nextMm">Height on every other page, mm.</param>
    public static IReadOnlyList<ImmutableArray<StepTable>> Of(Step step, double firstMm, double nextMm) =>
        ((bool[])[false, true]).Select(isTight => Shared(step.Tables(isTight), firstMm, nextMm)).MinBy(p => (p.Count, Rows(p[^1]) < LeastRows, IsFirstEmpty(p, firstMm)))!;

    private static bool IsFirstEmpty(List<ImmutableArray<StepTable>> pages, double firstMm) => pages.Count > 1 && firstMm - pages[0].Sum(t => t.HeightMm + GapMm) > FreeMm;

    // What the last page lacks is taken off the page before it, where that keeps as many itself.
    private static List<ImmutableArray<StepTable>> Shared(IEnumerable<StepTable> tables, double firstMm, double nextMm)
    {
        var all = tables.ToList();
        var pages = Filled(all, firstMm, nextMm, null);
        for (var lacking = 1; pages.Count > 1 && Rows(pages[^1]) < LeastRows && lacking < LeastRows; lacking++)
        {
            var before = pages.Count - 2;
            var kept = Rows(pages[before]) - 1;
            var moved = Filled(all, firstMm, nextMm, (before, kept));
            if (kept < LeastRows || moved.Count > pages.Count)
            {
                break;
            }

            pages = moved;
        }

        return pages;
    }

    private static List<ImmutableArray<StepTable>> Filled(List<StepTable> tables, double firstMm, double nextMm, (int Page, int Rows)? most)
    {
        var pages = new List<ImmutableArray<StepTable>>();
        var left = new Stack<StepTable>(Enumerable.Reverse(tables));
        do
        {
            var room = pages.Count == 0 ? firstMm : nextMm;
            pages.Add(Page(left, room, most is { } m && m.Page == pages.Count ? m.Rows : int.MaxValue, isFirst: pages.Count == 0));
        }
        while (left.Count > 0);
        return pages;
    }

    // A table goes on on the next page; a page after the first takes a row in any case, so that there is an end.
    private static ImmutableArray<StepTable> Page(Stack<StepTable> left, double room, int rows, bool isFirst)
    {
        var page = ImmutableArray.CreateBuilder<StepTable>();
        while (left.TryPop(out var table))
        {
            var taken = WithoutFewRows(Math.Min(rows, table.Fitting(room)), table.Count);
            if (taken == 0 && !isFirst && page.Count == 0)
            {
                taken = 1;
            }

            if (taken > 0)
            {
                page.Add(table.First(taken));
                rows -= taken;
                room -= page[^1].HeightMm + GapMm;
            }

            if (taken < table.Count)
            {
                left.Push(table.After(taken));
                break;
            }
        }

        return page.ToImmutable();
    }

    // Of the rows that fit, so many that at least three stand before the break and after it.
    private static int WithoutFewRows(int fitting, int count) => fitting >= count ? count
        : Math.Min(fitting, count - LeastTogether) is var taken and >= LeastTogether ? taken : 0;

    private static int Rows(ImmutableArray<StepTable> page) => page.Sum(t => t.Count);
}
