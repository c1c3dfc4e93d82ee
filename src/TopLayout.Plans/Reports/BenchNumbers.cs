using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>
/// The numbers a maker transfers, as tables. Places are from the neck edge (positive towards the tail) and from the centre line (bass
/// negative, treble positive), whatever the hand.
/// </summary>
internal static class BenchNumbers
{
    /// <summary>All tables, in the order of the work.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="isMerged">Whether parts alike stand in one row, as on paper; machines read each.</param>
    public static IEnumerable<NumberTable> Of(Layout layout, bool isMerged = true)
    {
        foreach (var table in OutlineNumbers.Of(layout))
        {
            yield return table;
        }

        yield return FretTable(layout);
        yield return Positions(layout);
        foreach (var table in RosetteNumbers.Of(layout))
        {
            yield return table;
        }

        yield return DrillPoints(layout);
        if (!layout.TieHoles.IsEmpty)
        {
            yield return TieHoles(layout);
        }

        yield return Bars(layout);
        yield return BraceEndTable.Of(layout);
        yield return Pieces(layout, isMerged);
        yield return new NumberTable("rim", "Rim", [new("what", "what"), new("value", "value"), new("remark", "remark")], RimNumbers.Rows(layout));
    }

    private static NumberTable FretTable(Layout layout)
    {
        var last = layout.Design[Scale.LastFret].Value;
        return new NumberTable(
            "frets",
            "Frets",
            [new("fret", "fret"), new("from_nut", "from nut"), new("from_neck_edge", "from neck edge")],
            Enumerable.Range(1, last).Select(k => (IReadOnlyList<Cell>)[new Cell.Number(k), layout.Frets.FromNut(k), layout.Frets.FromNeckEdge(k)]));
    }

    private static NumberTable Positions(Layout layout)
    {
        var design = layout.Design;
        var rows = new List<IReadOnlyList<Cell>>
        {
            new Cell[] { "nut to neck edge", layout.Frets.NeckEdgeFromNut, "" },
            new Cell[] { "fretboard end", Fretboard.EndFromNeckEdge(design), "" },
            new Cell[] { "soundhole centre", -layout.Hole.Center.Y, "" },
            new Cell[] { "theoretical saddle", layout.Frets.SaddleFromNeckEdge, $"without compensation; {Said(layout, layout.Frets.ScaleMm)} from the nut" },
            new Cell[] { "saddle, outer treble string", -layout.Saddle.Treble.Y, $"{Said(layout, layout.Saddle.Treble.X)} from the centre line{FromNut(layout, layout.Saddle.Treble)}" },
            new Cell[] { "saddle, outer bass string", -layout.Saddle.Bass.Y, $"{Said(layout, -layout.Saddle.Bass.X)} from the centre line{FromNut(layout, layout.Saddle.Bass)}" },
            new Cell[] { "bridge front edge", Bridge.FrontFromNeckEdge(design), $"{Said(layout, design[Bridge.Length].Value)} long" },
            new Cell[] { "bridge rear edge", Bridge.RearFromNeckEdge(design), "" },
        };
        if (layout.FindMark(SaddleSlot.Name) is { } slot)
        {
            rows.Add(["saddle slot, front wall behind the bridge's front edge on the centre line", SaddleSlot.WallFromFront(design), $"{Said(layout, design[SaddleSlot.Width].Value)} wide, {Said(layout, design[SaddleSlot.Length].Value)} long, {Said(layout, slot.ThicknessMm)} deep"]);
        }

        if (layout.FindMark(TrussRod.Name) is { } rod)
        {
            rows.Add(["truss-rod slot, its end", -TrussRod.EndY(layout), $"{Said(layout, design[TrussRod.Width].Value)} wide, {Said(layout, rod.ThicknessMm)} deep"]);
        }

        if (TrussRodKey.Of(layout) is var (far, way))
        {
            rows.Add(["truss-rod key, from the slot's end to the soundhole's edge", far is { } mm ? mm : "none", LengthText.Sentence(way, design.Units)]);
        }

        if (layout.FindMark(BridgePins.TieBlockName) is { Line.Bounds: var block })
        {
            rows.Add(["tie block, its front edge ahead of the bridge's rear edge", block.Height, $"{Said(layout, block.Width)} long"]);
        }

        rows.InsertRange(3, HoleNumbers.Size(layout));
        rows.AddRange(HoleNumbers.Rows(layout));
        if (design.Has(XBrace.Section))
        {
            rows.Add(["X crossing", -XBrace.Crossing(design, layout.Hole).Y, ""]);
            rows.Add(["X legs' axes from the centre line, at the bridge front", XBrace.OffsetAt(design, layout.Hole, Bridge.FrontFromNeckEdge(design)), ""]);
            rows.Add(["X legs' axes from the centre line, at the bridge rear", XBrace.OffsetAt(design, layout.Hole, Bridge.RearFromNeckEdge(design)), ""]);
        }

        return new NumberTable("positions", "Places along the body", [new("what", "what"), new("value", "value"), new("remark", "remark")], rows);
    }

