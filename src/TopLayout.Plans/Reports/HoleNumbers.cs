using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Plans.Reports;

/// <summary>The numbers of the hole's edge: its arcs where it is not round, the liner, the rosette's channel.</summary>
internal static class HoleNumbers
{
    // Two steps nearer than this lie on one line; a reinforcement wants to reach this far past a wall. Common practice, no source.
    private const double StepApartMm = 1;
    private const double OverlapMm = 3;

    /// <summary>Rows of what, value, remark.</summary>
    public static IEnumerable<IReadOnlyList<Cell>> Rows(Layout layout)
    {
        var hole = layout.Hole;
        if (hole.Radius is null)
        {
            foreach (var arc in hole.Edge.Segments.Where(s => s.IsArc).DistinctBy(s => Math.Round(s.Radius, 3)))
            {
                yield return ["soundhole, radius of an arc", arc.Radius, ""];
            }
        }

        if (layout.HoleLiner is { } liner)
        {
            foreach (var row in Liner(layout, liner))
            {
                yield return row;
            }
        }

        var channels = Rosette.Channels(layout.Design, hole.Radius);
        foreach (var (i, channel) in channels.Index())
        {
            var (start, from, what) = hole.Radius is { } radius ? (radius, "from the hole's centre", "radius") : (0, "from the hole's edge", "wall");
            var (name, depth) = (Rosette.NameOf(i, channels.Length), channel.DepthMm);
            yield return [$"{name}, inner {what}", start + channel.InnerMm, from];
            yield return [$"{name}, outer {what}", start + channel.OuterMm, from + Play(layout, channel)];
            yield return [$"{name}, depth", depth, $"below the finished face{WhenCut(layout, depth)}; leaves a floor of {Said(layout, LengthText.AsPrinted(layout.Top.ThicknessMm, layout.Design.Units) - LengthText.AsPrinted(depth, layout.Design.Units))}{OverReinforcement(layout, channel)}"];
        }

        if (hole.Radius is { } round && channels.Length > 0 && layout.Find(Fretboard.Name) is not null)
        {
            foreach (var row in UnderTheBoard(layout, round + channels[0].InnerMm, round + channels[^1].OuterMm))
            {
                yield return row;
            }
        }
    }

    /// <summary>Rows of the hole's own size and place across.</summary>
    public static IEnumerable<IReadOnlyList<Cell>> Size(Layout layout)
    {
        var hole = layout.Hole;
        yield return ["soundhole centre, off the centre line", hole.Center.X, hole.Center.X == 0 ? "" : hole.Center.X > 0 ? "towards the treble side" : "towards the bass side"];
        if (hole.Radius is { } radius)
        {
            yield return ["soundhole diameter", 2 * radius, ""];
        }
        else
        {
            yield return ["soundhole, across", 2 * hole.HalfWidth, ""];
            yield return ["soundhole, along", 2 * hole.HalfLength, ""];
        }
    }

    // How much wider the channel is than the rings in it.
    private static string Play(Layout layout, RingChannel channel) =>
        channel.Rings.Any() && channel.OuterMm - channel.InnerMm - channel.Rings.Sum(r => r.WidthMm) is var play && play > Tolerances.ShortestMm
            ? $"; {Said(layout, play)} of the width is play for glue"
            : "";

    private static string WhenCut(Layout layout, double depth) =>
        layout.Design[Rosette.Levelling].Value is > 0 and var off ? $"; {Said(layout, LengthText.AsPrinted(depth, layout.Design.Units) + LengthText.AsPrinted(off, layout.Design.Units))} when cut, {Said(layout, off)} of it levelled off" : "";

    private static string Said(Layout layout, double mm) => LengthText.WithUnit(mm, layout.Design.Units);

