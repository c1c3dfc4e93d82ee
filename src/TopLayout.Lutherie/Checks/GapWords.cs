using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Checks;

/// <summary>What the wood table does not say of a design's woods, and what was taken in its place, in words.</summary>
internal static class GapWords
{
    /// <summary>One sentence for each wood of the design that something was put in for.</summary>
    public static IEnumerable<string> All(GrainScene scene)
    {
        var gaps = scene.Members
            .Select(m => scene.Loads[m.Name].Mismatch)
            .OfType<Mismatch>()
            .SelectMany(m => (WoodGap?[])[m.TopGap, m.PieceGap])
            .OfType<WoodGap>();
        foreach (var wood in gaps.GroupBy(g => g.Wood.Key, StringComparer.Ordinal))
        {
            var missing = Properties(wood.SelectMany(g => g.Missing).Distinct());
            var like = string.Join(" or ", wood.Select(g => g.Like).Distinct(StringComparer.Ordinal));
            yield return $"the wood table does not have the {missing} of {wood.First().Wood.Name}; the worst of the woods it knows was taken, {like}";
        }

        foreach (var wood in scene.Members.Select(m => m.Material?.Wood).Prepend(scene.Layout.Top.Wood).OfType<Wood>().DistinctBy(w => w.Key))
        {
            if (IsDerived(wood.MovementRadial, wood.ShrinkageRadialPercent) || IsDerived(wood.MovementTangential, wood.ShrinkageTangentialPercent))
            {
                yield return $"how far {wood.Name} moves was worked out from its shrinkage from green to dry";
            }
        }
    }

    /// <summary>"; cocobolo's stiffness is not known, taken as the worst known, sugar maple" for the woods of a finding; empty when all is known.</summary>
    public static string Taken(GrainScene scene, IEnumerable<Contribution> named) => string.Concat(named
        .Select(c => scene.Loads[c.Member].Mismatch)
        .OfType<Mismatch>()
        .SelectMany(m => (WoodGap?[])[m.PieceGap, m.TopGap])
        .OfType<WoodGap>()
        .Select(g => $"; {Properties(g.Missing)} of {g.Wood.Name} not known, taken like the worst known wood, {g.Like}")
        .Distinct());

    private static bool IsDerived(WoodValue? movement, WoodValue? shrinkage) => movement is null && shrinkage is not null;

    private static string Properties(IEnumerable<WoodProperty> missing) => string.Join(" and ", missing.Select(Group).Distinct());

    private static string Group(WoodProperty property) => property switch
    {
        WoodProperty.MovementRadial or WoodProperty.MovementTangential => "movement",
        WoodProperty.TensionAcross => "strength across the grain",
        _ => "stiffness",
    };
}
