using System.Collections.Immutable;
using TopLayout.Drawing.Dxf;
using TopLayout.Drawing.Pdf;

namespace TopLayout.Plans;

/// <summary>What of a reviewed top is drawn, and how.</summary>
public sealed record DrawOptions
{
    /// <summary>Every sheet but the templates of a failed top; DXF as most readers take it.</summary>
    public static DrawOptions Default { get; } = new();

    /// <summary>Templates are drawn although a check failed.</summary>
    public bool CutAnyway { get; init; }

    /// <summary>The sheets wanted, by name; all, with the report, when empty.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>The paper of a printer at home; null for A4, or US letter where the design is in inches.</summary>
    public Paper? Paper { get; init; }

    /// <summary>The page of the sheets printed whole.</summary>
    public PageFormat Page { get; init; } = PageFormat.Fitted;

    /// <summary>One side of the centre line for the tiled plans of the whole top; null for both.</summary>
    public SheetHalf? Half { get; init; }

    /// <summary>How prints are corrected.</summary>
    public ScaleCorrection Correction { get; init; } = ScaleCorrection.None;

    /// <summary>How DXF is written.</summary>
    public DxfOptions Dxf { get; init; }
}
