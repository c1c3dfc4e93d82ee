namespace TopLayout.Drawing.Pdf;

/// <summary>One side of a sheet's centre line, as the sheet shows it.</summary>
public enum SheetHalf
{
    /// <summary>x below 0.</summary>
    Left,

    /// <summary>x above 0.</summary>
    Right,
}
