namespace TopLayout.Geometry;

/// <summary>
/// Single arcs from what is known of them, as open contours: an arc over half a turn comes as its two equal halves, one so flat that
/// its sagitta is below <see cref="Tolerances.FlatSagittaMm"/> as a line.
/// </summary>
public static class Arcs
{
    /// <summary>
    /// The arc from a point through a second to a third: the turn between the two chords is half its sweep (inscribed angle).
    /// Null where the three lie on a line and the second is not between the others, or where two of them coincide.
    /// </summary>
    public static Contour? Through(Point2 start, Point2 via, Point2 end, string label = "")
    {
        var (a, b) = (via - start, end - via);
        return a.Length <= Tolerances.TouchMm || b.Length <= Tolerances.TouchMm || start.IsNear(end)
            ? null
            : WithBulge(start, end, a.Cross(b) / ((a.Length * b.Length) + a.Dot(b)), label);
    }

    /// <summary>The arc that leaves a point along a tangent and reaches another. Null where that lies straight behind, or at the point itself.</summary>
    public static Contour? Leaving(Point2 start, Vec2 tangent, Point2 end, string label = "")
    {
        var chord = end - start;
        return chord.Length <= Tolerances.TouchMm
            ? null
            : WithBulge(start, end, tangent.Cross(chord) / ((tangent.Length * chord.Length) + tangent.Dot(chord)), label);
    }

    /// <summary>
    /// The arcs that leave a point along a tangent and end where they touch a line or a circle (or reach a point): at most two, first
    /// the one that arrives in the given's sense (along the line, counter-clockwise round the circle). A start on the given has none
    /// but the arc that touches elsewhere. With n the left normal at the start s and ρ the radius, positive to the left, the centre is
    /// s + ρn; a line at left distance δ demands δ + ρ n·m = ±ρ, a circle |s − c|² + 2ρ n·(s − c) = r² ± 2ρr.
    /// </summary>
    public static IReadOnlyList<Contour> LeavingToTouch(Point2 start, Vec2 tangent, Given target, string label = "")
    {
        if (target.Circle is { Radius: 0 } point)
        {
            return Leaving(start, tangent, point.Center, label) is { } arc ? [arc] : [];
        }

        var found = new List<Contour>(2);
        foreach (var sense in (ReadOnlySpan<int>)[1, -1])
        {
            if (TouchingPoint(start, tangent.Unit, target, sense) is { } touch && Leaving(start, tangent, touch, label) is { } arc)
            {
                found.Add(arc);
            }
        }

        return found;
    }

    // Arriving with its sense, the arc's left normal is `sense` times the given's: m for a line, towards the centre for a circle.
    private static Point2? TouchingPoint(Point2 start, Vec2 tangent, Given target, int sense)
    {
        var normal = tangent.Left;
        if (target.Line is { } line)
        {
            var direction = line.Direction.Unit;
            var (height, leave) = (line.SignedDistanceTo(start), sense - normal.Dot(direction.Left));
            return Math.Abs(leave) <= Tolerances.RoundingRatio ? null : line.Foot(start + (normal * (height / leave)));
        }

        var (center, radius) = (target.Circle!.Value.Center, target.Circle!.Value.Radius);
        var from = start - center;
        var slope = 2 * ((sense * radius) + from.Dot(normal));
        var square = radius == 0 ? from.Dot(from) : (from.Length - radius) * (from.Length + radius);
        if (Math.Abs(slope) <= Tolerances.RoundingRatio * from.Length)
        {
            return start + (tangent * -from.Dot(tangent));
        }

        // At the touch c + e·r the arc's centre lies at c + e(r − sense·ρ), e being the unit vector out of c.
        var signed = -square / slope;
        var outward = from + (normal * signed);
        var reach = radius - (sense * signed);
        return Math.Abs(reach) <= Tolerances.TouchMm ? null : center + (outward * (radius / reach));
    }

    private static Contour? WithBulge(Point2 start, Point2 end, double bulge, string label) =>
        !double.IsFinite(bulge) || Math.Abs(bulge) > 1 / Tolerances.SmoothRadians
            ? null
            : new Contour([.. Halves(start, end, bulge, label), new Vertex(end)], isClosed: false);

    /// <summary>
    /// The vertices of an arc whose bulge may exceed 1, its end left out: one, or two where it exceeds half a turn. The crown lies
    /// bulge·chord/2 to the right of the chord's middle, and tan(θ/8) = b/(1 + √(1 + b²)) for b = tan(θ/4).
    /// </summary>
    internal static IEnumerable<Vertex> Halves(Point2 start, Point2 end, double bulge, string label)
    {
        if (Math.Abs(bulge) <= 1)
        {
            return [new Vertex(start, bulge, label)];
        }

        var crown = start.MidpointTo(end) - ((end - start).Left * (bulge / 2));
        var half = bulge / (1 + Math.Sqrt(1 + (bulge * bulge)));
        return [new Vertex(start, half, label), new Vertex(crown, half, label)];
    }
}
