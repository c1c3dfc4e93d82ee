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
    /// The runs in order: what is free and not supported at the same place, joined over gaps that are short and hold no support.
    /// </summary>
    public static List<Stretch> Of(List<Stretch> free, List<Stretch> supported, double mergeGapMm)
    {
        var blocks = Union(supported.Where(s => s.Length > SlackMm), 0);
        var open = free.SelectMany(f => Without(f, blocks));
        var runs = new List<Stretch>();
        foreach (var next in open.OrderBy(s => s.Low))
        {
            if (runs.Count > 0 && Joins(runs[^1], next, blocks, mergeGapMm))
            {
                runs[^1] = runs[^1] with { High = Math.Max(runs[^1].High, next.High) };
            }
            else
            {
                runs.Add(next);
            }
        }

        return runs;
    }

    private static bool Joins(Stretch run, Stretch next, List<Stretch> blocks, double mergeGapMm) =>
        next.Low - run.High <= mergeGapMm + SlackMm
        && !blocks.Any(b => b.High > run.High + SlackMm && b.Low < next.Low - SlackMm);

    private static List<Stretch> Union(IEnumerable<Stretch> stretches, double gapMm)
    {
        var union = new List<Stretch>();
        foreach (var next in stretches.OrderBy(s => s.Low))
        {
            if (union.Count > 0 && next.Low <= union[^1].High + gapMm)
            {
                union[^1] = union[^1] with { High = Math.Max(union[^1].High, next.High) };
            }
            else
            {
                union.Add(next);
            }
        }

        return union;
    }

    private static IEnumerable<Stretch> Without(Stretch stretch, List<Stretch> blocks)
    {
        var low = stretch.Low;
        foreach (var b in blocks.Where(b => b.Overlaps(stretch)))
        {
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
