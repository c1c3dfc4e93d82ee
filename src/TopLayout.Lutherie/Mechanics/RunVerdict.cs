using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>How the length of a run alone stands.</summary>
public enum LengthClass
{
    /// <summary>Below <see cref="Calibration.PassLengthMm"/>: a crack that opens there stops.</summary>
    Stops,

    /// <summary>Between the limits.</summary>
    Doubtful,

    /// <summary>From <see cref="Calibration.FailLengthMm"/>: a crack that opens there runs on.</summary>
    RunsOn,
}

/// <summary>
/// What a run amounts to: its length, times how unlike the members along it and the top move. Calibration of this project.
/// </summary>
/// <param name="Severity">Pass, note, warning or fail.</param>
/// <param name="Length">The class of its length.</param>
/// <param name="Index">M, weighted by the length each member gives; null when nothing pulls.</param>
/// <param name="R">R = min(Λ/30, 3)·M; null with <paramref name="Index"/>.</param>
/// <param name="IsHeldToWarning">True when it would fail but for members across the grain, which may not fail a run.</param>
public sealed record RunVerdict(
    Severity Severity, LengthClass Length, double? Index, double? R, bool IsHeldToWarning)
{
    /// <summary>The verdict on a run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="loads">The load of every member that takes part, by name.</param>
    /// <param name="calibration">The settings.</param>
    public static RunVerdict Of(GrainRun run, IReadOnlyDictionary<string, MemberLoad> loads, Calibration calibration)
    {
        var length = ClassOf(run.LengthMm, calibration);
        var pulling = run.Contributions
            .Select(c => (c.LengthMm, c.IsLongSide, Load: loads[c.Member]))
            .Where(c => c.Load.Mismatch is not null && !(c.Load.IsCrossGrain && c.IsLongSide))
            .Select(c => (c.LengthMm, c.Load.IsCrossGrain, c.Load.Mismatch!))
            .ToList();
        if (pulling.Count == 0)
        {
            var onlyWalls = run.Contributions.All(c => loads[c.Member].Mismatch is null);
            var quiet = onlyWalls && length != LengthClass.Stops ? Severity.Note : Severity.Pass;
            return new RunVerdict(quiet, length, null, null, false);
        }

        return FromIndex(run.LengthMm, length, pulling, calibration);
    }

    /// <summary>The class of a length, mm.</summary>
    public static LengthClass ClassOf(double lengthMm, Calibration calibration) =>
        lengthMm < calibration.PassLengthMm ? LengthClass.Stops
        : lengthMm < calibration.FailLengthMm ? LengthClass.Doubtful
        : LengthClass.RunsOn;

    // Members across the grain raise a run to a warning at most: without their index the rest must fail by itself.
    private static RunVerdict FromIndex(
        double lengthMm, LengthClass length, List<(double LengthMm, bool IsCrossGrain, Mismatch Mismatch)> pulling, Calibration calibration)
    {
        var all = pulling.Sum(c => c.LengthMm);
        double Mean(Func<Mismatch, double> index, bool withCrossGrain) =>
            pulling.Where(c => withCrossGrain || !c.IsCrossGrain).Sum(c => c.LengthMm * index(c.Mismatch)) / all;
        Severity Judge(bool withCrossGrain) =>
            SeverityOf(lengthMm, Mean(m => m.Index, withCrossGrain), Mean(PullingIndex, withCrossGrain), calibration);

        var index = Mean(m => m.Index, withCrossGrain: true);
        var (full, rest) = (Judge(withCrossGrain: true), Judge(withCrossGrain: false));
        var severity = full == Severity.Fail && rest != Severity.Fail ? Severity.Warning : full;
        return new RunVerdict(severity, length, index, LengthFactor(lengthMm, calibration) * index, severity != full);
    }

    // M at rest, where the member pulls (X > 0).
    private static double PullingIndex(Mismatch mismatch) => mismatch.Steady.DriverMPa > 0 ? mismatch.Steady.Index : 0;

    private static Severity SeverityOf(double lengthMm, double index, double pullingIndex, Calibration calibration)
    {
        var r = LengthFactor(lengthMm, calibration) * index;
        if (lengthMm < calibration.PassLengthMm || r < calibration.NoteSeverity)
        {
            return Severity.Pass;
        }

        if (r >= calibration.FailSeverity || (lengthMm >= calibration.FailLengthMm && pullingIndex >= calibration.FailIndex))
        {
            return Severity.Fail;
        }

        return r < calibration.WarningSeverity ? Severity.Note : Severity.Warning;
    }

    private static double LengthFactor(double lengthMm, Calibration calibration) =>
        Math.Min(lengthMm / calibration.PassLengthMm, calibration.LengthFactorCap);
}
