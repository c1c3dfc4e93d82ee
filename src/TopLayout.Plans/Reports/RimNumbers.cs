using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>The numbers of the rim: sides, linings, and the ledges cut round the closed box.</summary>
internal static class RimNumbers
{
    /// <summary>Rows of what, value, remark.</summary>
    public static IEnumerable<IReadOnlyList<Cell>> Rows(Layout layout)
    {
        var design = layout.Design;
        yield return ["sides, thickness", design[Rim.SideThickness].Value, ""];
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
}
