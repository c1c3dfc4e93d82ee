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
}
