using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Plans.Reports;

/// <summary>The rosette as it is cut and laid: cutter settings in the order of the cuts, strips to bend, tiles to saw.</summary>
internal static class RosetteNumbers
{
    // What a careful saw and plane leave on a face. Common practice, no source.
    private static readonly Angle FaceError = Angle.FromDegrees(0.1);

    /// <summary>The tables; none when the hole is not round or has no rosette.</summary>
    public static IEnumerable<NumberTable> Of(Layout layout)
    {
        var cuts = CutterSettings.Of(layout);
        if (cuts.IsEmpty)
        {
            yield break;
        }

        yield return Cuts(layout, cuts);
        var hole = layout.Hole.Radius!.Value;
        var rings = Rosette.Channels(layout.Design, hole).SelectMany(c => c.Rings).ToList();
        if (rings.Count > 0)
        {
            yield return Rings(layout, rings, hole);
        }

        if (rings.Any(r => r.Tiles is not null))
        {
            yield return Tiles(layout, rings.Where(r => r.Tiles is not null), hole);
        }
    }

    private static NumberTable Cuts(Layout layout, IEnumerable<CutterSetting> cuts) => new(
        "rosette_cuts",
        $"Cuts round the hole, in their order: pin {LengthText.Bit(layout.Design[Rosette.Pin].Value, layout.Design.Units)}, channels with the {Said(layout, layout.Design[Rosette.Levelling].Value)} that levelling takes off, the hole after it",
        [
            new("cut", "cut"), new("bit", "bit"), new("radius", "radius"), new("pivot_to_bit", "pivot to bit centre"), new("pin_to_bit", "caliper on pin and bit"),
            new("depth", "depth when cut"), new("remark", "remark"),
        ],
        cuts.Select(c => (IReadOnlyList<Cell>)
        [
            c.Name, LengthText.Bit(c.BitMm, layout.Design.Units), c.RadiusMm, c.PivotToBitMm, c.PinToBitEdgeMm, Depth(layout, c),
            $"{(c.PinToBitEdgeMm > c.PivotToBitMm ? "caliper over both, far edge to far edge" : "caliper between them")}{About(layout, c)}",
        ]));

    // Of a channel the printed depth and the printed levelling, so that they add up.
    private static double Depth(Layout layout, CutterSetting cut)
    {
        var (units, levelling) = (layout.Design.Units, layout.Design[Rosette.Levelling].Value);
        return cut.DepthMm == layout.Top.ThicknessMm ? cut.DepthMm : LengthText.AsPrinted(cut.DepthMm - levelling, units) + LengthText.AsPrinted(levelling, units);
    }

    private static string About(Layout layout, CutterSetting cut) =>
        !cut.FitsBit ? "; no usual bit is so thin: cut both walls with a knife"
        : cut.IsPass ? "; up to the wall that the deeper channel cuts"
        : cut.BitMm < layout.Design[Rosette.Bit].Value ? $"; the bit of {LengthText.Bit(layout.Design[Rosette.Bit].Value, layout.Design.Units)} is too wide here"
        : "";

    private static NumberTable Rings(Layout layout, IEnumerable<Ring> rings, double hole) => new(
        "rosette_rings",
        "Rings of the rosette, from the hole outward",
        [new("ring", "ring"), new("inner", "inner radius"), new("outer", "outer radius"), new("width", "width"), new("strip", "strip to cut"), new("hidden", $"hidden under the board, {LengthText.OnRuleWithUnit(HiddenArc.MarginMm, layout.Design.Units)} inside it"), new("remark", "remark")],
        rings.Select(r =>
        {
            var line = new BentLine(hole + r.InnerMm, r.WidthMm);
            var hidden = HiddenArc.Of(layout, hole + r.InnerMm, hole + r.OuterMm).LengthAt(hole + ((r.InnerMm + r.OuterMm) / 2));
            return (IReadOnlyList<Cell>)
            [
                r.Name, hole + r.InnerMm, hole + r.OuterMm, r.WidthMm, r.Kind == RingKind.Tiles ? (Cell)"" : line.StripMm(), hidden,
                !r.IsStrip ? "" : $"bend strain {NumberFormat.Trimmed(line.Strain * 100, 2)} %{(line.Strain > BentLine.BendHotFrom ? ": bend it hot first" : "")}",
            ];
        }));

    private static NumberTable Tiles(Layout layout, IEnumerable<Ring> rings, double hole) => new(
        "rosette_tiles",
        "Tiles: blanks with straight sides and flat ends",
        [
            new("ring", "ring"), new("count", "tiles"), new("inner_width", "blank's inner end"), new("outer_width", "outer end"), new("depth", "length along the radius"),
            new("finished_depth", "finished length"), new("least_thickness", "least thickness"), new("off_square", "off square, each side"),
            new("gap", "gap outside"), new("stand_off", "corners off the round wall"), new("remark", "remark"),
        ],
        rings.Select(r =>
        {
            var tile = new Tile(r.Tiles!, hole + r.InnerMm, hole + r.OuterMm);
            var hidden = tile.HiddenIn(HiddenArc.Of(layout, tile.InnerRadiusMm, tile.OuterRadiusMm));
            return (IReadOnlyList<Cell>)
            [
                r.Name, new Cell.Number(tile.Row.Count), tile.InnerWidthMm, tile.OuterWidthMm, tile.DepthMm, tile.FinishedDepthMm, LeastThickness(layout, r),
                $"{NumberFormat.Trimmed(tile.Row.Shape == TileShape.Wedge ? tile.HalfTurn.Degrees : 0, 2)}°", tile.OuterGapMm, tile.StandOffMm,
                $"{Pattern(r)}{(hidden == 0 ? "none hides" : hidden == 1 ? "1 hides" : $"{NumberFormat.Whole(hidden)} hide")} under the board; an error of {LengthText.Of(FaceError)} on every face adds up to "
                    + $"{LengthText.Of(tile.BuildUp(FaceError))}: fit the last one{Straight(tile)}{(tile.FinishedDepthMm > 0 ? "" : "; flat ends find no room: cut both round")}",
            ];
        }));

    // As deep as its channel when it is cut; what stands proud is levelled.
    private static double LeastThickness(Layout layout, Ring ring)
    {
        var units = layout.Design.Units;
        var channel = Rosette.Channels(layout.Design, layout.Hole.Radius!.Value).First(c => c.Rings.Any(r => r.Name == ring.Name));
        return LengthText.AsPrinted(channel.DepthMm, units) + LengthText.AsPrinted(layout.Design[Rosette.Levelling].Value, units);
    }

    private static string Pattern(Ring ring)
    {
        var row = ring.Tiles!;
        var woods = ring.SecondWood is null ? "" : ", two woods by turns";
        var motifs = row.Repeat > 1 ? $"{NumberFormat.Whole(row.Count / row.Repeat)} motifs of {NumberFormat.Whole(row.Repeat)}{woods}; " : "";
        return $"{motifs}{(row.Start == TileStart.Tile ? "the middle of a tile" : "a joint")} on the centre line; ";
    }

    private static string Straight(Tile tile) => tile.Row.Shape == TileShape.Straight && tile.OuterGapMm > Tile.UnseenGapMm
        ? $"; the gaps show: taper them, or take {NumberFormat.Whole(tile.StraightFrom)} or more"
        : "";

    private static string Said(Layout layout, double mm) => LengthText.WithUnit(mm, layout.Design.Units);
}
