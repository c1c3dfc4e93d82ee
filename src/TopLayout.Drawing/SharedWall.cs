using TopLayout.Geometry;

namespace TopLayout.Drawing;

/// <summary>Tells contours that lie on each other: same circle, or same pieces in any order and direction, to the last written digit.</summary>
internal static class SharedWall
{
    /// <summary>The same text for two shapes exactly when one of them would be drawn over the other for nothing.</summary>
    public static string Key(ContourShape shape)
    {
        var owner = shape.Role is Role.Cut or Role.Pocket ? "" : shape.Part;
        IEnumerable<string> lines = FullCircle.Of(shape.Contour) is { } circle
            ? [$"circle {At(circle.Center)} {NumberFormat.Mm(circle.RadiusMm)}"]
            : shape.Contour.Segments.Select(Piece).Order(StringComparer.Ordinal);
        return $"{shape.Role}|{owner}|{string.Join(';', lines)}";
    }

    private static string Piece(Segment segment)
    {
        var (a, b) = (At(segment.Start), At(segment.End));
        return string.CompareOrdinal(a, b) <= 0
            ? $"{a} {b} {NumberFormat.Mm(segment.Bulge)}"
            : $"{b} {a} {NumberFormat.Mm(-segment.Bulge)}";
    }

    private static string At(Point2 p) => $"{NumberFormat.Mm(p.X)},{NumberFormat.Mm(p.Y)}";
}
