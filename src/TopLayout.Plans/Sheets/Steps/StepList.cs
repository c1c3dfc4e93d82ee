using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>
/// The steps of the work on a top, in order; those whose parts the design has. The box is closed before the neck is set, and the bridge comes
/// last, as its place is measured from the real neck (common practice, no source).
/// </summary>
internal static class StepList
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Step> Of(Layout layout)
    {
        var numbers = new StepNumbers(layout);
        return ((Step?[])[
            IsForOldRim(layout) ? OldRim(layout, numbers) : Outline(layout, numbers), Hole(layout, numbers), Bracing(layout, numbers), NeckBlock(layout, numbers), Box(layout, numbers), BridgePlace(layout, numbers),
        ]).OfType<Step>();
    }

    private static bool IsForOldRim(Layout layout) => layout.Design.Has(Ledge.Section);

    private static Step Outline(Layout layout, StepNumbers numbers) => new(
        "1-outline-and-mould",
        "Outline and mould",
        OutlineWork(layout),
        TopFace.Outside,
        [],
        [
            .. Widths(numbers),
            .. numbers.Of("body", StepTolerance.Body, "cutaway", "neck flat"),
            .. numbers.Of("body", StepTolerance.Round, "outline, all round"),
            .. numbers.SideStrips(),
            .. numbers.Of("rim", StepTolerance.Channel, "sides, thickness"),
            .. OutlineNumbers.IsEven(layout) ? [new StepRow("one half over the other, folded on the centre line", "alike", numbers.Within(StepTolerance.Halves))] : (StepRow[])[],
            Straight(numbers),
        ],
        [StepCautions.Dust, StepCautions.Router, StepCautions.Heat])
    {
        Grids = [numbers.HalfWidths()],
    };

    private static string OutlineWork(Layout layout)
    {
        var templates = OutlineNumbers.IsEven(layout) ? "cut the half template, and from it" : "cut both half templates, bass and treble, and from them";
        var mitre = layout.Design.Has(Cutaway.Section) && Cutaway.Recipe(layout.Design).Shape == CutawayShape.Pointed ? " The two treble sides meet in a mitre at the point." : "";
        return $"Draw the outline at its true size, {templates} the mould that holds the bent sides: {RimNumbers.Mould(layout)}.{mitre}";
    }

    // Nothing is bent: the rim is there, and the plate is fitted to it.
    private static Step OldRim(Layout layout, StepNumbers numbers) => new(
        "1-outline-on-the-rim",
        "Outline, fitted to the rim",
        "Lay the outline at its true size on the old rim and compare it all round. Cut the plate over size, then fit it into the ledge behind the binding left in place, a little at a time.",
        TopFace.Outside,
        [("plate", layout.Body.PlateEdge)],
        [
            .. Widths(numbers),
            .. numbers.Of("rim", StepTolerance.Channel, "binding left in place"),
            .. numbers.Of("body", StepTolerance.Body, "plate, length"),
            .. numbers.Of("body", StepTolerance.Round, "plate, all round", "outline, all round"),
            .. Residual(layout, numbers),
            Straight(numbers),
        ],
        [StepCautions.Dust, StepCautions.Chisel])
    {
        Grids = [numbers.HalfWidths()],
    };

    // Those of both halves; where they differ, a table of its own tells each.
    private static IEnumerable<StepRow> Widths(StepNumbers numbers) => numbers.Of("body", StepTolerance.Body, "body length", "upper", "waist", "lower", "horn", "widest", "narrowest")
        .Where(r => !r.What.Contains(" half", StringComparison.Ordinal));

    private static StepRow Straight(StepNumbers numbers) => new("centre line over the whole length", "straight", numbers.Within(StepTolerance.Straight));

    private static IEnumerable<StepRow> Residual(Layout layout, StepNumbers numbers)
    {
        if (layout.Body.Residuals.IsEmpty)
        {
            yield break;
        }

        var worst = layout.Body.Residuals.MaxBy(r => Math.Abs(r.Difference));
        var units = layout.Design.Units;
        yield return new StepRow(
            "largest difference, drawn to measured half-width",
            LengthText.WithUnit(Math.Abs(worst.Difference), units),
            $"at most {LengthText.WithUnit(layout.Design[MeasuredBody.Within].Value, units)}",
            $"{LengthText.WithUnit(worst.FromNeckEdge, units)} from the neck edge, {(worst.IsLeft == (layout.Design.Get(Identity.Handed).Value == Hand.Right) ? "bass" : "treble")} side");
    }

    private static Step Hole(Layout layout, StepNumbers numbers)
    {
        var channels = layout.Members.Count(m => m.Kind == MemberKind.Channel);
        return new(
            "2-hole-and-rosette",
            channels == 0 ? "Soundhole" : "Soundhole and rosette",
            $"Mark the hole's centre from the neck edge, {(channels == 0 ? "" : $"cut and fill {(channels == 1 ? "the channel" : "the channels")} of the rosette: the walls first, then what stands between them; level it, ")}then cut the hole.{(layout.HoleLiner is null ? "" : " Bend the liner and glue it in round the hole's edge.")}",
            TopFace.Outside,
            [.. Footprints(layout, m => m.Kind is MemberKind.Channel or MemberKind.Fretboard)],
            [
                .. numbers.Thickness(),
                .. numbers.Of("positions", StepTolerance.Along, "fretboard end"),
                .. HoleRows(numbers),
                .. numbers.Drilled(n => n == Rosette.PivotName),
                .. numbers.Of("positions", StepTolerance.Halves, "ring"),
                .. numbers.Of("positions", StepTolerance.Channel, "soundhole liner, thickness", "soundhole liner, height"),
                .. numbers.Of("positions", StepTolerance.Halves, "soundhole liner, length", "soundhole liner, tightest"),
            ],
            [.. channels == 0 ? (string[])[] : [StepCautions.Channel], StepCautions.Router, StepCautions.Dust])
        {
            Grids = channels == 0 ? [] : [numbers.Channels(), numbers.Cuts(), numbers.Rings(), numbers.Tiles()],
        };
    }

    private static IEnumerable<StepRow> HoleRows(StepNumbers numbers) => numbers.Of("positions", StepTolerance.Along, "soundhole")
        .Where(r => !r.What.StartsWith("soundhole liner", StringComparison.Ordinal))
        .Select(r => r switch
        {
            { What: "soundhole centre" } => r,
            _ when r.What.Contains("off the centre line", StringComparison.Ordinal) => r with
            {
                Value = r.Remark.Length == 0 ? "on it" : r.Value,
                What = r.Remark.Length == 0 ? "soundhole centre, to the centre line" : r.What,
                Tolerance = numbers.Within(StepTolerance.Across),
            },
            _ => r with { Tolerance = numbers.Within(StepTolerance.HoleSize) },
        });

    private static Step? Bracing(Layout layout, StepNumbers numbers)
    {
        var parts = layout.Members.Where(m => m.Face == TopFace.Inside && m.Kind is MemberKind.Bar or MemberKind.Plate).ToList();
        return parts.Count == 0
            ? null
            : new(
                "3-bracing",
                "Bracing",
                $"Mark the ends of every brace on the inside and join them with a straightedge. Glue the flat parts first, the braces after{Before(layout)}.",
                TopFace.Inside,
                [.. Footprints(layout, parts.Contains)],
                [
                    Glued(layout),
                    .. numbers.Of("positions", StepTolerance.Meeting, "X "),
                    .. numbers.Notches(),
                    .. numbers.EndHeight(),
                    .. numbers.Caps(),
                ],
                [StepCautions.Inside, StepCautions.Air(layout), StepCautions.Rods, StepCautions.Chisel])
            {
                Grids = [numbers.Pieces("flat part", p => IsFlat(layout, p)), numbers.Braces()],
            };
    }

    // The plates and the row of cleats.
    private static bool IsFlat(Layout layout, PieceRow row) => row.Face == "inside"
        && layout.Members.Any(m => m.Kind == MemberKind.Plate && (m.Name == row.Name || (Cleats.IsCleat(m) && row.Name.StartsWith("cleat", StringComparison.Ordinal))));

    private static Step? NeckBlock(Layout layout, StepNumbers numbers)
    {
        if (layout.Find(Block.Neck.Name) is null)
        {
            return null;
        }

        var (hasTongue, isOld) = (layout.Find(Tongue.Name) is not null, IsForOldRim(layout));
        return new(
            hasTongue ? "4-neck-block-and-tongue" : "4-neck-block",
            (isOld ? "Old blocks of neck and tail" : "Neck block and tail block") + (hasTongue ? ", tongue" : ""),
            NeckBlockWork(hasTongue, isOld) + Joint(layout, isOld) + KeyWay(layout),
            TopFace.Inside,
            [.. Footprints(layout, m => m.Kind is MemberKind.Block or MemberKind.Tongue), .. layout.Marks.Where(m => m.Name == TrussRod.Name).Select(m => (m.Name, m.Line))],
            [
                .. numbers.Block(Block.Neck.Name, "neck-block"),
                .. numbers.Tongue(),
                .. numbers.Of("positions", StepTolerance.Meeting, "truss-rod slot"),
                .. numbers.Drilled(n => n == "locating pin, neck"),
                .. numbers.Block(Block.Tail.Name, "tail-block"),
                new("centre lines of the blocks on the top's", "in line", numbers.Within(StepTolerance.Across)),
            ],
            [StepCautions.Dust, .. isOld ? (string[])[] : [StepCautions.Router], StepCautions.Chisel]);
    }

    // Common practice, no source.
    private static string Joint(Layout layout, bool isOld) => layout.Find(Tongue.Name)?.Material is not { } tongue || layout.Find(Block.Neck.Name)?.Material is not { } block ? ""
        : !isOld && tongue.Wood == block.Wood && tongue.Lie == block.Lie ? " Their wood and long grain are the same: saw them from one piece, or let the tongue into the block."
        : " The tongue is a piece of its own, let into the block and glued.";

    // What is cut into the faces that are glued.
    private static string Before(Layout layout)
    {
        string[] cuts =
        [
            .. Notches.Of(layout).Count > 0 ? ["the notches where parts cross"] : (ReadOnlySpan<string>)[],
            .. TrussRodKey.BracesInTheWay(layout) is [_, ..] braces ? [$"the notch for the truss rod's key in {Say.Listed([.. braces.Select(b => Say.TheLast(b.Name))])} (step 4 says how deep)"] : (ReadOnlySpan<string>)[],
        ];
        return cuts.Length == 0 ? "" : $"; cut {Say.Listed(cuts)} before anything is glued";
    }

    private static string KeyWay(Layout layout) =>
        TrussRodKey.Of(layout) is var (_, way) ? $" Truss rod: {LengthText.Sentence(way, layout.Design.Units)}." : "";

    // In an old rim the blocks are there.
    private static string NeckBlockWork(bool hasTongue, bool isOld) => (hasTongue, isOld) switch
    {
        (false, false) => "Make both blocks to their templates and fit them to sides and top, square to the centre line.",
        (true, false) => "Make both blocks and the tongue under the fretboard to their templates, and fit them to sides and top, square to the centre line.",
        (false, true) => "The blocks stay in the rim: compare them with these numbers, clean off the old glue, and glue what is loose. Level their upper faces with the ledge.",
        (true, true) => "The blocks stay in the rim: compare them with these numbers, clean off the old glue, and glue what is loose. Make the tongue under the fretboard to the template, and fit it to block and top.",
    };

    private static Step Box(Layout layout, StepNumbers numbers)
    {
        var hasBinding = layout.Design.Has(Binding.Section);
        var pockets = BraceEnds.Of(layout).Count == 0 ? "" : " and cut a pocket in them, not into the sides, for every end below: lengths run along the inner face of the sides from the tail seam to where the brace's long sides, drawn on, meet it";
        var rim = IsForOldRim(layout)
            ? $"Hold the rim true in a mould. Clean its linings{pockets}. Then glue the top into its ledge"
            : $"With the rim in the mould, glue in the linings{pockets}. Then glue the top on";
        return new(
            "5-box",
            "Linings and closing the box",
            $"{rim}: its centre seam over the centre lines of neck block and tail block.{(hasBinding ? " Cut the ledges for the binding round the closed box last." : "")}",
            TopFace.Inside,
            [.. Footprints(layout, m => m.Kind is MemberKind.Lining or MemberKind.Block or MemberKind.Bar), .. Drilled(layout, p => p.Name is "locating pin, neck" or "locating pin, tail")],
            [
                Glued(layout),
                .. numbers.Of("rim", StepTolerance.Meeting, "linings"),
                new("seam over the centre line of neck and tail", "in line", numbers.Within(StepTolerance.Across)),
                .. numbers.Drilled(n => n is "locating pin, neck" or "locating pin, tail"),
                .. numbers.Of("rim", StepTolerance.Channel, "binding ledge", "purfling ledge"),
            ],
            [StepCautions.Air(layout), StepCautions.Chisel, .. hasBinding ? (string[])[StepCautions.Router, StepCautions.Ledge] : []])
        {
            Grids = [numbers.BraceEnds()],
        };
    }

    private static Step? BridgePlace(Layout layout, StepNumbers numbers)
    {
        if (layout.Find(Bridge.Name) is null)
        {
            return null;
        }

        var drilled = numbers.Holes(n => n.StartsWith("bridge pin", StringComparison.Ordinal) || n.StartsWith("locating pin, bridge", StringComparison.Ordinal));
        return new(
            "6-bridge-place",
            "Place of the bridge",
            "With the box closed and the neck set, find the saddle from the nut, set the bridge square to the centre line, and glue it. The saddle's line is that of its crown, where the strings leave it, and of the middle of its slot.",
            TopFace.Outside,
            [.. Footprints(layout, m => m.Kind is MemberKind.Bridge or MemberKind.Fretboard), SaddleLine(layout), .. Drilled(layout, p => BridgePins.IsPin(p))],
            [
                Glued(layout),
                .. numbers.Of("positions", StepTolerance.Along, "nut to", "bridge", "saddle slot", "tie block"),
                new("neck's centre line, drawn on, over the middle of the bridge", "in line", numbers.Within(StepTolerance.Halves)),
                new("bridge square to the centre line, over its length", "square", numbers.Within(StepTolerance.Straight)),
            ],
            [StepCautions.Neck, .. layout.TieHoles.IsEmpty ? (string[])[] : [StepCautions.TieHoles], .. drilled.Rows.Length > 0 ? (string[])[StepCautions.Drill] : [], StepCautions.Strings, StepCautions.Protected, StepCautions.Dust])
        {
            Grids = [numbers.Saddle(), numbers.TieHoles(), drilled],
        };
    }

    private static StepRow Glued(Layout layout) => new("relative humidity while gluing", $"{StepCautions.Humidity(layout)} %", StepTolerance.Humidity);

    private static IEnumerable<(string Name, Contour Line)> Footprints(Layout layout, Func<Member, bool> isShown) =>
        layout.Members.Where(isShown).SelectMany(m => m.Footprint.Loops.Select(l => (m.Name, l)));

    private static IEnumerable<(string Name, Contour Line)> Drilled(Layout layout, Func<DrillPoint, bool> isShown) =>
        layout.DrillPoints.Where(isShown).Select(p => (p.Name, Contour.Circle(p.At, p.RadiusMm)));

    private static (string Name, Contour Line) SaddleLine(Layout layout) =>
        ("saddle", new Contour([new Vertex(layout.Saddle.Bass), new Vertex(layout.Saddle.Treble)], isClosed: false));
}
