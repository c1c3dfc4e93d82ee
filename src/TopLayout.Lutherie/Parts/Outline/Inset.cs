using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>Lines that run inside another all round at one distance.</summary>
internal static class Inset
{
    /// <summary>The line inside; corners that find no room are lost. Null, with the misfit said, when it falls apart or nothing is left.</summary>
    /// <param name="bench">Where the misfit goes.</param>
    /// <param name="line">The line it lies in, counter-clockwise.</param>
    /// <param name="depth">How far inside, mm.</param>
    /// <param name="what">What it bounds.</param>
    /// <param name="places">The places that set the distance.</param>
    public static Contour? Of(Bench bench, Contour line, double depth, string what, params IReadOnlyList<SourcePlace> places)
    {
        var inside = Region.Inside(line).Offset(-depth);
        if (inside.Loops is [var only])
        {
            return only;
        }

        bench.Misfit(
            what,
            inside.IsEmpty
                ? $"nothing of the body lies {Say.Mm(depth)} inside its edge, where the {what} begins"
                : $"the body is so narrow in a place that the {what}, {Say.Mm(depth)} inside its edge, falls into {Say.Count(inside.Parts.Count)} parts",
            "make it thinner there, or the body wider",
            places);
        return null;
    }
}
