using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>A rectangle at any angle, such as the box round the letters of a label.</summary>
/// <param name="Middle">Its middle, mm.</param>
/// <param name="Along">The unit vector of its width.</param>
/// <param name="HalfWidthMm">Half its extent along that, mm.</param>
/// <param name="HalfHeightMm">Half its extent square to it, mm.</param>
public readonly record struct TurnedBox(Point2 Middle, Vec2 Along, double HalfWidthMm, double HalfHeightMm)
{
    /// <summary>A box of the size of another, turned about its own middle, which lies at a point.</summary>
    public static TurnedBox Around(Point2 middle, Box2 size, Angle rotation) => new(middle, Trig.Direction(rotation), size.Width / 2, size.Height / 2);

    /// <summary>The smallest axis-parallel box round it.</summary>
    public Box2 Bounds
    {
        get
        {
            var half = new Vec2(
                (Math.Abs(Along.X) * HalfWidthMm) + (Math.Abs(Along.Y) * HalfHeightMm),
                (Math.Abs(Along.Y) * HalfWidthMm) + (Math.Abs(Along.X) * HalfHeightMm));
            return new Box2(Middle - half, Middle + half);
        }
    }

    /// <summary>The corners, counter-clockwise from the lower left as seen along its width.</summary>
    public IReadOnlyList<Point2> Corners
    {
        get
        {
            var (width, height) = (Along * HalfWidthMm, Along.Left * HalfHeightMm);
            return [Middle - width - height, Middle + width - height, Middle + width + height, Middle - width + height];
        }
    }

    /// <summary>The border, counter-clockwise.</summary>
    public Contour ToContour() => Contour.Polygon(Corners);

    /// <summary>The box with a margin on all sides, mm.</summary>
    public TurnedBox Grown(double marginMm) => this with { HalfWidthMm = HalfWidthMm + marginMm, HalfHeightMm = HalfHeightMm + marginMm };

    /// <summary>True when a point lies in it or on its border.</summary>
    public bool Holds(Point2 p)
    {
        var own = Own(p - Middle);
        return Math.Abs(own.X) <= HalfWidthMm && Math.Abs(own.Y) <= HalfHeightMm;
    }

    /// <summary>True when a line or arc touches it or lies in it.</summary>
    public bool Meets(Segment segment) => segment.IsArc ? MeetsArc(segment) : MeetsLine(Own(segment.Start - Middle), Own(segment.End - Middle));

    /// <summary>True when the two share a point: no line along a side of either parts them.</summary>
    public bool Meets(TurnedBox other) => !IsPartedFrom(other) && !other.IsPartedFrom(this);

    private bool IsPartedFrom(TurnedBox other)
    {
        var (toward, along) = (Own(other.Middle - Middle), Own(other.Along));
        var (x, y) = (Math.Abs(along.X), Math.Abs(along.Y));
        return Math.Abs(toward.X) > HalfWidthMm + (x * other.HalfWidthMm) + (y * other.HalfHeightMm) + Tolerances.TouchMm
            || Math.Abs(toward.Y) > HalfHeightMm + (y * other.HalfWidthMm) + (x * other.HalfHeightMm) + Tolerances.TouchMm;
    }

    // Both ends beyond one side, or all corners on one side of the line, part them; nothing else parts two convex things.
    private bool MeetsLine(Vec2 from, Vec2 to)
    {
        var (width, height, line) = (HalfWidthMm + Tolerances.TouchMm, HalfHeightMm + Tolerances.TouchMm, to - from);
        return Math.Min(from.X, to.X) <= width && Math.Max(from.X, to.X) >= -width
            && Math.Min(from.Y, to.Y) <= height && Math.Max(from.Y, to.Y) >= -height
            && Math.Abs(line.Cross(from)) <= (Math.Abs(line.Y) * width) + (Math.Abs(line.X) * height);
    }

    /// <summary>True when the whole circle of an arc keeps off the box: it lies outside, or runs round it.</summary>
    internal bool IsPassedBy(Segment arc)
    {
        // All of the box is nearer to the centre, or farther from it, than the radius.
        var (own, radius) = (Own(arc.Center - Middle), arc.Radius);
        var (x, y) = (Math.Abs(own.X), Math.Abs(own.Y));
        var slack = Tolerances.TouchMm + (Tolerances.RoundingShare * radius);
        var nearest = new Vec2(Math.Max(0, x - HalfWidthMm), Math.Max(0, y - HalfHeightMm)).Length;
        var farthest = new Vec2(x + HalfWidthMm, y + HalfHeightMm).Length;
        return nearest > radius + slack || farthest < radius - slack;
    }

    private bool MeetsArc(Segment arc)
    {
        if (Holds(arc.Start))
        {
            return true;
        }

        if (IsPassedBy(arc))
        {
            return false;
        }

        foreach (var side in ToContour().Segments)
        {
            if (Intersections.Of(side, arc).Count > 0)
            {
                return true;
            }
        }

        return false;
    }

    private Vec2 Own(Vec2 v) => new(v.Dot(Along), Along.Cross(v));
}
