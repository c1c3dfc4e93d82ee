using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>Which side of its member an edge bounds, seen along the grain.</summary>
public enum EdgeSide
{
    /// <summary>It runs square across the grain and belongs to neither side.</summary>
    Neither,

    /// <summary>Its outward normal points to −x of the grain's frame.</summary>
    Left,

    /// <summary>Its outward normal points to +x of the grain's frame.</summary>
    Right,
}

/// <summary>
/// A part of a member's edge that runs one way in both directions of the grain's frame: no tangent along or square to the grain
/// within it, all in one half, all supported or not at all.
/// </summary>
/// <param name="Member">Name of the member.</param>
/// <param name="Label">Name of the edge.</param>
/// <param name="Side">The side of the member it bounds.</param>
/// <param name="Half">The half of the top it lies on.</param>
/// <param name="Grain">The grain there; the frame of <paramref name="Edge"/> is turned back by it.</param>
/// <param name="Edge">The part in the grain's frame: the grain runs along y. The member lies to its left.</param>
/// <param name="SupportedBy">What stops a crack that follows the edge there, by name; null where nothing does.</param>
/// <param name="IsLongSide">True when it runs more along than across the member's own long grain.</param>
public sealed record EdgePiece(
    string Member, string Label, EdgeSide Side, TopHalf Half, Angle Grain, Segment Edge, string? SupportedBy, bool IsLongSide)
{
    /// <summary>True where another part stops a crack that follows the edge.</summary>
    public bool IsSupported => SupportedBy is not null;

    /// <summary>Rise along the grain below which an edge counts for neither side, mm.</summary>
    private const double SquareMm = 1e-9;

    /// <summary>The pieces of an edge given in top coordinates, for a member on its left, none of them supported.</summary>
    public static ImmutableArray<EdgePiece> Of(Segment edge, Angle grain, string member)
    {
        var cuts = new List<double> { 0, 1 };
        Cuts.AtTurns(edge, grain, cuts);
        Cuts.Order(cuts);
        return [.. cuts.Zip(cuts.Skip(1)).Select(c =>
            Placed(edge.Part(c.First, c.Second), member, TopHalf.Whole, grain, supportedBy: null, isLongSide: false))];
    }

    /// <summary>The piece that a part of an edge in top coordinates becomes in the grain's frame.</summary>
    internal static EdgePiece Placed(Segment part, string member, TopHalf half, Angle grain, string? supportedBy, bool isLongSide)
    {
        var edge = part.Placed(new Placement(default, -grain, false));
        var rise = edge.End.Y - edge.Start.Y;
        var side = Math.Abs(rise) <= SquareMm ? EdgeSide.Neither : rise > 0 ? EdgeSide.Right : EdgeSide.Left;
        return new EdgePiece(member, part.Label, side, half, grain, edge, supportedBy, isLongSide);
    }
}
