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

    /// <summary>The preferred ones.</summary>
    public static IEnumerable<Spot> Preferred(LabelRequest request) => request.Preferred.Select(p => new Spot(request, p, request.Rotation));

    /// <summary>Inside: along the baseline it asks for, or square to it.</summary>
    public static IEnumerable<Spot> Inside(LabelRequest request)
    {
        var square = Angle.FromDegrees(request.Rotation.Degrees > 0 ? request.Rotation.Degrees - 90 : request.Rotation.Degrees + 90);
        return request.Inside is { } region ? Within(request, region, request.Rotation).Concat(Within(request, region, square)) : [];
    }

    /// <summary>Round the target and its other points, level, the nearest first; what names an area may then stand upright too.</summary>
    public static IEnumerable<Spot> Round(LabelRequest request)
    {
        var targets = request.Elsewhere.Prepend(request.Target).Distinct().ToList();
        Angle[] turns = request.Inside is null ? [Angle.Zero] : [Angle.Zero, Angle.FromDegrees(90)];
        var nearest = request.WantsLeader ? 1 : 0;
        return from ring in Enumerable.Range(nearest, Rings - nearest)
               from turn in turns
               from target in targets
               from direction in Directions
               select Beside(request, target, ring, direction, turn);
    }

    // A grid over the area, its rows along the text, one of them through the target; nearest to it first.
    private static IEnumerable<Spot> Within(LabelRequest request, Region region, Angle rotation)
    {
        var turn = new Placement(default, rotation, false);
        var back = new Placement(default, -rotation, false);
        var box = region.Outer.Placed(back).Bounds;
        var own = back.Apply(request.Target);
        var rows = Math.Clamp((int)(box.Height / (request.HeightMm * GridRow)), 1, GridSteps);
        var grid =
            from i in Enumerable.Range(0, GridSteps + 1)
            from y in Enumerable.Range(0, rows + 1).Select(j => box.Min.Y + (box.Height * j / rows)).Append(own.Y)
            select turn.Apply(new Point2(box.Min.X + (box.Width * i / GridSteps), y));
        var edges = region.Edges.Select(e => (Edge: e, Bounds: e.Bounds())).ToArray();
        return
            from middle in grid.Prepend(request.Target)
            orderby middle.DistanceTo(request.Target)
            where region.Contains(middle)
            let spot = new Spot(request, middle, rotation)
            where !Meets(spot.Frame, edges)
            select spot;
    }

    private static bool Meets(TurnedBox frame, (Segment Edge, Box2 Bounds)[] edges)
    {
        var bounds = frame.Bounds.Grown(Tolerances.TouchMm);
        foreach (var (edge, box) in edges)
        {
            if (box.Overlaps(bounds) && frame.Meets(edge))
            {
                return true;
            }
        }

        return false;
    }

    // From the second ring on a leader says which point is meant.
    private static Spot Beside(LabelRequest request, Point2 target, int ring, (int X, int Y) direction, Angle turn)
    {
        var box = request.Letters;
        var (width, height) = turn == Angle.Zero ? (box.Width, box.Height) : (box.Height, box.Width);
        var away = request.HeightMm * (FirstRing + (ring * RingStep));
        var middle = target + new Vec2(direction.X * (away + (width / 2)), direction.Y * (away + (height / 2)));
        var alignment = turn != Angle.Zero ? Alignment.Centre : direction.X switch { 1 => Alignment.Left, 0 => Alignment.Centre, _ => Alignment.Right };
        var toLabel = new Vec2(direction.X, direction.Y) * (away - (request.HeightMm * Clearance));
        return new Spot(request, middle, turn, alignment, ring == 0 ? null : [target + toLabel, target]);
    }
}
