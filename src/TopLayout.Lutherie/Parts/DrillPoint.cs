using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>A hole to drill through the top, in outside coordinates of a right-handed instrument.</summary>
/// <param name="Name">Its name in trade words, unique in a layout: "bridge pin 1".</param>
/// <param name="At">Its middle, mm.</param>
/// <param name="DiameterMm">Its diameter, mm, &gt; 0.</param>
/// <param name="Place">The place in the design that put it there.</param>
public sealed record DrillPoint(string Name, Point2 At, double DiameterMm, SourcePlace Place)
{
    /// <summary>Half its diameter, mm.</summary>
    public double RadiusMm => DiameterMm / 2;
}
