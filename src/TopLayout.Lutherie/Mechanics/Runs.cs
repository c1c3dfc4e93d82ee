namespace TopLayout.Lutherie.Mechanics;

/// <summary>A closed stretch of a grain line, mm.</summary>
/// <param name="Low">Tail end.</param>
/// <param name="High">Neck end.</param>
internal readonly record struct Stretch(double Low, double High)
{
    public double Length => High - Low;

    public bool Overlaps(Stretch other) => Low < other.High && other.Low < High;
}

/// <summary>From stretches of unsupported and supported edge on one grain line to the runs they make.</summary>
internal static class Runs
{
    /// <summary>Stretches and gaps are compared to this, mm.</summary>
    public const double SlackMm = 1e-6;

    /// <summary>
    /// The runs in order: what is free and not supported at the same place, joined over gaps that are short and hold no support. Both
    /// lists are used up.
    /// </summary>
    public static List<Stretch> Of(List<Stretch> free, List<Stretch> supported, double mergeGapMm)
    {
        supported.RemoveAll(s => s.Length <= SlackMm);
        var blocks = Joined(supported, 0, []);
        return Joined(blocks.Count == 0 ? free : [.. free.SelectMany(f => Without(f, blocks))], mergeGapMm + SlackMm, blocks);
    }

    // Stretches joined over gaps up to a length that hold no block.
    private static List<Stretch> Joined(List<Stretch> stretches, double gapMm, List<Stretch> blocks)
    {
        stretches.Sort((a, b) => a.Low.CompareTo(b.Low));
        var joined = new List<Stretch>();
        foreach (var next in stretches)
        {
            if (joined.Count > 0 && next.Low - joined[^1].High <= gapMm && !IsBlocked(joined[^1].High, next.Low, blocks))
            {
                joined[^1] = joined[^1] with { High = Math.Max(joined[^1].High, next.High) };
            }
            else
            {
                joined.Add(next);
            }
        }

        return joined;
    }

    private static bool IsBlocked(double from, double to, List<Stretch> blocks)
    {
        foreach (var b in blocks)
        {
            if (b.High > from + SlackMm && b.Low < to - SlackMm)
            {
                return true;
            }
        }

        return false;
    }

    private static IEnumerable<Stretch> Without(Stretch stretch, List<Stretch> blocks)
    {
        var low = stretch.Low;
        foreach (var b in blocks)
        {
            if (!b.Overlaps(stretch))
            {
                continue;
            }

            if (b.Low > low)
            {
                yield return new Stretch(low, b.Low);
            }

            low = Math.Max(low, b.High);
        }

        if (low < stretch.High || low == stretch.Low)
        {
            yield return new Stretch(low, stretch.High);
        }
    }
}
