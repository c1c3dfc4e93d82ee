using System.Globalization;
using TopLayout.Drawing;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>What several parts that are alike are called together: "cleats 1 to 4", "hole reinforcement, bass and treble".</summary>
internal static class PartNames
{
    // The fewest numbers in a row that are written as a range.
    private const int LeastRange = 3;

    /// <summary>All of them in one phrase, none left out; the name itself where there is one.</summary>
    public static string Of(IReadOnlyList<Member> alike)
    {
        if (alike.Count == 1)
        {
            return alike[0].Name;
        }

        var groups = alike.Select(m => Split(m.Name)).GroupBy(n => (n.Stem, n.IsNumbered)).Select(g => Phrase(g.Key.Stem, g.Key.IsNumbered, [.. g.Select(n => n.Last)]));
        return Say.Listed([.. groups]);
    }

    private static string Phrase(string stem, bool isNumbered, IReadOnlyList<string> lasts) => (isNumbered, lasts.Count) switch
    {
        (true, 1) => $"{stem} {lasts[0]}",
        (true, _) => $"{stem}s {Say.Listed(Ranges([.. lasts.Select(n => int.Parse(n, CultureInfo.InvariantCulture)).Order()]))}",
        _ when lasts[0].Length == 0 => stem,
        _ => $"{stem}, {Say.Listed(lasts)}",
    };

    // "cleat 3" is numbered; "hole reinforcement, bass" has a side; else the name is whole.
    private static (string Stem, string Last, bool IsNumbered) Split(string name)
    {
        var (space, comma) = (name.LastIndexOf(' '), name.LastIndexOf(", ", StringComparison.Ordinal));
        return space > 0 && int.TryParse(name[(space + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out _) ? (name[..space], name[(space + 1)..], true)
            : comma > 0 ? (name[..comma], name[(comma + 2)..], false)
            : (name, "", false);
    }

    private static List<string> Ranges(IReadOnlyList<int> numbers)
    {
        var said = new List<string>();
        for (var i = 0; i < numbers.Count;)
        {
            var end = i;
            while (end + 1 < numbers.Count && numbers[end + 1] == numbers[end] + 1)
            {
                end++;
            }

            said.AddRange(end - i + 1 >= LeastRange
                ? [$"{NumberFormat.Whole(numbers[i])} to {NumberFormat.Whole(numbers[end])}"]
                : numbers.Skip(i).Take(end - i + 1).Select(NumberFormat.Whole));
            i = end + 1;
        }

        return said;
    }
}
