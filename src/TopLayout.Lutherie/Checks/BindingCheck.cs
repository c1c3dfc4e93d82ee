using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>What the ledges of binding and purfling leave of side and lining to glue the top to, and of the ends of braces let into the linings.</summary>
public static class BindingCheck
{
    /// <summary>Usual wood left inside the ledges, mm: as inside the ledge of a new top.</summary>
    public const double UsualMm = LedgeCheck.UsualMm;

    /// <summary>One finding for side and lining, one for the brace ends; none without a binding.</summary>
    public static IEnumerable<Finding> Of(Layout layout) =>
        layout.Design.Has(Binding.Section) ? [.. Left(layout), .. BraceEnds(layout)] : [];

    private static IEnumerable<Finding> Left(Layout layout)
    {
        var design = layout.Design;
        var (side, lining, ledge) = (design[Rim.SideThickness].Value, design[Rim.LiningWidth].Value, Binding.LedgeWidth(design));
        var left = side + lining - ledge;
        yield return Judged(
            left,
            "binding",
            $"the ledges of binding and purfling, {Say.Mm(ledge)}, leave {Say.Mm(Math.Max(0, left))} of side and lining, {Say.Mm(side + lining)}, to hold the top; {Say.Mm(UsualMm)} are usual",
            "widen the lining, or narrow the purfling",
            [design.PlaceOf(Binding.PurflingWidth), design.PlaceOf(Binding.Width), design[Rim.LiningWidth].Place]);
    }

    // A ledge no deeper than the top cuts no brace; the ends stand in the linings, from the inside of the sides to the lining's inner line.
    private static IEnumerable<Finding> BraceEnds(Layout layout)
    {
        var design = layout.Design;
        var reach = design[Binding.PurflingDepth].Value > layout.Top.ThicknessMm ? Binding.LedgeWidth(design)
            : design[Binding.Depth].Value > layout.Top.ThicknessMm ? design[Binding.Width].Value
            : 0;
        var let = layout.Members.FirstOrDefault(m => m.Kind == MemberKind.Bar && m.JoinedWith.Any(j => layout.Find(j)?.Kind == MemberKind.Lining));
        var cut = reach - design[Rim.SideThickness].Value;
        if (let is null || cut <= Tolerances.TouchMm)
        {
            yield break;
        }

        var left = design[Rim.LiningWidth].Value - cut;
        yield return Judged(
            left,
            "binding and brace ends",
            $"the ledges cut {Say.Mm(cut)} off the ends of braces such as the {let.Name} and leave {Say.Mm(Math.Max(0, left))} of them in the lining; {Say.Mm(UsualMm)} are usual",
            "make the binding narrower, or its purfling's ledge no deeper than the top",
            [design.PlaceOf(Binding.Width), let.Places[0]]);
    }

    private static Finding Judged(double left, string subject, string sentence, string cure, IReadOnlyList<SourcePlace> places)
    {
        var severity = left <= 0 ? Severity.Fail : left < UsualMm - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        return new Finding(Rules.LedgeLeaves, severity, subject, sentence)
        {
            Measured = new Measurement(left, "mm", severity == Severity.Fail ? 0 : UsualMm),
            Place = places[0],
            OtherPlaces = [.. places.Skip(1).Distinct().Where(p => p != places[0])],
            Cure = severity == Severity.Pass ? null : cure,
        };
    }
}
