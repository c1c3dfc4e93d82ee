using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// Every setting of the cracking model. None is a material constant. "Finite elements of this project" are a layered plate and a
/// section model of a spruce top with a block, run once to set these numbers.
/// </summary>
public sealed record Calibration
{
    /// <summary>The settings as they ship.</summary>
    public static Calibration Default { get; } = new();

    /// <summary>
    /// w, mm: an edge within this of a grain line loads it. Calibration of this project: the length of the stress hump beside oblique
    /// edges in finite elements, 26 mm at 13° and 18 mm at 28°, read as 2w/tan θ; about the thickness of a top.
    /// </summary>
    public double BandHalfWidthMm { get; init; } = 3;

    /// <summary>
    /// Run length below which nothing runs on, mm: the critical Griffith length (2/π)E'G/σ² of spruce along the grain at 2.45 MPa,
    /// 94 % of its strength across, with E' 1413 MPa and G 200 J/m² (from memory, 150 to 300).
    /// </summary>
    public double PassLengthMm { get; init; } = 30;

    /// <summary>Run length at which a crack runs on by itself, mm: the same critical length at 1.73 MPa, 67 % of the strength.</summary>
    public double FailLengthMm { get; init; } = 60;

    /// <summary>Largest factor the length gives to the severity; calibration of this project.</summary>
    public double LengthFactorCap { get; init; } = 3;

    /// <summary>d, mm: how far beside a crossing member half of its relief is left; finite elements of this project.</summary>
    public double SupportReachMm { get; init; } = 6;

    /// <summary>Gaps in a run up to this do not end it, mm; calibration of this project.</summary>
    public double MergeGapMm { get; init; } = 5;

    /// <summary>
    /// How far the members and the grain may be turned against each other when the top is made: each edge is judged at the worst of the
    /// two ends and the middle of that range. 0: as drawn.
    /// </summary>
    public Angle LayoutError { get; init; } = Angle.Zero;

    /// <summary>How far a supporting member goes on beyond an edge on both sides, mm: two shear-lag lengths, 2/k of 12 to 16 mm.</summary>
    public double ContinuesBeyondMm { get; init; } = 12;

    /// <summary>The same for a block, mm; common practice, no source.</summary>
    public double BlockContinuesBeyondMm { get; init; } = 5;

    /// <summary>Least angle of a supporting member's long grain to the top's; common practice, no source.</summary>
    public Angle SupportLeastAngle { get; init; } = Angle.FromDegrees(40);

    /// <summary>Thickness from which a block supports whatever its grain, mm; common practice, no source.</summary>
    public double SupportingBlockThicknessMm { get; init; } = 15;

    /// <summary>Height from which a member of any width supports, mm; common practice, no source.</summary>
    public double SupportHeightMm { get; init; } = 4;

    /// <summary>Height from which a flat, wide member supports, mm; common practice, no source.</summary>
    public double FlatSupportHeightMm { get; init; } = 2;

    /// <summary>Width along the top's grain that makes a flat member wide, mm; common practice, no source.</summary>
    public double FlatSupportWidthMm { get; init; } = 15;

    /// <summary>ρ, in [0, 1]: how firmly rim and braces hold the top's width. A guess: 0 is a free rim, 1 a rigid one.</summary>
    public double RimRestraint { get; init; } = 0.5;

    /// <summary>
    /// φ_r: what creep, doming and scatter leave of elastic stress. Calibration of this project: a quartersawn Sitka top held fully,
    /// glued at 60 % and used at 25 %, just reaches its strength of 2.6 MPa.
    /// </summary>
    public double Relaxation { get; init; } = 0.35;

    /// <summary>
    /// L_y, mm: distance between the transverse supports of the top beside a member. Null: measured on the layout for each member, but
    /// no more than <see cref="UsualSupportSpacingMm"/>, for which the limits are calibrated: a wider bay is not taken as milder.
    /// </summary>
    public double? SupportSpacingMm { get; init; }

    /// <summary>The distance where a layout tells none, mm: from a neck edge to the next transverse brace; common practice, no source.</summary>
    public double UsualSupportSpacingMm { get; init; } = 130;

    /// <summary>c: shape of the top between those supports, from π (simply held) to 4.73 (clamped); Hetényi, from memory.</summary>
    public double SpanShape { get; init; } = Math.PI;

    /// <summary>
    /// A member at least this many times as thick as the top is also judged right after a fast drop, when the top has moved and it has
    /// not; moisture takes hours through a top and days through a block (from memory).
    /// </summary>
    public double FastDropThicknessRatio { get; init; } = 2;

    /// <summary>Share of the load of a member that holds the top wide which counts as stress at its edge; fitted to finite elements of this project, ±25 %.</summary>
    public double HeldWideShare { get; init; } = 0.75;

    /// <summary>Severity R from which a run is a note; calibration of this project.</summary>
    public double NoteSeverity { get; init; } = 0.15;

    /// <summary>Severity R from which a run is a warning; calibration of this project.</summary>
    public double WarningSeverity { get; init; } = 0.4;

    /// <summary>Severity R from which a run fails; calibration of this project.</summary>
    public double FailSeverity { get; init; } = 1;

    /// <summary>
    /// Mismatch index from which a run of <see cref="FailLengthMm"/> fails whatever R: so that a straight side of 84 mm fails in every
    /// common hardwood. Calibration of this project.
    /// </summary>
    public double FailIndex { get; init; } = 0.25;
}
