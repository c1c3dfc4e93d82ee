using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>
/// What the saddle's slot and the pin holes leave of the bridge, and where the pins come out below: through the plate, clear of its edges and
/// of the legs of the X. The usual distances are common practice, no source.
/// </summary>
public static class BridgeCheck
{
    /// <summary>Usual wood between the slot or a pin hole and an edge of the bridge, mm. Common practice, no source.</summary>
    public const double WoodMm = 4;

    /// <summary>Usual from a pin hole to the edge of the plate or to a leg, mm. Common practice, no source.</summary>
    public const double ClearMm = 2;

    /// <summary>One finding for the slot, one for the tie block, one for its holes, and one for the worst pin against each of bridge, slot, plate and legs.</summary>
    public static IEnumerable<Finding> Of(Layout layout) =>
        layout.Find(Bridge.Name) is { } bridge ? [.. Slot(layout, bridge), .. Tie(layout), .. TieHoleCheck.Of(layout, bridge), .. Pins(layout, bridge)] : [];

    private static IEnumerable<Finding> Slot(Layout layout, Member bridge)
    {
        if (layout.FindMark(SaddleSlot.Name) is not { } slot)
        {
            yield break;
        }

        var box = bridge.Footprint.Bounds;
        double Wood(Point2 p) => Math.Min(Math.Min(box.Max.Y - p.Y, p.Y - box.Min.Y), Math.Min(box.Max.X - p.X, p.X - box.Min.X));
        var corner = slot.Line.Vertices.Select(v => v.Position).MinBy(Wood);
        var (wood, design) = (Wood(corner), layout.Design);
        var edge = wood == box.Max.Y - corner.Y ? "front edge" : wood == corner.Y - box.Min.Y ? "rear edge" : "ends";
        yield return Judged(
            "saddle slot",
            wood,
            WoodMm,
            $"the saddle slot leaves {Say.Mm(Math.Max(0, wood))} of wood to the bridge's {edge}, its front wall {Say.Mm(SaddleSlot.WallFromFront(design))} behind the front edge on the centre line; {Say.Mm(WoodMm)} are usual",
            $"the saddle slot reaches {Say.Mm(-wood)} past the bridge's {edge}",
            edge == "ends" ? "shorten the slot or lengthen the bridge" : edge == "front edge" ? "raise `front_to_saddle`, or make the slot narrower or shorter" : "lower `front_to_saddle`, or make the bridge deeper",
            corner,
            [edge == "ends" ? design.PlaceOf(SaddleSlot.Length) : design.PlaceOf(Bridge.FrontToSaddle), slot.Place, design.PlaceOf(Bridge.Length)]);
    }

    private static IEnumerable<Finding> Tie(Layout layout)
    {
        if (layout.FindMark(BridgePins.TieBlockName) is not { } block)
        {
            yield break;
        }

        // Without a slot the saddle's own line counts.
        var design = layout.Design;
        var rear = layout.FindMark(SaddleSlot.Name)?.Line.Bounds.Min.Y ?? layout.Saddle.Bass.Y;
        var gap = rear - block.Line.Bounds.Max.Y;
        yield return Judged(
            "tie block",
            gap,
            ClearMm,
            $"the tie block stands {Say.Mm(Math.Max(0, gap))} behind the saddle's slot; {Say.Mm(ClearMm)} or more are usual, for the strings to break over the saddle",
            $"the tie block reaches {Say.Mm(-gap)} into the saddle's slot",
            "make `tie_block` smaller, or the bridge deeper",
            new Point2(0, block.Line.Bounds.Max.Y),
            [block.Place, design.PlaceOf(Bridge.Depth)]);
    }

    private static IEnumerable<Finding> Pins(Layout layout, Member bridge)
    {
        var pins = layout.DrillPoints.Where(BridgePins.IsPin).ToList();
        if (pins.Count == 0)
        {
            yield break;
        }

        var design = layout.Design;
        yield return Worst(
            pins, p => Inside(bridge.Footprint, p), WoodMm, "bridge's edge", "past the bridge's edge", "bring the pins nearer to the saddle, or make the bridge deeper or longer",
            design.PlaceOf(Bridge.Depth));
        if (layout.FindMark(SaddleSlot.Name) is { } slot)
        {
            var area = Region.Inside(slot.Line);
            yield return Worst(pins, p => Clear(area, p), WoodMm, "saddle slot", "into the saddle slot", "raise `pins_behind_saddle`, or make the slot narrower", slot.Place);
        }

        if (layout.Find(BridgePlate.Name) is { } plate)
        {
            yield return Worst(
                pins, p => Inside(plate.Footprint, p), ClearMm, "bridge plate's edge", "past the edge of the bridge plate", "let the plate reach further behind the bridge, or make it longer", plate.Places[0]);
        }
        else
        {
            yield return new Finding(Rules.PinHoles, Severity.Warning, "bridge pins", "there is no plate under the bridge pins: the balls of the strings pull on bare top wood")
            {
                Place = pins[0].Place,
                Cure = "add the section [bridge_plate]",
            };
        }

        foreach (var leg in ((string[])[XBrace.BassLeg, XBrace.TrebleLeg]).Select(layout.Find).OfType<Member>())
        {
            yield return Worst(
                pins, p => Clear(leg.Footprint, p), ClearMm, leg.Name, $"into {Say.TheLast(leg.Name)}", "open the X, or cross it nearer to the hole", XBrace.PositionPlace(design));
        }
    }

    private static Finding Worst(List<DrillPoint> pins, Func<DrillPoint, double> room, double usual, string from, string past, string cure, SourcePlace other)
    {
        var pin = pins.MinBy(room)!;
        var gap = room(pin);
        return Judged(
            $"{pin.Name} and {from}",
            gap,
            usual,
            $"the hole of {pin.Name} stands {Say.Mm(Math.Max(0, gap))} from the {from}; {Say.Mm(usual)} are usual",
            $"the hole of {pin.Name} reaches {Say.Mm(-gap)} {past}",
            cure,
            pin.At,
            [pin.Place, other],
            Rules.PinHoles);
    }

    internal static Finding Judged(
        string subject, double room, double usual, string sentence, string failed, string cure, Point2 at, IReadOnlyList<SourcePlace> places, Rule? rule = null)
    {
        var severity = room < -Tolerances.TouchMm ? Severity.Fail : room < usual - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        return new Finding(rule ?? Rules.BridgeWood, severity, subject, severity == Severity.Fail ? failed : sentence)
        {
            Measured = new Measurement(room, "mm", severity == Severity.Fail ? 0 : usual),
            Where = (at, at),
            Place = places[0],
            OtherPlaces = [.. places.Skip(1).Distinct().Where(p => p != places[0])],
            Cure = severity == Severity.Pass ? null : cure,
        };
    }

    // From a hole's rim to the border of what holds it; negative by how far it is past it.
    private static double Inside(Region area, DrillPoint hole) =>
        (area.Contains(hole.At) ? 1 : -1) * area.Loops.Min(l => l.DistanceTo(hole.At)) - hole.RadiusMm;

    /// <summary>From a hole's rim to an area it is to keep off, mm; negative by how far it reaches in.</summary>
    internal static double Clear(Region area, DrillPoint hole) =>
        (area.Contains(hole.At) ? -1 : 1) * area.Loops.Min(l => l.DistanceTo(hole.At)) - hole.RadiusMm;
}
