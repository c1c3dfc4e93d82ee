using System.Collections.Immutable;
using TopLayout.Geometry;
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
        Section, "kind", "a thin line, a solid band, a row of tiles, or a filler: a line that `rosette` may add and take away",
        ("line", RingKind.Line), ("band", RingKind.Band), ("tiles", RingKind.Tiles), ("filler", RingKind.Filler));

    /// <summary>Its width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width from its inner to its outer edge", possible: (0.1, 60), usual: (0.25, 28));

    /// <summary>Bare wood before it.</summary>
    public static readonly Parameter<double> Gap = Parameter.Length(
        Section, "gap", "bare wood left between it and the ring before; with it a new channel begins", possible: (0, 40), usual: (0, 12), fallback: 0);

    /// <summary>Its own depth.</summary>
    public static readonly OptionalParameter<double> Depth = Parameter.Length(
        Section, "depth", "depth of its channel where that is not the rosette's; beside a ring of another depth a new channel begins", possible: (0.2, 4), usual: (0.5, 1.6)).Optional();

    /// <summary>How many tiles.</summary>
    public static readonly OptionalParameter<int> Tiles = Parameter.Count(
        Section, "tiles", "number of tiles; or give `tile_length`", possible: (3, 400), usual: (12, 200)).Optional();

    /// <summary>Length of a tile.</summary>
    public static readonly OptionalParameter<double> TileLength = Parameter.Length(
        Section, "tile_length", "length of a tile in the middle of its width; the nearest number of them that closes the pattern is taken", possible: (0.5, 100), usual: (2, 30)).Optional();

    /// <summary>Shape of a tile.</summary>
    public static readonly Parameter<TileShape> Shape = Parameter.Choice(
        Section, "tile_shape", "tiles tapered to close all round, or straight ones that touch at their inner ends", TileShape.Wedge, ("wedge", TileShape.Wedge), ("straight", TileShape.Straight));

    /// <summary>Motif.</summary>
    public static readonly OptionalParameter<int> Repeat = Parameter.Count(
        Section, "repeat", "number of tiles in one motif, so that the row holds whole motifs; 2 with a second wood when left out", possible: (2, 100), usual: (2, 12)).Optional();

    /// <summary>Where the row begins.</summary>
    public static readonly Parameter<TileStart> Start = Parameter.Choice(
        Section, "on_centre_line", "what lies on the centre line at the tail end of the ring: a joint, or the middle of a tile", TileStart.Joint, ("joint", TileStart.Joint), ("tile", TileStart.Tile));

    /// <summary>Its wood.</summary>
    public static readonly OptionalParameter<string> Wood = WoodParameter("wood", "wood, a key of the wood table or of a [[wood]] in this file; for the stock list");

    /// <summary>The wood of every other tile.</summary>
    public static readonly OptionalParameter<string> SecondWood = WoodParameter("second_wood", "wood of every other tile; their number must then be even");

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Kind, Width, Gap, Depth, Tiles, TileLength, Shape, Repeat, Start, Wood, SecondWood];

    /// <summary>
    /// The channels of a design that is without fault. Rings side by side share one; bare wood before a ring begins the next, and so does
    /// another depth: then the two channels share the wall between them.
    /// </summary>
    public static ImmutableArray<RingChannel> Channels(Design design, double? holeRadius)
    {
        var channels = ImmutableArray.CreateBuilder<RingChannel>();
        var (from, at) = (design[Rosette.Margin].Value, design[Rosette.Margin].Value);
        var rings = ImmutableArray.CreateBuilder<Ring>();
        var depth = 0.0;
        foreach (var section in design.Each(Section))
        {
            var own = section.Find(Depth)?.Value ?? design[Rosette.Depth].Value;
            if (rings.Count > 0 && (section[Gap].Value > 0 || Math.Abs(own - depth) > Tolerances.TouchMm))
            {
                at = Close() + section[Gap].Value;
                from = at;
            }

            depth = own;
            rings.Add(Read(section, at, holeRadius));
            at += section[Width].Value;
        }

        Close();
        return channels.ToImmutable();

        double Close()
        {
            var outer = at + design[Rosette.Clearance].Value;
            channels.Add(new RingChannel(from, outer, depth, [.. rings]));
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
        var repeat = section.Find(Repeat)?.Value ?? (section.Find(SecondWood).HasValue ? 2 : 1);
        var count = section.Find(Tiles)?.Value
            ?? (section.Find(TileLength) is { } length && holeRadius is { } radius ? Nearest(2 * Math.PI * (radius + inner + (width / 2)) / length.Value, repeat) : 0);
        return new Ring(section.Number, kind, inner, width)
        {
            Tiles = kind == RingKind.Tiles ? new TileRow(count, section.Get(Shape).Value) { Repeat = repeat, Start = section.Get(Start).Value } : null,
            Wood = section.Find(Wood)?.Value,
            SecondWood = section.Find(SecondWood)?.Value,
        };
    }

    /// <summary>The nearest whole number of motifs in tiles, three tiles at least.</summary>
    internal static int Nearest(double tiles, int repeat) => repeat * Math.Max((int)Math.Ceiling(3.0 / repeat), (int)Math.Round(tiles / repeat));
}
