using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>What a design may say of rings one by one, and not together.</summary>
internal static class RingFaults
{
    /// <summary>Says every contradiction; true when there is none.</summary>
    public static bool AreNone(Bench bench, Hole hole)
    {
        var before = bench.Findings.Count;
        if (bench.Design.Each(Rings.Section) is not [var first, ..] rings)
        {
            return true;
        }

        Whole(bench, first);
        foreach (var ring in rings)
        {
            Tiles(bench, ring, hole);
        }

        return bench.Findings.Count == before;
    }

    private static void Whole(Bench bench, DesignSection first)
    {
        var design = bench.Design;
        if (!design.Has(Rosette.Section))
        {
            bench.Misfit("ring", "there are rings, and no [rosette] to say how far from the hole and how deep they lie", "add `[rosette]` with its `margin` and `depth`", first.Place);
        }
        else if (design[Rosette.Width] is { IsDefault: false } width)
        {
            bench.Misfit(
                "rosette", "the channel has a `width`, and rings that make it as wide as they are", "leave `width` out, or the rings", width.Place, first[Rings.Width].Place);
        }

        if (first[Rings.Gap].Value > 0)
        {
            bench.Misfit("ring 1", "the first ring has a `gap`; what lies between it and the hole is the rosette's `margin`", "leave `gap` out and set `margin`", first[Rings.Gap].Place);
        }
    }

    private static void Tiles(Bench bench, DesignSection ring, Hole hole)
    {
        var name = $"ring {Say.Count(ring.Number)}";
        var (count, length) = (ring.Find(Rings.Tiles), ring.Find(Rings.TileLength));
        if (ring.Get(Rings.Kind).Value != RingKind.Tiles)
        {
            if ((count?.Place ?? length?.Place ?? ring.Find(Rings.Repeat)?.Place ?? ring.Find(Rings.SecondWood)?.Place) is { } stray)
            {
                bench.Misfit(name, $"a {Word(ring)} has no tiles", "say `kind = \"tiles\"`, or leave what is said of tiles out", stray, ring.Get(Rings.Kind).Place);
            }
        }
        else if (count.HasValue == length.HasValue)
        {
            bench.Misfit(
                name,
                count.HasValue ? "the tiles are given by number and by length" : "it is not said how many tiles there are",
                count.HasValue ? "leave one of the two out" : "add `tiles`, or `tile_length`",
                count?.Place ?? ring.Place,
                length?.Place ?? ring.Get(Rings.Kind).Place);
        }
        else if (hole.Radius is null)
        {
            bench.Misfit(name, "tiles are laid round a round hole only, and this one is not", "make it a `band`, or the hole round", ring.Get(Rings.Kind).Place, bench.Design.Get(Soundhole.Shape).Place);
        }
        else
        {
            Motif(bench, ring, name, count?.Place ?? length!.Value.Place, hole);
        }
    }

    private static void Motif(Bench bench, DesignSection ring, string name, SourcePlace tiles, Hole hole)
    {
        var (repeat, second) = (ring.Find(Rings.Repeat), ring.Find(Rings.SecondWood));
        if (!bench.Design.Has(Rosette.Section) || Rings.Find(bench.Design, hole.Radius, ring.Number) is not { Tiles: { } row })
        {
            return;
        }

        if (second is { } wood && repeat is { Value: var odd, Place: var at } && odd % 2 != 0)
        {
            bench.Misfit(name, $"a motif of {Say.Count(odd)} tiles of two woods by turns would meet like beside like", "make `repeat` even", at, wood.Place);
        }
        else if (second is { } other && row.Count % 2 != 0)
        {
            bench.Misfit(name, $"{Say.Count(row.Count)} tiles of two woods by turns would meet like beside like", "make their number even", tiles, other.Place);
        }
        else if (repeat is { } motif && row.Count % motif.Value != 0)
        {
            bench.Misfit(
                name,
                $"{Say.Count(row.Count)} tiles do not hold whole motifs of {Say.Count(motif.Value)}",
                $"make their number {Say.Count(Rings.Nearest(row.Count, motif.Value))}, or give `tile_length`",
                tiles,
                motif.Place);
        }
        else if (row.Count > Rings.Tiles.Possible!.Value.High)
        {
            bench.Misfit(name, $"it takes {Say.Count(row.Count)} tiles of that length; {Say.Count((int)Rings.Tiles.Possible.Value.High)} is the most", "make `tile_length` greater", tiles);
        }
    }

    private static string Word(DesignSection ring) => ring.Get(Rings.Kind).Value switch { RingKind.Line => "line", RingKind.Filler => "filler", _ => "band" };
}
