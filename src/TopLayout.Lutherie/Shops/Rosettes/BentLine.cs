namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>A strip bent round.</summary>
/// <param name="InnerRadiusMm">Its inner radius, mm.</param>
/// <param name="ThicknessMm">Its thickness in the plane of the top, mm.</param>
public sealed record BentLine(double InnerRadiusMm, double ThicknessMm)
{
    /// <summary>Strain from which a strip wants bending with heat first; common practice, no source (1 to 1.5 %).</summary>
    public const double BendHotFrom = 0.01;

    /// <summary>What to cut a strip longer than it must be, mm. Common practice, no source.</summary>
    public const double SpareMm = 15;

    /// <summary>Its length once round on the middle line, which bending leaves as long as it was, mm: 2π(r + t/2).</summary>
    public double LengthMm => 2 * Math.PI * (InnerRadiusMm + (ThicknessMm / 2));

    /// <summary>Strain of its outer face: (2π(r + t) − 2π(r + t/2)) / 2π(r + t/2), near t/2r.</summary>
    public double Strain => ThicknessMm / 2 / (InnerRadiusMm + (ThicknessMm / 2));

    /// <summary>What to cut, mm: once round without the arc left open under the board, and some to spare.</summary>
    /// <param name="hiddenMm">The arc left open, mm.</param>
    public double StripMm(double hiddenMm = 0) => LengthMm - hiddenMm + SpareMm;
}
