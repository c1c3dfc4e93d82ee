using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>The acute angle between an edge and the grain, exact on lines and arcs. Grain is measured from the y axis, counter-clockwise.</summary>
public static class GrainAngle
{
    /// <summary>The acute angle between a direction and the grain, in [0°, 90°].</summary>
    public static Angle Of(Vec2 direction, Angle grain)
    {
        var along = Direction(grain);
        return Trig.Atan2(Math.Abs(along.Cross(direction)), Math.Abs(along.Dot(direction)));
    }

    /// <summary>True when a direction runs more along the grain than across it: at less than 45°.</summary>
    public static bool IsMoreAlong(Vec2 direction, Angle grain)
    {
        var along = Direction(grain);
        return Math.Abs(along.Cross(direction)) < Math.Abs(along.Dot(direction));
    }

    /// <summary>The acute angle between two grains, in [0°, 90°].</summary>
    public static Angle Between(Angle a, Angle b) => Angle.FromDegrees(Math.Abs(Math.IEEERemainder(a.Degrees - b.Degrees, 180)));

    /// <summary>The unit vector along a grain.</summary>
    public static Vec2 Direction(Angle grain) => new(-Trig.Sin(grain), Trig.Cos(grain));

    /// <summary>The least angle to the grain anywhere on an edge, in [0°, 90°].</summary>
    public static Angle Least(Segment edge, Angle grain)
    {
        var (from, to) = Headings(edge, grain);
        var nearest = Math.Round(from / 180, MidpointRounding.AwayFromZero) * 180;
        var crosses = Math.Ceiling(from / 180) * 180 <= to;
        return Angle.FromDegrees(crosses ? 0 : Math.Min(Math.Abs(from - nearest), Math.Abs(Math.IEEERemainder(to, 180))));
    }

    /// <summary>Length of the part of an edge that stands at less than an angle to the grain, mm.</summary>
    /// <param name="edge">A line or arc.</param>
    /// <param name="grain">The grain there.</param>
    /// <param name="angle">In [0°, 90°].</param>
    public static double LengthWithin(Segment edge, Angle grain, Angle angle)
    {
        var (from, to) = Headings(edge, grain);
        if (!edge.IsArc)
        {
            return Math.Abs(Math.IEEERemainder(from, 180)) < angle.Degrees ? edge.Length : 0;
        }

        // The heading turns evenly along an arc, so length is the share of its headings that lie near a multiple of a half turn.
        var share = 0.0;
        for (var along = Math.Floor(from / 180) * 180; along <= to + 180; along += 180)
        {
            share += Math.Max(0, Math.Min(to, along + angle.Degrees) - Math.Max(from, along - angle.Degrees));
        }

        return edge.Length * share / (to - from);
    }

    // The turn from the grain to the tangent at start and end, in degrees, smaller first; along an arc it passes through all between.
    private static (double From, double To) Headings(Segment edge, Angle grain)
    {
        var start = Trig.Turn(Direction(grain), edge.TangentAt(0)).Degrees;
        var end = start + edge.Sweep.Degrees;
        return (Math.Min(start, end), Math.Max(start, end));
    }
}
