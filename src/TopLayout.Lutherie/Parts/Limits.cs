using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The settings of the grain check, each with the reason of its default. They are no property of the top; a shop that knows better
/// from its own cracks writes them here.
/// </summary>
public static class Limits
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("limits", "settings of the grain check, each with the reason of its default");

    /// <summary>w.</summary>
    public static readonly Parameter<double> Band = Parameter.Length(
        Section, "band", "an edge within this of a grain line loads it; 3: length of the stress hump beside oblique edges in our finite elements", (0.5, 10), (2, 5), 3);

    /// <summary>Run length below which nothing runs on.</summary>
    public static readonly Parameter<double> StopsBelow = Parameter.Length(
        Section, "stops_below", "run along the grain below which a crack stops; 30: Griffith length of spruce at 94 % of its strength across", (5, 200), (20, 45), 30);

    /// <summary>Run length from which a crack runs on.</summary>
    public static readonly Parameter<double> RunsFrom = Parameter.Length(
        Section, "runs_from", "run from which a crack runs on by itself; 60: the same length at 67 % of the strength", (10, 400), (40, 90), 60);

    /// <summary>Gap that does not end a run.</summary>
    public static readonly Parameter<double> MergeGap = Parameter.Length(
        Section, "merge_gap", "gap in a run that does not end it; 5: calibration of this program, about two thicknesses of a top", (0, 30), (2, 10), 5);

    /// <summary>d.</summary>
    public static readonly Parameter<double> SupportReach = Parameter.Length(
        Section, "support_reach", "how far beside a crossing part an edge is supported; 6: half of its relief is left there in our finite elements", (0, 30), (3, 12), 6);

    /// <summary>How far a support goes on.</summary>
    public static readonly Parameter<double> SupportBeyond = Parameter.Length(
        Section, "support_beyond", "how far a supporting part goes on beyond the edge on both sides; 12: two lengths over which glue passes its force", (0, 60), (8, 20), 12);

    /// <summary>The same for a block.</summary>
    public static readonly Parameter<double> BlockBeyond = Parameter.Length(
        Section, "block_beyond", "the same for a block; 5: common practice, no source", (0, 60), (3, 15), 5);

    /// <summary>Least angle of a supporting member's grain.</summary>
    public static readonly Parameter<Angle> SupportAngle = Parameter.Angle(
        Section, "support_angle", "least angle of a supporting part's long grain to the top's; 40: common practice, no source", (10, 90), (30, 60), 40);

    /// <summary>L_y.</summary>
    public static readonly OptionalParameter<double> SupportSpacing = Parameter.Length(
        Section, "support_spacing", "distance of the transverse supports beside a part; when left out measured on the layout, at most 130 mm, for which the limits are set", (20, 500), (60, 250)).Optional();

    /// <summary>ρ.</summary>
    public static readonly Parameter<double> RimRestraint = Parameter.Number(
        Section, "rim_restraint", "how firmly rim and braces hold the top's width: 0 free, 1 rigid; 0.5: a guess, the middle", (0, 1), (0.2, 0.8), 0.5);

    /// <summary>φ_r.</summary>
    public static readonly Parameter<double> CreepFactor = Parameter.Number(
        Section, "creep_factor", "what creep leaves of elastic stress; 0.35: a fully held Sitka top from 60 to 25 % humidity just reaches its strength", (0.05, 1), (0.2, 0.6), 0.35);

    /// <summary>Allowance for the layout.</summary>
    public static readonly Parameter<Angle> LayoutError = Parameter.Angle(
        Section, "layout_error", "how far parts and grain may be turned against each other when made; 0: judged as drawn, 1 is careful work", (0, 2), (0, 1), 0);

    /// <summary>R of a note.</summary>
    public static readonly Parameter<double> NoteFrom = Parameter.Number(
        Section, "note_from", "severity R (length over `stops_below`, at most 3, times mismatch) of a note; 0.15: quiet for bars of the top's wood", (0, 10), (0.1, 0.3), 0.15);

    /// <summary>R of a warning.</summary>
    public static readonly Parameter<double> WarnFrom = Parameter.Number(
        Section, "warn_from", "severity R of a warning; 0.4: a straight quarter-sawn maple tongue warns", (0, 10), (0.25, 0.7), 0.4);

    /// <summary>R of a failure.</summary>
    public static readonly Parameter<double> FailFrom = Parameter.Number(
        Section, "fail_from", "severity R of a failed check; 1: a straight flat-sawn maple tongue fails", (0, 20), (0.7, 1.5), 1);

    /// <summary>M of a failure over a long run.</summary>
    public static readonly Parameter<double> FailMismatch = Parameter.Number(
        Section, "fail_mismatch", "mismatch with which a run of `runs_from` fails whatever R; 0.25: a straight side fails in every common hardwood", (0, 5), (0.15, 0.4), 0.25);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All =>
    [
        Band, StopsBelow, RunsFrom, MergeGap, SupportReach, SupportBeyond, BlockBeyond, SupportAngle, SupportSpacing, RimRestraint, CreepFactor,
        LayoutError, NoteFrom, WarnFrom, FailFrom, FailMismatch,
    ];

    /// <summary>Says which limits contradict each other.</summary>
    internal static void Hold(Bench bench)
    {
        Ordered(bench, StopsBelow, RunsFrom, " mm");
        Ordered(bench, NoteFrom, WarnFrom, "");
        Ordered(bench, WarnFrom, FailFrom, "");
    }

    private static void Ordered(Bench bench, Parameter<double> low, Parameter<double> high, string unit)
    {
        var (a, b) = (bench.Design[low], bench.Design[high]);
        if (a.Value > b.Value)
        {
            bench.Misfit(
                "limits",
                $"`{low.Key}` is {Say.TwoDigits(a.Value)}{unit}, above `{high.Key}` with {Say.TwoDigits(b.Value)}{unit}",
                $"raise `{high.Key}` or lower `{low.Key}`",
                a.IsDefault ? b.Place : a.Place,
                a.IsDefault ? a.Place : b.Place);
        }
    }
}
