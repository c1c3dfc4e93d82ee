using System.Collections.Immutable;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>One cut round the pivot.</summary>
/// <param name="Name">What is cut: "channel 1, outer wall".</param>
/// <param name="RadiusMm">Radius of the edge that stays, mm.</param>
/// <param name="PivotToBitMm">Pivot's centre to the bit's centre, mm.</param>
/// <param name="PinToBitEdgeMm">What a caliper shows: over pin and bit, far edge to far edge, where the wood outside stays; else between their near edges, mm.</param>
/// <param name="DepthMm">Depth at the time of cutting, mm; the top's thickness and what levelling still takes for the hole.</param>
/// <param name="FitsBit">False when the bit is wider than the channel, so that this cut cannot be made with it.</param>
public sealed record CutterSetting(string Name, double RadiusMm, double PivotToBitMm, double PinToBitEdgeMm, double DepthMm, bool FitsBit);

/// <summary>
/// How to set a cutter that turns about a pin in the hole's centre. The bit stands with its edge on the wall, on the waste's side, so its
/// centre is half its diameter away from the wall (plain geometry); cut depths grow by what levelling takes later.
/// </summary>
public static class CutterSettings
{
    /// <summary>The cuts of a round hole's rosette in their order: channel by channel from the outermost, outer wall first, the hole last, as it takes the pivot with it.</summary>
    public static ImmutableArray<CutterSetting> Of(Layout layout)
    {
        if (layout.Hole.Radius is not { } hole || !layout.Design.Has(Rosette.Section))
        {
            return [];
        }

        var design = layout.Design;
        var (bit, pin, levelling) = (design[Rosette.Bit].Value, design[Rosette.Pin].Value, design[Rosette.Levelling].Value);
        var channels = Rosette.Channels(design, hole);
        return
        [
            .. from c in channels.Index().Reverse()
               from wall in Walls(channels, c.Index, hole, bit, pin)
               select wall with { DepthMm = c.Item.DepthMm + levelling, FitsBit = Fits(c.Item, bit) },
            WasteInside("soundhole", hole, layout.Top.ThicknessMm + levelling, bit, pin),
        ];
    }

    /// <summary>A cut whose waste lies inside its circle: an outer wall, the hole.</summary>
    public static CutterSetting WasteInside(string name, double radius, double depth, double bit, double pin) =>
        new(name, radius, radius - (bit / 2), radius + (pin / 2), depth, radius > bit / 2);

    /// <summary>A cut whose waste lies outside its circle: an inner wall, a loose disc.</summary>
    public static CutterSetting WasteOutside(string name, double radius, double depth, double bit, double pin) =>
        new(name, radius, radius + (bit / 2), radius - (pin / 2), depth, true);

    // Where two channels share a wall, it is the step down into the deeper one, and cut with that.
    private static IEnumerable<CutterSetting> Walls(ImmutableArray<RingChannel> channels, int index, double hole, double bit, double pin)
    {
        var (channel, name) = (channels[index], Rosette.NameOf(index, channels.Length));
        if (!IsStepDown(channel.OuterMm, index + 1))
        {
            yield return WasteInside($"{name}, outer wall", hole + channel.OuterMm, channel.DepthMm, bit, pin);
        }

        if (!IsStepDown(channel.InnerMm, index - 1))
        {
            yield return WasteOutside($"{name}, inner wall", hole + channel.InnerMm, channel.DepthMm, bit, pin);
        }

        bool IsStepDown(double wall, int beside) => beside >= 0 && beside < channels.Length && channels[beside] is var next
            && (next.InnerMm == wall || next.OuterMm == wall) && next.DepthMm > channel.DepthMm;
    }

    private static bool Fits(RingChannel channel, double bit) => bit <= channel.OuterMm - channel.InnerMm;
}
