using System.Collections.Immutable;
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

    /// <summary>
    /// Depth of a tile that is finished with flat ends inside its channel, mm: its inner end touches the inner wall in the middle, its outer
    /// corners the outer wall, so Ro·cos(π/N) − Ri for a wedge and √(Ro² − (w/2)²) − Ri for a straight tile of width w. Not above 0: flat ends
    /// find no room, and both must be cut round.
    /// </summary>
    public double FinishedDepthMm => (Row.Shape == TileShape.Wedge
        ? OuterRadiusMm * Trig.Cos(HalfTurn)
        : Math.Sqrt(Math.Max(0, (OuterRadiusMm * OuterRadiusMm) - (InnerWidthMm * InnerWidthMm / 4)))) - InnerRadiusMm;

    /// <summary>Its width at the outer end, finished, mm: 2Ro·sin(π/N) for a wedge.</summary>
    public double FinishedOuterWidthMm => Row.Shape == TileShape.Wedge ? 2 * OuterRadiusMm * Trig.Sin(HalfTurn) : InnerWidthMm;

    /// <summary>The number of tiles that straight ones need to leave no gap that is seen: N &gt; 2πh/0.15, as 2h·sin(π/N) is near 2πh/N.</summary>
    public int StraightFrom => (int)Math.Floor(2 * Math.PI * DepthMm / UnseenGapMm) + 1;

    /// <summary>How much wider the outer end is, mm: 2h·tan(π/N); 0 for a straight tile.</summary>
    public double TaperMm => OuterWidthMm - InnerWidthMm;

    /// <summary>Gap between neighbours at their outer ends as blanks, mm.</summary>
    public double OuterGapMm => GapAt(DepthMm);

    /// <summary>Gap between neighbours at a depth from their inner ends, mm: straight ones turn about the corner they share by 2π/N, so 2h·sin(π/N); 0 for wedges.</summary>
    public double GapAt(double depth) => Row.Shape == TileShape.Straight ? 2 * depth * Trig.Sin(HalfTurn) : 0;

    /// <summary>All gaps together, mm.</summary>
    public double GapSumMm => Row.Count * OuterGapMm;

    /// <summary>How far the inner corners of a flat end stand off the round wall, mm: Ri(1/cos(π/N) − 1). Sand to round, or rout after gluing.</summary>
    public double StandOffMm => InnerRadiusMm * ((1 / Trig.Cos(HalfTurn)) - 1);

    /// <summary>
    /// Where one of the tiles lies, finished: its corners counter-clockwise from the inner end of its first side. Counter-clockwise from the ring's
    /// tail end (−y), where a joint or the middle of a tile lies.
    /// </summary>
    /// <param name="index">Which tile, from 0.</param>
    /// <param name="center">The ring's centre.</param>
    public ImmutableArray<Point2> Laid(int index, Point2 center)
    {
        var turn = (HalfTurn * (2 * (index % Row.Count))) + (Row.Start == TileStart.Joint ? HalfTurn : Angle.Zero) - Angle.FromDegrees(90);
        var (outward, across) = (new Vec2(Trig.Cos(turn), Trig.Sin(turn)), new Vec2(-Trig.Sin(turn), Trig.Cos(turn)));
        var (inner, outer) = (center + (outward * InnerRadiusMm), center + (outward * (InnerRadiusMm + FinishedDepthMm)));
        var (near, far) = (across * (InnerWidthMm / 2), across * (FinishedOuterWidthMm / 2));
        return [inner - near, outer - far, outer + far, inner + near];
    }

    /// <summary>What an error on every face adds up to round the ring: two faces a tile, 2N times the error.</summary>
    /// <param name="perFace">The error of one face.</param>
    public Angle BuildUp(Angle perFace) => perFace * (2 * Row.Count);

    /// <summary>How many whole tiles an arc hides.</summary>
    public int HiddenIn(HiddenArc arc) => (int)Math.Floor((arc.HalfTurn.Degrees / HalfTurn.Degrees) + 1e-9);
}
