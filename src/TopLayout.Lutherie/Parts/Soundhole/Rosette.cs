using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>The rosette's channel round the hole, or the channels that its rings make.</summary>
public static class Rosette
{
    /// <summary>The member's name.</summary>
    public const string Name = "rosette channel";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("rosette", "the channel for the rosette, round the hole");

    /// <summary>Hole edge to channel.</summary>
    public static readonly Parameter<double> Margin = Parameter.Length(
        Section, "margin", "from the hole's edge to the channel", possible: (0.5, 60), usual: (2, 6), fallback: 4,
        byBody: BodyValues.Of(steel: (4, 3, 6), classical: (4, 3, 6), tenorUkulele: (3, 2, 4)));

    /// <summary>Width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width of the channel", possible: (0.3, 60), usual: (1.5, 14), fallback: 8,
        byBody: BodyValues.Of(steel: (8, 1.5, 14), classical: (14, 8, 28), tenorUkulele: (4, 2, 8)));

    /// <summary>Depth.</summary>
    public static readonly Parameter<double> Depth = Parameter.Length(
        Section, "depth", "depth of the channel", possible: (0.2, 4), usual: (0.5, 1.6), fallback: 1.4,
        byBody: BodyValues.Of(steel: (1.3, 0.8, 1.6), classical: (1.2, 0.8, 1.6), tenorUkulele: (0.9, 0.5, 1)));

    /// <summary>Room for glue.</summary>
    public static readonly Parameter<double> Clearance = Parameter.Length(
        Section, "clearance", "how much wider a channel is than the rings in it; more for many lines and glue with water in it", possible: (0, 1), usual: (0.05, 0.2), fallback: 0.1);

    /// <summary>Outside still to be levelled.</summary>
    public static readonly Parameter<double> Levelling = Parameter.Length(
        Section, "levelling", "what the outside still loses to levelling after the channel is cut", possible: (0, 2), usual: (0.1, 0.3), fallback: 0.2);

    /// <summary>The cutter.</summary>
    public static readonly Parameter<double> Bit = Parameter.Length(
        Section, "bit", "diameter of the cutter's bit", possible: (0.3, 20), usual: (1, 6.5), fallback: 3);

    /// <summary>The pivot.</summary>
    public static readonly Parameter<double> Pin = Parameter.Length(
        Section, "pin", "diameter of the pivot pin in the hole's centre", possible: (0.5, 20), usual: (2, 8), fallback: 3);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Margin, Width, Depth, Clearance, Levelling, Bit, Pin];

    /// <summary>The channels from the hole outward; none when the design has no rosette.</summary>
    public static ImmutableArray<RingChannel> Channels(Design design, double? holeRadius) => !design.Has(Section) ? []
        : design.Has(Rings.Section) ? Rings.Channels(design, holeRadius)
        : [new RingChannel(design[Margin].Value, design[Margin].Value + design[Width].Value, design[Depth].Value, [])];

    /// <summary>The depth of the deepest channel, mm: it leaves the least of the top. The rosette's own without rings.</summary>
    public static double DeepestMm(Design design) =>
        design.Has(Rings.Section) ? design.Each(Rings.Section).Max(r => r.Find(Rings.Depth)?.Value ?? design[Depth].Value) : design[Depth].Value;

    /// <summary>Where the depth of a channel is said.</summary>
    internal static SourcePlace DepthPlace(Design design, RingChannel channel) =>
        channel.Rings.Select(r => design.Each(Rings.Section)[r.Number - 1].Find(Rings.Depth)?.Place).FirstOrDefault(p => p is not null) ?? design[Depth].Place;

    /// <summary>The hole for the pin that the cutter turns about; locating pins have their own in its place.</summary>
    public const string PivotName = "pivot of the rosette";

    /// <summary>The channel's name: numbered from the hole outward when there are several.</summary>
    public static string NameOf(int index, int count) => count == 1 ? Name : $"{Name} {Say.Count(index + 1)}";

    internal static void Build(Bench bench, Hole hole)
    {
        if (!RingFaults.AreNone(bench, hole))
        {
            return;
        }

        var design = bench.Design;
        var channels = Channels(design, hole.Radius);
        if (channels.Length > 0 && hole.Radius is not null && !design.Has(LocatingPins.Section))
        {
            bench.Drill(new DrillPoint(PivotName, hole.Center, design[Pin].Value, design[Pin].Place));
        }

        foreach (var (i, channel) in channels.Index())
        {
            bench.Add(new Member
            {
                Name = NameOf(i, channels.Length),
                Kind = MemberKind.Channel,
                Face = TopFace.Outside,
                Footprint = Region.Between(hole.LineOutside(channel.OuterMm, "outer wall"), hole.LineOutside(channel.InnerMm, "hole-side wall")),
                ThicknessMm = channel.DepthMm,
                Material = null,
                Grain = Angle.Zero,
                Places = channel.Rings is [var first, ..]
                    ? [design.Each(Rings.Section)[first.Number - 1][Rings.Width].Place, design[Margin].Place]
                    : [design[Width].Place, design[Margin].Place],
            });
        }
    }
}
