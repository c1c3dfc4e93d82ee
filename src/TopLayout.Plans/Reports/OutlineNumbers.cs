using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>The numbers of the outline: widths, lengths, radii, offsets, and for a measured body what was measured beside what is drawn.</summary>
internal static class OutlineNumbers
{
    private static readonly (string Word, int Side)[] Halves = [("bass", -1), ("treble", 1)];

    /// <summary>All tables.</summary>
    public static IEnumerable<NumberTable> Of(Layout layout)
    {
        yield return Body(layout);
        yield return Offsets(layout);
        if (layout.Body.Residuals.Length > 0)
        {
            yield return Residuals(layout);
        }
    }

    /// <summary>Whether both halves are alike.</summary>
    public static bool IsEven(Layout layout) => BodyWidths.Half(layout.Outline, -1) is var bass && BodyWidths.Half(layout.Outline, 1) is var treble
        && bass.Count == treble.Count && bass.Zip(treble).All(p => p.First.End.IsNear(p.Second.End, Tolerances.ShortestMm) && Math.Abs(p.First.Bulge - p.Second.Bulge) < Tolerances.TouchMm);

    private static NumberTable Body(Layout layout)
    {
        var isEven = IsEven(layout);
        IEnumerable<IReadOnlyList<Cell>> rows =
        [
            [Rim("body length"), layout.Outline.Bounds.Height],
            .. Widths(layout.Outline).SelectMany(w => Width(w, Rim)),
            [Rim("outline, all round"), layout.Outline.Length],
            .. SideStrips.Of(layout),
            .. Cut(layout),
            .. Plate(layout),
            .. Radii(layout, isEven),
        ];
        string Rim(string what) => layout.Body.PlateEdge == layout.Outline ? what : $"{what}, outer face of the rim";
        return new NumberTable("body", "Body", [new("what", "what"), new("value", "value")], rows);
    }

    private static IEnumerable<IReadOnlyList<Cell>> Cut(Layout layout)
    {
        var design = layout.Design;
        if (!design.Has(Cutaway.Section))
        {
            yield break;
        }

        var recipe = Cutaway.Recipe(design);
        // A round horn is one of the widths.
        if (recipe.Shape == CutawayShape.Pointed)
        {
            yield return ["cutaway point, from neck edge", recipe.Horn.At];
            yield return ["cutaway point, from the centre line", HalfWidth(layout.Outline, recipe.Horn.At, 1)];
        }

        yield return ["cutaway wall, from the centre line", recipe.WallHalf];
        yield return ["cutaway wall, length from the neck edge", recipe.Wall];
    }

    private static IEnumerable<IReadOnlyList<Cell>> Plate(Layout layout)
    {
        yield return ["plate area, soundhole not taken off", new Cell.Area(layout.Body.PlateEdge.SignedArea)];
        if (layout.Body.PlateEdge != layout.Outline)
        {
            yield return ["plate, length", layout.Body.PlateEdge.Bounds.Height];
            foreach (var row in Widths(layout.Body.PlateEdge).SelectMany(w => Width(w, what => $"plate, {what}")))
            {
                yield return row;
            }

            yield return ["plate, all round", layout.Body.PlateEdge.Length];
        }
    }

    /// <summary>The widths of a line from the neck on, of two that stand for one place the bass one first.</summary>
    public static IReadOnlyList<BodyWidth> Widths(Contour line)
    {
        var widths = BodyWidths.Of(line).ToArray();
        for (var i = 1; i < widths.Length; i++)
        {
            if (widths[i - 1].Name == widths[i].Name && (widths[i - 1].Side, widths[i].Side) is ("treble", "bass"))
            {
                (widths[i - 1], widths[i]) = (widths[i], widths[i - 1]);
            }
        }

        return widths;
    }

    private static IEnumerable<IReadOnlyList<Cell>> Width(BodyWidth w, Func<string, string> whose)
    {
        var (what, size) = w.Side is null ? ($"{w.Name} width", 2 * w.Half) : ($"{w.Name}, {w.Side} half-width", w.Half);
        yield return [whose(what), size];
        yield return [whose(w.Side is null ? $"{w.Name}, from neck edge" : $"{w.Name}, {w.Side} half, from neck edge"), w.FromNeckEdge];
    }

