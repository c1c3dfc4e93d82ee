using System.Collections.Immutable;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>Radii of the middle of a row of tiles.</summary>
internal static class TileRadii
{
    /// <summary>Where it was and where it comes, mm.</summary>
    public static (double Was, double Now) Of(RefitCase refit, OldTiles tiles, double inner)
    {
        var middle = tiles.FromInnerMm + (tiles.WidthMm / 2);
        return (refit.Ring.InnerMm + middle, inner + middle);
    }

    /// <summary>What makes a row of the design's own hold a number of tiles as long as they are: that number, or their true length where the design gives one.</summary>
    public static ImmutableArray<RefitChange> Kept(RefitCase refit, OldTiles tiles, double was, int count)
    {
        var margin = new RefitChange(Rosette.Margin.To(refit.MarginMm));
        return tiles.RingNumber is not { } number || count > Rings.Tiles.Possible!.Value.High ? [margin]
            : [margin, new RefitChange(tiles.IsByLength ? Rings.TileLength.To(2 * Math.PI * was / tiles.Count) : Rings.Tiles.To(count), number)];
    }
}
