using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Checks;

/// <summary>The grain check in words a student understands: which edge, how long, where, what against what, in which season, what helps.</summary>
internal static class GrainWords
{
    // Contributions below this, or below a share of the length that counts, are crossings, not worth a name, mm.
    private const double WorthNamingMm = 6;
    private const double WorthNamingShare = 0.2;

    /// <summary>The finding for a run, with what the other face adds on the same grain line.</summary>
    public static Finding Run(GrainScene scene, GrainFindings.Found found)
    {
        var (run, together) = (found.Run, found.Together);
        var named = Named(run, scene.Calibration);
        var members = named.Select(c => c.Member).Distinct().Select(scene.Member).ToList();
        var added = together is null || together.LengthMm < scene.Calibration.PassLengthMm
            ? []
            : Named(together, scene.Calibration).Where(c => scene.Member(c.Member).Face != members[0].Face).ToList();
        var isShared = members.Count > 1 || added.Count > 0;
        var places = members.Concat(added.Select(c => scene.Member(c.Member)).Distinct()).Select(m => m.Places[0]).ToList();
        return new Finding(
            isShared ? Rules.EdgesInLine : Rules.EdgeAlongGrain,
            found.Severity,
            found.IsOnlyChannel ? run.Contributions[0].Member : Subject(named),
            Sentence(scene, found, named, added) + Together(run, added, together))
        {
            Measured = Measured(found, scene.Calibration),
            Where = (run.From, run.To),
            Edges = [.. found.Also.SelectMany(r => Named(r, scene.Calibration)).Concat(named).Concat(added).Select(c => (c.Member, c.Label)).Distinct()],
            AlsoAt = [.. found.Also.Select(r => (r.From, r.To))],
            Traces = [.. found.Also.Prepend(run).Select(r => EdgeTraces.Of(scene, r, Named(r, scene.Calibration)))],
            Place = places[0],
            OtherPlaces = [.. places.Distinct().Where(p => p != places[0])],
            Cure = found.IsOnlyChannel && added.Count == 0 ? null : GrainCures.For(scene, found, [.. members, .. added.Select(c => scene.Member(c.Member))]),
        };
    }

    /// <summary>What the design left open and the check took.</summary>
    public static IEnumerable<string> Assumptions(GrainScene scene)
    {
        yield return $"the season {(scene.IsSeasonAssumed ? "is not said by the design; taken were" : "of the design:")} {SeasonText(scene)}; "
            + $"wood loses {Say.TwoDigits(scene.Season.MoistureLossPercent)} % moisture between the two";
        if (SeasonWords.TopMoves(scene) is { } moves)
        {
            yield return moves;
        }

        foreach (var alike in scene.Members.Where(m => m.Material?.Sawing == Sawing.Unknown).GroupBy(m => SawingText(scene.Loads[m.Name].Mismatch!.Sawing)))
        {
            var named = alike.Select(m => Say.TheLast(m.Name)).ToList();
            yield return $"how {Say.Listed(named)} {(named.Count == 1 ? "is" : "are")} sawn is not said; the worse case was taken, {alike.Key}";
        }

        foreach (var gap in GapWords.All(scene))
        {
            yield return gap;
        }

        if (scene.Calibration.LayoutError > Angle.Zero)
        {
            yield return $"parts and grain may be turned against each other by {Say.Degrees(scene.Calibration.LayoutError)}: the worst was taken";
        }

        yield return $"the model's settings are guesses where no source says better: rim restraint {Say.TwoDigits(scene.Calibration.RimRestraint)}, "
            + $"creep factor {Say.TwoDigits(scene.Calibration.Relaxation)}; `[limits]` sets them, `toplayout explain TL3001` says more";
    }

    // Those worth a name, and shorter ones as long as much of the run is not named.
    private static ImmutableArray<Contribution> Named(GrainRun run, Calibration calibration)
    {
        var least = Math.Min(WorthNamingMm, WorthNamingShare * calibration.PassLengthMm);
        var (named, covered) = (ImmutableArray.CreateBuilder<Contribution>(), 0.0);
        foreach (var c in run.Contributions.Where(c => c.LengthMm >= least || covered < run.LengthMm - least))
        {
            covered += c.LengthMm;
            named.Add(c);
        }

        return [.. named.DistinctBy(c => (c.Member, c.Label))];
    }

    private static string Subject(IEnumerable<Contribution> named) =>
        string.Join(" and ", ByMember(named).Select(m => $"{m.Key}, {string.Join('/', m.Select(c => c.Label))}"));

    private static IEnumerable<IGrouping<string, Contribution>> ByMember(IEnumerable<Contribution> named) =>
        named.GroupBy(c => c.Member, StringComparer.Ordinal);

    // In the order of their places.
    private static string Lengths(GrainFindings.Found found) =>
        string.Join(" and ", found.Also.Prepend(found.Run).Select(r => Say.TwoDigits(r.LengthMm)).Distinct());

    private static string Side(GrainRun run) => run.From.MidpointTo(run.To).X < 0 ? "bass" : "treble";

