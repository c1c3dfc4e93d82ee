using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>A property of a wood that the model asks for.</summary>
public enum WoodProperty
{
    /// <summary>C_R.</summary>
    MovementRadial,

    /// <summary>C_T.</summary>
    MovementTangential,

    /// <summary>E_L.</summary>
    ModulusAlong,

    /// <summary>E_R.</summary>
    ModulusRadial,

    /// <summary>E_T.</summary>
    ModulusTangential,

    /// <summary>G_LR.</summary>
    ShearModulusLongitudinalRadial,

    /// <summary>G_LT.</summary>
    ShearModulusLongitudinalTangential,

    /// <summary>G_RT.</summary>
    ShearModulusRolling,

    /// <summary>ν_LR.</summary>
    PoissonLongitudinalRadial,

    /// <summary>ν_LT.</summary>
    PoissonLongitudinalTangential,

    /// <summary>Strength in tension across the grain.</summary>
    TensionAcross,
}

/// <summary>Reads a wood's properties as plain numbers and keeps what it did not find; such a number is NaN and must not be used.</summary>
internal sealed class WoodReader(Wood wood)
{
    private readonly List<WoodProperty> _missing = [];

    /// <summary>What was asked for and is not known, each once, in the order of asking.</summary>
    public IReadOnlyList<WoodProperty> Missing => _missing;

    /// <summary>What was asked for, one bit for each property.</summary>
    public int Asked { get; private set; }

    /// <summary>The movement across the rings (quarter) or along them (flat), per % moisture.</summary>
    public double Movement(bool radial) => radial
        ? Need(wood.MovementRadial, WoodProperty.MovementRadial)
        : Need(wood.MovementTangential, WoodProperty.MovementTangential);

    /// <summary>E_L, MPa.</summary>
    public double Along() => Need(wood.ModulusAlongMPa, WoodProperty.ModulusAlong);

    /// <summary>E_R or E_T, MPa.</summary>
    public double Across(bool radial) => radial
        ? Need(wood.ModulusRadialMPa, WoodProperty.ModulusRadial)
        : Need(wood.ModulusTangentialMPa, WoodProperty.ModulusTangential);

    /// <summary>G_LR or G_LT, MPa.</summary>
    public double Shear(bool radial) => radial
        ? Need(wood.ShearModulusLongitudinalRadialMPa, WoodProperty.ShearModulusLongitudinalRadial)
        : Need(wood.ShearModulusLongitudinalTangentialMPa, WoodProperty.ShearModulusLongitudinalTangential);

    /// <summary>G_RT, MPa.</summary>
    public double Rolling() => Need(wood.ShearModulusRollingMPa, WoodProperty.ShearModulusRolling);

    /// <summary>ν_LR or ν_LT.</summary>
    public double Poisson(bool radial) => radial
        ? Need(wood.PoissonLongitudinalRadial, WoodProperty.PoissonLongitudinalRadial)
        : Need(wood.PoissonLongitudinalTangential, WoodProperty.PoissonLongitudinalTangential);

    /// <summary>Strength in tension across the grain, MPa.</summary>
    public double TensionAcross() => Need(wood.TensionAcrossMPa, WoodProperty.TensionAcross);

    private double Need(WoodValue? value, WoodProperty property)
    {
        Asked |= 1 << (int)property;
        if (value is null && !_missing.Contains(property))
        {
            _missing.Add(property);
        }

        return value?.Value ?? double.NaN;
    }
}