    // An arc that both halves share stands once; from the neck on, of two that begin side by side the bass one first.
    private static IEnumerable<IReadOnlyList<Cell>> Radii(Layout layout, bool isEven)
    {
        var unit = layout.Design.Units;
        var (bass, treble) = (Arcs(layout.Outline, -1), Arcs(layout.Outline, 1));
        (OutlineArc Arc, string Whose)[] arcs = isEven ? [.. treble.Select(a => (a, ""))]
            : [.. bass.Select(a => (a, treble.Any(a.IsAlike) ? ", both sides" : ", bass side")), .. treble.Where(a => !bass.Any(a.IsAlike)).Select(a => (a, ", treble side"))];
        return arcs.OrderByDescending(a => a.Arc.First.Start.Y).Select(a => (IReadOnlyList<Cell>)
        [
            $"radius, {a.Arc.Label}{a.Whose}{(a.Arc.IsHollow ? ", hollow" : "")}, from {LengthText.Of(-a.Arc.First.Start.Y, unit)} to {LengthText.WithUnit(-a.Arc.Last.End.Y, unit)}", a.Arc.Radius,
        ]);
    }

    /// <summary>The arcs of one half from the neck to the tail, at x ≥ 0; one that only passes a station is told once.</summary>
    public static IReadOnlyList<OutlineArc> Arcs(Contour outline, int side)
    {
        var arcs = new List<OutlineArc>();
        foreach (var s in BodyWidths.Half(outline, side).Where(s => s.IsArc))
        {
            if (arcs.Count > 0 && arcs[^1].Label == s.Label && Math.Abs(arcs[^1].Radius - s.Radius) < Tolerances.ShortestMm)
            {
                arcs[^1] = arcs[^1] with { Last = s, Longest = arcs[^1].Longest.Length < s.Length ? s : arcs[^1].Longest };
            }
            else
            {
                arcs.Add(new OutlineArc(s, s, s));
            }
        }

        return arcs;
    }

    private static NumberTable Offsets(Layout layout)
    {
        var halves = Halves.Skip(IsEven(layout) ? 1 : 0).ToList();
        var (box, rows) = (layout.Outline.Bounds, new List<IReadOnlyList<Cell>>());
        var step = Sheets.StationLadder.Step(layout);
        if (halves.TrueForAll(h => NeckHalf(layout.Outline, h.Side) > Tolerances.ShortestMm))
        {
            rows.Add([0.0, .. halves.Select(h => (Cell)NeckHalf(layout.Outline, h.Side))]);
        }

        for (var n = 1; n * step < box.Height; n++)
        {
            var at = n * step;
            rows.Add([at, .. halves.Select(h => (Cell)HalfWidth(layout.Outline, at, h.Side))]);
        }

        return new NumberTable(
            "offsets",
            "Outline offsets",
            [
                new("from_neck_edge", "from neck edge"),
                .. halves.Select(h => halves.Count == 1 ? new Column("half_width", "half-width") : new Column($"{h.Word}_half_width", $"{h.Word} half-width")),
            ],
            rows);
    }

    // Where the half leaves the straight piece at the neck edge, mm; 0 where none is.
    private static double NeckHalf(Contour outline, int side) => outline.Vertices.Select(v => v.Position)
        .Where(p => Math.Abs(p.Y) <= Tolerances.ShortestMm).Select(p => side * p.X).Append(0).Max();

    /// <summary>Half-width of an outline at a distance from the neck edge, mm: where the half is crossed furthest out.</summary>
    public static double HalfWidth(Contour outline, double at, int side)
    {
        var line = new Segment(new Point2(0, -at), new Point2(side * (outline.Bounds.Width + 1), -at));
        return outline.Crossings(line) is [.., var edge] ? Math.Abs(edge.Point.X) : 0;
    }

    private static NumberTable Residuals(Layout layout) => new(
        "measured",
        "Measured half-widths",
        [
            new("from_neck_edge", "from neck edge"), new("side", "from outside"), new("measured", "measured"), new("drawn", "drawn"), new("difference", "difference"),
        ],
        layout.Body.Residuals.Select(r => (IReadOnlyList<Cell>)[r.FromNeckEdge, r.IsLeft ? "left" : "right", r.Measured, r.Drawn, r.Difference]));
}

/// <summary>One arc of a half, in one piece or several.</summary>
/// <param name="First">Its piece nearest to the neck.</param>
/// <param name="Last">Its piece nearest to the tail.</param>
/// <param name="Longest">Its longest piece.</param>
internal readonly record struct OutlineArc(Segment First, Segment Last, Segment Longest)
{
    /// <summary>Its name.</summary>
    public string Label => First.Label;

    /// <summary>Its radius, mm.</summary>
    public double Radius => First.Radius;

    /// <summary>Whether it is hollow, seen from outside.</summary>
    public bool IsHollow => First.Bulge > 0;

    /// <summary>Whether it is the same arc on the other half.</summary>
    public bool IsAlike(OutlineArc other) => Label == other.Label && IsHollow == other.IsHollow && Math.Abs(Radius - other.Radius) < Tolerances.ShortestMm
        && First.Start.IsNear(other.First.Start, Tolerances.ShortestMm) && Last.End.IsNear(other.Last.End, Tolerances.ShortestMm);
}
