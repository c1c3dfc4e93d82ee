namespace TopLayout.Lutherie.Designs;

/// <summary>The unit of a design file's bare lengths. Inside the program every length is in mm.</summary>
public enum LengthUnit
{
    /// <summary>Millimetres, written "mm".</summary>
    Millimetre,

    /// <summary>Inches of exactly 25.4 mm, written "in".</summary>
    Inch,
}
