using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>The runs of each face that ask for something, by themselves or with what lies on the same grain line on the other face.</summary>
internal static class GrainFindings
{
    // Shorter runs are not looked at for what the other face adds to them, mm: a brace that crosses at 45 degrees leaves two of 6 mm.
    private const double ShortestMm = 10;

    /// <summary>Every run that asks for something, with its finding.</summary>
    public static List<(GrainRun Run, Finding Finding)> Of(GrainScene scene)
    {
        var own = scene.Sides.Select(r => (Run: r, scene.Verdict(r).Severity)).ToLookup(s => s.Run.Contributions[0].Member, StringComparer.Ordinal);
        var inside = scene.Runs(TopFace.Inside, ShortestMm);
        var outside = scene.Runs(TopFace.Outside, ShortestMm);
        var found = new List<Found>();
        var (behindInside, behindOutside) = (new RunsByX(outside), new RunsByX(inside));
        foreach (var (run, others) in inside.Select(r => (r, behindInside)).Concat(outside.Select(r => (r, behindOutside))))
        {
            var verdict = scene.Verdict(run);
            var together = Together(run, others.Near(run, 2 * scene.Calibration.BandHalfWidthMm), scene.Calibration);

            // A longer line is no milder than a part of it: neither one member's own run, nor one face's.
            var severity = run.Contributions.Select(c => c.Member).Distinct().SelectMany(m => own[m])
                .Where(o => IsPartOf(o.Run, run, scene.Calibration))
                .Select(o => o.Severity)
                .Append(verdict.Severity)
                .Append(together is null ? Severity.Pass : scene.Verdict(together).Severity)
                .Max();
            if (severity > Severity.Pass)
            {
                found.Add(new Found(run, verdict, severity, together, scene.IsOnlyChannel(run)));
            }
        }

        return [.. WithoutRepeats(found).Select(f => (f.Run, GrainWords.Run(scene, f.Run, f.Verdict, f.Severity, f.Together)))];
    }

    // A channel has two walls with two sides each: one finding for each part that lies in line with a wall, and one at all when none does.
    private static IEnumerable<Found> WithoutRepeats(List<Found> found)
    {
        var hasPartner = found.Exists(f => f.IsOnlyChannel && f.Together is not null);
        return found
            .Where(f => !(f.IsOnlyChannel && f.Together is null && hasPartner))
            .Index()
            .DistinctBy(f => f.Item.IsOnlyChannel ? Partners(f.Item) : $"{f.Index}")
            .Select(f => f.Item);
    }

    private static string Partners(Found found) => string.Join(
        '/', (found.Together ?? found.Run).Contributions.Select(c => c.Member).Distinct().Order(StringComparer.Ordinal));

    // The run and all runs of the other face on its grain line, as one; null when there are none.
    private static GrainRun? Together(GrainRun run, IEnumerable<GrainRun> others, Calibration calibration)
    {
        var partners = others.Where(o => IsSameLine(o, run, calibration)
            && Math.Min(o.ToY, run.ToY) - Math.Max(o.FromY, run.FromY) >= -calibration.MergeGapMm).ToList();
        return partners.Count == 0 ? null : run with
        {
            FromY = partners.Min(p => Math.Min(p.FromY, run.FromY)),
            ToY = partners.Max(p => Math.Max(p.ToY, run.ToY)),
            Contributions = [.. run.Contributions, .. partners.SelectMany(p => p.Contributions)],
        };
    }

    private static bool IsPartOf(GrainRun part, GrainRun run, Calibration calibration) =>
        run.Contributions.Any(c => c.Member == part.Contributions[0].Member && c.Side == part.Contributions[0].Side)
        && IsSameLine(part, run, calibration)
        && Math.Min(part.ToY, run.ToY) - Math.Max(part.FromY, run.FromY) >= part.LengthMm / 2;

    // Both edges can lie within the band round one grain line.
    private static bool IsSameLine(GrainRun a, GrainRun b, Calibration calibration) =>
        a.Grain == b.Grain && Math.Abs(a.EdgeX - b.EdgeX) <= 2 * calibration.BandHalfWidthMm;

    private readonly record struct Found(GrainRun Run, RunVerdict Verdict, Severity Severity, GrainRun? Together, bool IsOnlyChannel);
}
