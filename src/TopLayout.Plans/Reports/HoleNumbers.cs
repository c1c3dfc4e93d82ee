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

        if (layout.Find(Rosette.Name) is { } channel)
        {
            var (inner, outer, from) = hole.Radius is { } radius
                ? (radius + layout.Design[Rosette.Margin].Value, radius + layout.Design[Rosette.Margin].Value + layout.Design[Rosette.Width].Value, "from the hole's centre")
                : (layout.Design[Rosette.Margin].Value, layout.Design[Rosette.Margin].Value + layout.Design[Rosette.Width].Value, "from the hole's edge");
            var what = hole.Radius is null ? "wall" : "radius";
            yield return [$"rosette channel, inner {what}", inner, from];
            yield return [$"rosette channel, outer {what}", outer, from];
            yield return ["rosette channel, depth", channel.ThicknessMm, $"leaves a floor of {LengthText.WithUnit(layout.Top.ThicknessMm - channel.ThicknessMm, layout.Design.Units)}"];
        }
    }
}