    // A ring that reaches past the board's end dives under it; one that does not has no place to hide a joint.
    private static IEnumerable<IReadOnlyList<Cell>> UnderTheBoard(Layout layout, double inner, double outer)
    {
        var middle = (inner + outer) / 2;
        var hidden = HiddenArc.Of(layout, inner, outer).LengthAt(middle);
        var toBoard = -layout.Hole.Center.Y - Fretboard.EndFromNeckEdge(layout.Design);
        var advice = outer <= toBoard ? "the whole ring shows: fit it exactly, its joint at the neck end"
            : hidden > 0 ? "hides joints and gaps; level the ring there, or relieve the underside of the board"
            : "too little to hide a joint; level the ring there, or relieve the underside of the board";
        if (HiddenArc.Under(layout, middle).LengthAt(middle) is > 0 and var under)
        {
            yield return ["ring's middle line under the fretboard, length", under, hidden > 0 ? "to the board's edges" : $"to the board's edges: {advice}"];
        }
        else
        {
            // No length: what there is to do all the same.
            yield return ["ring under the fretboard", outer <= toBoard ? "none" : $"outer {Said(layout, outer - toBoard)} only", advice];
        }

        if (hidden > 0)
        {
            yield return [$"ring's middle line hidden {LengthText.OnRuleWithUnit(HiddenArc.MarginMm, layout.Design.Units)} or more inside the board, the ring in its whole width", hidden, advice];
        }
    }

    private static IEnumerable<IReadOnlyList<Cell>> Liner(Layout layout, Contour liner)
    {
        var (design, hole) = (layout.Design, layout.Hole);
        var (lap, stuff) = (design.Find(Soundhole.LinerLap)?.Value ?? 0, design.Find(Soundhole.LinerOf)?.Value ?? LinerStuff.Wood);

        // On its middle line the strip is neither stretched nor pressed.
        yield return
        [
            "soundhole liner, thickness", design[Soundhole.Liner].Value,
            "a strip bent round inside the hole's edge and glued in: the opening is smaller by it all round",
        ];
        yield return ["soundhole liner, height", layout.Top.ThicknessMm, "flush with both faces of the levelled top; what stands past them is pared off"];
        yield return
        [
            "soundhole liner, length of the strip",
            ((hole.Edge.Length + liner.Length) / 2) + lap,
            lap > 0 ? $"on its middle line, with a lap of {Said(layout, lap)}: taper both ends over it" : "on its middle line; its ends butt",
        ];

        var tightest = liner.Segments.Where(s => s.IsArc).Min(s => s.Radius);
        var bent = new BentLine(tightest, design[Soundhole.Liner].Value);
        yield return
        [
            "soundhole liner, tightest inner radius",
            tightest,
            $"bend strain {NumberFormat.Trimmed(bent.Strain * 100, 2)} %{(stuff, bent.Strain > BentLine.BendHotFrom) switch
            {
                (LinerStuff.Sheet, true) => ": warm it in hot water; solvents and flames are a danger with plastic sheet: air, no flame",
                (LinerStuff.Sheet, false) => "; solvents and flames are a danger with plastic sheet: air, no flame",
                (_, true) => ": bend it hot first, the iron burns",
                _ => "",
            }}",
        ];
    }

    // Glued inside it carries the floor where it covers both walls and more; an edge under a wall would put two steps on one line.
    private static string OverReinforcement(Layout layout, RingChannel channel)
    {
        if (layout.Find(HoleReinforcement.Name) is null)
        {
            return "";
        }

        var section = layout.Design.In(HoleReinforcement.Section);
        var (from, to) = (section[HoleReinforcement.Inset].Value, section[HoleReinforcement.Inset].Value + section[HoleReinforcement.Width].Value);
        var onWall = new[] { channel.InnerMm, channel.OuterMm }.Any(w => Math.Abs(w - from) < StepApartMm || Math.Abs(w - to) < StepApartMm);
        return onWall ? "; an edge of the hole reinforcement lies under a wall: move it"
            : from <= channel.InnerMm - OverlapMm && to >= channel.OuterMm + OverlapMm ? "; the hole reinforcement covers both walls"
            : Math.Min(channel.InnerMm - from, to - channel.OuterMm) is var past and > 0
                ? $"; the hole reinforcement reaches {LengthText.WithUnit(past, layout.Design.Units)} past the walls, which carries the floor; {LengthText.WithUnit(OverlapMm, layout.Design.Units)} are usual where there is room"
                : "; the hole reinforcement does not reach past both walls";
    }
}
