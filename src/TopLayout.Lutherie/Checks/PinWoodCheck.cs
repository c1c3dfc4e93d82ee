using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>The wood between neighbouring bridge pins, and pins that go into braces other than the legs of the X, which <see cref="BridgeCheck"/> looks at.</summary>
public static class PinWoodCheck
{
    /// <summary>Usual wood between two pin holes, mm. Common practice, no source.</summary>
    public const double WebMm = 3;

    /// <summary>Thinner than this it breaks out at the drill, mm. Common practice, no source.</summary>
    public const double LeastWebMm = 1;

    /// <summary>One finding for the thinnest wood between two pins, one for each brace that a hole goes into.</summary>
    public static IEnumerable<Finding> Of(Layout layout) => [.. Web(layout), .. Braces(layout)];

    private static IEnumerable<Finding> Web(Layout layout)
    {
        var pins = layout.DrillPoints.Where(BridgePins.IsPin).ToList();
        var pairs = pins.SelectMany((a, i) => pins.Skip(i + 1).Select(b => (A: a, B: b, Web: a.At.DistanceTo(b.At) - a.RadiusMm - b.RadiusMm))).ToList();
        if (pairs.Count == 0)
        {
            yield break;
        }

        var (first, second, web) = pairs.MinBy(p => p.Web);
        var severity = web < LeastWebMm - Tolerances.TouchMm ? Severity.Fail : web < WebMm - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        var left = web > Tolerances.TouchMm ? $"leave {Say.Mm(web)} of wood between them" : web < -Tolerances.TouchMm ? $"overlap by {Say.Mm(-web)}" : "touch";
        yield return new Finding(Rules.PinHoles, severity, "wood between the pins", $"the holes of {first.Name} and {second.Name} {left}; {Say.Mm(WebMm)} are usual")
        {
            Measured = new Measurement(web, "mm", severity == Severity.Fail ? LeastWebMm : WebMm),
            Where = (first.At, second.At),
            Place = layout.Design.PlaceOf(BridgePins.Count),
            OtherPlaces = [layout.Design.PlaceOf(Scale.StringSpread), layout.Design.PlaceOf(BridgePins.Diameter)],
            Cure = severity == Severity.Pass ? null : "fewer pins (two strings may share one), smaller holes, or a wider `string_spread`",
        };
    }

    private static IEnumerable<Finding> Braces(Layout layout)
    {
        var holes = layout.DrillPoints.Where(p => BridgePins.IsPin(p) || LocatingPins.IsUnderBridge(p)).ToList();
        foreach (var bar in layout.Members.Where(m => m is { Face: TopFace.Inside, Kind: MemberKind.Bar } && m.Name is not (XBrace.BassLeg or XBrace.TrebleLeg)))
        {
            if (holes.Where(h => bar.Footprint.Bounds.Grown(h.RadiusMm).Contains(h.At)).Select(h => (Hole: h, Gap: BridgeCheck.Clear(bar.Footprint, h))).Where(h => h.Gap < -Tolerances.TouchMm).OrderBy(h => h.Gap).ToList() is not [var (hole, gap), ..])
            {
                continue;
            }

            var isString = BridgePins.IsPin(hole);
            yield return new Finding(
                Rules.PinHoles,
                isString ? Severity.Fail : Severity.Warning,
                $"{hole.Name} and {bar.Name}",
                $"the hole of {Say.The(hole.Name)} reaches {Say.Mm(-gap)} into {Say.TheLast(bar.Name)}")
            {
                Measured = new Measurement(gap, "mm", 0),
                Where = (hole.At, hole.At),
                Place = isString ? bar.Places[0] : hole.Place,
                OtherPlaces = [isString ? hole.Place : bar.Places[0]],
                Cure = isString ? $"move {Say.The(bar.Name)} out of the pins' way, or hold the strings otherwise" : $"move the pin beside {Say.The(bar.Name)} with `bridge_across`",
            };
        }
    }
}
