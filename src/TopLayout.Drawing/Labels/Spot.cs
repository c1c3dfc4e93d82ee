using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>A place for a label, and the leader it needs there.</summary>
/// <param name="Label">The label at that place.</param>
/// <param name="Leader">From the label to the point it names; null where it stands beside or in what it names.</param>
internal sealed record Spot(LabelShape Label, Contour? Leader = null)
{
    private const double DotPerHeight = 0.12;

    /// <summary>The label, its leader, and a dot at the point it names.</summary>
    public IEnumerable<Shape> Shapes(LabelRequest request)
    {
        yield return Label;
        if (Leader is not null)
        {
            yield return new ContourShape(request.Part, Role.Dimension, Leader, request.Emphasis);
            var dot = Contour.Circle(Leader.Vertices[^1].Position, DotPerHeight * request.HeightMm);
            yield return new ContourShape(request.Part, Role.Dimension, dot, request.Emphasis);
        }
    }
}
