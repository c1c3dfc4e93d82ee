using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>What a ledge leaves of sides and linings for the new top to be glued to.</summary>
public static class LedgeCheck
{
    /// <summary>What is usually left, mm. Common practice, no source.</summary>
    public const double UsualMm = 2;

    /// <summary>One finding; none when the top goes out to the body's edge.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var design = layout.Design;
        if (!design.Has(Ledge.Section))
        {
            yield break;
        }

        var (binding, side, lining) = (design[Ledge.Binding], design[Rim.SideThickness], design[Rim.LiningWidth]);
        var left = side.Value + lining.Value - binding.Value;
        var severity = left <= 0 ? Severity.Fail : left < UsualMm ? Severity.Warning : Severity.Pass;
        yield return new Finding(
            Rules.LedgeLeaves,
            severity,
            "ledge",
            left <= 0
                ? $"the ledge begins {Say.Mm(binding.Value)} inside the edge, where sides and lining {Say.Mm(side.Value + lining.Value)} thick have ended"
                : $"inside the ledge {Say.Mm(left)} of sides and lining are left to glue to; {Say.Mm(UsualMm)} or more is usual")
        {
            Measured = new Measurement(left, "mm", left <= 0 ? 0 : UsualMm),
            Place = binding.Place,
            OtherPlaces = [lining.Place, side.Place],
            Cure = severity == Severity.Pass ? null : $"widen the lining by {Say.Mm(Math.Ceiling((UsualMm - left) * 10) / 10)} or more, or leave less of the binding",
        };
    }
}
