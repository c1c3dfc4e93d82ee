using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>From the hole's edge to the braces round it. Nothing left is a failure; less than usual is a remark (common practice, no source).</summary>
public static class HoleClearanceCheck
{
    /// <summary>Clearance from which a brace is comfortably off the hole, mm; forward crossings run at 2 to 3. Common practice, no source.</summary>
    public const double UsualMm = 6;

    /// <summary>One finding per bar and plate within reach of the hole, nearest first; the two legs of an X once, what reinforces the hole not at all.</summary>
    public static IEnumerable<Finding> Of(Layout layout) => layout.Members
        .Where(m => m.Face == TopFace.Inside && m.Kind is MemberKind.Bar or MemberKind.Plate or MemberKind.Tongue)
        .Where(m => m.Name != XBrace.TrebleLeg && !HoleReinforcement.IsPartOf(m))
        .Select(m => (Member: m, Clearance: layout.Hole.ClearanceOf(m.Footprint)))
        .Where(m => m.Clearance < 2 * UsualMm)
        .OrderBy(m => m.Clearance)
        .Select(m => Finding(layout, m.Member, m.Clearance));

    private static Finding Finding(Layout layout, Member member, double clearance)
    {
        var isLeg = member.Name == XBrace.BassLeg;
        var severity = clearance <= Tolerances.TouchMm ? Severity.Fail : clearance < UsualMm - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        var subject = isLeg ? "X legs" : member.Name;
        var sentence = clearance > 0
            ? $"the {subject} {(isLeg ? "pass" : "passes")} the hole's edge at {Say.Mm(clearance)}; {Say.Mm(UsualMm)} or more is usual"
            : $"the {subject} {(isLeg ? "reach" : "reaches")} {Say.Mm(-clearance)} over the hole's edge";
        return new Finding(Rules.HoleClearance, severity, subject, sentence)
        {
            Measured = new Measurement(clearance, "mm", severity == Severity.Fail ? 0 : UsualMm),
            Place = isLeg ? XBrace.PositionPlace(layout.Design) : member.Places[0],
            OtherPlaces = [layout.Design[Soundhole.Diameter].Place],
            Cure = severity == Severity.Pass ? null : isLeg ? LegCure(layout, clearance) : $"move the {member.Name} {Say.Mm(Math.Ceiling((UsualMm - clearance) * 10) / 10)} away from the hole for {Say.Mm(UsualMm)}, or make the hole smaller",
        };
    }

    // Moving the crossing by one mm moves a leg by sin(a/2) across itself; the legs stand (f − far edge − d)·tan(a/2) from the centre line
    // at the bridge's front f.
    private static string LegCure(Layout layout, double clearance)
    {
        var (design, hole) = (layout.Design, layout.Hole);
        var half = design[XBrace.Angle].Value / 2;
        var below = -XBrace.Crossing(design, hole).Y - hole.FarEdge + ((UsualMm - clearance) / Trig.Sin(half));
        var atBridge = (Bridge.FrontFromNeckEdge(design) - hole.FarEdge - below) * Trig.Tan(half);
        var line = design.Find(XBrace.BelowHole).HasValue
            ? $"below_hole = {Say.Tenth(Math.Ceiling(below * 10) / 10)}"
            : $"at_bridge_front = {Say.Tenth(Math.Floor(atBridge * 10) / 10)}";
        return $"`{line}` gives {Say.Mm(UsualMm)}; or open the X's angle, or make the hole smaller";
    }
}
