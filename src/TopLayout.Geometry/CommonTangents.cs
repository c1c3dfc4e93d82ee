namespace TopLayout.Geometry;

/// <summary>A line that touches two circles.</summary>
/// <param name="OnFirst">Where it touches the first, mm.</param>
/// <param name="OnSecond">Where it touches the second, mm.</param>
/// <param name="Direction">Unit vector along it, from the first to the second; defined also where both touch it in one point.</param>
public readonly record struct CommonTangent(Point2 OnFirst, Point2 OnSecond, Vec2 Direction);

/// <summary>The lines that touch two circles; a circle of radius 0 is a point.</summary>
public static class CommonTangents
{
    /// <summary>
    /// Outer ones first (both circles on one side), then inner ones (the line runs between them); of each pair first the one that
    /// touches the first circle on its left, seen towards the second. Four for circles apart, three where they touch from outside,
    /// two where they cross, one where they touch from inside, none where one holds the other or their centres coincide.
    /// A unit normal n with n·(p − a) = ra and n·(p − b) = ±rb on the line has n·(b − a) = ra ∓ rb.
    /// </summary>
    public static IReadOnlyList<CommonTangent> Of(Circle first, Circle second)
    {
        var found = new List<CommonTangent>(4);
        var apart = second.Center - first.Center;
        var distance = apart.Length;
        foreach (var side in first.Radius == 0 || second.Radius == 0 ? (ReadOnlySpan<int>)[1] : [1, -1])
        {
            var along = first.Radius - (side * second.Radius);
            var gap = distance - Math.Abs(along);
            var touches = Math.Abs(gap) <= Tolerances.RoundingRatio * Math.Max(distance, first.Radius + second.Radius);
            if (distance == 0 || (gap < 0 && !touches))
            {
                continue;
            }

            var axis = apart / distance;
            var cosine = touches ? Math.Sign(along) : along / distance;
            var sine = touches ? 0 : Math.Sqrt(gap * (distance + Math.Abs(along))) / distance;
            foreach (var left in touches && along != 0 ? (ReadOnlySpan<int>)[1] : [1, -1])
            {
                var normal = (axis * cosine) + (axis.Left * (left * sine));
                found.Add(new CommonTangent(first.Center + (normal * first.Radius), second.Center + (normal * (side * second.Radius)), normal.Left * -left));
            }
        }

        return found;
    }
}
