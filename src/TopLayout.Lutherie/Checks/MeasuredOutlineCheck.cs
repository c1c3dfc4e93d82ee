using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>Whether the arcs of a measured body keep to the half-widths, and whether they run on without corners.</summary>
public static class MeasuredOutlineCheck
{
    // A turn between two arcs that an eye sees, and a bent side shows.
    private static readonly Angle SeenCorner = Angle.FromDegrees(3);

    /// <summary>One finding on the largest difference, and one for each corner; none for an outline that was not measured.</summary>
    public static IEnumerable<Finding> Of(Layout layout) => layout.Body.Residuals.IsEmpty ? [] : [Worst(layout), .. Corners(layout)];

    private static Finding Worst(Layout layout)
    {
        var within = layout.Design[MeasuredBody.Within];
        var worst = layout.Body.Residuals.MaxBy(r => Math.Abs(r.Difference));
        var off = Math.Abs(worst.Difference);
        var isKept = off <= within.Value;
        var side = worst.IsLeft ? "left" : "right";
        return new Finding(
            Rules.MeasuredOutline,
            isKept ? Severity.Pass : Severity.Fail,
            "outline",
            isKept
                ? $"the arcs pass all {Say.Count(layout.Body.Residuals.Length)} measured half-widths within {Hundredth(off)}"
                : $"at {Say.Mm(worst.FromNeckEdge)} from the neck edge the arcs pass {Hundredth(off)} beside the half-width measured on the {side}")
        {
            Measured = new Measurement(off, "mm", within.Value),
            Place = worst.Place,
            OtherPlaces = [within.Place],
            Cure = isKept ? null : "measure that station again; or allow a larger `within`",
        };
    }

    private static IEnumerable<Finding> Corners(Layout layout)
    {
        var edges = layout.Outline.Segments;
        for (var i = 0; i < edges.Length; i++)
        {
            var (before, after) = (edges[i], edges[(i + 1) % edges.Length]);
            var turn = Math.Abs(Trig.Turn(before.TangentAt(1), after.TangentAt(0)).Degrees);
            if (before.Label != MeasuredHalf.Label || after.Label != MeasuredHalf.Label || turn <= SeenCorner.Degrees)
            {
                continue;
            }

            var at = after.Start;
            var nearest = layout.Body.Residuals.MinBy(r => Math.Abs(r.FromNeckEdge + at.Y));
            yield return new Finding(
                Rules.MeasuredOutline,
                Severity.Warning,
                "outline",
                $"the measured side has a corner of {Say.Degrees(Angle.FromDegrees(turn))}, {Say.Mm(-at.Y)} from the neck edge and {Say.Mm(Math.Abs(at.X))} from the centre line")
            {
                Measured = new Measurement(turn, "°", SeenCorner.Degrees),
                Where = (at, at),
                Place = nearest.Place,
                Cure = "measure the half-widths there again, and closer together",
            };
        }
    }

    private static string Hundredth(double mm) => $"{Say.TwoDigits(mm)} mm";
}
