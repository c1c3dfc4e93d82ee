using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>
/// From the hole's edge to what is glued round it: braces, plates, tongue and block inside, the bridge outside. Nothing left is a failure; less than
/// usual is a remark (common practice, no source). A fretboard may end over the hole's edge.
/// </summary>
public static class HoleClearanceCheck
{
    /// <summary>Clearance from which a brace is comfortably off the hole, mm; forward crossings run at 2 to 3. Common practice, no source.</summary>
    public const double UsualMm = 6;

    /// <summary>How far a fretboard usually reaches over the hole's edge at most, mm, as on classical tops. Common practice, no source.</summary>
    public const double FretboardOverMm = 6;

    /// <summary>
    /// One finding per part within reach of the hole, nearest first; the two legs of an X once, what reinforces the hole not at all. Last the
    /// fretboard, where it covers much.
    /// </summary>
    public static IEnumerable<Finding> Of(Layout layout) => layout.Members
        .Where(m => m.Face == TopFace.Inside ? m.Kind is MemberKind.Bar or MemberKind.Plate or MemberKind.Tongue or MemberKind.Block : m.Kind == MemberKind.Bridge)
        .Where(m => m.Name != XBrace.TrebleLeg && !HoleReinforcement.IsPartOf(m))
        .Select(m => (Member: m, Clearance: layout.Hole.ClearanceOf(m.Footprint)))
        .Where(m => m.Clearance < 2 * UsualMm)
        .OrderBy(m => m.Clearance)
        .Select(m => Finding(layout, m.Member, m.Clearance))
        .Concat(Cap(layout))
        .Concat(Fretboard(layout));

    // The cap is glued to the legs: over the hole it shows and its edge hangs free.
    private static IEnumerable<Finding> Cap(Layout layout)
    {
        if (layout.FindMark(XCap.Name) is not { } cap || layout.Hole.ClearanceOf(Region.Inside(cap.Line)) is var clearance && clearance > Tolerances.TouchMm)
        {
            yield break;
        }

        // The cap stands on the centre line, an edge of it across: as much off its side as it reaches over, twice.
        yield return new Finding(Rules.HoleClearance, Severity.Fail, cap.Name, $"the {cap.Name} reaches {Say.Mm(-clearance)} over the hole's edge")
        {
            Measured = new Measurement(clearance, "mm", 0),
            Where = At(layout, cap.Line),
            Place = cap.Place,
            OtherPlaces = [layout.Design[Soundhole.Diameter].Place],
            Cure = $"make its `side` {Say.Mm(Math.Ceiling(-20 * clearance) / 10)} or more smaller, or cross the X further from the hole",
        };
    }

    private static IEnumerable<Finding> Fretboard(Layout layout)
    {
        if (layout.Find(Parts.Fretboard.Name) is not { } board || -layout.Hole.ClearanceOf(board.Footprint) is var over && over <= FretboardOverMm)
        {
            yield break;
        }

        yield return new Finding(
            Rules.HoleClearance, Severity.Warning, board.Name, $"the fretboard covers the hole {Say.Mm(over)} deep; {Say.Mm(FretboardOverMm)} at most are usual, and where it covers it nothing holds it")
        {
            Measured = new Measurement(over, "mm", FretboardOverMm),
            Where = At(layout, board.Footprint.Outer),
            Place = layout.Design.Find(Soundhole.Gap)?.Place ?? layout.Design.Find(Soundhole.FromNeckEdge)!.Value.Place,
            OtherPlaces = [.. board.Places.Take(1)],
            Cure = $"move the hole {Say.Mm(Math.Ceiling((over - FretboardOverMm) * 10) / 10)} or more towards the tail, or end the fretboard sooner",
        };
    }

    private static (Point2 From, Point2 To) At(Layout layout, Contour line)
    {
        var at = line.ClosestTo(layout.Hole.Center).Point;
        return (at, at);
    }

    private static Finding Finding(Layout layout, Member member, double clearance)
    {
        var isLeg = member.Name == XBrace.BassLeg;
        var severity = clearance <= Tolerances.TouchMm ? Severity.Fail : clearance < UsualMm - Tolerances.TouchMm ? Severity.Remark : Severity.Pass;
        var subject = isLeg ? "X legs" : member.Name;
        var sentence = clearance > 0
            ? $"{Say.The(subject)} {(isLeg ? "pass" : "passes")} the hole's edge at {Say.Mm(clearance)}; {Say.Mm(UsualMm)} or more is usual"
            : $"{Say.The(subject)} {(isLeg ? "reach" : "reaches")} {Say.Mm(-clearance)} over the hole's edge";
        return new Finding(Rules.HoleClearance, severity, subject, sentence)
        {
            Measured = new Measurement(clearance, "mm", severity == Severity.Fail ? 0 : UsualMm),
            Where = At(layout, member.Footprint.Outer),
            Place = isLeg ? XBrace.PositionPlace(layout.Design) : member.Places[0],
            OtherPlaces = [layout.Design[Soundhole.Diameter].Place],
            Cure = severity == Severity.Pass ? null : isLeg ? LegCure(layout, clearance) : Cure(member, Math.Ceiling((UsualMm - clearance) * 10) / 10),
        };
    }

    private static string Cure(Member member, double mm) => member.Kind switch
    {
        MemberKind.Bridge => $"the scale places the bridge: move the hole {Say.Mm(mm)} towards the neck for {Say.Mm(UsualMm)}, or make it smaller",
        MemberKind.Block => $"shorten {Say.The(member.Name)} by {Say.Mm(mm)} for {Say.Mm(UsualMm)}, or move the hole, or make it smaller",
        _ => $"move {Say.The(member.Name)} by {Say.Mm(mm)} away from the hole for {Say.Mm(UsualMm)}, or make the hole smaller",
    };

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
