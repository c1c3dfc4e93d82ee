using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>The `[limits]` of a design as settings of the model.</summary>
public static class GrainSettings
{
    /// <summary>The settings; a design without the section has <see cref="Calibration.Default"/>.</summary>
    public static Calibration Of(Design design) => Calibration.Default with
    {
        BandHalfWidthMm = design[Limits.Band].Value,
        PassLengthMm = design[Limits.StopsBelow].Value,
        FailLengthMm = design[Limits.RunsFrom].Value,
        MergeGapMm = design[Limits.MergeGap].Value,
        SupportReachMm = design[Limits.SupportReach].Value,
        ContinuesBeyondMm = design[Limits.SupportBeyond].Value,
        BlockContinuesBeyondMm = design[Limits.BlockBeyond].Value,
        SupportLeastAngle = design[Limits.SupportAngle].Value,
        SupportSpacingMm = design.Find(Limits.SupportSpacing)?.Value,
        RimRestraint = design[Limits.RimRestraint].Value,
        Relaxation = design[Limits.CreepFactor].Value,
        LayoutError = design[Limits.LayoutError].Value,
        NoteSeverity = design[Limits.NoteFrom].Value,
        WarningSeverity = design[Limits.WarnFrom].Value,
        FailSeverity = design[Limits.FailFrom].Value,
        FailIndex = design[Limits.FailMismatch].Value,
    };
}
