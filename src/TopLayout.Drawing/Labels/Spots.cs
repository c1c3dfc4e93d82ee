using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>The places on the page where a label may go, best first. All distances are shares of its height.</summary>
internal static class Spots
{
    /// <summary>White kept round the letters.</summary>
    public const double Clearance = 0.25;

    private const double FirstRing = 0.6;
    private const double RingStep = 1.2;
    private const int Rings = 14;
    private const int GridSteps = 24;
    private const double GridRow = 0.25;

    private static readonly (int X, int Y)[] Directions = [(1, 0), (1, 1), (1, -1), (0, 1), (0, -1), (-1, 0), (-1, 1), (-1, -1)];

    /// <summary>Preferred, then inside, then round about.</summary>
    public static IEnumerable<Spot> Of(LabelRequest request) =>
        request.Preferred.Select(p => new Spot(Centred(request, p, request.Rotation)))
            .Concat(request.Inside is { } region ? Within(request, region) : [])
            .Concat(Enumerable.Range(0, Rings).SelectMany(ring => Directions.Select(d => Beside(request, ring, d))));

    /// <summary>A label whose frame has its middle at a point, whichever end its anchor is at.</summary>
    public static LabelShape Centred(LabelRequest request, Point2 middle, Angle rotation, Alignment alignment = Alignment.Centre)
    {
        var box = Lettering.Measure(request.Text, request.HeightMm);
        var across = alignment switch { Alignment.Left => -box.Width / 2, Alignment.Centre => 0, _ => box.Width / 2 };
        var anchor = middle + new Placement(default, rotation, false).Apply(new Vec2(across, -box.Center.Y));
        return new LabelShape(request.Part, request.Role, request.Text, anchor, request.HeightMm, alignment, rotation, request.Emphasis);
    }

    // A grid over the area, its rows along the text; nearest to the target first.
    private static IEnumerable<Spot> Within(LabelRequest request, Region region)
    {
        var turn = new Placement(default, request.Rotation, false);
        var back = new Placement(default, -request.Rotation, false);
        var box = region.Outer.Placed(back).Bounds;
        var rows = Math.Clamp((int)(box.Height / (request.HeightMm * GridRow)), 1, GridSteps);
        return
            from i in Enumerable.Range(0, GridSteps + 1)
            from j in Enumerable.Range(0, rows + 1)
            let middle = turn.Apply(new Point2(box.Min.X + (box.Width * i / GridSteps), box.Min.Y + (box.Height * j / rows)))
            where region.Contains(middle)
            orderby middle.DistanceTo(request.Target)
            let label = Centred(request, middle, request.Rotation)
            let frame = label.FrameGrown(request.HeightMm * Clearance)
            where !region.Edges.Any(e => Frames.Meets(frame, e))
            select new Spot(label);
    }

    // From the second ring on a leader says which point is meant.
    private static Spot Beside(LabelRequest request, int ring, (int X, int Y) direction)
    {
        var box = Lettering.Measure(request.Text, request.HeightMm);
        var away = request.HeightMm * (FirstRing + (ring * RingStep));
        var offset = new Vec2(direction.X * (away + (box.Width / 2)), direction.Y * (away + (box.Height / 2)));
        var alignment = direction.X switch { 1 => Alignment.Left, 0 => Alignment.Centre, _ => Alignment.Right };
        var label = Centred(request, request.Target + offset, Angle.Zero, alignment);
        if (ring == 0)
        {
            return new Spot(label);
        }

        var toLabel = new Vec2(direction.X, direction.Y) * (away - (request.HeightMm * Clearance));
        return new Spot(label, Contour.Chain([new Segment(request.Target + toLabel, request.Target)], isClosed: false));
    }
}
