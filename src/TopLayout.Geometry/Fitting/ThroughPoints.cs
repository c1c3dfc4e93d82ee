namespace TopLayout.Geometry.Fitting;

/// <summary>
/// Biarcs through points themselves: greedy, each the longest that stays within the tolerance of the points it passes. The tangent at
/// a point is that of the circle through it and its neighbours. A biarc between neighbours passes none, so it always ends.
/// </summary>
internal static class ThroughPoints
{
    /// <summary>
    /// The vertices of the chain; the last point of an open one is left out. A closed row repeats its first point. Where no biarc
    /// leads on (a tangent that points straight back), a line does, with corners.
    /// </summary>
    public static List<Vertex> Of(Point2[] row, bool isClosed, double toleranceMm, string label)
    {
        var tangents = Enumerable.Range(0, row.Length).Select(i => Tangent(row, isClosed, i)).ToList();
        var vertices = new List<Vertex>();
        for (var from = 0; from < row.Length - 1;)
        {
            var (to, pieces) = (from + 1, Pieces(from, from + 1));
            for (var further = from + 2; further < row.Length && Pieces(from, further) is { } longer && IsWithin(longer, from, further); further++)
            {
                (to, pieces) = (further, longer);
            }

            vertices.AddRange(pieces is null ? [new Vertex(row[from], 0, label)] : pieces.SelectMany(p => p.Vertices.SkipLast(1)));
            from = to;
        }

        return vertices;

        Contour[]? Pieces(int from, int to)
        {
            var joint = Biarc.EvenJoint(row[from], tangents[from], row[to], tangents[to]);
            return Arcs.Leaving(row[from], tangents[from], joint, label) is { } first
                && Arcs.Leaving(row[to], -tangents[to], joint, label) is { } second
                ? [first, second.Reversed()]
                : null;
        }

        bool IsWithin(Contour[] pieces, int from, int to) =>
            Enumerable.Range(from + 1, to - from - 1).All(k => pieces.Min(p => p.DistanceTo(row[k])) <= toleranceMm);
    }

    // Of chords u, v the circle's tangent between them is û|v| + v̂|u|: across it |u| and |v| are as the sines of their angles to it.
    // At an end the chord is turned on by as much as the tangent beside it is turned from it (the chord's two angles are alike).
    private static Vec2 Tangent(Point2[] row, bool isClosed, int i)
    {
        var last = row.Length - 1;
        var middle = isClosed ? i : Math.Clamp(i, 1, last - 1);
        var before = row[middle == 0 ? last - 1 : middle - 1];
        var after = row[middle == last ? 1 : middle + 1];
        var (u, v) = (row[middle] - before, after - row[middle]);
        var tangent = ((u.Unit * v.Length) + (v.Unit * u.Length)).Unit;
        if (!double.IsFinite(tangent.X))
        {
            return u.Unit;
        }

        return i == middle ? tangent : Mirrored(tangent, (i < middle ? u : v).Unit);
    }

    private static Vec2 Mirrored(Vec2 v, Vec2 axis) => (axis * (2 * v.Dot(axis))) - v;
}