    // The line told is that of the crown, along the middle of the slot.
    private static string FromNut(Layout layout, Point2 at)
    {
        var more = -at.Y - layout.Frets.SaddleFromNeckEdge;
        return $"; {Said(layout, layout.Frets.NeckEdgeFromNut - at.Y)} from the nut{(Math.Abs(more) < Tolerances.ShortestMm ? "" : $", {Said(layout, more)} of it compensation")}";
    }

    // With a remark only where a hole has one.
    private static NumberTable DrillPoints(Layout layout)
    {
        var hasLast = layout.DrillPoints.Any(IsThroughBridge);
        Column[] columns = [new("name", "hole"), new("from_neck_edge", "from neck edge"), new("across", "across"), new("diameter", "diameter")];
        return new NumberTable(
            "drill_points",
            "Holes to drill",
            hasLast ? [.. columns, new("remark", "remark")] : columns,
            layout.DrillPoints.Select(p => (IReadOnlyList<Cell>)
            [
                p.Name, -p.At.Y, p.At.X, p.DiameterMm, .. hasLast ? (Cell[])[IsThroughBridge(p) ? "last, in step 6, once the place is proved" : ""] : [],
            ]));
    }

    // Of the bridge, not of the top: what is drilled into the block lies level with the top's face.
    private static NumberTable TieHoles(Layout layout) => new(
        "tie_holes",
        "Holes through the tie block: drilled along the body, none through the top",
        [new("name", "hole"), new("across", "across"), new("above_top", "middle above the top's face"), new("diameter", "diameter"), new("length", "length")],
        layout.TieHoles.Select(h => (IReadOnlyList<Cell>)[h.Name, h.From.X, h.HeightMm, h.DiameterMm, h.From.DistanceTo(h.To)]));

    /// <summary>Whether a hole goes through the bridge, so that it is drilled last.</summary>
    public static bool IsThroughBridge(DrillPoint point) => BridgePins.IsPin(point) || point.Name.StartsWith("locating pin, bridge", StringComparison.Ordinal);

    private static NumberTable Bars(Layout layout)
    {
        var bars = layout.Members.Where(m => m.Kind == MemberKind.Bar).Select(m => (Row: Bar(m), Notch: Notches.Words(layout, m))).ToList();
        var hasNotches = bars.Any(b => b.Notch.Length > 0);
        Column[] columns =
        [
            new("name", "brace"), new("first_from_neck_edge", "first end, from neck edge"), new("first_across", "across"),
            new("second_from_neck_edge", "second end, from neck edge"), new("second_across", "across"),
            new("length", "longest side"), new("angle", "to the grain"), new("width", "width"), new("height", "height"),
        ];
        return new NumberTable(
            "bars",
            "Braces: ends of the axis, length and angle",
            hasNotches ? [.. columns, new("notch", "notch")] : columns,
            bars.Select(b => hasNotches ? [.. b.Row, b.Notch] : b.Row));
    }

    private static IReadOnlyList<Cell> Bar(Member bar)
    {
        var (upper, lower, width) = BraceEnds.Axis(bar);
        return
        [
            bar.Name, -upper.Y, upper.X, -lower.Y, lower.X, BraceEnds.Sides(bar).Max(s => s.Length), Angle.FromDegrees(Math.Abs(bar.Grain.Degrees)), width, bar.ThicknessMm,
        ];
    }

    private static NumberTable Pieces(Layout layout, bool isMerged) => new(
        "pieces",
        "Every part on the top",
        [
            new("name", "part"), new("face", "face"), new("wood", "wood"), new("thickness", "thickness or depth"),
            new("from", "from neck edge"), new("to", "to"), new("bass", "bass edge"), new("treble", "treble edge"), new("area", "glued area"), new("remark", "remark"),
        ],
        PieceRows.Of(layout, isMerged).Select(p => (IReadOnlyList<Cell>)
        [
            p.Name, p.Face, p.Wood, p.ThicknessMm, -p.Bounds.Max.Y, -p.Bounds.Min.Y, p.Bounds.Min.X, p.Bounds.Max.X, new Cell.Area(p.AreaMm2), p.Remark,
        ]));

    private static string Said(Layout layout, double mm) => LengthText.WithUnit(mm, layout.Design.Units);
}
