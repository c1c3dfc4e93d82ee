using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>The written list of checks beside the grain check. Each is a pure function of the layout and says what it measured, pass or fail.</summary>
public static class LayoutChecks
{
    /// <summary>All of them, in the order they run.</summary>
    public static ImmutableArray<Func<Layout, IEnumerable<Finding>>> All { get; } =
    [
        layout => layout.Faults, OverlapCheck.Of, RoomCheck.Of, HoleClearanceCheck.Of, ClearanceCheck.Of, SeamCheck.Of, ChannelFloorCheck.Of, BendRadiusCheck.Of,
        SaddlePlaceCheck.Of, BridgeCheck.Of, SaddleHoldCheck.Of, PinWoodCheck.Of, NeckEndCheck.Of, MeasuredOutlineCheck.Of, CutawayWallCheck.Of, LedgeCheck.Of, PocketCheck.Of, IdleKeysCheck.Of,
    ];

    /// <summary>The findings of all of them.</summary>
    public static IEnumerable<Finding> Of(Layout layout) => All.SelectMany(check => check(layout));
}
