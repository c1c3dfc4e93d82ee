using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>Whether the slot leaves a floor for the saddle to stand on, and the saddle reaches past the outer strings. The usual numbers are common practice, no source.</summary>
public static class SaddleHoldCheck
{
    /// <summary>Usual wood below the slot, mm. Common practice, no source.</summary>
    public const double FloorMm = 2;

    /// <summary>Usual length of saddle past an outer string, mm. Common practice, no source.</summary>
    public const double BeyondMm = 2;

    /// <summary>One finding for the floor and one for the length; none without a slot.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        if (layout.Find(Bridge.Name) is not { } bridge || layout.FindMark(SaddleSlot.Name) is not { } slot)
        {
            return [];
        }

        var design = layout.Design;
        var floor = bridge.ThicknessMm - slot.ThicknessMm;
        var beyond = (design[SaddleSlot.Length].Value - layout.Saddle.Bass.DistanceTo(layout.Saddle.Treble)) / 2;
        return
        [
            Judged(
                "floor of the saddle slot",
                floor,
                FloorMm,
                floor > 0
                    ? $"the saddle slot, {Say.Mm(slot.ThicknessMm)} deep, leaves {Say.Mm(floor)} of the bridge below it; {Say.Mm(FloorMm)} are usual"
                    : $"the saddle slot, {Say.Mm(slot.ThicknessMm)} deep, goes through the bridge, {Say.Mm(bridge.ThicknessMm)} thick",
                "make the slot shallower, or the bridge thicker",
                slot.Line.Bounds.Center,
                [design.PlaceOf(SaddleSlot.Depth), design.PlaceOf(Bridge.Thickness)]),
            Judged(
                "length of the saddle",
                beyond,
                BeyondMm,
                beyond > 0
                    ? $"the saddle reaches {Say.Mm(beyond)} past each outer string; {Say.Mm(BeyondMm)} are usual"
                    : $"the outer strings stand {Say.Mm(-beyond)} past the ends of the saddle",
                "lengthen the slot, or narrow `string_spread`",
                layout.Saddle.Bass,
                [design.PlaceOf(SaddleSlot.Length), design.PlaceOf(Scale.StringSpread)]),
        ];
    }

    private static Finding Judged(string subject, double left, double usual, string sentence, string cure, Point2 at, IReadOnlyList<SourcePlace> places)
    {
        var severity = left <= Tolerances.TouchMm ? Severity.Fail : left < usual - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        return new Finding(Rules.SaddleHold, severity, subject, sentence)
        {
            Measured = new Measurement(left, "mm", severity == Severity.Fail ? 0 : usual),
            Where = (at, at),
            Place = places[0],
            OtherPlaces = [.. places.Skip(1).Where(p => p != places[0])],
            Cure = severity == Severity.Pass ? null : cure,
        };
    }
}
