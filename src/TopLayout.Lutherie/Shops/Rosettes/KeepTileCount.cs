using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>The tiles are laid again, as many as before: every joint opens, or every tile is trimmed.</summary>
public sealed class KeepTileCount() : RefitStrategy("keep-count", "lay the tiles anew, as many as before")
{
    // A tile loses no more than this share of its length. Common practice, no source.
    private const double MostTrimmed = 0.25;

    /// <inheritdoc/>
    protected override RefitOption Judge(RefitCase refit, double inner)
    {
        if (refit.Ring.Tiles is not { } tiles)
        {
            return Option(RefitVerdict.Refused, "the ring has no tiles", "");
        }

        var (was, now) = TileRadii.Of(refit, tiles, inner);
        var each = 2 * Math.PI * (now - was) / tiles.Count;
        var length = 2 * Math.PI * was / tiles.Count;
        var (verdict, reason) = Math.Abs(each) <= Tile.UnseenGapMm ? (RefitVerdict.Recommended, $"each joint changes by {Fine(Math.Abs(each))}, which is not seen")
            : each > length ? (RefitVerdict.Refused, $"each joint would open by {Fine(each)}, more than a tile is long")
            : -each > MostTrimmed * length ? (RefitVerdict.Refused, $"each tile would lose {Fine(-each)} of its {Fine(length)}; a quarter is the most")
            : each > 0 ? (RefitVerdict.Workable, $"each joint opens by {Fine(each)}, more than the {Fine(Tile.UnseenGapMm)} that is not seen")
            : (RefitVerdict.Workable, $"each tile loses {Fine(-each)} of its {Fine(length)}");
        var cost = each > 0 ? $"{Say.Count(tiles.Count)} slips of veneer, {Fine(each)} thick, between the tiles: a feature if it is meant" : $"{Say.Count(tiles.Count)} tiles trimmed by {Fine(-each)}";
        return Option(verdict, reason, Math.Abs(each) <= Tile.UnseenGapMm ? "the tiles lifted and laid again" : cost) with
        {
            ResidueMm = each * tiles.Count,
            ResidueWhere = "shared by all joints",
            Changes = Changes(refit, tiles, now),
        };
    }

    private static ImmutableArray<RefitChange> Changes(RefitCase refit, OldTiles tiles, double now)
    {
        var margin = new RefitChange(Rosette.Margin.To(refit.MarginMm));
        return tiles is { IsByLength: true, RingNumber: { } number } ? [margin, new RefitChange(Rings.TileLength.To(2 * Math.PI * now / tiles.Count), number)] : [margin];
    }
}
