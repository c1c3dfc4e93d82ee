namespace TopLayout.Drawing.Pdf;

/// <summary>By how much a print is stretched so that a printer that shrinks or grows what it prints comes out right.</summary>
/// <param name="X">Factor across the page; 1 is true size.</param>
/// <param name="Y">Factor along the page.</param>
public readonly record struct ScaleCorrection(double X, double Y)
{
    /// <summary>A printer that is right.</summary>
    public static ScaleCorrection None { get; } = new(1, 1);

    /// <summary>True when nothing is stretched.</summary>
    public bool IsNone => X == 1 && Y == 1;
}
