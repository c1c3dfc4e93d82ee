using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// A wood that the design file describes itself. What is left out stays unknown, as in the built-in table. Usual ranges are those of the
/// built-in table's values.
/// </summary>
public static class OwnWood
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Repeatable("wood", "a wood that the built-in table does not have");

    /// <summary>Its key.</summary>
    public static readonly Parameter<string> Key = Parameter.NewWoodKey(
        Section, "key", "the key by which parts of this file name it", () => WoodTable.Keys);

    /// <summary>Its name in sentences.</summary>
    public static readonly Parameter<string> Name = Parameter.Text(Section, "name", "its name in sentences and on sheets", longest: 40);

    /// <summary>Where its numbers come from.</summary>
    public static readonly Parameter<string> Source = Parameter.Text(
        Section, "source", "where its numbers come from: a book and table, or how they were measured", longest: 160);

    private static readonly OptionalParameter<double> MovementRadial = Value(
        "movement_radial", "movement across the growth rings, share of the width per % of wood moisture", (0.0001, 0.01), (0.0009, 0.0025));

    private static readonly OptionalParameter<double> MovementTangential = Value(
        "movement_tangential", "movement along the growth rings, share of the width per % of wood moisture", (0.0001, 0.02), (0.0016, 0.0042));

    private static readonly OptionalParameter<double> ShrinkageRadial = Value(
        "shrinkage_radial", "shrinkage across the growth rings, green to oven-dry, %", (0.3, 20), (2, 9.5));

    private static readonly OptionalParameter<double> ShrinkageTangential = Value(
        "shrinkage_tangential", "shrinkage along the growth rings, green to oven-dry, %", (0.3, 30), (4, 11));

    private static readonly OptionalParameter<double> SpecificGravity = Value(
        "specific_gravity", "oven-dry mass over volume at 12 % moisture", (0.1, 1.4), (0.3, 1.1));

    private static readonly OptionalParameter<double> ModulusAlong = Value(
        "modulus_along", "modulus of elasticity along the grain, GPa: 1.1 times the one of a bending test", (1, 40), (8, 18));

    private static readonly OptionalParameter<double> ModulusRadialRatio = Ratio("modulus_radial_ratio", "modulus across the growth rings", (0.06, 0.2));

    private static readonly OptionalParameter<double> ModulusTangentialRatio = Ratio("modulus_tangential_ratio", "modulus along the growth rings", (0.02, 0.1));

    private static readonly OptionalParameter<double> ShearRadialRatio = Ratio("shear_radial_ratio", "shear modulus along and across the rings", (0.05, 0.15));

    private static readonly OptionalParameter<double> ShearTangentialRatio = Ratio("shear_tangential_ratio", "shear modulus along the grain and the rings", (0.04, 0.13));

    private static readonly OptionalParameter<double> ShearRollingRatio = Ratio("shear_rolling_ratio", "rolling shear modulus, across the grain", (0.003, 0.03));

    private static readonly OptionalParameter<double> PoissonRadial = Value(
        "poisson_radial", "strain across the rings per strain along the grain, under a load along the grain", (0.05, 0.9), (0.25, 0.5));

    private static readonly OptionalParameter<double> PoissonTangential = Value(
        "poisson_tangential", "strain along the rings per strain along the grain, under a load along the grain", (0.05, 0.9), (0.25, 0.7));

    private static readonly OptionalParameter<double> TensionAcross = Value(
        "tension_across", "strength in tension across the grain, MPa", (0.2, 20), (1.4, 7));

    private static readonly OptionalParameter<double> ShearStrength = Value(
        "shear_strength", "strength in shear along the grain, MPa", (0.5, 40), (5.5, 17));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All =>
    [
        Key, Name, Source, MovementRadial, MovementTangential, ShrinkageRadial, ShrinkageTangential, SpecificGravity, ModulusAlong,
        ModulusRadialRatio, ModulusTangentialRatio, ShearRadialRatio, ShearTangentialRatio, ShearRollingRatio, PoissonRadial, PoissonTangential,
        TensionAcross, ShearStrength,
    ];

    /// <summary>The wood as one section describes it.</summary>
    public static Wood Read(DesignSection section)
    {
        var source = $"described in the design file: {section[Source].Value}";
        WoodValue? Of(OptionalParameter<double> parameter, double factor = 1) =>
            section.Find(parameter) is { } found ? new WoodValue(found.Value * factor, Provenance.Described, source) : null;
        var along = Of(ModulusAlong, factor: 1000);
        WoodValue? Times(OptionalParameter<double> ratio) => along is { } modulus ? Of(ratio, modulus.Value) : null;
        return new Wood(section[Key].Value, section[Name].Value)
        {
            MovementRadial = Of(MovementRadial),
            MovementTangential = Of(MovementTangential),
            ShrinkageRadialPercent = Of(ShrinkageRadial),
            ShrinkageTangentialPercent = Of(ShrinkageTangential),
            SpecificGravity = Of(SpecificGravity),
            ModulusAlongMPa = along,
            ModulusRadialMPa = Times(ModulusRadialRatio),
            ModulusTangentialMPa = Times(ModulusTangentialRatio),
            ShearModulusLongitudinalRadialMPa = Times(ShearRadialRatio),
            ShearModulusLongitudinalTangentialMPa = Times(ShearTangentialRatio),
            ShearModulusRollingMPa = Times(ShearRollingRatio),
            PoissonLongitudinalRadial = Of(PoissonRadial),
            PoissonLongitudinalTangential = Of(PoissonTangential),
            TensionAcrossMPa = Of(TensionAcross),
            ShearStrengthMPa = Of(ShearStrength),
        };
    }

    private static OptionalParameter<double> Value(string key, string meaning, (double Low, double High) possible, (double Low, double High) usual) =>
        Parameter.Number(Section, key, meaning, possible, usual).Optional();

    private static OptionalParameter<double> Ratio(string key, string meaning, (double Low, double High) usual) =>
        Value(key, $"{meaning}, share of `modulus_along`, without which it stays unknown", (0.0005, 1), usual);
}
