using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>A place for a label, and the leader it needs there.</summary>
/// <param name="Request">The label.</param>
/// <param name="Middle">The middle of its letters at that place, mm.</param>
/// <param name="Rotation">The direction of its baseline there.</param>
/// <param name="Alignment">Which end of it is anchored.</param>
/// <param name="Way">The points of the leader from the label to the point it names; null where it stands beside or in what it names.</param>
internal readonly record struct Spot(LabelRequest Request, Point2 Middle, Angle Rotation, Alignment Alignment = Alignment.Centre, Point2[]? Way = null)
{
    private const double DotPerHeight = 0.12;

    /// <summary>The box of the letters and the white round them.</summary>
    public TurnedBox Frame => TurnedBox.Around(Middle, Request.Letters, Rotation).Grown(Request.HeightMm * Spots.Clearance);

    /// <summary>The label at that place.</summary>
    public LabelShape Label
    {
        get
        {
            var box = Request.Letters;
            var across = Alignment switch { Alignment.Left => -box.Width / 2, Alignment.Centre => 0, _ => box.Width / 2 };
            var anchor = Middle + new Placement(default, Rotation, false).Apply(new Vec2(across, -box.Center.Y));
            return new LabelShape(Request.Part, Request.Role, Request.Text, anchor, Request.HeightMm, Alignment, Rotation, Request.Emphasis);
        }
    }

    /// <summary>True when nothing of it reaches x = 0.</summary>
    public bool IsOnOneSide
    {
        get
        {
            var bounds = Label.Bounds;
            foreach (var point in Way ?? [])
            {
                bounds = bounds.Union(new Box2(point, point));
            }

            return bounds.Max.X < 0 || bounds.Min.X > 0;
        }
    }

    /// <summary>
    /// The spot mirrored across x = 0 for the words of another: the end beside the leader mirrored, a label with its middle at its anchor turned the
    /// other way.
    /// </summary>
    public Spot MirroredFor(LabelRequest request)
    {
        Point2[]? way = Way is null ? null : [.. Way.Select(Placement.MirroredAcrossY.Apply)];
        if (Alignment == Alignment.Centre)
        {
            // Upright letters read from the same side everywhere.
            var rotation = Math.Abs(Rotation.Degrees) >= 90 ? Rotation : -Rotation;
            return new Spot(request, new Point2(-Middle.X, Middle.Y), rotation, Alignment, way);
        }

        var (outward, alignment) = Alignment == Alignment.Left ? (1, Alignment.Right) : (-1, Alignment.Left);
        var (own, other) = (Request.Letters, request.Letters);
        var middle = new Point2(-Middle.X + (outward * (own.Width - other.Width) / 2), Middle.Y - own.Center.Y + other.Center.Y);
        return new Spot(request, middle, Rotation, alignment, way);
    }

    /// <summary>The label, its leader, and a dot at the point it names.</summary>
    public IEnumerable<Shape> Shapes()
    {
        yield return Label;
        if (Way is not null)
        {
            var leader = new Contour(Way.Select(p => new Vertex(p)), isClosed: false);
            yield return new ContourShape(Request.Part, Role.Dimension, leader, Request.Emphasis);
            var dot = Contour.Circle(Way[^1], DotPerHeight * Request.HeightMm);
            yield return new ContourShape(Request.Part, Role.Dimension, dot, Request.Emphasis);
        }
    }
}
