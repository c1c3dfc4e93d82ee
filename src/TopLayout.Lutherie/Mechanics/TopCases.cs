using System.Collections.Immutable;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>A top as the model may take it, worked out once for all members on it.</summary>
internal sealed class TopCases(TopPlate plate)
{
    public TopPlate Plate => plate;

    /// <summary>The woods it may be of, each with the strip of a top of it.</summary>
    public ImmutableArray<(WoodCase Wood, TopSection Section)> All { get; } =
    [
        .. WoodCases.Of(plate.Wood, reader => TopSection.Of(plate, reader)).Select(c => (c, TopSection.Of(plate, new WoodReader(c.Wood)))),
    ];
}
