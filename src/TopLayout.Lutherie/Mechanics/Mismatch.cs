using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>Whether a member and the top under it move alike: the worst of the cases that a design or the wood table leave open.</summary>
/// <param name="Steady">When both have come to rest in the new air (χ = 1).</param>
/// <param name="FastDrop">Right after a fast drop, when only the top has moved (χ = 0); null for members too thin to lag.</param>
/// <param name="Sawing">The sawing it holds for.</param>
/// <param name="SawingAssumed">True when the design did not say and the worse was taken.</param>
public sealed record Mismatch(Strip Steady, Strip? FastDrop, Sawing Sawing, bool SawingAssumed)
{
    /// <summary>M: the larger of the two.</summary>
    public double Index => Math.Max(Steady.Index, FastDrop?.Index ?? 0);

    /// <summary>How hard the member holds the top wide under it: the larger of the two cases.</summary>
    public double RestraintIndex => Math.Max(Steady.RestraintIndex, FastDrop?.RestraintIndex ?? 0);

    /// <summary>What no source says of the top's wood; null when all is known.</summary>
    public WoodGap? TopGap { get; init; }

    /// <summary>What no source says of the member's wood; null when all is known.</summary>
    public WoodGap? PieceGap { get; init; }

    /// <summary>The mismatch of a member. Where a wood's data are missing, the worst of the known woods stands for it.</summary>
    /// <param name="top">The top.</param>
    /// <param name="material">What the member is made of.</param>
    /// <param name="thicknessMm">Its thickness, mm, &gt; 0.</param>
    /// <param name="grain">Its grain from the top's at that place.</param>
    /// <param name="halfWidthMm">Half its width across the top's grain, mm, &gt; 0.</param>
    /// <param name="lossPercent">Moisture lost since gluing, in percent.</param>
    /// <param name="calibration">The settings.</param>
    public static Mismatch Of(
        TopPlate top, Material material, double thicknessMm, Angle grain, double halfWidthMm, double lossPercent, Calibration calibration) =>
        Of(new TopCases(top), material, thicknessMm, grain, halfWidthMm, lossPercent, calibration);

    /// <summary>The same on a top whose cases are at hand.</summary>
    internal static Mismatch Of(
        TopCases top, Material material, double thicknessMm, Angle grain, double halfWidthMm, double lossPercent, Calibration calibration)
    {
        PatchSection Patch(WoodReader wood, Sawing sawing) => PatchSection.Of(material.Lie, sawing == Sawing.Quarter, grain, thicknessMm, wood);
        var sawings = SawingsOf(material.Sawing);
        var pieces = WoodCases.Of(material.Wood, reader =>
        {
            foreach (var sawing in sawings)
            {
                Patch(reader, sawing);
            }
        });
        var isThick = thicknessMm >= calibration.FastDropThicknessRatio * top.Plate.ThicknessMm;
        Mismatch? worst = null;
        foreach (var ((topCase, section), piece) in Pairs(top.All, pieces))
        {
            foreach (var sawing in sawings)
            {
                var patch = Patch(new WoodReader(piece.Wood), sawing);
                var steady = Strip.Of(section, patch, halfWidthMm, lossPercent, 1, calibration);
                var fast = isThick ? Strip.Of(section, patch, halfWidthMm, lossPercent, 0, calibration) : null;
                var mismatch = new Mismatch(steady, fast, sawing, material.Sawing == Sawing.Unknown) { TopGap = topCase.Gap, PieceGap = piece.Gap };
                worst = worst is null || mismatch.Index > worst.Index ? mismatch : worst;
            }
        }

        return worst!;
    }

    // A piece of the top's own wood is like whatever the top is like.
    private static IEnumerable<((WoodCase Wood, TopSection Section) Top, WoodCase Piece)> Pairs(
        ImmutableArray<(WoodCase Wood, TopSection Section)> tops, ImmutableArray<WoodCase> pieces)
    {
        foreach (var top in tops)
        {
            foreach (var piece in pieces)
            {
                if (top.Wood.Gap is not { } a || piece.Gap is not { } b || a.Wood.Key != b.Wood.Key || a.Like == b.Like)
                {
                    yield return (top, piece);
                }
            }
        }
    }

    private static ImmutableArray<Sawing> SawingsOf(Sawing sawing) => sawing == Sawing.Unknown ? [Sawing.Flat, Sawing.Quarter] : [sawing];
}
