using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>The room between parts that stand near each other and are not joined: tongue and transverse brace, bridge plate and legs, reinforcement of the hole and braces.</summary>
public static class ClearanceCheck
{
    /// <summary>Usual from a tongue's tip to the upper transverse brace, mm. Common practice, no source.</summary>
    public const double TongueMm = 3;

    /// <summary>One finding per pair: of what stands round a reinforcement the nearest, and whatever it reaches into, the two legs of an X once.</summary>
    public static IEnumerable<Finding> Of(Layout layout) => [.. TongueToBrace(layout), .. PlateToLegs(layout), .. ReinforcementRoom.Of(layout)];

    /// <summary>Whether this check measures the room between two parts, so that it also tells when there is none left.</summary>
    internal static bool Tells(Member a, Member b) => IsTold(a, b) || IsTold(b, a);

    private static bool IsTold(Member a, Member b) => a.Face == TopFace.Inside && b.Face == TopFace.Inside && b.Kind != MemberKind.Lining && (
        (a.Name == Tongue.Name && b.Name == TransverseBrace.Name)
        || (a.Name == BridgePlate.Name && b.Name is XBrace.BassLeg or XBrace.TrebleLeg)
        || (HoleReinforcement.IsPartOf(a) && !HoleReinforcement.IsPartOf(b)));

    private static IEnumerable<Finding> TongueToBrace(Layout layout)
    {
        if (layout.Find(Tongue.Name) is not { } tongue || layout.Find(TransverseBrace.Name) is not { } brace)
        {
            yield break;
        }

        // Both are straight across there: what counts is the tip against the brace's neck side.
        var (design, tip, side) = (layout.Design, tongue.Footprint.Bounds.Min.Y, brace.Footprint.Bounds.Max.Y);
        var (gap, length) = (tip - side, tongue.Footprint.Bounds.Height);
        var fits = Math.Floor((length + gap - TongueMm) * 10) / 10;
        var canBeShorter = fits > 0 && (design.Get(Tongue.Shape).Value != TongueShape.Tapered || fits >= Tongue.Said(design).LeastLength);
        var severity = gap < -Tolerances.TouchMm ? Severity.Fail : gap < TongueMm - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        yield return new Finding(
            Rules.LittleRoom,
            severity,
            "tongue and upper transverse brace",
            $"the tongue is {Say.Mm(length)} long, and from the neck block's face to the upper transverse brace there are {Say.Mm(Math.Max(0, length + gap))}; {Say.Mm(TongueMm)} between them are usual")
        {
            Measured = new Measurement(gap, "mm", severity == Severity.Fail ? 0 : TongueMm),
            Where = (new Point2(0, tip), new Point2(0, side)),
            Place = design.PlaceOf(Tongue.Length),
            OtherPlaces = [brace.Places[0], design.PlaceOf(Block.Neck.Length)],
            Cure = severity == Severity.Pass ? null
                : (canBeShorter ? $"`length = {Say.Tenth(fits)}` of the tongue leaves {Say.Mm(TongueMm)}; or " : "") + "shorten the neck block, or move the brace towards the hole",
        };
    }

    private static IEnumerable<Finding> PlateToLegs(Layout layout)
    {
        if (layout.Find(BridgePlate.Name) is not { } plate || (layout.Find(XBrace.TrebleLeg) ?? layout.Find(XBrace.BassLeg)) is not { } leg)
        {
            yield break;
        }

        // The plate's corner nearest to the leg's tail side, square to it; the middle of the plate lies on the free side.
        var side = Bar.Side(leg, "tail side");
        var way = side.TangentAt(0);
        var free = Math.Sign(way.Cross(plate.Footprint.Bounds.Center - side.Start));
        double Off(Point2 p) => way.Cross(p - side.Start) * free;
        var corner = plate.Footprint.Outer.Vertices.Select(v => v.Position).MinBy(Off);
        var gap = Off(corner);
        var severity = gap < -Tolerances.TouchMm ? Severity.Fail : Severity.Pass;
        yield return new Finding(
            Rules.LittleRoom,
            severity,
            "bridge plate and X legs",
            gap >= -Tolerances.TouchMm
                ? $"the bridge plate stands {Say.Mm(gap)} off the legs of the X, {Say.Mm(-corner.Y)} from the neck edge"
                : $"the bridge plate reaches {Say.Mm(-gap)} into the legs of the X, {Say.Mm(-corner.Y)} from the neck edge")
        {
            Measured = new Measurement(gap, "mm", 0),
            Where = (corner, corner - (way.Left * (gap * free))),
            Place = layout.Design.Find(BridgePlate.Length)?.Place ?? plate.Places[0],
            OtherPlaces = [XBrace.PositionPlace(layout.Design), layout.Design[XBrace.Angle].Place],
            Cure = severity == Severity.Pass ? null : $"make the plate {Say.Mm(Math.Ceiling(-20 * gap / Math.Abs(way.Y)) / 10)} or more shorter across the top, or cross the X nearer to the hole",
        };
    }
}
