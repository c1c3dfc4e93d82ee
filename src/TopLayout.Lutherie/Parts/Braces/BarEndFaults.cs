using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>What can be wrong with the end of a bar that is drawn all the same.</summary>
internal static class BarEndFaults
{
    /// <summary>Says that an end is cut by the sides though it is not let in, or that it is not wholly held by what it butts against.</summary>
    public static void Report(Bench bench, Bar bar, BarEnd end, Region whole, Region footprint)
    {
        var ahead = end == bar.End ? bar.Along.Unit : -bar.Along.Unit;
        if (end.Cut is null)
        {
            return;
        }

        // How far back from its stated end the sides cut into it.
        var cut = footprint.Edges.Where(e => e.Label == end.Label && !IsOn(end.Cut.Value, e)).ToList();
        var stated = whole.Edges.Where(e => e.Label == end.Label).Max(e => Math.Max((e.Start - bar.Through).Dot(ahead), (e.End - bar.Through).Dot(ahead)));
        var lost = cut.Count == 0 ? 0 : stated - cut.Min(e => Math.Min((e.Start - bar.Through).Dot(ahead), (e.End - bar.Through).Dot(ahead)));
        if (lost > Tolerances.ShortestMm)
        {
            bench.Fault(
                Rules.DrawnOtherwise,
                Severity.Fail,
                bar.Name,
                $"{Say.The(bar.Name)} runs past the inside of the sides at its {end.Label} and is cut off there",
                $"shorten it there by {Say.Mm(Math.Ceiling(lost * 10) / 10)} and more for the lining, move it towards the middle of the body, or let it into the lining where it can be",
                new Measurement(lost, "mm", 0),
                (cut[0].Start, cut[^1].End),
                bar.Places);
        }
        else if (end.Holder is { } holder)
        {
            ReportHeld(bench, bar, end, holder, footprint);
        }
    }

    private static bool IsOn(Segment line, Segment edge) => !edge.IsArc
        && Math.Abs((edge.Start - line.Start).Cross(line.TangentAt(0))) <= Tolerances.ShortestMm
        && Math.Abs((edge.End - line.Start).Cross(line.TangentAt(0))) <= Tolerances.ShortestMm;

    private static void ReportHeld(Bench bench, Bar bar, BarEnd end, Member holder, Region footprint)
    {
        var (line, way) = (end.Cut!.Value, end.Cut!.Value.TangentAt(0));
        var edge = footprint.Edges.First(e => e.Label == end.Label && IsOn(line, e));
        var (first, last) = ((edge.Start - line.Start).Dot(way), (edge.End - line.Start).Dot(way));
        var held = Math.Max(0, Math.Min(Math.Max(first, last), line.ChordLength) - Math.Max(Math.Min(first, last), 0));
        var free = edge.ChordLength - held;
        if (free > Tolerances.ShortestMm)
        {
            bench.Fault(
                Rules.DrawnOtherwise,
                Severity.Fail,
                bar.Name,
                held > 0
                    ? $"the {end.Label} of {Say.The(bar.Name)} stands {Say.Mm(free)} past the end of {Say.The(holder.Name)} that it butts against"
                    : $"{Say.The(bar.Name)} misses {Say.The(holder.Name)} that its {end.Label} butts against",
                $"move or turn {Say.The(bar.Name)} until it meets {Say.TheLast(holder.Name)}, or let it float where it can",
                new Measurement(free, "mm", 0),
                (edge.Start, edge.End),
                [.. bar.Places, holder.Places[0]]);
        }
    }
}
