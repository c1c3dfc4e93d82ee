using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>A strip of the top across its grain, as numbers. MPa, mm, per % moisture.</summary>
/// <param name="ThicknessMm">h₁.</param>
/// <param name="AcrossMPa">E₁, across the grain in the plane.</param>
/// <param name="AlongMPa">E_L.</param>
/// <param name="RollingMPa">G₁, rolling shear.</param>
/// <param name="PoissonAlong">ν from L to the direction across.</param>
/// <param name="MovementAcross">Movement across the grain, per % moisture.</param>
/// <param name="StrengthMPa">f_t, tension across the grain.</param>
public readonly record struct TopSection(
    double ThicknessMm, double AcrossMPa, double AlongMPa, double RollingMPa, double PoissonAlong, double MovementAcross, double StrengthMPa)
{
    /// <summary>D₁₁: plate stiffness across the grain, N·mm.</summary>
    public double BendingAcross => Inertia * AcrossMPa / (1 - PoissonProduct);

    /// <summary>D₂₂: plate stiffness along the grain, N·mm.</summary>
    public double BendingAlong => Inertia * AlongMPa / (1 - PoissonProduct);

    private double Inertia => ThicknessMm * ThicknessMm * ThicknessMm / 12;

    private double PoissonProduct => PoissonAlong * PoissonAlong * AcrossMPa / AlongMPa;

    /// <summary>The section of a plate, or what is not known of its wood.</summary>
    internal static TopSection Of(TopPlate plate, WoodReader wood)
    {
        var radial = plate.Sawing != Sawing.Flat;
        return new TopSection(
            plate.ThicknessMm, wood.Across(radial), wood.Along(), wood.Rolling(), wood.Poisson(radial), wood.Movement(radial), wood.TensionAcross());
    }
}

/// <summary>A strip of a glued piece across the top's grain, as numbers.</summary>
/// <param name="ThicknessMm">h₂, mm.</param>
/// <param name="AcrossMPa">E₂: its modulus across the top's grain, MPa.</param>
/// <param name="ShearMPa">G₂: its shear modulus between that direction and the upright, MPa.</param>
/// <param name="MovementAcross">Its movement across the top's grain, per % moisture.</param>
public readonly record struct PatchSection(double ThicknessMm, double AcrossMPa, double ShearMPa, double MovementAcross)
{
    /// <summary>
    /// The section of a piece. In the plane its modulus is that at the angle between its grain and the top's across direction, with
    /// R lying in the plane when quartersawn and T when flat. Upright: R or T lies across the top by sawing.
    /// </summary>
    /// <param name="lie">In the plane or upright.</param>
    /// <param name="radial">True when R lies in the plane (or, upright, across the top); false for T.</param>
    /// <param name="grain">The piece's grain from the top's.</param>
    /// <param name="thicknessMm">Thickness, mm.</param>
    /// <param name="wood">Its wood.</param>
    internal static PatchSection Of(GrainLie lie, bool radial, Angle grain, double thicknessMm, WoodReader wood)
    {
        if (lie == GrainLie.Upright)
        {
            return new PatchSection(thicknessMm, wood.Across(radial), wood.Shear(radial), wood.Movement(radial));
        }

        var (c, s) = (Trig.Cos(grain), Trig.Sin(grain));
        if (s == 0)
        {
            return new PatchSection(thicknessMm, wood.Across(radial), wood.Rolling(), wood.Movement(radial));
        }

        if (c == 0)
        {
            return new PatchSection(thicknessMm, wood.Along(), wood.Shear(!radial), Wood.MovementAlong.Value);
        }

        var fromGrain = Angle.FromDegrees(90) - grain;
        return new PatchSection(
            thicknessMm,
            Orthotropic.Modulus(wood.Along(), wood.Across(radial), wood.Shear(radial), wood.Poisson(radial), fromGrain),
            Orthotropic.UprightShear(wood.Shear(!radial), wood.Rolling(), fromGrain),
            FreeStrain.InPlane(Wood.MovementAlong.Value, wood.Movement(radial), grain).Across);
    }
}
