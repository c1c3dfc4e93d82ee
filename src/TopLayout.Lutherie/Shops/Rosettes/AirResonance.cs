using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>
/// The lowest resonance of the air in the body, an estimate: a plug of air in the hole on the spring of the air behind it (Helmholtz),
/// walls rigid. f = c/2π·√(A/(V·L)), the plug as long as the top is thick and 0.85 r more on either face (a flanged opening; acoustics
/// handbooks, from memory). Yielding plates put a real body 10 to 30 % below it, so the ratio of two holes says more than either number.
/// </summary>
public static class AirResonance
{
    /// <summary>Speed of sound in air of 20 °C, m/s (handbook value).</summary>
    public const double SoundMetresPerSecond = 343;

    private const double EndCorrection = 1.7;

    /// <summary>The resonance of a volume and an opening, Hz.</summary>
    /// <param name="areaMm2">Area of the opening, mm².</param>
    /// <param name="plugMm">Length of the plug with its end corrections, mm.</param>
    /// <param name="volumeMm3">The volume behind it, mm³.</param>
    public static double Hz(double areaMm2, double plugMm, double volumeMm3) =>
        SoundMetresPerSecond * 1000 / (2 * Math.PI) * Math.Sqrt(areaMm2 / (volumeMm3 * plugMm));

    /// <summary>The resonance of a layout, Hz; null without both blocks, whose depths say how deep the body is. A hole of another shape counts as the circle of its area.</summary>
    public static double? Of(Layout layout)
    {
        if (VolumeMm3(layout) is not { } volume)
        {
            return null;
        }

        var area = layout.Hole.Area.Area;
        return Hz(area, layout.Top.ThicknessMm + (EndCorrection * Math.Sqrt(area / Math.PI)), volume);
    }

    /// <summary>
    /// The air inside the sides, mm³: a depth that changes evenly from block to block is, over any outline, the area times the depth at its
    /// centroid. Nothing is taken off for braces, blocks and linings.
    /// </summary>
    public static double? VolumeMm3(Layout layout)
    {
        var design = layout.Design;
        if (!design.Has(Block.Neck.Section) || !design.Has(Block.Tail.Section))
        {
            return null;
        }

        var (neck, tail) = (design.In(Block.Neck.Section)[Block.Neck.Depth].Value, design.In(Block.Tail.Section)[Block.Tail.Depth].Value);
        var inside = layout.InsideOfSides.Moments();
        var share = -inside.Centroid.Y / layout.Outline.Bounds.Height;
        return Math.Abs(inside.SignedArea) * (neck + ((tail - neck) * share));
    }
}
