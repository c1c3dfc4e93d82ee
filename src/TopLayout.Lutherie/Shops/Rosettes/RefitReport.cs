using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>An option, and what came of trying it on the design.</summary>
/// <param name="Option">The option; refused where the design could not take it.</param>
/// <param name="Text">The design's text with it; null when refused.</param>
/// <param name="NewFindings">What the checks, the grain check among them, say of the changed design and did not say before.</param>
public sealed record TriedOption(RefitOption Option, string? Text, ImmutableArray<Finding> NewFindings)
{
    /// <summary>What the checks said before and say no more.</summary>
    public ImmutableArray<Finding> GoneFindings { get; init; } = [];
}

/// <summary>The ways to put a ring round another hole, side by side, and what the hole changes.</summary>
public sealed record RefitReport
{
    /// <summary>The ring.</summary>
    public required OldRing Ring { get; init; }

    /// <summary>Diameter of the hole as designed, mm.</summary>
    public required double OldDiameterMm { get; init; }

    /// <summary>Diameter of the new hole, mm.</summary>
    public required double NewDiameterMm { get; init; }

    /// <summary>What the channel leaves of the top, mm.</summary>
    public required double FloorMm { get; init; }

    /// <summary>The usual range, when the new hole is outside it; else null.</summary>
    public required string? Remark { get; init; }

    /// <summary>Air resonance before, Hz; null without both blocks.</summary>
    public required double? AirBeforeHz { get; init; }

    /// <summary>Air resonance after, Hz; null without both blocks.</summary>
    public required double? AirAfterHz { get; init; }

    /// <summary>The options, best first.</summary>
    public required ImmutableArray<TriedOption> Options { get; init; }
}
