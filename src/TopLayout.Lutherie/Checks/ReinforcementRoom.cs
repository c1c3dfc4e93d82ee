using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>The room between the reinforcement of the hole and what stands round it; a part of <see cref="ClearanceCheck"/>.</summary>
public static class ReinforcementRoom
{
    /// <summary>Usual from the hole's reinforcement to another part, mm. Common practice, no source.</summary>
    public const double UsualMm = 2;

    // A ring narrower, or a strip shorter, than this is not worth cutting, mm.
    private const double LeastRingMm = 3;
    private const double LeastStripMm = 15;

    /// <summary>Of what stands round each piece the nearest, and whatever it reaches into, the two legs of an X once.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        foreach (var part in layout.Members.Where(HoleReinforcement.IsPartOf))
        {
            var gaps = layout.Members
                .Where(m => ClearanceCheck.Tells(part, m))
                .Select(m => (Member: m, Gap: Gap(layout, part, m)))
                .Where(m => m.Gap < 2 * UsualMm)
                .OrderBy(m => m.Gap)
                .DistinctBy(m => m.Member.Name is XBrace.BassLeg or XBrace.TrebleLeg ? XBrace.Section.Key : m.Member.Name)
                .ToList();
            foreach (var (member, gap) in gaps.Where((m, i) => i == 0 || m.Gap < -Tolerances.TouchMm))
            {
                yield return Finding(layout, part, member, gap);
            }
        }
    }

    private static bool IsRing(Member part) => part.Name == HoleReinforcement.Name;

    // A ring's gap is counted on through the brace, so that it says how much narrower the ring must be; a strip's is how deep the other lies in it.
    private static double Gap(Layout layout, Member part, Member other)
    {
        if (IsRing(part))
        {
            return layout.Hole.ClearanceOf(other.Footprint) - layout.Design[HoleReinforcement.Inset].Value - layout.Design[HoleReinforcement.Width].Value;
        }

        var apart = Distances.Between(part.Footprint, other.Footprint);
        return apart > 0 || part.Footprint.Intersect(other.Footprint).Bounds is not { IsEmpty: false } shared ? apart : -Math.Min(shared.Width, shared.Height);
    }

    private static Finding Finding(Layout layout, Member part, Member other, double gap)
    {
        var severity = gap < -Tolerances.TouchMm ? Severity.Fail : gap < UsualMm - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        return new Finding(
            Rules.LittleRoom,
            severity,
            $"{part.Name} and {other.Name}",
            gap >= -Tolerances.TouchMm
                ? $"{Say.The(part.Name)} stands {Say.Mm(Math.Max(0, gap))} off {Say.TheLast(other.Name)}; {Say.Mm(UsualMm)} are usual"
                : $"{Say.The(part.Name)} reaches {Say.Mm(-gap)} into {Say.TheLast(other.Name)}; {Say.Mm(UsualMm)} between them are usual")
        {
            Measured = new Measurement(gap, "mm", severity == Severity.Fail ? 0 : UsualMm),
            Place = IsRing(part) ? part.Places[0] : layout.Design.PlaceOf(HoleReinforcement.Length),
            OtherPlaces = [other.Places[0]],
            Cure = severity == Severity.Pass ? null : IsRing(part) ? RingCure(layout, other, gap) : StripCure(layout, part, other),
        };
    }

    private static string RingCure(Layout layout, Member other, double gap)
    {
        var fits = Math.Floor((layout.Design[HoleReinforcement.Width].Value + gap - UsualMm) * 10) / 10;
        return (fits >= LeastRingMm ? $"`width = {Say.Tenth(fits)}` leaves {Say.Mm(UsualMm)}" : "leave the reinforcement out there, or take strips (`style = \"strips\"`)")
            + $"; or move {Say.The(other.Name)} by {Say.Mm(Math.Ceiling((UsualMm - gap) * 10) / 10)} away from the hole";
    }

    // A shorter strip of the same place lies in a longer one, so the longest that leaves the room is found by halving.
    private static string StripCure(Layout layout, Member part, Member other)
    {
        var (design, hole) = (layout.Design, layout.Hole);
        bool Fits(double length) => Distances.Between(HoleReinforcement.Strip(design, hole, part.Name, length), other.Footprint) >= UsualMm;
        var (fits, tooLong) = (0.0, HoleReinforcement.StripLength(design, hole));
        while (tooLong - fits > Tolerances.ShortestMm)
        {
            var middle = (fits + tooLong) / 2;
            (fits, tooLong) = Fits(middle) ? (middle, tooLong) : (fits, middle);
        }

        // The strips beside the hole can also be moved along the body; the others stand where the hole ends.
        var length = Math.Floor(fits * 10) / 10;
        var isBeside = part.Footprint.Bounds is var box && box.Height >= box.Width;
        return (length >= LeastStripMm ? $"`length = {Say.Tenth(length)}` leaves {Say.Mm(UsualMm)}" : "narrow the strips")
            + $"; or {(isBeside ? "move the strips with `shift`" : "cut fewer `strips`")}, or move {Say.TheLast(other.Name)}";
    }
}
