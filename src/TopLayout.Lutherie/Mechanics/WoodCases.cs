using System.Collections.Concurrent;
using System.Collections.Immutable;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>What the model asks of a wood and no source says, and the known wood whose data stand for it.</summary>
/// <param name="Wood">The wood.</param>
/// <param name="Missing">What is not known of it.</param>
/// <param name="Like">Name of the known wood.</param>
public sealed record WoodGap(Wood Wood, IReadOnlyList<WoodProperty> Missing, string Like);

/// <summary>A wood as the model may take it, and what was put in.</summary>
/// <param name="Wood">A wood with all that the model asks for.</param>
/// <param name="Gap">What was put in; null when nothing.</param>
internal readonly record struct WoodCase(Wood Wood, WoodGap? Gap);

/// <summary>
/// What a wood may be where the table leaves something open: its movement from its own shrinkage, and every other missing datum as
/// some known wood has it. The caller takes the worst case and says so; the table itself stays as its sources have it.
/// </summary>
internal static class WoodCases
{
    /// <summary>The moisture to which movement per % is referred, in percent. Wood Handbook, FPL-GTR-190 (2010), p. 13-15.</summary>
    private const double ReferencePercent = 10;

    // The cases of the table's own woods, by what is asked of them: neither changes while the program runs.
    private static readonly ConcurrentDictionary<(string Key, int Asked), ImmutableArray<WoodCase>> OfTable = new();

    /// <summary>
    /// The wood itself when all is known that <paramref name="ask"/> reads; else one case for each known wood that can stand for it:
    /// those of its genus, or all when none of them can. Stiffness is taken as a share of that along the grain, which the wood itself
    /// may have.
    /// </summary>
    public static ImmutableArray<WoodCase> Of(Wood wood, Action<WoodReader> ask)
    {
        var own = WithMovement(wood);
        var reader = new WoodReader(own);
        ask(reader);
        if (reader.Missing.Count == 0)
        {
            return [new WoodCase(own, null)];
        }

        if (!ReferenceEquals(WoodTable.Find(wood.Key), wood))
        {
            return Known(wood, own, reader.Missing, ask);
        }

        if (!OfTable.TryGetValue((wood.Key, reader.Asked), out var known))
        {
            known = Known(wood, own, reader.Missing, ask);
            OfTable.TryAdd((wood.Key, reader.Asked), known);
        }

        return known;
    }

    private static ImmutableArray<WoodCase> Known(Wood wood, Wood own, IReadOnlyList<WoodProperty> missing, Action<WoodReader> ask) =>
    [
        .. WoodTable.All
            .Where(w => w.ModulusRadialMPa is not null)
            .Select(w => (Case: new WoodCase(Completed(own, w), new WoodGap(wood, missing, w.Name)), IsKin: Genus(w) == Genus(wood)))
            .Where(c => Missing(c.Case.Wood, ask).Count == 0)
            .OrderByDescending(c => c.IsKin)
            .GroupBy(c => c.IsKin)
            .First()
            .Select(c => c.Case),
    ];

    /// <summary>The wood with movement it lacks worked out from its shrinkage: Eq. 13-3 for one percent from 10 %.</summary>
    public static Wood WithMovement(Wood wood) => wood.MovementRadial is not null && wood.MovementTangential is not null ? wood : wood with
    {
        MovementRadial = wood.MovementRadial ?? FromShrinkage(wood.ShrinkageRadialPercent),
        MovementTangential = wood.MovementTangential ?? FromShrinkage(wood.ShrinkageTangentialPercent),
    };

    private static IReadOnlyList<WoodProperty> Missing(Wood wood, Action<WoodReader> ask)
    {
        var reader = new WoodReader(wood);
        ask(reader);
        return reader.Missing;
    }

    private static string Genus(Wood wood) => wood.ScientificName.Split(' ')[0];

    private static WoodValue? FromShrinkage(WoodValue? percent) => percent is not { } p ? null : p with
    {
        Value = Movement.GrowthFromShrinkage(1, p.Value, ReferencePercent, ReferencePercent + 1),
        Provenance = Provenance.Derived,
    };

    private static Wood Completed(Wood wood, Wood like)
    {
        var along = wood.ModulusAlongMPa ?? like.ModulusAlongMPa!.Value;
        WoodValue? Share(WoodValue? own, WoodValue? other) =>
            own ?? (other is { } o ? o with { Value = o.Value / like.ModulusAlongMPa!.Value.Value * along.Value } : null);
        return wood with
        {
            MovementRadial = wood.MovementRadial ?? like.MovementRadial,
            MovementTangential = wood.MovementTangential ?? like.MovementTangential,
            ModulusAlongMPa = along,
            ModulusRadialMPa = Share(wood.ModulusRadialMPa, like.ModulusRadialMPa),
            ModulusTangentialMPa = Share(wood.ModulusTangentialMPa, like.ModulusTangentialMPa),
            ShearModulusLongitudinalRadialMPa = Share(wood.ShearModulusLongitudinalRadialMPa, like.ShearModulusLongitudinalRadialMPa),
            ShearModulusLongitudinalTangentialMPa = Share(wood.ShearModulusLongitudinalTangentialMPa, like.ShearModulusLongitudinalTangentialMPa),
            ShearModulusRollingMPa = Share(wood.ShearModulusRollingMPa, like.ShearModulusRollingMPa),
            PoissonLongitudinalRadial = wood.PoissonLongitudinalRadial ?? like.PoissonLongitudinalRadial,
            PoissonLongitudinalTangential = wood.PoissonLongitudinalTangential ?? like.PoissonLongitudinalTangential,
            TensionAcrossMPa = wood.TensionAcrossMPa ?? like.TensionAcrossMPa,
        };
    }
}