    private static string Sentence(GrainScene scene, GrainFindings.Found found, ImmutableArray<Contribution> named, List<Contribution> added)
    {
        var run = found.Run;
        if (found.IsOnlyChannel)
        {
            var sides = found.Also.Prepend(run).Select(Side).Distinct().ToList();
            return $"the walls of {Say.The(run.Contributions[0].Member)} run along the grain for {Lengths(found)} mm "
                + $"{(sides is [var only] ? $"on the {only} side" : "at either side")} of the hole; they weaken the top there, and nothing pulls on them";
        }

        var edges = string.Join(" and ", ByMember(named).Select(m => $"{Say.Listed([.. m.Select(c => $"the {c.Label}")])} of {Say.The(m.Key)}"));
        var middle = run.From.MidpointTo(run.To);
        return $"{edges} {(named.Length == 1 ? "runs" : "run")} along the grain for {Say.TwoDigits(run.LengthMm)} mm without support, "
            + $"at {Say.Degrees(Rounded(named.Min(c => c.LeastAngle)))} to it, {Say.Mm(-run.To.Y)} to {Say.Mm(-run.From.Y)} from the neck edge "
            + $"on the grain line {Say.Mm(Math.Abs(middle.X))} to the {Side(run)} side; {Support(scene, run, added)}; {Against(scene, named, found.Verdict)}";
    }

    // What stops a crack on the rest of these edges; not what has an edge on the line itself.
    private static string Support(GrainScene scene, GrainRun run, List<Contribution> added) => scene.HoldersBeside(run).Where(h => !added.Exists(c => c.Member == h)).ToList() is { Count: > 0 } holders
        ? $"elsewhere {Say.Listed([.. holders.Select((h, i) => i < holders.Count - 2 ? Say.TheLast(h) : Say.The(h))])} {(holders is [var only] && only != Rim.Sides.Key ? "supports" : "support")} it"
        : "nothing supports it anywhere";

    private static string Together(GrainRun run, List<Contribution> added, GrainRun? together)
    {
        if (added.Count == 0 || together is null)
        {
            return "";
        }

        var longer = together.LengthMm - run.LengthMm > Runs.SlackMm && Say.TwoDigits(together.LengthMm) != Say.TwoDigits(run.LengthMm)
            ? $", together {Say.TwoDigits(together.LengthMm)} mm"
            : "";
        return $"; {string.Join(" and ", added.Select(c => $"the {c.Label} of {Say.The(c.Member)}"))} on the other face "
            + $"{(added.Count == 1 ? "lies" : "lie")} on the same grain line{longer}";
    }

    // What against what, and in which season.
    private static string Against(GrainScene scene, ImmutableArray<Contribution> named, RunVerdict verdict)
    {
        var woods = named.Select(c => scene.Member(c.Member)).Where(m => m.Material is not null).Select(m => MaterialText(scene, m)).Distinct().ToList();

        var season = (scene.IsSeasonAssumed ? "season not said, taken as " : "") + SeasonText(scene);
        var index = verdict.Index is { } m ? $"; mismatch {Say.TwoDigits(m)}" : "";
        return $"{string.Join(" and ", woods)} on {SawingText(scene.Layout.Top.Sawing)} {scene.Layout.Top.Wood.Name}, {season}{index}{GapWords.Taken(scene, named)}";
    }

    private static string MaterialText(GrainScene scene, Member member)
    {
        var material = member.Material!;
        var sawing = material.Sawing != Sawing.Unknown
            ? SawingText(material.Sawing)
            : $"{SawingText(scene.Loads[member.Name].Mismatch!.Sawing)} (not said; the worse case)";
        var grain = material.Lie == GrainLie.Upright ? " (grain upright)" : member.Kind == MemberKind.Tongue || member.Kind == MemberKind.Block
            ? scene.Loads[member.Name].IsCrossGrain ? " (grain across)" : " (grain along)"
            : "";
        return $"{sawing} {material.Wood.Name}{grain}";
    }

    private static string SawingText(Sawing sawing) => sawing switch
    {
        Sawing.Flat => "flat-sawn",
        Sawing.Quarter => "quarter-sawn",
        _ => "unknown-sawn",
    };

    /// <summary>A percentage to the whole number: "45 %".</summary>
    public static string Percent(double value) => Whole(value) + " %";

    private static string SeasonText(GrainScene scene) =>
        $"glued at {Percent(scene.Season.GluedHumidityPercent)} and used at {Percent(scene.Season.UsedHumidityPercent)} humidity, {Whole(scene.Season.Celsius)} °C";

    // Its own length, of several the longest; where that is within the limits and the other face decides, the length of both.
    private static Measurement Measured(GrainFindings.Found found, Calibration calibration)
    {
        var own = found.Also.Prepend(found.Run).Max(r => r.LengthMm);
        var length = !found.IsDecidedTogether || own >= calibration.PassLengthMm ? own : found.Together!.LengthMm;
        var limit = RunVerdict.ClassOf(length, calibration) == LengthClass.RunsOn ? calibration.FailLengthMm : calibration.PassLengthMm;
        return new Measurement(length, "mm", limit);
    }

    private static Angle Rounded(Angle angle) => Angle.FromDegrees(Math.Round(angle.Degrees, 1));

    private static string Whole(double value) => Say.Count((int)Math.Round(value));
}
