namespace TopLayout.Lutherie.Mechanics;

/// <summary>How much a free piece of wood grows or shrinks when its moisture changes.</summary>
public static class Movement
{
    /// <summary>Moisture at which wood starts to shrink, in percent, where the handbook says nothing else.</summary>
    private const double FibreSaturationPercent = 30;

    /// <summary>Growth in mm, negative for shrinkage; moisture from 6 to 14 %. Wood Handbook, FPL-GTR-190 (2010), Eq. 13-2, p. 13-15.</summary>
    /// <param name="sizeMm">Size before the change, mm.</param>
    /// <param name="perPercent">Movement of the wood in that direction, per % moisture.</param>
    /// <param name="changePercent">Moisture after less moisture before, in percent.</param>
    public static double Growth(double sizeMm, double perPercent, double changePercent) => sizeMm * perPercent * changePercent;

    /// <summary>
    /// Growth in mm, negative for shrinkage, where a moisture lies outside 6 to 14 %; neither over 30 %. Wood Handbook, FPL-GTR-190
    /// (2010), Eq. 13-3, p. 13-17 (its form from memory; it gives Table 13-5 back from Table 4-3).
    /// </summary>
    /// <param name="sizeMm">Size before the change, mm.</param>
    /// <param name="shrinkagePercent">Shrinkage in that direction from green to oven-dry, in percent.</param>
    /// <param name="fromPercent">Moisture before, in percent.</param>
    /// <param name="toPercent">Moisture after, in percent.</param>
    public static double GrowthFromShrinkage(double sizeMm, double shrinkagePercent, double fromPercent, double toPercent) =>
        sizeMm * (toPercent - fromPercent)
            / ((FibreSaturationPercent * 100 / shrinkagePercent) - FibreSaturationPercent + fromPercent);
}
