using TopLayout.Geometry;

namespace TopLayout.Drawing;

/// <summary>
/// What a drawn contour is to the last written digit: same circle, or same pieces in any order and direction. Two shapes are equal here exactly
/// when one of them would be drawn over the other for nothing.
/// </summary>
internal sealed class SharedWall : IEquatable<SharedWall>
{
    // The last written digit is a nanometre.
    private const double DigitsPerMm = 1e6;

    private readonly (Role Role, string Owner) _of;
    private readonly (long, long, long, long, long)[] _pieces;

    /// <summary>The wall of a shape.</summary>
    public SharedWall(ContourShape shape)
    {
        _of = (shape.Role, shape.Role is Role.Cut or Role.Pocket ? "" : shape.Part);
        _pieces = FullCircle.Of(shape.Contour) is { } circle
            ? [(Digits(circle.Center.X), Digits(circle.Center.Y), Digits(circle.RadiusMm), 0, long.MaxValue)]
            : [.. shape.Contour.Segments.Select(Piece)];
        Array.Sort(_pieces);
    }

    /// <inheritdoc/>
    public bool Equals(SharedWall? other) => other is not null && _of == other._of && _pieces.AsSpan().SequenceEqual(other._pieces);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as SharedWall);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_of, _pieces.Length, _pieces[0], _pieces[^1]);

    private static (long, long, long, long, long) Piece(Segment segment)
    {
        var (a, b) = ((Digits(segment.Start.X), Digits(segment.Start.Y)), (Digits(segment.End.X), Digits(segment.End.Y)));
        return a.CompareTo(b) <= 0
            ? (a.Item1, a.Item2, b.Item1, b.Item2, Digits(segment.Bulge))
            : (b.Item1, b.Item2, a.Item1, a.Item2, Digits(-segment.Bulge));
    }

    private static long Digits(double value) => (long)Math.Round(value * DigitsPerMm, MidpointRounding.AwayFromZero);
}
