namespace TopLayout.Lutherie.Woods;

/// <summary>
/// A wood at about 12 % moisture. L, R, T: along the grain, across the growth rings, along them. What no source has is null; nothing
/// is filled in for it.
/// </summary>
/// <param name="Key">Its key in design files: "sitka_spruce".</param>
/// <param name="Name">Its common name: "Sitka spruce".</param>
public sealed record Wood(string Key, string Name)
{
    /// <summary>
    /// Movement along the grain, per % moisture, for every wood: 0.1 to 0.2 % from green to dry over 30 % (Wood Handbook,
    /// FPL-GTR-190 (2010), p. 4-5) is 3.3e-5 to 6.7e-5; the middle.
    /// </summary>
    public static readonly WoodValue MovementAlong = new(5.0e-5, Provenance.Derived, "Wood Handbook, FPL-GTR-190 (2010), p. 4-5");

    /// <summary>Its scientific name; empty when the design does not say.</summary>
    public string ScientificName { get; init; } = "";

    /// <summary>C_R: movement across the rings, per % moisture, from 6 to 14 %. Wood Handbook Table 13-5.</summary>
    public WoodValue? MovementRadial { get; init; }

    /// <summary>C_T: movement along the rings, per % moisture, from 6 to 14 %. Wood Handbook Table 13-5.</summary>
    public WoodValue? MovementTangential { get; init; }

    /// <summary>S_R: shrinkage across the rings, green to oven-dry, in percent. Wood Handbook Tables 4-3 and 4-4.</summary>
    public WoodValue? ShrinkageRadialPercent { get; init; }

    /// <summary>S_T: shrinkage along the rings, green to oven-dry, in percent. Wood Handbook Tables 4-3 and 4-4.</summary>
    public WoodValue? ShrinkageTangentialPercent { get; init; }

    /// <summary>Specific gravity: oven-dry mass over volume at 12 % moisture.</summary>
    public WoodValue? SpecificGravity { get; init; }

    /// <summary>E_L, MPa: 1.10 times the bending modulus, which holds shear deflection (Wood Handbook, ch. 5).</summary>
    public WoodValue? ModulusAlongMPa { get; init; }

    /// <summary>E_R, MPa.</summary>
    public WoodValue? ModulusRadialMPa { get; init; }

    /// <summary>E_T, MPa.</summary>
    public WoodValue? ModulusTangentialMPa { get; init; }

    /// <summary>G_LR, MPa.</summary>
    public WoodValue? ShearModulusLongitudinalRadialMPa { get; init; }

    /// <summary>G_LT, MPa.</summary>
    public WoodValue? ShearModulusLongitudinalTangentialMPa { get; init; }

    /// <summary>G_RT, MPa: rolling shear.</summary>
    public WoodValue? ShearModulusRollingMPa { get; init; }

    /// <summary>ν_LR: strain along R per strain along L under a load along L.</summary>
    public WoodValue? PoissonLongitudinalRadial { get; init; }

    /// <summary>ν_LT: strain along T per strain along L under a load along L.</summary>
    public WoodValue? PoissonLongitudinalTangential { get; init; }

    /// <summary>Strength in tension across the grain, MPa. Wood Handbook Table 5-3a.</summary>
    public WoodValue? TensionAcrossMPa { get; init; }

    /// <summary>Strength in shear along the grain, MPa. Wood Handbook Tables 5-3a and 5-5.</summary>
    public WoodValue? ShearStrengthMPa { get; init; }
}
