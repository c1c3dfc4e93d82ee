using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>Both halves of a body before they are joined, each drawn on the treble side, from the centre line at the neck to the centre line at the tail.</summary>
/// <param name="Bass">The half to be mirrored to the bass side.</param>
/// <param name="Treble">The treble half.</param>
/// <param name="Place">The place in the design that sets the body's size.</param>
internal sealed record BodyHalves(IReadOnlyList<Segment> Bass, IReadOnlyList<Segment> Treble, SourcePlace Place)
{
    /// <summary>The recipe they come from; null for another form.</summary>
    public OutlineRecipe? Recipe { get; init; }

    /// <summary>Measured against drawn, for a measured body.</summary>
    public ImmutableArray<StationResidual> Residuals { get; init; } = [];

    /// <summary>Two halves alike.</summary>
    public static BodyHalves Alike(IReadOnlyList<Segment> half, SourcePlace place) => new(half, half, place);

    /// <summary>The whole outline, counter-clockwise.</summary>
    public Contour Whole() => HalfLemmas.Whole(Treble, Bass);
}
