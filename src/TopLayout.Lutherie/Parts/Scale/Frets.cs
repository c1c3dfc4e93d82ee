namespace TopLayout.Lutherie.Parts;

/// <summary>
/// Fret positions in twelve-tone equal temperament: fret k lies S·(1 − 2^(−k/12)) from the nut (each fret shortens the string by
/// the twelfth root of two). Distances from the neck edge are positive towards the tail; the body joins at fret n.
/// </summary>
/// <param name="ScaleMm">Nut to theoretical saddle, S, mm.</param>
/// <param name="JoinFret">The fret at the body's edge, n.</param>
public readonly record struct Frets(double ScaleMm, int JoinFret)
{
    /// <summary>Nut to fret, mm.</summary>
    public double FromNut(int fret) => ScaleMm - Remaining(fret);

    /// <summary>Neck edge to fret, mm; negative for frets on the neck.</summary>
    public double FromNeckEdge(int fret) => Remaining(JoinFret) - Remaining(fret);

    /// <summary>Neck edge to the theoretical saddle, mm.</summary>
    public double SaddleFromNeckEdge => Remaining(JoinFret);

    /// <summary>Nut to the neck edge, mm.</summary>
    public double NeckEdgeFromNut => FromNut(JoinFret);

    // Fret to theoretical saddle.
    private double Remaining(int fret) => ScaleMm * Math.Pow(2, -fret / 12.0);
}
