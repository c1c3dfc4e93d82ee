using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>The steps of the work on a top, in order; those whose parts the design has.</summary>
internal static class StepList
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Step> Of(Layout layout)
    {
        var numbers = new StepNumbers(layout);
        return ((Step?[])[Outline(layout, numbers), Hole(layout, numbers), Bracing(layout, numbers), NeckBlock(layout, numbers), BridgePlace(layout, numbers), Box(layout, numbers)])
            .OfType<Step>();
    }

    private static Step Outline(Layout layout, StepNumbers numbers) => new(
        "1-outline-and-mould",
        "Outline and mould",
        "Draw the outline at its true size, cut the half template, and from it the mould that holds the bent sides.",
        TopFace.Outside,
        [],
        [
            .. numbers.Of("body", numbers.Within(StepTolerance.Body), "body", "upper", "waist", "lower"),
            .. numbers.Of("body", "follows", "outline", "plate, all"),
            .. numbers.Of("body", StepTolerance.Over(StepTolerance.SideStock, layout.Design.Units), "one side strip", "bass side strip", "treble side strip"),
            .. OutlineNumbers.IsEven(layout) ? [new StepRow("one half over the other, folded on the centre line", "alike", numbers.Within(StepTolerance.Halves))] : (StepRow[])[],
            new("centre line over the whole length", "straight", numbers.Within(StepTolerance.Straight)),
        ],
        [StepCautions.Dust, StepCautions.Router, StepCautions.Heat]);

    private static Step Hole(Layout layout, StepNumbers numbers) => new(
        "2-hole-and-rosette",
        !HasChannel(layout) ? "Soundhole" : "Soundhole and rosette",
        !HasChannel(layout)
            ? "Mark the hole's centre from the neck edge, then cut the hole."
            : "Mark the hole's centre from the neck edge, cut and fill the channel of the rosette, level it, then cut the hole.",
        TopFace.Outside,
        [.. Footprints(layout, m => m.Kind is MemberKind.Channel or MemberKind.Fretboard)],
        [
            .. numbers.Of("positions", numbers.Within(StepTolerance.Along), "fretboard end", "soundhole"),
            new("soundhole centre, across, beside the joint", "on its line", numbers.Within(StepTolerance.Across)),
            .. numbers.Of("positions", numbers.Within(StepTolerance.Channel), "rosette"),
        ],
        [StepCautions.Channel, StepCautions.Router, StepCautions.Dust]);

    private static bool HasChannel(Layout layout) => layout.Members.Any(m => m.Kind == MemberKind.Channel);

    private static Step? Bracing(Layout layout, StepNumbers numbers)
    {
        var parts = layout.Members.Where(m => m.Face == TopFace.Inside && m.Kind is MemberKind.Bar or MemberKind.Plate).ToList();
        return parts.Count == 0
            ? null
            : new(
                "3-bracing",
                "Bracing",
                "Mark the ends of every brace on the inside, join them with a straightedge, glue the flat parts first and the braces after.",
                TopFace.Inside,
                [.. Footprints(layout, parts.Contains)],
                [
                    Glued(layout),
                    .. numbers.Of("positions", numbers.Within(StepTolerance.Meeting), "X "),
                ],
                [StepCautions.Inside, StepCautions.Air, StepCautions.Rods, StepCautions.Chisel])
            {
                Grids = [numbers.Braces(), numbers.Pieces("flat part", parts.Where(m => m.Kind == MemberKind.Plate).Select(m => m.Name))],
            };
    }

    private static Step? NeckBlock(Layout layout, StepNumbers numbers)
    {
        if (layout.Find(Block.Neck.Name) is null)
        {
            return null;
        }

        var hasTongue = layout.Find(Tongue.Name) is not null;
        return new(
            hasTongue ? "4-neck-block-and-tongue" : "4-neck-block",
            hasTongue ? "Neck block and tongue" : "Neck block",
            hasTongue ? "Make the block and its tongue under the fretboard to the template, and fit them to sides and top." : "Make the block and fit it to sides and top, square to the centre line.",
            TopFace.Inside,
            [.. Footprints(layout, m => m.Name == Block.Neck.Name || m.Kind == MemberKind.Tongue), .. layout.Marks.Where(m => m.Name == TrussRod.Name).Select(m => (m.Name, m.Line))],
            [
                .. numbers.Piece(Block.Neck.Name, "depth through the rim", StepTolerance.Meeting),
                .. numbers.Piece(Tongue.Name),
                .. numbers.Of("positions", numbers.Within(StepTolerance.Meeting), "truss-rod slot"),
                .. numbers.Drilled(n => n == "locating pin, neck"),
                new("block's centre line on the top's", "in line", numbers.Within(StepTolerance.Across)),
            ],
            [StepCautions.Dust, StepCautions.Router, StepCautions.Chisel]);
    }

    private static Step? BridgePlace(Layout layout, StepNumbers numbers) => layout.Find(Bridge.Name) is null
        ? null
        : new(
            "5-bridge-place",
            "Place of the bridge",
            "With the neck in place, find the saddle from the nut, set the bridge square to the centre line, and glue it.",
            TopFace.Outside,
            [.. Footprints(layout, m => m.Kind is MemberKind.Bridge or MemberKind.Fretboard), SaddleLine(layout), .. Drilled(layout, p => BridgePins.IsPin(p))],
            [
                .. numbers.Of("positions", numbers.Within(StepTolerance.Along), "nut to", "theoretical saddle", "saddle, outer", "bridge", "saddle slot"),
                new("bridge square to the centre line, over its length", "square", numbers.Within(StepTolerance.Straight)),
                .. numbers.Drilled(n => n.StartsWith("bridge pin", StringComparison.Ordinal) || n.StartsWith("locating pin, bridge", StringComparison.Ordinal)),
            ],
            [StepCautions.Neck, StepCautions.Strings, StepCautions.Protected, StepCautions.Dust]);

    private static Step Box(Layout layout, StepNumbers numbers) => new(
        "6-box",
        "Linings and closing the box",
        "Line the rim, pocket it for the brace ends in the mould, then close: seam on the centre line at neck and tail.",
        TopFace.Inside,
        [.. Footprints(layout, m => m.Kind is MemberKind.Lining or MemberKind.Block), .. Drilled(layout, p => p.Name is "locating pin, neck" or "locating pin, tail")],
        [
            Glued(layout),
            new("seam over the centre line of neck and tail", "in line", numbers.Within(StepTolerance.Across)),
            new("neck's centre line, drawn on, over the middle of the bridge", "in line", numbers.Within(StepTolerance.Halves)),
            new("brace end in its pocket, depth", "level", numbers.Within(StepTolerance.Channel)),
            .. numbers.Piece(Block.Tail.Name, "depth through the rim", StepTolerance.Meeting),
            .. layout.Members.Where(m => m.Kind == MemberKind.Lining).SelectMany(m => numbers.Lining(m.Name)),
            .. numbers.Drilled(n => n is "locating pin, neck" or "locating pin, tail"),
        ],
        [StepCautions.Air, StepCautions.Router, StepCautions.Ledge]);

    private static StepRow Glued(Layout layout) => new(
        "relative humidity while gluing", $"{Drawing.NumberFormat.Trimmed(layout.Design[SeasonSection.GluedHumidity].Value, 0)} %", StepTolerance.Humidity);

    private static IEnumerable<(string Name, Contour Line)> Footprints(Layout layout, Func<Member, bool> isShown) =>
        layout.Members.Where(isShown).SelectMany(m => m.Footprint.Loops.Select(l => (m.Name, l)));

    private static IEnumerable<(string Name, Contour Line)> Drilled(Layout layout, Func<DrillPoint, bool> isShown) =>
        layout.DrillPoints.Where(isShown).Select(p => (p.Name, Contour.Circle(p.At, p.RadiusMm)));

    private static (string Name, Contour Line) SaddleLine(Layout layout) =>
        ("saddle", new Contour([new Vertex(layout.Saddle.Bass), new Vertex(layout.Saddle.Treble)], isClosed: false));
}
