using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>One of a row of equal tiles between two circles. Flat ends: each tile is a straight-sided blank, trimmed round afterwards.</summary>
/// <param name="Row">How many, and how cut.</param>
/// <param name="InnerRadiusMm">Radius of the row's inner edge, mm.</param>
/// <param name="OuterRadiusMm">Radius of the row's outer edge, mm.</param>
public sealed record Tile(TileRow Row, double InnerRadiusMm, double OuterRadiusMm)
{
    /// <summary>Gap between tiles that is not seen, mm. Common practice, no source.</summary>
    public const double UnseenGapMm = 0.15;

    /// <summary>How far each side of a wedge leans from the tile's middle line: half the tile's turn, π/N.</summary>
    public Angle HalfTurn => Angle.FromDegrees(180.0 / Row.Count);

    /// <summary>Length of a tile in the middle of its width along the circle, mm: 2πRm/N.</summary>
    public double MeanLengthMm => Math.PI * (InnerRadiusMm + OuterRadiusMm) / Row.Count;

    /// <summary>The blank's width where it is flat against the inner circle, mm: the polygon of N sides round it, 2Ri·tan(π/N).</summary>
    public double InnerWidthMm => 2 * InnerRadiusMm * Trig.Tan(HalfTurn);

    /// <summary>The blank's width at its outer end, flat against the outer circle, mm: 2Ro·tan(π/N) for a wedge, as inside for a straight tile.</summary>
    public double OuterWidthMm => Row.Shape == TileShape.Wedge ? 2 * OuterRadiusMm * Trig.Tan(HalfTurn) : InnerWidthMm;

    /// <summary>The blank's depth from end to end, mm: Ro − Ri.</summary>
    public double DepthMm => OuterRadiusMm - InnerRadiusMm;

    /// <summary>How much wider the outer end is, mm: 2h·tan(π/N); 0 for a straight tile.</summary>
    public double TaperMm => OuterWidthMm - InnerWidthMm;

    /// <summary>Gap between neighbours at their outer ends, mm: straight ones turn about the corner they share by 2π/N, so 2h·sin(π/N); 0 for wedges.</summary>
    public double OuterGapMm => Row.Shape == TileShape.Straight ? 2 * DepthMm * Trig.Sin(HalfTurn) : 0;

    /// <summary>All gaps together, mm.</summary>
    public double GapSumMm => Row.Count * OuterGapMm;

    /// <summary>How far the inner corners of a flat end stand off the round wall, mm: Ri(1/cos(π/N) − 1). Sand to round, or rout after gluing.</summary>
    public double StandOffMm => InnerRadiusMm * ((1 / Trig.Cos(HalfTurn)) - 1);

    /// <summary>What an error on every face adds up to round the ring: two faces a tile, 2N times the error.</summary>
    /// <param name="perFace">The error of one face.</param>
    public Angle BuildUp(Angle perFace) => perFace * (2 * Row.Count);

    /// <summary>How many whole tiles an arc hides.</summary>
    public int HiddenIn(HiddenArc arc) => (int)Math.Floor((arc.HalfTurn.Degrees / HalfTurn.Degrees) + 1e-9);
}
