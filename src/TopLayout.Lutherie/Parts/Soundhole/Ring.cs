using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>What a ring is made of.</summary>
public enum RingKind
{
    /// <summary>A thin strip bent round.</summary>
    Line,

    /// <summary>A solid ring, or one of several pieces.</summary>
    Band,

    /// <summary>A row of tiles.</summary>
    Tiles,

    /// <summary>A thin strip that only takes up room inside the rings; refitting puts it there and takes it away.</summary>
    Filler,
}

/// <summary>How a tile is cut.</summary>
public enum TileShape
{
    /// <summary>Tapered, so that the row closes.</summary>
    Wedge,

    /// <summary>With parallel sides.</summary>
    Straight,
}

/// <summary>What of a row of tiles lies on the centre line, at the ring's tail end.</summary>
public enum TileStart
{
    /// <summary>The joint of two tiles.</summary>
    Joint,

    /// <summary>The middle of a tile.</summary>
    Tile,
}

/// <summary>A row of equal tiles.</summary>
/// <param name="Count">How many, ≥ 3.</param>
/// <param name="Shape">How each is cut.</param>
public sealed record TileRow(int Count, TileShape Shape)
{
    /// <summary>After how many tiles the pattern repeats, ≥ 1.</summary>
    public int Repeat { get; init; } = 1;

    /// <summary>What lies on the centre line.</summary>
    public TileStart Start { get; init; }
}

/// <summary>One ring of a rosette; its place is told from the hole's edge outward, mm.</summary>
/// <param name="Number">Counted from 1 at the hole.</param>
/// <param name="Kind">What it is made of.</param>
/// <param name="InnerMm">Hole's edge to its inner edge, mm.</param>
/// <param name="WidthMm">Its width, mm.</param>
public sealed record Ring(int Number, RingKind Kind, double InnerMm, double WidthMm)
{
    /// <summary>Hole's edge to its outer edge, mm.</summary>
    public double OuterMm => InnerMm + WidthMm;

    /// <summary>Whether it is a strip bent round.</summary>
    public bool IsStrip => Kind is RingKind.Line or RingKind.Filler;

    /// <summary>Its tiles; null when it has none.</summary>
    public TileRow? Tiles { get; init; }

    /// <summary>Key of its wood; null when not said.</summary>
    public string? Wood { get; init; }

    /// <summary>Key of the wood of every other tile; null when there is only one.</summary>
    public string? SecondWood { get; init; }

    /// <summary>As a table names it: "ring 2, line".</summary>
    public string Name =>
        $"ring {Say.Count(Number)}, {Kind switch { RingKind.Line => "line", RingKind.Band => "band", RingKind.Filler => "filler", _ => "tiles" }}";
}

/// <summary>A channel and the rings that lie in it side by side; its walls are told from the hole's edge outward, mm.</summary>
/// <param name="InnerMm">Hole's edge to the inner wall, mm.</param>
/// <param name="OuterMm">Hole's edge to the outer wall, mm; the rings' widths and the clearance.</param>
/// <param name="DepthMm">Its depth below the finished outside, mm.</param>
/// <param name="Rings">The rings, from the hole outward; none when the design says only how wide the channel is.</param>
public sealed record RingChannel(double InnerMm, double OuterMm, double DepthMm, ImmutableArray<Ring> Rings);
