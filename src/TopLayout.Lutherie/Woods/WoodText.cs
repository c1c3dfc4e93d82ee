using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace TopLayout.Lutherie.Woods;

/// <summary>Woods in words: one line each, or one with every value, its unit, how far to trust it and its source.</summary>
public static class WoodText
{
    private static readonly ImmutableArray<Property> Properties =
    [
        new("movement", "movement across the growth rings", "per % moisture", w => w.MovementRadial),
        new("movement", "movement along the growth rings", "per % moisture", w => w.MovementTangential),
        new("shrinkage", "shrinkage across the growth rings, green to oven-dry", "%", w => w.ShrinkageRadialPercent),
        new("shrinkage", "shrinkage along the growth rings, green to oven-dry", "%", w => w.ShrinkageTangentialPercent),
        new("gravity", "specific gravity at 12 % moisture", "", w => w.SpecificGravity),
        new("stiffness along", "modulus along the grain, E_L", "MPa", w => w.ModulusAlongMPa),
        new("stiffness across", "modulus across the growth rings, E_R", "MPa", w => w.ModulusRadialMPa),
        new("stiffness across", "modulus along the growth rings, E_T", "MPa", w => w.ModulusTangentialMPa),
        new("stiffness across", "shear modulus G_LR", "MPa", w => w.ShearModulusLongitudinalRadialMPa),
        new("stiffness across", "shear modulus G_LT", "MPa", w => w.ShearModulusLongitudinalTangentialMPa),
        new("stiffness across", "rolling shear modulus G_RT", "MPa", w => w.ShearModulusRollingMPa),
        new("Poisson's ratios", "Poisson's ratio nu_LR", "", w => w.PoissonLongitudinalRadial),
        new("Poisson's ratios", "Poisson's ratio nu_LT", "", w => w.PoissonLongitudinalTangential),
        new("strength", "strength in tension across the grain", "MPa", w => w.TensionAcrossMPa),
        new("strength", "strength in shear along the grain", "MPa", w => w.ShearStrengthMPa),
    ];

    /// <summary>One line: key, name, and the groups of values of which something is unknown; columns as wide as the longest of the woods.</summary>
    public static string List(IReadOnlyCollection<Wood> woods)
    {
        var (keys, names) = (woods.Max(w => w.Key.Length), woods.Max(w => w.Name.Length));
        var text = new StringBuilder();
        foreach (var wood in woods)
        {
            text.Append(wood.Key.PadRight(keys)).Append("  ").Append(wood.Name.PadRight(names)).Append("  ").Append(Known(wood)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Everything about one wood, a value a line, what is unknown said so.</summary>
    public static string Whole(Wood wood)
    {
        var text = new StringBuilder();
        text.Append(wood.Key).Append(": ").Append(wood.Name).Append(wood.ScientificName.Length > 0 ? $" ({wood.ScientificName})" : "").Append("\n\n");
        foreach (var property in Properties)
        {
            text.Append(property.Name).Append(": ").Append(property.Of(wood) is { } value ? Shown(value, property.Unit) : "unknown").Append('\n');
        }

        return text.ToString();
    }

    /// <summary>How far a value can be trusted, as a maker reads it.</summary>
    public static string Trust(Provenance provenance) => provenance switch
    {
        Provenance.Found => "found in the source",
        Provenance.Derived => "derived from found values",
        Provenance.Described => "given by the design",
        Provenance.Memory => "FROM MEMORY, check it before relying on it",
        Provenance.Assumed => "ASSUMED, no source has it",
        _ => throw new ArgumentOutOfRangeException(nameof(provenance)),
    };

    private static string Known(Wood wood)
    {
        var groups = Properties.GroupBy(p => p.Group).ToList();
        var known = groups.Where(g => g.All(p => p.Of(wood) is not null)).Select(g => g.Key).ToList();
        var partly = groups.Where(g => g.Any(p => p.Of(wood) is null) && g.Any(p => p.Of(wood) is not null)).Select(g => g.Key).ToList();
        var unknown = groups.Select(g => g.Key).Except(known).Except(partly).ToList();
        string[] parts = [Part("known", known), Part("partly", partly), Part("unknown", unknown)];
        return string.Join("; ", parts.Where(p => p.Length > 0));
    }

    private static string Part(string word, List<string> groups) => groups.Count == 0 ? "" : $"{word}: {string.Join(", ", groups)}";

    private static string Shown(WoodValue value, string unit)
    {
        var number = value.Value.ToString("0.######", CultureInfo.InvariantCulture) + (unit.Length > 0 ? " " + unit : "");
        return $"{number}  [{Trust(value.Provenance)}: {value.Source}]";
    }

    private sealed record Property(string Group, string Name, string Unit, Func<Wood, WoodValue?> Of);
}
