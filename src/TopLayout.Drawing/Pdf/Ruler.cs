namespace TopLayout.Drawing.Pdf;

/// <summary>The ruler that a print is proved with: the bars have whole lengths on it.</summary>
public enum Ruler
{
    /// <summary>One in mm.</summary>
    Millimetres,

    /// <summary>One in inches.</summary>
    Inches,
}
