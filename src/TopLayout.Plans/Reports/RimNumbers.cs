using TopLayout.Drawing;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>The numbers of the rim: sides, linings, and the ledges cut round the closed box.</summary>
internal static class RimNumbers
{
    // A layer of the stuff that moulds are glued up from, and how far the sides stand out of the mould at least, both together, mm. Common practice, no source.
    private const double LayerMm = 18;
    private const double InchLayerMm = 19.05;
    private const double StandOutMm = 16;

    /// <summary>Rows of what, value, remark.</summary>
    public static IEnumerable<IReadOnlyList<Cell>> Rows(Layout layout)
    {
        var design = layout.Design;
        yield return ["sides, thickness", design[Rim.SideThickness].Value, ""];
        if (!design.Has(Ledge.Section))
        {
            foreach (var row in Depths(layout))
            {
                yield return row;
            }
        }

        yield return ["linings, width on the glued edge", design[Rim.LiningWidth].Value, Rim.LiningStock.Read(design.In(Rim.Lining)).Wood.Name];
        yield return ["linings, height down the side", design[Rim.LiningHeight].Value, ""];
        if (design.Has(Ledge.Section))
        {
            yield return ["binding left in place, width", design[Ledge.Binding].Value, "the plate ends at it"];
        }

        if (!design.Has(Binding.Section))
        {
            yield break;
        }

        yield return ["binding ledge, width from the edge", design[Binding.Width].Value, "cut round the closed box"];
        yield return ["binding ledge, depth down the side", design[Binding.Depth].Value, ""];
        if (design[Binding.PurflingWidth].Value > 0)
        {
            var unit = design.Units;
            yield return
            [
                "purfling ledge, width", design[Binding.PurflingWidth].Value,
                $"inside the binding, from {LengthText.Of(design[Binding.Width].Value, unit)} to {LengthText.WithUnit(Binding.LedgeWidth(design), unit)} off the edge",
            ];
            yield return ["purfling ledge, depth from the top's face", design[Binding.PurflingDepth].Value, ""];
        }
    }

    // The sides are as deep as the blocks between them; the mould is lower, in whole layers, so that the linings can be glued at both edges.
    private static IEnumerable<IReadOnlyList<Cell>> Depths(Layout layout)
    {
        var (neck, tail) = (layout.Find(Block.Neck.Name)?.ThicknessMm, layout.Find(Block.Tail.Name)?.ThicknessMm);
        foreach (var (where, depth) in ((string, double?)[])[("neck", neck), ("tail", tail)])
        {
            if (depth is { } mm)
            {
                yield return [$"sides, depth at the {where}", mm, $"the {where} block's"];
            }
        }

        var units = layout.Design.Units;
        var layer = units == LengthUnit.Inch ? InchLayerMm : LayerMm;
        var (said, stuff) = (LengthText.OnRuleWithUnit(layer, units), "plywood or fibreboard");
        var least = (neck, tail) switch { ({ } a, { } b) => Math.Min(a, b), var (a, b) => a ?? b };
        var layers = least is { } shallow ? (int)((shallow - StandOutMm) / layer) : 0;
        yield return layers < 1
            ? ["mould, height", "choose", $"whole layers of {said} {stuff}, together {LengthText.OnRuleWithUnit(StandOutMm, units)} or more lower than the sides are deep"]
            : ["mould, height", layers * layer, $"{NumberFormat.Whole(layers)} layers of {said} {stuff}; the sides stand out for the linings"];
    }
}
