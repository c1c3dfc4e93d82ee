using System.Collections.Immutable;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The rings of a rosette in file order, from the hole outward. They make the channels they need.</summary>
public static class Rings
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Repeatable("ring", "a ring of the rosette; in file order from the hole outward");

    /// <summary>What it is made of.</summary>
    public static readonly Parameter<RingKind> Kind = Parameter.Choice(
        Section, "kind", "a thin line, a solid band, or a row of tiles", ("line", RingKind.Line), ("band", RingKind.Band), ("tiles", RingKind.Tiles));

    /// <summary>Its width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width from its inner to its outer edge", possible: (0.1, 60), usual: (0.25, 28));

    /// <summary>Bare wood before it.</summary>
    public static readonly Parameter<double> Gap = Parameter.Length(
        Section, "gap", "bare wood left between it and the ring before; with it a new channel begins", possible: (0, 40), usual: (0, 12), fallback: 0);

    /// <summary>How many tiles.</summary>
    public static readonly OptionalParameter<int> Tiles = Parameter.Count(
        Section, "tiles", "number of tiles; or give `tile_length`", possible: (3, 400), usual: (12, 200)).Optional();

    /// <summary>Length of a tile.</summary>
    public static readonly OptionalParameter<double> TileLength = Parameter.Length(
        Section, "tile_length", "length of a tile in the middle of its width; the nearest whole number of them is taken", possible: (0.5, 100), usual: (2, 30)).Optional();

    /// <summary>Shape of a tile.</summary>
    public static readonly Parameter<TileShape> Shape = Parameter.Choice(
        Section, "tile_shape", "tiles tapered to close all round, or straight ones that touch at their inner ends", TileShape.Wedge, ("wedge", TileShape.Wedge), ("straight", TileShape.Straight));

    /// <summary>Its wood.</summary>
    public static readonly OptionalParameter<string> Wood = WoodParameter("wood", "wood, a key of the wood table or of a [[wood]] in this file; for the stock list");

    /// <summary>The wood of every other tile.</summary>
    public static readonly OptionalParameter<string> SecondWood = WoodParameter("second_wood", "wood of every other tile; their number must then be even");

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Kind, Width, Gap, Tiles, TileLength, Shape, Wood, SecondWood];

    /// <summary>The rings of a design that is without fault; none when it says only how wide the channel is.</summary>
    public static ImmutableArray<RingChannel> Channels(Design design, double? holeRadius)
    {
        var channels = ImmutableArray.CreateBuilder<RingChannel>();
        var (from, at) = (design[Rosette.Margin].Value, design[Rosette.Margin].Value);
        var rings = ImmutableArray.CreateBuilder<Ring>();
        foreach (var section in design.Each(Section))
        {
            if (section[Gap].Value > 0 && rings.Count > 0)
            {
                at = Close() + section[Gap].Value;
                from = at;
            }

            rings.Add(Read(section, at, holeRadius));
            at += section[Width].Value;
        }

        Close();
        return channels.ToImmutable();

        double Close()
        {
            var outer = at + design[Rosette.Clearance].Value;
            channels.Add(new RingChannel(from, outer, [.. rings]));
            rings.Clear();
            return outer;
        }
    }

    /// <summary>One ring by its number.</summary>
    internal static Ring Find(Design design, double? holeRadius, int number) =>
        Channels(design, holeRadius).SelectMany(c => c.Rings).First(r => r.Number == number);

    private static OptionalParameter<string> WoodParameter(string key, string meaning) =>
        Parameter.WoodKey(Section, key, meaning, () => WoodTable.Keys, OwnWood.Key).Optional();

    private static Ring Read(DesignSection section, double inner, double? holeRadius)
    {
        var kind = section.Get(Kind).Value;
        var width = section[Width].Value;
        var count = section.Find(Tiles)?.Value
            ?? (section.Find(TileLength) is { } length && holeRadius is { } radius ? TilesOf(radius + inner + (width / 2), length.Value) : 0);
        return new Ring(section.Number, kind, inner, width)
        {
            Tiles = kind == RingKind.Tiles ? new TileRow(count, section.Get(Shape).Value) : null,
            Wood = section.Find(Wood)?.Value,
            SecondWood = section.Find(SecondWood)?.Value,
        };
    }

    // The nearest whole number round the mean circle.
    private static int TilesOf(double meanRadius, double length) => Math.Max(3, (int)Math.Round(2 * Math.PI * meanRadius / length));
}
