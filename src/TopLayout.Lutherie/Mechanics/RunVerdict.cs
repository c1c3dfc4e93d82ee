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
        var (pulledMm, isOnlyWalls, full, rest) = (0.0, true, default(Weighted), default(Weighted));
        foreach (var c in run.Contributions)
        {
            var load = loads[c.Member];
            if (load.Mismatch is not { } mismatch)
            {
                continue;
            }

            isOnlyWalls = false;
            if (!(load.IsCrossGrain && c.IsLongSide))
            {
                pulledMm += c.LengthMm;
                full = full.With(c.LengthMm, mismatch);
                rest = load.IsCrossGrain ? rest : rest.With(c.LengthMm, mismatch);
            }
        }

        if (pulledMm == 0)
        {
            var quiet = isOnlyWalls && length != LengthClass.Stops ? Severity.Note : Severity.Pass;
            return new RunVerdict(quiet, length, null, null, false);
        }

        return FromIndex(run.LengthMm, length, full.Over(pulledMm), rest.Over(pulledMm), calibration);
    }

    /// <summary>The class of a length, mm.</summary>
    public static LengthClass ClassOf(double lengthMm, Calibration calibration) =>
        lengthMm < calibration.PassLengthMm ? LengthClass.Stops
        : lengthMm < calibration.FailLengthMm ? LengthClass.Doubtful
        : LengthClass.RunsOn;

    // Members across the grain raise a run to a warning at most: without their index the rest must fail by itself.
    private static RunVerdict FromIndex(double lengthMm, LengthClass length, Weighted full, Weighted rest, Calibration calibration)
    {
        var whole = SeverityOf(lengthMm, full.Index, full.PullingIndex, calibration);
        var own = SeverityOf(lengthMm, rest.Index, rest.PullingIndex, calibration);
        var severity = whole == Severity.Fail && own != Severity.Fail ? Severity.Warning : whole;
        return new RunVerdict(severity, length, full.Index, LengthFactor(lengthMm, calibration) * full.Index, severity != whole);
    }

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

    // M of the members along a run by the length each gives; and of M at rest of those that pull (X > 0).
    private readonly record struct Weighted(double Index, double PullingIndex)
    {
        public Weighted With(double lengthMm, Mismatch mismatch) => new(
            Index + (lengthMm * mismatch.Index),
            PullingIndex + (mismatch.Steady.DriverMPa > 0 ? lengthMm * mismatch.Steady.Index : 0));

        public Weighted Over(double lengthMm) => new(Index / lengthMm, PullingIndex / lengthMm);
    }
}
