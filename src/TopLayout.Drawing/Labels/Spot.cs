using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>A place for a label, and the leader it needs there.</summary>
/// <param name="Label">The label at that place.</param>
/// <param name="Leader">From the label to the point it names; null where it stands beside or in what it names.</param>
internal sealed record Spot(LabelShape Label, Contour? Leader = null)
{
    private const double DotPerHeight = 0.12;

    /// <summary>True when nothing of it reaches x = 0.</summary>
    public bool IsOnOneSide => Leader is null ? IsOff(Label.Bounds) : IsOff(Label.Bounds.Union(Leader.Bounds));

    /// <summary>The spot mirrored across x = 0 for the words of another: the end beside the leader mirrored, a label with its middle at its anchor turned the other way.</summary>
    public Spot MirroredFor(LabelRequest request)
    {
        var leader = Leader?.Placed(Placement.MirroredAcrossY);
        var alignment = Label.Alignment switch { Alignment.Left => Alignment.Right, Alignment.Right => Alignment.Left, _ => Alignment.Centre };
        if (alignment != Alignment.Centre)
        {
            return new Spot(new LabelShape(request.Part, request.Role, request.Text, new Point2(-Label.Anchor.X, Label.Anchor.Y), request.HeightMm, alignment, emphasis: request.Emphasis), leader);
        }

        // Upright letters read from the same side everywhere.
        var rotation = Math.Abs(Label.Rotation.Degrees) >= 90 ? Label.Rotation : -Label.Rotation;
        var middle = Label.Frame.Vertices[0].Position.MidpointTo(Label.Frame.Vertices[2].Position);
        return new Spot(Spots.Centred(request, new Point2(-middle.X, middle.Y), rotation), leader);
    }

    private static bool IsOff(Box2 box) => box.Max.X < 0 || box.Min.X > 0;

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
