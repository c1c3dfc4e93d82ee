using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>
/// What a ledge leaves of sides and linings to glue the top to, be it cut for a new binding and its purfling or found behind an old one, and
/// what the cut ones leave of the ends of braces let into the linings.
/// </summary>
public static class LedgeCheck
{
    /// <summary>What is usually left, mm. Common practice, no source.</summary>
    public const double UsualMm = 2;

    /// <summary>One finding for side and lining, one for the brace ends, one for a ledge that opens the box; none for a top without a ledge.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var design = layout.Design;
        var (isOld, isCut) = (design.Has(Ledge.Section), design.Has(Binding.Section));
        return [.. isOld || isCut ? [Wood(design, isOld, isCut)] : (ReadOnlySpan<Finding>)[], .. isOld ? PastThePlate(layout) : [], .. isCut ? [.. BraceEnds(layout), .. Through(layout)] : (ReadOnlySpan<Finding>)[]];
    }

    // A new top behind an old binding may have a purfling besides: the wider of both counts, once.
    private static Finding Wood(Design design, bool isOld, bool isCut)
    {
        var (side, lining) = (design[Rim.SideThickness], design[Rim.LiningWidth]);
        var (old, cut) = (isOld ? design[Ledge.Binding].Value : 0, isCut ? Binding.LedgeWidth(design) : 0);
        var (ledge, rim) = (Math.Max(old, cut), side.Value + lining.Value);
        var left = rim - ledge;
        return Judged(
            left,
            "ledge",
            left <= 0
                ? $"the ledge reaches {Say.Mm(ledge)} in from the edge, where sides and lining {Say.Mm(rim)} thick have ended: nothing is left to glue to"
                : $"inside the ledge, {Say.Mm(ledge)} from the edge, {Say.Mm(left)} of sides and lining are left to glue to; {Say.Mm(UsualMm)} or more is usual",
            $"widen the lining by {Say.Mm(Math.Ceiling((UsualMm - left - Tolerances.TouchMm) * 10) / 10)} or more, or {(old >= cut ? "leave less of the binding" : "narrow the purfling or the binding")}",
            [.. old >= cut ? [design[Ledge.Binding].Place] : (ReadOnlySpan<SourcePlace>)[design.PlaceOf(Binding.PurflingWidth), design.PlaceOf(Binding.Width)], lining.Place, side.Place]);
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
            "ledge and brace ends",
            $"the ledges cut {Say.Mm(cut)} off the ends of braces such as {Say.The(let.Name)} and leave {Say.Mm(Math.Max(0, left))} of them in the lining; {Say.Mm(UsualMm)} or more is usual",
            "make the binding narrower, or its purfling's ledge no deeper than the top",
            [design.PlaceOf(Binding.Width), let.Places[0]]);
    }

    // Behind an old binding wider than the sides the top ends inside them, and what is drawn up to the sides has no top over its end.
    private static IEnumerable<Finding> PastThePlate(Layout layout)
    {
        var design = layout.Design;
        var past = design[Ledge.Binding].Value - design[Rim.SideThickness].Value;
        var plate = Region.Inside(layout.Body.PlateEdge);
        var over = past <= Tolerances.TouchMm ? [] : layout.Members
            .Where(m => m.Face == TopFace.Inside && m.Kind is MemberKind.Bar or MemberKind.Plate && m.Footprint.Subtract(plate).Area > Tolerances.ShortestMm).ToList();
        if (over.Count == 0)
        {
            yield break;
        }

        yield return new Finding(
            Rules.LedgeLeaves,
            Severity.Note,
            "brace ends and plate",
            $"the top ends {Say.Mm(past)} inside the sides, behind the binding: {(over.Count > 1 ? $"{Say.TheLast(over[0].Name)}, and {Say.Count(over.Count - 1)} more, reach" : $"{Say.The(over[0].Name)} reaches")} past it into the linings")
        {
            Measured = new Measurement(past, "mm", 0),
            Place = design[Ledge.Binding].Place,
            OtherPlaces = [over[0].Places[0]],
            Cure = "end the braces at the plate's edge, and cut their pockets no further out; or leave less of the binding",
        };
    }

    // Below the lining only the side is left, and a ledge as wide as that goes through it.
    private static IEnumerable<Finding> Through(Layout layout)
    {
        var design = layout.Design;
        var (side, lining) = (design[Rim.SideThickness], design[Rim.LiningHeight]);
        var foot = layout.Top.ThicknessMm + lining.Value;
        foreach (var (name, width, depth) in ((string, double, Sourced<double>)[])[
            ("binding", design[Binding.Width].Value, design[Binding.Depth]), ("purfling", design[Binding.PurflingWidth].Value > 0 ? Binding.LedgeWidth(design) : 0, design[Binding.PurflingDepth])])
        {
            var beyond = depth.Value - foot;
            if (width >= side.Value - Tolerances.TouchMm && beyond > Tolerances.TouchMm)
            {
                yield return new Finding(
                    Rules.LedgeLeaves,
                    Severity.Fail,
                    $"{name} ledge and side",
                    $"the {name}'s ledge, {Say.Mm(width)} in from the edge and {Say.Mm(depth.Value)} deep, goes through the side, {Say.Mm(side.Value)} thick, below the lining, which ends {Say.Mm(foot)} below the top's face")
                {
                    Measured = new Measurement(beyond, "mm", 0),
                    Place = depth.Place,
                    OtherPlaces = [lining.Place, side.Place],
                    Cure = $"make the ledge {Say.Mm(Math.Ceiling(beyond * 10) / 10)} or more shallower, or the lining as much higher",
                };
            }
        }
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
