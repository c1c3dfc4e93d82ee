namespace TopLayout.Geometry;

/// <summary>What a circle is asked to touch (Apollonius's word): a point, a line or a circle. <c>default</c> is the origin.</summary>
public readonly record struct Given
{
    private readonly Line? _line;
    private readonly Circle _circle;

    private Given(Line? line, Circle circle) => (_line, _circle) = (line, circle);

    /// <summary>The line, when it is one.</summary>
    public Line? Line => _line;

    /// <summary>The circle, of radius 0 for a point; null for a line.</summary>
    public Circle? Circle => _line is null ? _circle : null;

    /// <summary>A point to pass through.</summary>
    public static implicit operator Given(Point2 point) => new(null, new Circle(point, 0));

    /// <summary>A line to touch.</summary>
    public static implicit operator Given(Line line) => new(line, default);

    /// <summary>A circle to touch.</summary>
    public static implicit operator Given(Circle circle) => new(null, circle);

    /// <summary>The carrier of a segment: its line or its whole circle.</summary>
    public static Given Carrier(Segment s) => s.IsArc ? new Circle(s.Center, s.Radius) : Geometry.Line.Through(s.Start, s.End);

    /// <summary>
    /// The sides from which it can be touched: +1 is left of a line or outside a circle, −1 is right of a line or round or within a
    /// circle. A point has one side.
    /// </summary>
    internal ReadOnlySpan<int> Sides => _line is null && _circle.Radius == 0 ? [1] : [1, -1];

    /// <summary>The centres of the circles of a radius that touch it from a side; null where only the circle itself would.</summary>
    internal Given? Centers(int side, double radiusMm)
    {
        if (_line is { } line)
        {
            return line.Parallel(side * radiusMm);
        }

        var reach = Math.Abs(radiusMm + (side * _circle.Radius));
        return side < 0 && reach <= Tolerances.TouchMm ? null : new Circle(_circle.Center, reach);
    }

    /// <summary>How far a circle is from touching it, mm ≥ 0.</summary>
    public double Gap(Circle circle)
    {
        if (_line is { } line)
        {
            return Math.Abs(Math.Abs(line.SignedDistanceTo(circle.Center)) - circle.Radius);
        }

        var d = _circle.Center.DistanceTo(circle.Center);
        return Math.Min(Math.Abs(d - circle.Radius - _circle.Radius), Math.Abs(d - Math.Abs(circle.Radius - _circle.Radius)));
    }

    /// <summary>
    /// The points two of them share: none, one or two, by x, then by y. They touch where they miss or cross each other by no more
    /// than rounding leaves; two that coincide share no single point.
    /// </summary>
    internal static IReadOnlyList<Point2> Meet(Given a, Given b)
    {
        var points = (a._line, b._line) switch
        {
            ({ } p, { } q) => Meet(p, q),
            ({ } p, null) => Meet(p, b._circle),
            (null, { } q) => Meet(q, a._circle),
            _ => a._circle.Radius <= b._circle.Radius ? Meet(a._circle, b._circle) : Meet(b._circle, a._circle),
        };
        return points.Length == 2 && points[0].IsNear(points[1]) ? [points[0]] : [.. points.OrderBy(p => p.X).ThenBy(p => p.Y)];
    }

    private static Point2[] Meet(Line p, Line q)
    {
        var cross = p.Direction.Cross(q.Direction);
        return Math.Abs(cross) <= Tolerances.RoundingRatio * p.Direction.Length * q.Direction.Length
            ? []
            : [p.Point + (p.Direction * ((q.Point - p.Point).Cross(q.Direction) / cross))];
    }

    private static Point2[] Meet(Line line, Circle circle) =>
        OnNormal(line.Foot(circle.Center), line.Direction.Unit, Math.Abs(line.SignedDistanceTo(circle.Center)), circle.Radius);

    private static Point2[] Meet(Circle small, Circle large)
    {
        var d = small.Center.DistanceTo(large.Center);
        if (d <= Tolerances.RoundingRatio * large.Radius)
        {
            return [];
        }

        var toward = (large.Center - small.Center) / d;
        var reach = ((d * d) + ((small.Radius - large.Radius) * (small.Radius + large.Radius))) / (2 * d);
        return OnNormal(small.Center + (toward * reach), toward.Left, Math.Abs(reach), small.Radius);
    }

    private static Point2[] OnNormal(Point2 foot, Vec2 along, double offset, double radius)
    {
        if (Math.Abs(offset - radius) <= Tolerances.RoundingRatio * Math.Max(offset, radius))
        {
            return [foot];
        }

        if (!(offset < radius))
        {
            return [];
        }

        var half = Math.Sqrt((radius - offset) * (radius + offset));
        return [foot - (along * half), foot + (along * half)];
    }
}
