using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>One cut round the pivot.</summary>
/// <param name="Name">What is cut: "channel 1, outer wall".</param>
/// <param name="RadiusMm">Radius of the edge that stays, mm.</param>
/// <param name="PivotToBitMm">Pivot's centre to the bit's centre, mm.</param>
/// <param name="PinToBitEdgeMm">What a caliper shows: over pin and bit, far edge to far edge, where the wood outside stays; else between their near edges, mm.</param>
/// <param name="DepthMm">Depth at the time of cutting, mm; with what levelling still takes for a channel; the hole comes after levelling, through the finished top.</param>
/// <param name="BitMm">Diameter of the bit it is worked out for, mm.</param>
/// <param name="FitsBit">False when the bit is wider than the channel, so that this cut cannot be made with it.</param>
public sealed record CutterSetting(string Name, double RadiusMm, double PivotToBitMm, double PinToBitEdgeMm, double DepthMm, double BitMm, bool FitsBit)
{
    /// <summary>Whether it is a pass in a channel that shares both walls with deeper ones: it clears up to the shared wall, and those cut the wall.</summary>
    public bool IsPass { get; init; }
}

/// <summary>
/// How to set a cutter that turns about a pin in the hole's centre. The bit stands with its edge on the wall, on the waste's side, so its
/// centre is half its diameter away from the wall (plain geometry). Channels are cut deeper by what levelling takes later; the hole is cut after it.
/// </summary>
public static class CutterSettings
{
    // Bits as they are sold, mm. Common practice, no source.
    private static readonly ImmutableArray<double> MetricBits = [0.5, 0.8, 1, 1.5, 2, 2.5, 3, 4, 5, 6];
    private static readonly ImmutableArray<double> InchBits = [25.4 / 32, 25.4 / 16, 25.4 * 3 / 32, 25.4 / 8, 25.4 * 3 / 16, 25.4 / 4];

    /// <summary>The bit for a channel, mm: the design's, or where that is wider the largest usual one that is not; the design's where none is.</summary>
    /// <param name="design">The design.</param>
    /// <param name="channelWidth">The channel's width, mm.</param>
    public static double BitFor(Design design, double channelWidth)
    {
        var bit = design[Rosette.Bit].Value;
        var usual = design.Units == LengthUnit.Inch ? InchBits : MetricBits;
        return bit <= channelWidth + Tolerances.TouchMm ? bit : usual.Where(b => b <= channelWidth + Tolerances.TouchMm).DefaultIfEmpty(bit).Max();
    }

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
               let own = BitFor(design, c.Item.OuterMm - c.Item.InnerMm)
               from wall in Walls(channels, c.Index, hole, own, pin)
               select wall with { DepthMm = c.Item.DepthMm + levelling, FitsBit = Fits(c.Item, own) },
            WasteInside("soundhole", hole, layout.Top.ThicknessMm, bit, pin),
        ];
    }

    /// <summary>A cut whose waste lies inside its circle: an outer wall, the hole.</summary>
    public static CutterSetting WasteInside(string name, double radius, double depth, double bit, double pin) =>
        new(name, radius, radius - (bit / 2), radius + (pin / 2), depth, bit, radius > bit / 2);

    /// <summary>A cut whose waste lies outside its circle: an inner wall, a loose disc.</summary>
    public static CutterSetting WasteOutside(string name, double radius, double depth, double bit, double pin) =>
        new(name, radius, radius + (bit / 2), radius - (pin / 2), depth, bit, true);

    // Where two channels share a wall, it is the step down into the deeper one, and cut with that. One between two deeper ones has no wall of its
    // own, and two passes clear it up to theirs.
    private static IEnumerable<CutterSetting> Walls(ImmutableArray<RingChannel> channels, int index, double hole, double bit, double pin)
    {
        var (channel, name) = (channels[index], Rosette.NameOf(index, channels.Length));
        var (isOuterShared, isInnerShared) = (IsStepDown(channel.OuterMm, index + 1), IsStepDown(channel.InnerMm, index - 1));
        if (isOuterShared && isInnerShared)
        {
            yield return WasteInside($"{name}, outermost pass", hole + channel.OuterMm, channel.DepthMm, bit, pin) with { IsPass = true };
            yield return WasteOutside($"{name}, innermost pass", hole + channel.InnerMm, channel.DepthMm, bit, pin) with { IsPass = true };
        }

        if (!isOuterShared)
        {
            yield return WasteInside($"{name}, outer wall", hole + channel.OuterMm, channel.DepthMm, bit, pin);
        }

        if (!isInnerShared)
        {
            yield return WasteOutside($"{name}, inner wall", hole + channel.InnerMm, channel.DepthMm, bit, pin);
        }

        bool IsStepDown(double wall, int beside) => beside >= 0 && beside < channels.Length && channels[beside] is var next
            && (next.InnerMm == wall || next.OuterMm == wall) && next.DepthMm > channel.DepthMm;
    }

    private static bool Fits(RingChannel channel, double bit) => bit <= channel.OuterMm - channel.InnerMm + Tolerances.TouchMm;
}
