using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>What the holes through a tie block leave of it: above, below, between each other and to its ends, whichever is least.</summary>
internal static class TieHoleCheck
{
    /// <summary>Usual wood round a tie hole, mm. Common practice, no source.</summary>
    public const double WoodMm = 2;

    /// <summary>One finding; none without a tie block.</summary>
    public static IEnumerable<Finding> Of(Layout layout, Member bridge)
    {
        if (layout.TieHoles is not [var first, ..] holes || layout.FindMark(BridgePins.TieBlockName) is not { } block)
        {
            yield break;
        }

        var (design, radius) = (layout.Design, first.DiameterMm / 2);
        var (height, thickness, count) = (design.PlaceOf(TieHoles.Height), design.PlaceOf(Bridge.Thickness), design.PlaceOf(TieHoles.Count));
        var least = ((double Wood, string Where, string Cure, SourcePlace[] Places)[])
        [
            (bridge.ThicknessMm - first.HeightMm - radius, "above them", "lower `tie_hole_height`, or make the bridge thicker", [height, thickness]),
            (first.HeightMm - radius, "below them", "raise `tie_hole_height`", [height]),
            (holes.Length == 1 ? double.PositiveInfinity : holes[1].From.X - first.From.X - first.DiameterMm, "between two of them", "raise `tie_spread`, or drill fewer or smaller holes", [first.Place, count]),
            (first.From.X - block.Line.Bounds.Min.X - radius, "to the block's ends", "lower `tie_spread`, or lengthen the bridge", [first.Place, design.PlaceOf(Bridge.Length)]),
        ];
        var (wood, where, cure, places) = least.MinBy(l => l.Wood);
        yield return BridgeCheck.Judged(
            "tie holes",
            wood,
            WoodMm,
            $"the holes through the tie block leave {Say.Mm(Math.Max(0, wood))} of wood {where}; {Say.Mm(WoodMm)} or more are usual all round",
            $"the holes through the tie block lack {Say.Mm(-wood)} of wood {where}",
            cure,
            first.From.MidpointTo(first.To),
            places,
            Rules.TieHoleWood);
    }
}
