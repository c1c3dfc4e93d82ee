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
        var own = scene.Sides.Select(r => new Own(r, scene.Verdict(r))).ToLookup(s => s.Run.Contributions[0].Member, StringComparer.Ordinal);
        var shortest = Math.Min(ShortestMm, scene.Calibration.PassLengthMm);
        var found = new List<Found>();
        var outside = scene.Runs(TopFace.Outside, shortest);
        var behindInside = new RunsByX(outside);
        var inside = scene.Runs(TopFace.Inside, shortest, behindInside);
        var behindOutside = new RunsByX(inside);
        foreach (var (run, others) in inside.Select(r => (r, behindInside)).Concat(outside.Select(r => (r, behindOutside))))
        {
            // A longer line is no milder than a part of it: neither one member's own run, nor one face's.
            var least = run.Contributions.Select(c => c.Member).Distinct().SelectMany(m => own[m])
                .Where(o => IsPartOf(o.Run, run, scene.Calibration))
                .Select(o => o.Verdict.Severity)
                .DefaultIfEmpty(Severity.Pass)
                .Max();
            Add(scene, run, scene.Verdict(run), least, others, found);
        }

        // What a side of a part does by itself is told, also where other edges make another run of it.
        foreach (var side in own.SelectMany(o => o).Where(o => o.Verdict.Severity > Severity.Pass))
        {
            if (!found.Exists(f => f.Severity >= side.Verdict.Severity && IsPartOf(side.Run, f.Run, scene.Calibration)))
            {
                var isInside = scene.Member(side.Run.Contributions[0].Member).Face == TopFace.Inside;
                Add(scene, side.Run, side.Verdict, side.Verdict.Severity, isInside ? behindInside : behindOutside, found);
            }
        }

        return [.. WithoutRepeats(WithoutShare(found, scene.Calibration)).Select(f => (f.Run, GrainWords.Run(scene, f)))];
    }

    // A run that is nothing by itself, and is told as what the other face adds to a longer one, is not told again.
    private static List<Found> WithoutShare(List<Found> found, Calibration calibration) =>
    [
        .. found.Where(f => f.Run.LengthMm >= calibration.PassLengthMm || !found.Exists(g =>
            g.Run.LengthMm > f.Run.LengthMm && g.Severity >= f.Severity && g.Together is { } both && f.Run.Contributions.All(both.Contributions.Contains))),
    ];

    private static void Add(GrainScene scene, GrainRun run, RunVerdict verdict, Severity least, RunsByX others, List<Found> found)
    {
        var together = Together(run, others.Near(run, 2 * scene.Calibration.BandHalfWidthMm), scene.Calibration);
        var joint = together is null ? Severity.Pass : scene.Verdict(together).Severity;
        var severity = (Severity)Math.Max((int)joint, Math.Max((int)least, (int)verdict.Severity));
        if (severity > Severity.Pass)
        {
            found.Add(new Found(run, verdict, severity, together, scene.IsOnlyChannel(run), joint > verdict.Severity && joint > least));
        }
    }

    // A channel has two walls with two sides each: one finding for each part that lies in line with a wall, and one at all when none does.
    // It marks them all.
    private static IEnumerable<Found> WithoutRepeats(List<Found> found)
    {
        var walls = found.Where(f => f.IsOnlyChannel).ToList();
        var kept = walls.Exists(f => f.Together is not null) ? walls.Where(f => f.Together is not null) : walls;
        var firsts = kept.DistinctBy(Partners).ToList();
        foreach (var f in found)
        {
            if (!f.IsOnlyChannel)
            {
                yield return f;
            }
            else if (firsts.Contains(f))
            {
                yield return f with { Also = [.. walls.Where(w => !firsts.Contains(w) && Like(w, firsts) == f).Select(w => w.Run)] };
            }
        }
    }

    // The walls beside no part go with those on their half.
    private static Found Like(Found wall, List<Found> firsts) =>
        firsts.Find(f => Partners(f) == Partners(wall)) ?? firsts.Find(f => f.Run.EdgeX < 0 == wall.Run.EdgeX < 0) ?? firsts[0];

    private static string Partners(Found found) => string.Join(
        '/', (found.Together ?? found.Run).Contributions.Select(c => c.Member).Distinct().Order(StringComparer.Ordinal));

    // The run and all runs of the other face on its grain line, as one; null when there are none. Edges that cross the line as a support does
    // do not lengthen it.
    private static GrainRun? Together(GrainRun run, IEnumerable<GrainRun> others, Calibration calibration)
    {
        var partners = others.Where(o => IsSameLine(o, run, calibration)
            && o.Contributions.Any(c => c.LeastAngle < calibration.SupportLeastAngle)
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

    private readonly record struct Own(GrainRun Run, RunVerdict Verdict);

    /// <summary>A run that asks for something.</summary>
    /// <param name="Run">The run.</param>
    /// <param name="Verdict">The verdict on it by itself.</param>
    /// <param name="Severity">The verdict on it and on all it belongs to.</param>
    /// <param name="Together">It and what lies on its grain line on the other face; null when nothing does.</param>
    /// <param name="IsOnlyChannel">True when nothing but walls of a channel makes it.</param>
    /// <param name="IsDecidedTogether">True when only together it is as bad as that.</param>
    internal sealed record Found(GrainRun Run, RunVerdict Verdict, Severity Severity, GrainRun? Together, bool IsOnlyChannel, bool IsDecidedTogether)
    {
        /// <summary>Further runs of which the same is to be said.</summary>
        public IReadOnlyList<GrainRun> Also { get; init; } = [];
    }
}
