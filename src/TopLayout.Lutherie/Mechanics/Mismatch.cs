using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>Whether a member and the top under it move alike: the worst of the cases that a design leaves open.</summary>
/// <param name="Steady">When both have come to rest in the new air (χ = 1).</param>
/// <param name="FastDrop">Right after a fast drop, when only the top has moved (χ = 0); null for members too thin to lag.</param>
/// <param name="Sawing">The sawing it holds for.</param>
/// <param name="SawingAssumed">True when the design did not say and the worse was taken.</param>
public sealed record Mismatch(Strip Steady, Strip? FastDrop, Sawing Sawing, bool SawingAssumed)
{
    /// <summary>M: the larger of the two.</summary>
    public double Index => Math.Max(Steady.Index, FastDrop?.Index ?? 0);

    /// <summary>The mismatch of a member, or what would be needed to know it.</summary>
    /// <param name="top">The top.</param>
    /// <param name="material">What the member is made of.</param>
    /// <param name="thicknessMm">Its thickness, mm, &gt; 0.</param>
    /// <param name="grain">Its grain from the top's at that place.</param>
    /// <param name="halfWidthMm">Half its width across the top's grain, mm, &gt; 0.</param>
    /// <param name="lossPercent">Moisture lost since gluing, in percent.</param>
    /// <param name="calibration">The settings.</param>
    public static MismatchResult Of(
        TopPlate top, Material material, double thicknessMm, Angle grain, double halfWidthMm, double lossPercent, Calibration calibration)
    {
        var (topWood, wood) = (new WoodReader(top.Wood), new WoodReader(material.Wood));
        var topSection = TopSection.Of(top, topWood);
        var isThick = thicknessMm >= calibration.FastDropThicknessRatio * top.ThicknessMm;
        Mismatch? worst = null;
        foreach (var sawing in SawingsOf(material.Sawing))
        {
            var patch = PatchSection.Of(material.Lie, sawing == Sawing.Quarter, grain, thicknessMm, wood);
            var steady = Strip.Of(topSection, patch, halfWidthMm, lossPercent, 1, calibration);
            var fast = isThick ? Strip.Of(topSection, patch, halfWidthMm, lossPercent, 0, calibration) : null;
            var mismatch = new Mismatch(steady, fast, sawing, material.Sawing == Sawing.Unknown);
            worst = worst is null || mismatch.Index > worst.Index ? mismatch : worst;
        }

        ImmutableArray<MissingDatum> missing = [.. topWood.Missing, .. wood.Missing];
        return new MismatchResult(missing.IsEmpty ? worst : null, missing);
    }

    private static ImmutableArray<Sawing> SawingsOf(Sawing sawing) => sawing == Sawing.Unknown ? [Sawing.Flat, Sawing.Quarter] : [sawing];
}

/// <summary>A mismatch, or the reason why it is not known. Exactly one of the two is there.</summary>
public sealed class MismatchResult(Mismatch? value, ImmutableArray<MissingDatum> missing)
{
    /// <summary>The mismatch; null when data are missing.</summary>
    public Mismatch? Value { get; } = value;

    /// <summary>What is missing; empty when the mismatch is known.</summary>
    public ImmutableArray<MissingDatum> Missing { get; } = missing;
}
