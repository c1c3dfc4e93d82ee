namespace TopLayout.Drawing.Dxf;

/// <summary>Which level of the format is written.</summary>
public enum DxfLevel
{
    /// <summary>AC1009, with POLYLINE and bulges: what every reader takes.</summary>
    R12,

    /// <summary>AC1015, with LWPOLYLINE and bulges.</summary>
    R2000,

    /// <summary>AC1009 with LINE, ARC and CIRCLE only, for readers that lose bulges; contours then touch end to end.</summary>
    LinesAndArcs,
}

/// <summary>The unit of the numbers.</summary>
public enum DxfUnit
{
    /// <summary>Millimetres.</summary>
    Mm,

    /// <summary>Inches of 25.4 mm.</summary>
    Inch,
}

/// <summary>Where the drawing's origin lies.</summary>
public enum DxfOrigin
{
    /// <summary>Where the sheet has it.</summary>
    Datum,

    /// <summary>At the lower left corner of the sheet, so that no coordinate is negative.</summary>
    Corner,
}

/// <summary>How a sheet is written as DXF. <c>default</c> is R12, mm, the sheet's own origin.</summary>
/// <param name="Level">The level of the format.</param>
/// <param name="Unit">The unit of the numbers.</param>
/// <param name="Origin">Where the origin lies.</param>
public readonly record struct DxfOptions(DxfLevel Level = DxfLevel.R12, DxfUnit Unit = DxfUnit.Mm, DxfOrigin Origin = DxfOrigin.Datum)
{
    /// <summary>True where every record carries a handle, an owner and its class.</summary>
    internal bool HasHandles => Level == DxfLevel.R2000;
}
