using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>The wood that the truss rod's slot leaves of block and tongue, and whether locating pins are hidden. The usual numbers are common practice, no source.</summary>
public static class NeckEndCheck
{
    /// <summary>Usual wood below the slot, mm. Common practice, no source.</summary>
    public const double BelowMm = 3;

    /// <summary>Usual wood to each side of the slot, mm. Common practice, no source.</summary>
    public const double BesideMm = 5;

    /// <summary>One finding for the wood below the slot, one for that beside it, one for each pin that shows.</summary>
    public static IEnumerable<Finding> Of(Layout layout) => [.. Slot(layout), .. Pins(layout)];

    private static IEnumerable<Finding> Slot(Layout layout)
    {
        if (layout.FindMark(TrussRod.Name) is not { } slot || layout.Find(Block.Neck.Name) is not { } block)
        {
            yield break;
        }

        var (design, end) = (layout.Design, TrussRod.EndY(layout));
        var tongue = layout.Find(Tongue.Name);
        var holder = tongue ?? block;
        var below = holder.ThicknessMm - slot.ThicknessMm;
        yield return Judged(
            below,
            BelowMm,
            $"the truss-rod slot, {Say.Mm(slot.ThicknessMm)} deep, {(below > 0 ? $"leaves {Say.Mm(below)}" : "leaves nothing")} of {Say.The(holder.Name)} below it",
            "make the slot shallower, or the tongue thicker",
            (new Point2(0, end), new Point2(0, end)),
            [slot.Place, tongue is null ? design.PlaceOf(Block.Neck.Depth) : design.PlaceOf(Tongue.Thickness)]);

        // The tongue narrows towards its tip, so the slot's end is where least is left. Past the tip nothing is.
        var width = WidthAt(holder, end + Tolerances.ShortestMm);
        var beside = (width - design[TrussRod.Width].Value) / 2;
        yield return Judged(
            beside,
            BesideMm,
            width == 0
                ? $"the truss-rod slot runs out past the tip of {Say.TheLast(holder.Name)}"
                : $"at its end the truss-rod slot leaves {Say.Mm(Math.Max(0, beside))} of {Say.The(holder.Name)} to each side",
            tongue is null ? "make the slot narrower, or the block wider" : "end the slot sooner with `into_tongue`, make it narrower, or the tongue wider",
            (new Point2(-width / 2, end), new Point2(width / 2, end)),
            [design.PlaceOf(tongue is null ? TrussRod.Width : TrussRod.IntoTongue), design.PlaceOf(TrussRod.Width)]);
    }

    private static double WidthAt(Member member, double y)
    {
        var crossings = member.Footprint.Outer.Crossings(new Segment(new Point2(-1000, y), new Point2(1000, y), 0, ""));
        return crossings.Count < 2 ? 0 : crossings.Max(c => c.Point.X) - crossings.Min(c => c.Point.X);
    }

    private static Finding Judged(double left, double usual, string sentence, string cure, (Point2 From, Point2 To) where, IReadOnlyList<SourcePlace> places)
    {
        var severity = left <= 0 ? Severity.Fail : left < usual - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        return new Finding(Rules.TrussRodSlot, severity, TrussRod.Name, $"{sentence}; {Say.Mm(usual)} are usual")
        {
            Measured = new Measurement(left, "mm", severity == Severity.Fail ? 0 : usual),
            Where = where,
            Place = places[0],
            OtherPlaces = [.. places.Skip(1).Distinct().Where(p => p != places[0])],
            Cure = severity == Severity.Pass ? null : cure,
        };
    }

    private static IEnumerable<Finding> Pins(Layout layout)
    {
        foreach (var (name, cover) in LocatingPins.Covers)
        {
            if (layout.DrillPoints.FirstOrDefault(p => p.Name == name) is not { } pin || layout.Find(cover) is not { } member)
            {
                continue;
            }

            var room = (member.Footprint.Contains(pin.At) ? 1 : -1) * member.Footprint.Outer.DistanceTo(pin.At) - pin.RadiusMm;
            var isOut = room < -Tolerances.TouchMm;
            yield return new Finding(
                Rules.PinShows,
                isOut ? Severity.Fail : Severity.Pass,
                $"{name} and {cover}",
                isOut ? $"{Say.The(name)} reaches {Say.Mm(-room)} past {Say.TheLast(cover)}" : $"{Say.The(name)} lies {Say.Mm(Math.Max(0, room))} inside {Say.TheLast(cover)}")
            {
                Measured = new Measurement(room, "mm", 0),
                Where = (pin.At, pin.At),
                Place = pin.Place,
                OtherPlaces = [.. member.Places.Take(1).Where(p => p != pin.Place)],
                Cure = isOut ? $"move the pin {Say.Mm(Math.Ceiling(-room * 10) / 10)} or more towards the middle of {Say.TheLast(cover)}" : null,
            };
        }
    }
}
