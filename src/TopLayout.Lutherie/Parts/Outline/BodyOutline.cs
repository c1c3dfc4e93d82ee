using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>The body's outline, whichever way the design describes it.</summary>
public sealed class BodyOutline
{
    /// <summary>Outer face of sides and binding, counter-clockwise; its segments named.</summary>
    public required Contour Edge { get; init; }

    /// <summary>The edge of the plate itself, counter-clockwise: the body's, or the ledge that a new top is let into.</summary>
    public required Contour PlateEdge { get; init; }

    /// <summary>Measured against drawn half-widths, from the neck on, left before right; empty for an outline that was not measured.</summary>
    public required ImmutableArray<StationResidual> Residuals { get; init; }

    /// <summary>The place in the design to look at when the body is too small or too large.</summary>
    public required SourcePlace Place { get; init; }
}

/// <summary>A half-width as it was measured, and as it is drawn.</summary>
/// <param name="FromNeckEdge">The station, mm.</param>
/// <param name="IsLeft">Whether it lies left of the centre line as seen from outside, neck up.</param>
/// <param name="Measured">As measured, mm.</param>
/// <param name="Drawn">As drawn, mm.</param>
/// <param name="Place">Where the measured one is written.</param>
public readonly record struct StationResidual(double FromNeckEdge, bool IsLeft, double Measured, double Drawn, SourcePlace Place)
{
    /// <summary>Drawn less measured, mm.</summary>
    public double Difference => Drawn - Measured;
}
