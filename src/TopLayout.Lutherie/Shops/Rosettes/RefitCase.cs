namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>The row of tiles in a ring that is to be refitted.</summary>
/// <param name="Count">How many, ≥ 3.</param>
/// <param name="FromInnerMm">The ring's inner edge to the row's, mm.</param>
/// <param name="WidthMm">The row's width, mm.</param>
public sealed record OldTiles(int Count, double FromInnerMm, double WidthMm)
{
    /// <summary>After how many tiles the pattern repeats, ≥ 1.</summary>
    public int Repeat { get; init; } = 1;

    /// <summary>The number of its ring in the design, from 1; null for a ring that is not in it.</summary>
    public int? RingNumber { get; init; }

    /// <summary>True when the design gives the tile's length, and the count follows.</summary>
    public bool IsByLength { get; init; }
}

/// <summary>A ring, or stack of rings, as it is: taken out of an old top, or as the design has it.</summary>
/// <param name="InnerMm">Inner radius, mm; the mean of both for an oval one.</param>
/// <param name="OuterMm">Outer radius, mm; the mean of both for an oval one.</param>
public sealed record OldRing(double InnerMm, double OuterMm)
{
    /// <summary>Its tiles; null when it has none.</summary>
    public OldTiles? Tiles { get; init; }

    /// <summary>The width of its widest single piece, mm: what resists being sprung.</summary>
    public double WidestPieceMm { get; init; } = OuterMm - InnerMm;

    /// <summary>How much its diameters along and across the grain differ, mm; tops shrink across the grain.</summary>
    public double OvalMm { get; init; }

    /// <summary>Its width, mm.</summary>
    public double WidthMm => OuterMm - InnerMm;

    /// <summary>Radius of its middle, mm.</summary>
    public double MeanMm => (InnerMm + OuterMm) / 2;
}

/// <summary>An old ring and the hole it shall go round.</summary>
/// <param name="Ring">The ring.</param>
/// <param name="HoleRadiusMm">Radius of the new hole, mm.</param>
/// <param name="MarginMm">The margin wanted where the ring is laid anew, mm.</param>
/// <param name="FloorMm">What the channel leaves of the top, mm.</param>
/// <param name="Hidden">The arc under the fretboard of a ring round the new hole, from its inner and outer radius.</param>
public sealed record RefitCase(OldRing Ring, double HoleRadiusMm, double MarginMm, double FloorMm, Func<double, double, HiddenArc> Hidden)
{
    /// <summary>The usual margin at most, mm.</summary>
    public double UsualMarginMm { get; init; } = 6;

    /// <summary>The margin that filler lines are to leave, mm: they bring it down to this, or a little more.</summary>
    public double FilledMarginMm { get; init; } = 4;

    /// <summary>Whether the design has a place for filler lines.</summary>
    public bool CanFill { get; init; } = true;

    /// <summary>Thickness of a filler line, mm.</summary>
    public double FillerMm { get; init; } = 0.6;

    /// <summary>Inner radius of a ring laid anew at the margin wanted, mm.</summary>
    public double LaidInnerMm => HoleRadiusMm + MarginMm;

    /// <summary>Length of the arc under the board at the middle of a ring, mm.</summary>
    public double HiddenMm(double inner) => Hidden(inner, inner + Ring.WidthMm).LengthAt(inner + (Ring.WidthMm / 2));
}
