using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>
/// The grain check: which glued edges stay on one grain line for so long, and move so unlike the top, that the top will crack along them.
/// A pure function of the layout. One finding for each distinct run that asks for something; every other part passes with its number.
/// </summary>
public static class GrainCheck
{
    // Shorter runs are not looked at for what the other face adds to them, mm: a brace that crosses at 45 degrees leaves two of 6 mm.
    private const double ShortestMm = 10;

    /// <summary>The review of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="calibration">The settings; the ones that ship when left out.</param>
    public static GrainReview Of(Layout layout, Calibration? calibration = null)
    {
        var scene = new GrainScene(layout, calibration ?? Calibration.Default);
        var sides = Sides(scene);
        var runs = Runs(scene);
        return new GrainReview
        {
            Calibration = scene.Calibration,
            Findings = [.. Finding.Sorted([.. runs.Select(r => r.Finding), .. Passes(scene, sides, runs), .. HeldWide(scene), .. NoDrying(scene)])],
            Sides = sides,
            Profile = GrainRuns.Profile(scene.Pieces, scene.Calibration),
            Assumptions = [.. GrainWords.Assumptions(scene)],
        };
    }

    private static ImmutableArray<SideVerdict> Sides(GrainScene scene) =>
    [
        .. GrainRuns.PerSide(scene.Pieces, scene.Calibration).Select(run =>
        {
            var (first, verdict) = (run.Contributions[0], scene.Verdict(run));
            return new SideVerdict(
                first.Member,
                first.Label,
                run.LengthMm,
                run.From.MidpointTo(run.To).X,
                run.Contributions.Min(c => c.LeastAngle),
                scene.Loads[first.Member].Mismatch is not null,
                scene.Loads[first.Member].Mismatch?.Value?.Index,
                verdict.Severity);
        }),
    ];

    // The runs of each face that ask for something, by themselves or with what lies on the same grain line on the other face.
    private static List<(GrainRun Run, Finding Finding)> Runs(GrainScene scene)
    {
        var own = GrainRuns.PerSide(scene.Pieces, scene.Calibration).Select(r => (Run: r, scene.Verdict(r).Severity)).ToList();
        var inside = scene.Runs(TopFace.Inside, ShortestMm);
        var outside = scene.Runs(TopFace.Outside, ShortestMm);
        var found = new List<(GrainRun Run, Finding Finding)>();
        foreach (var (run, others) in inside.Select(r => (r, outside)).Concat(outside.Select(r => (r, inside))))
        {
            var verdict = scene.Verdict(run);
            var together = Together(run, others, scene.Calibration);

            // A longer line is no milder than a part of it: neither one member's own run, nor one face's.
            var severity = own.Where(o => IsPartOf(o.Run, run, scene.Calibration)).Select(o => o.Severity)
                .Append(verdict.Severity)
                .Append(together is null ? Severity.Pass : scene.Verdict(together).Severity)
                .Max();
            var isAnotherWall = scene.IsOnlyChannel(run) && together is null && found.Exists(f => scene.IsOnlyChannel(f.Run));
            if (severity > Severity.Pass && !isAnotherWall)
            {
                found.Add((run, GrainWords.Run(scene, run, verdict, severity, together)));
            }
        }

        return found;
    }

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

    // Every part that no finding speaks of, with the worse of its sides.
    private static IEnumerable<Finding> Passes(GrainScene scene, ImmutableArray<SideVerdict> sides, List<(GrainRun Run, Finding Finding)> runs)
    {
        var spoken = runs.SelectMany(r => r.Run.Contributions).Select(c => c.Member).ToHashSet(StringComparer.Ordinal);
        foreach (var member in scene.Members.Where(m => !spoken.Contains(m.Name)))
        {
            var worst = sides.Where(s => s.Member == member.Name).MaxBy(s => s.RunMm);
            yield return new Finding(
                Rules.EdgeAlongGrain,
                Severity.Pass,
                member.Name,
                worst is null
                    ? $"no edge of the {member.Name} stays on a grain line"
                    : $"the {worst.Edge} of the {member.Name} stays on one grain line for {Say.TwoDigits(worst.RunMm)} mm at most")
            {
                Measured = new Measurement(worst?.RunMm ?? 0, "mm", scene.Calibration.PassLengthMm),
                Place = member.Places[0],
            };
        }
    }

    private static IEnumerable<Finding> NoDrying(GrainScene scene)
    {
        if (scene.Season.MoistureLossPercent <= 0)
        {
            var design = scene.Layout.Design;
            yield return new Finding(
                Rules.SeasonDoesNotDry,
                Severity.Note,
                "season",
                $"the air in use, {GrainWords.Percent(scene.Season.UsedHumidityPercent)}, is no drier than the air at gluing, "
                    + $"{GrainWords.Percent(scene.Season.GluedHumidityPercent)}: the grain check looks at drying only, and judges nothing here")
            {
                Place = design[SeasonSection.UsedHumidity].Place,
                OtherPlaces = [design[SeasonSection.GluedHumidity].Place],
                Cure = "set `used_humidity` to the driest air the instrument will meet for weeks",
            };
        }
    }

    private static IEnumerable<Finding> HeldWide(GrainScene scene) =>
        from member in scene.Members
        let load = scene.Loads[member.Name]
        where load.IsCrossGrain && load.Mismatch?.Value is not null
        let index = load.Mismatch!.Value!.Index
        select new Finding(
            Rules.HoldsTopWide,
            Severity.Pass,
            member.Name,
            $"the {member.Name} crosses the grain and holds the top wide: {Say.TwoDigits(index)} of its strength across, in this season")
        {
            Measured = new Measurement(index, "", 1),
            Place = member.Places[0],
        };
}
