using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>The numbers of the hole's edge: its arcs where it is not round, the liner, the rosette's channel.</summary>
internal static class HoleNumbers
{
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
            // On its middle line the strip is neither stretched nor pressed.
            yield return ["soundhole liner, length of the strip", (hole.Edge.Length + liner.Length) / 2, "on its middle line; add the lap of the joint"];
        }

        var channels = Rosette.Channels(layout.Design, hole.Radius);
        foreach (var (i, channel) in channels.Index())
        {
            var (start, from, what) = hole.Radius is { } radius ? (radius, "from the hole's centre", "radius") : (0, "from the hole's edge", "wall");
            var (name, depth) = (Rosette.NameOf(i, channels.Length), layout.Design[Rosette.Depth].Value);
            yield return [$"{name}, inner {what}", start + channel.InnerMm, from];
            yield return [$"{name}, outer {what}", start + channel.OuterMm, from];
            yield return [$"{name}, depth", depth, $"leaves a floor of {LengthText.WithUnit(layout.Top.ThicknessMm - depth, layout.Design.Units)}"];
        }
    }
}
