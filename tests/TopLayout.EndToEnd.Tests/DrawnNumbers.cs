using System.Text.Json;

namespace TopLayout.EndToEnd.Tests;

/// <summary>A number as the report says it and as it is measured in the drawing.</summary>
internal readonly record struct NumberPair(string What, double Said, double Drawn);

/// <summary>Finds in the measured plans what the tables of the report say.</summary>
internal sealed class DrawnNumbers(MeasuredPlan outside, MeasuredPlan inside, MeasuredPlan bridge)
{
    private const double Mm = 0.001;

    /// <summary>The numbers that stand in both.</summary>
    /// <param name="numbers">The tables of the report.</param>
    /// <param name="shift">Added to every number of the report, mm or degrees.</param>
    public IEnumerable<NumberPair> Of(JsonElement numbers, double shift) =>
        ((IEnumerable<NumberPair>)[.. Body(numbers), .. Offsets(numbers), .. Positions(numbers), .. Bars(numbers), .. Holes(numbers), .. Pieces(numbers)])
            .Select(p => Nearest(p with { Said = p.Said + shift }));

    // A radius may be any of the outline's; the one meant is the nearest.
    private NumberPair Nearest(NumberPair pair) => pair.What.StartsWith("radius,", StringComparison.Ordinal)
        ? pair with { Drawn = Outline.Radii.MinBy(r => Math.Abs(r - pair.Said)) }
        : pair;

    private MeasuredOutline Outline => outside.Outlines("binding left in place") is [var all] ? all : outside.Outlines("outline").Single();

    private IEnumerable<NumberPair> Body(JsonElement numbers)
    {
        var (outline, rows) = (Outline, Rows(numbers, "body"));
        foreach (var (what, said) in rows)
        {
            double? drawn = what switch
            {
                "body length" or "body length, outer face of the rim" => outline.Bounds.Most.Along - outline.Bounds.Least.Along,
                "outline, all round" or "outline, all round, outer face of the rim" => outline.Length,
                "one side strip, centre line at the neck to tail, without allowance" => outline.Length / 2,
                _ when what.StartsWith("radius,", StringComparison.Ordinal) => said,
                _ when !what.StartsWith("plate,", StringComparison.Ordinal) && what.EndsWith(" width", StringComparison.Ordinal) => Width(outline, rows[what.Replace(" width", ", from neck edge", StringComparison.Ordinal)]),
                _ => null,
            };
            if (drawn is { } d)
            {
                yield return new NumberPair(what, said, d);
            }
        }
    }

    private static double Width(MeasuredOutline outline, double along) => outline.ReachAt(along) is var (bass, treble) ? treble - bass : double.NaN;

    private IEnumerable<NumberPair> Offsets(JsonElement numbers)
    {
        // At the neck edge a line across runs along the outline.
        foreach (var row in numbers.GetProperty("offsets").EnumerateArray().Where(r => r.GetProperty("from_neck_edge").GetDouble() > 0))
        {
            var at = row.GetProperty("from_neck_edge").GetDouble();
            var (bass, treble) = Outline.ReachAt(at);
            foreach (var cell in row.EnumerateObject().Where(c => c.Name != "from_neck_edge"))
            {
                yield return new NumberPair($"{cell.Name} at {at}", cell.Value.GetDouble(), cell.Name == "bass_half_width" ? -bass : treble);
            }
        }
    }

    private IEnumerable<NumberPair> Positions(JsonElement numbers)
    {
        var rows = Rows(numbers, "positions");
        var (board, hole, block) = (outside.Outlines("fretboard extension").Single(), outside.Outlines("soundhole").Single(), outside.Outlines("bridge").Single());
        var ends = outside.Lines("saddle", "MARK").SelectMany(l => new[] { l.From, l.To }).OrderBy(e => e.Across).ToList();
        var channel = outside.Outlines("rosette channel").Select(c => (c.Bounds.Most.Across - c.Bounds.Least.Across) / 2).Order().ToList();
        yield return Pair("fretboard end", board.Bounds.Most.Along);
        yield return Pair("soundhole centre", hole.Bounds.Least.Halfway(hole.Bounds.Most).Along);
        yield return Pair("theoretical saddle", bridge.Lines("theoretical saddle", "CENTRE").Single().From.Along);
        yield return Pair("saddle, outer treble string", ends[1].Along);
        yield return Pair("saddle, outer bass string", ends[0].Along);
        yield return Pair("bridge front edge", block.Bounds.Least.Along);
        yield return Pair("bridge rear edge", block.Bounds.Most.Along);
        yield return Pair("rosette channel, inner radius", channel[0]);
        yield return Pair("rosette channel, outer radius", channel[^1]);
        if (rows.ContainsKey("truss-rod slot, its end"))
        {
            yield return Pair("truss-rod slot, its end", inside.Outlines("truss-rod slot", "HIDDEN").Max(s => s.Bounds.Most.Along));
        }

        if (rows.ContainsKey("X crossing"))
        {
            var (bass, treble) = (Axis("X leg, bass"), Axis("X leg, treble"));
            yield return Pair("X crossing", AlongWhere(treble, 0));
            yield return Pair("X legs' axes from the centre line, at the bridge front", AcrossAt(treble, block.Bounds.Least.Along));
            yield return Pair("X legs' axes from the centre line, at the bridge rear", -AcrossAt(bass, block.Bounds.Most.Along));
        }

        NumberPair Pair(string what, double drawn) => new(what, rows[what], drawn);
    }

