namespace TopLayout.Lutherie.Designs;

/// <summary>The known word a mistyped one was probably meant to be.</summary>
public static class Spelling
{
    private const int LongestWord = 60;
    private const int ShortestPart = 3;

    /// <summary>
    /// The nearest word within a third of the length (at least one change, and less than half), or else the shortest that contains the text;
    /// null when there is none.
    /// </summary>
    public static string? Nearest(string text, IEnumerable<string> known)
    {
        var words = known.ToList();
        if (text.Length is 0 or > LongestWord)
        {
            return null;
        }

        var best = words
            .Select(word => (Word: word, Distance: Distance(text.ToLowerInvariant(), word.ToLowerInvariant())))
            .OrderBy(pair => pair.Distance).ThenBy(pair => pair.Word, StringComparer.Ordinal)
            .FirstOrDefault();
        var longer = Math.Max(text.Length, best.Word?.Length ?? 0);
        return best.Word is not null && best.Distance <= Math.Max(1, longer / 3) && 2 * best.Distance < longer
            ? best.Word
            : Containing(text, words);
    }

    private static string? Containing(string text, List<string> words) => text.Length < ShortestPart
        ? null
        : words
            .Where(w => w.Contains(text, StringComparison.OrdinalIgnoreCase))
            .OrderBy(w => w.Length).ThenBy(w => w, StringComparer.Ordinal)
            .FirstOrDefault();

    /// <summary>
    /// Insertions, deletions, replacements and swaps of neighbours that turn one text into the other, no stretch changed twice
    /// (optimal string alignment; Damerau, Communications of the ACM 7, 1964).
    /// </summary>
    public static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                d[i, j] = i == 0 ? j : j == 0 ? i : Step(a, b, d, i, j);
            }
        }

        return d[a.Length, b.Length];
    }

    private static int Step(string a, string b, int[,] d, int i, int j)
    {
        var changed = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        var best = Math.Min(changed, Math.Min(d[i - 1, j], d[i, j - 1]) + 1);
        return i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] ? Math.Min(best, d[i - 2, j - 2] + 1) : best;
    }
}
