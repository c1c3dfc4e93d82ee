using System.Collections.Immutable;
using TopLayout.Geometry;
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
    /// <summary>The review of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="calibration">The settings; those of the design when left out.</param>
    public static GrainReview Of(Layout layout, Calibration? calibration = null)
    {
        var settings = calibration ?? GrainSettings.Of(layout.Design);
        var scenes = Turns(settings.LayoutError).Select(turn => new GrainScene(layout, settings, turn)).ToList();
        var drawn = scenes[0];
        ImmutableArray<SideVerdict> sides = [.. scenes.SelectMany(Sides).GroupBy(s => (s.Member, s.Side)).Select(g => g.MaxBy(s => (s.Severity, s.RunMm))!)];
        var runs = WorstOfEach(scenes.Select(GrainFindings.Of));
        return new GrainReview(() => GrainRuns.Profile(drawn.Pieces, settings))
        {
            Calibration = settings,
            Findings = [.. Finding.Sorted([.. runs.Select(r => r.Finding), .. Passes(drawn, sides, runs), .. HeldWide(drawn), .. SeasonWords.NoDrying(drawn)])],
            Sides = sides,
            Assumptions = [.. GrainWords.Assumptions(drawn)],
        };
    }

    private static IEnumerable<Angle> Turns(Angle error) => error == Angle.Zero ? [Angle.Zero] : [Angle.Zero, error, -error];

    // Of a run that is found in several scenes, whichever way the layout is turned, the worst.
    private static List<(GrainRun Run, Finding Finding)> WorstOfEach(IEnumerable<List<(GrainRun Run, Finding Finding)>> scenes)
    {
        var worst = new List<(GrainRun Run, Finding Finding)>();
        foreach (var scene in scenes)
        {
            var before = worst.Count;
            foreach (var found in scene)
            {
                var same = worst.FindIndex(0, before, w => Key(w) == Key(found) && w.Run.From.Y < found.Run.To.Y && found.Run.From.Y < w.Run.To.Y);
                if (same < 0)
                {
                    worst.Add(found);
                }
                else if (Weight(found).CompareTo(Weight(worst[same])) > 0)
                {
                    worst[same] = found;
                }
            }
        }

        return worst;
    }

    // The same edges; a run on each side of the longest of them has its own.
    private static (string Subject, EdgeSide Side, bool IsBass) Key((GrainRun Run, Finding Finding) found) =>
        (found.Finding.Subject, found.Run.Contributions[0].Side, found.Run.From.MidpointTo(found.Run.To).X < 0);

    private static (Severity, double) Weight((GrainRun Run, Finding Finding) found) => (found.Finding.Severity, found.Run.LengthMm);

    private static IEnumerable<SideVerdict> Sides(GrainScene scene) => scene.Sides.Select(run =>
    {
        var first = run.Contributions[0];
        return new SideVerdict(
            first.Member,
            first.Side,
            first.Label,
            run.LengthMm,
            run.From.MidpointTo(run.To).X,
            run.Contributions.Min(c => c.LeastAngle),
            scene.Loads[first.Member].Mismatch is not null,
            scene.Loads[first.Member].Mismatch?.Index,
            scene.Verdict(run).Severity);
    });

    // Every part that no finding speaks of, with the worse of its sides.
    private static IEnumerable<Finding> Passes(GrainScene scene, ImmutableArray<SideVerdict> sides, List<(GrainRun Run, Finding Finding)> runs)
    {
        var spoken = runs.SelectMany(r => r.Run.Contributions.Select(c => c.Member).Concat(r.Finding.Edges.Select(e => e.Part))).ToHashSet(StringComparer.Ordinal);
        var worstOf = sides.GroupBy(s => s.Member, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.MaxBy(s => Math.Round(s.RunMm / RunPatches.EqualMm)), StringComparer.Ordinal);
        foreach (var member in scene.Members.Where(m => !spoken.Contains(m.Name)))
        {
            var worst = worstOf.GetValueOrDefault(member.Name);
            yield return new Finding(
                Rules.EdgeAlongGrain,
                Severity.Pass,
                member.Name,
                worst is null
                    ? $"no edge of {Say.The(member.Name)} stays on a grain line"
                    : $"the {worst.Edge} of {Say.The(member.Name)} stays on one grain line for {Say.TwoDigits(worst.RunMm)} mm at most")
            {
                Measured = new Measurement(worst?.RunMm ?? 0, "mm", scene.Calibration.PassLengthMm),
                Place = member.Places[0],
            };
        }
    }

    private static IEnumerable<Finding> HeldWide(GrainScene scene) =>
        from member in scene.Members
        let load = scene.Loads[member.Name]
        where load.IsCrossGrain && load.Mismatch is not null && scene.Season.MoistureLossPercent > 0
        let index = load.Mismatch!.RestraintIndex
        select new Finding(
            Rules.HoldsTopWide,
            Severity.Pass,
            member.Name,
            $"{Say.The(member.Name)} crosses the grain and holds the top wide: it loads the top under it to {Say.TwoDigits(index)} of its strength across, in this season")
        {
            Measured = new Measurement(index, "", 1),
            Place = member.Places[0],
        };
}