    // The axis of a bar from its drawn sides.
    private (Spot From, Spot To) Axis(string bar)
    {
        var (first, second) = inside.Outlines(bar).Single().Sides;
        return (first.From.Halfway(second.From), first.To.Halfway(second.To));
    }

    private static double AcrossAt((Spot From, Spot To) axis, double along) =>
        axis.From.Across + ((axis.To.Across - axis.From.Across) * (along - axis.From.Along) / (axis.To.Along - axis.From.Along));

    private static double AlongWhere((Spot From, Spot To) axis, double across) =>
        axis.From.Along + ((axis.To.Along - axis.From.Along) * (across - axis.From.Across) / (axis.To.Across - axis.From.Across));

    private IEnumerable<NumberPair> Bars(JsonElement numbers)
    {
        foreach (var row in numbers.GetProperty("bars").EnumerateArray())
        {
            var name = row.GetProperty("name").GetString()!;
            var (first, second) = inside.Outlines(name).Single().Sides;
            Spot[] ends = [first.From.Halfway(second.From), first.To.Halfway(second.To)];
            ends = [.. Math.Abs(ends[0].Along - ends[1].Along) < Mm ? ends.OrderBy(e => e.Across) : ends.OrderBy(e => e.Along)];
            var (dx, dy) = (ends[1].Across - ends[0].Across, ends[1].Along - ends[0].Along);
            var (ux, uy) = ((first.To.Across - first.From.Across) / first.From.To(first.To), (first.To.Along - first.From.Along) / first.From.To(first.To));
            var width = Math.Abs(((second.From.Across - first.From.Across) * uy) - ((second.From.Along - first.From.Along) * ux));
            foreach (var (key, drawn) in ((string, double)[])[
                ("first_from_neck_edge", ends[0].Along), ("first_across", ends[0].Across), ("second_from_neck_edge", ends[1].Along), ("second_across", ends[1].Across),
                ("length", Math.Max(first.From.To(first.To), second.From.To(second.To))), ("width", width)])
            {
                yield return new NumberPair($"{name}, {key}", row.GetProperty(key).GetDouble(), drawn);
            }

            // Degrees; a thousandth of one is a hundredth of a mm over 500 mm.
            yield return new NumberPair($"{name}, angle", row.GetProperty("angle").GetDouble(), Math.Atan2(Math.Abs(ux), Math.Abs(uy)) * 180 / Math.PI);
        }
    }

    private IEnumerable<NumberPair> Holes(JsonElement numbers)
    {
        foreach (var row in numbers.GetProperty("drill_points").EnumerateArray())
        {
            var name = row.GetProperty("name").GetString()!;
            var hole = outside.Outlines(name).Single().Bounds;
            var centre = hole.Least.Halfway(hole.Most);
            yield return new NumberPair($"{name}, along", row.GetProperty("from_neck_edge").GetDouble(), centre.Along);
            yield return new NumberPair($"{name}, across", row.GetProperty("across").GetDouble(), centre.Across);
            yield return new NumberPair($"{name}, diameter", row.GetProperty("diameter").GetDouble(), hole.Most.Across - hole.Least.Across);
        }
    }

    private IEnumerable<NumberPair> Pieces(JsonElement numbers)
    {
        foreach (var row in numbers.GetProperty("pieces").EnumerateArray())
        {
            var (name, face) = (row.GetProperty("name").GetString()!, row.GetProperty("face").GetString());
            if (face is not ("inside" or "outside"))
            {
                continue;
            }

            var outlines = (face == "inside" ? inside : outside).Outlines(name);
            foreach (var (key, drawn) in ((string, double)[])[
                ("from", outlines.Min(o => o.Bounds.Least.Along)), ("to", outlines.Max(o => o.Bounds.Most.Along)),
                ("bass", outlines.Min(o => o.Bounds.Least.Across)), ("treble", outlines.Max(o => o.Bounds.Most.Across))])
            {
                yield return new NumberPair($"{name}, {key}", row.GetProperty(key).GetDouble(), drawn);
            }

            // One loop, or one with holes in it; nothing is glued where the slot of the truss rod lies under it.
            var whole = outlines.Max(o => o.Area);
            yield return new NumberPair($"{name}, area / 1000", row.GetProperty("area").GetDouble() / 1000, ((2 * whole) - outlines.Sum(o => o.Area) - SlotIn(name, outlines)) / 1000);
        }
    }

    private double SlotIn(string part, IReadOnlyList<MeasuredOutline> outlines) => part is "neck block" or "tongue"
        ? inside.Outlines("truss-rod slot", "HIDDEN").Sum(s => (s.Bounds.Most.Across - s.Bounds.Least.Across)
            * Math.Max(0, Math.Min(s.Bounds.Most.Along, outlines.Max(o => o.Bounds.Most.Along)) - Math.Max(s.Bounds.Least.Along, outlines.Min(o => o.Bounds.Least.Along))))
        : 0;

    private static Dictionary<string, double> Rows(JsonElement numbers, string table) =>
        numbers.GetProperty(table).EnumerateArray().ToDictionary(r => r.GetProperty("what").GetString()!, r => r.GetProperty("value").GetDouble());
}
