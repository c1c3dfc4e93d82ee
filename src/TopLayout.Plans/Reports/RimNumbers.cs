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
            foreach (var (where, mm) in Depths(layout))
            {
                yield return [$"sides, depth at the {where}", mm, $"the {where} block's"];
            }

            var (height, stuff) = MouldOf(layout);
            yield return ["mould, height", height is { } known ? known : "to choose", stuff];
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

    /// <summary>The mould's height in a phrase, "72 mm high, 4 layers of ...", with the depth of the sides it follows from.</summary>
    public static string Mould(Layout layout)
    {
        var (mould, depths) = (MouldOf(layout), Depths(layout).ToList());
        string Said(double mm) => LengthText.OnRuleWithUnit(mm, layout.Design.Units);
        return mould.HeightMm is { } height
            ? $"{Said(height)} high, {mould.Stuff}, so that the sides, {string.Join(", ", depths.Select(d => $"{Said(d.Mm)} deep at the {d.Where}"))}, stand out of it for the linings"
            : mould.Stuff;
    }

    // The sides are as deep as the blocks between them.
    private static IEnumerable<(string Where, double Mm)> Depths(Layout layout) =>
        from end in ((string Where, string Block)[])[("neck", Block.Neck.Name), ("tail", Block.Tail.Name)]
        let block = layout.Find(end.Block)
        where block is not null
        select (end.Where, block.ThicknessMm);

    // Lower than the sides, in whole layers, so that the linings can be glued at both edges; null where no depth is known.
    private static (double? HeightMm, string Stuff) MouldOf(Layout layout)
    {
        var units = layout.Design.Units;
        var layer = units == LengthUnit.Inch ? InchLayerMm : LayerMm;
        var (said, stuff) = (LengthText.OnRuleWithUnit(layer, units), "plywood or fibreboard");
        var layers = (int)((Depths(layout).Select(d => d.Mm).DefaultIfEmpty(0).Min() - StandOutMm) / layer);
        return layers < 1
            ? (null, $"whole layers of {said} {stuff}, together {LengthText.OnRuleWithUnit(StandOutMm, units)} or more lower than the sides are deep")
            : (layers * layer, $"{NumberFormat.Whole(layers)} layer{(layers == 1 ? "" : "s")} of {said} {stuff}");
    }
}
