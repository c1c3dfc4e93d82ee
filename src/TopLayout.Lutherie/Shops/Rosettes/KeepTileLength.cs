using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>The tiles are laid again as long as they are: more or fewer of them, and a residue to hide or share.</summary>
public sealed class KeepTileLength() : RefitStrategy("keep-length", "lay the tiles anew, as long as before")
{
    // What one joint may take of the residue unseen, mm. Common practice, no source.
    private const double ShareMm = 0.1;

    /// <inheritdoc/>
    protected override RefitOption Judge(RefitCase refit, double inner)
    {
        if (refit.Ring.Tiles is not { } tiles)
        {
            return Option(RefitVerdict.Refused, "the ring has no tiles", "");
        }

        var (was, now) = TileRadii.Of(refit, tiles, inner);
        var length = 2 * Math.PI * was / tiles.Count;
        var count = Rings.Nearest(2 * Math.PI * now / length, tiles.Repeat);
        var residue = (2 * Math.PI * now) - (count * length);

        // Each tile's taper closes a ring of the old number: at one end of its width it gapes by the width times the difference of turns.
        var gape = tiles.WidthMm * 2 * Math.PI * Math.Abs((1.0 / tiles.Count) - (1.0 / count));
        var (verdict, reason, where) = Weigh(refit, inner, count, residue);
        if (verdict == RefitVerdict.Recommended && gape > Tile.UnseenGapMm)
        {
            (verdict, reason) = (RefitVerdict.Workable, $"every joint gapes by {Fine(gape)} at its {(now > was ? "inner" : "outer")} end; {Fine(Tile.UnseenGapMm)} is not seen");
        }

        return Option(verdict, reason, Cost(tiles.Count, count)) with { ResidueMm = residue, ResidueWhere = where, Tiles = count, Changes = TileRadii.Kept(refit, tiles, was, count) };
    }

    private static (RefitVerdict Verdict, string Reason, string Where) Weigh(RefitCase refit, double inner, int count, double residue)
    {
        var (size, hidden) = (Math.Abs(residue), refit.HiddenMm(inner));
        return count > Rings.Tiles.Possible!.Value.High ? (RefitVerdict.Refused, $"it takes {count} tiles; {Rings.Tiles.Possible.Value.High} is the most a design may say", "")
            : size <= count * ShareMm ? (RefitVerdict.Recommended, $"the residue of {Fine(residue)} comes to {Fine(size / count)} a joint", "shared by all joints")
            : size <= hidden ? (RefitVerdict.Recommended, $"the residue of {Fine(residue)} hides under the board, which covers {Fine(hidden)}", "one make-up tile, under the fretboard")
            : (RefitVerdict.Refused, $"the residue of {Fine(residue)} is {Mm.Thousandths(size / count)} a joint where {Fine(ShareMm)} is not seen, and the board hides {Fine(hidden)}", "");
    }

    private static string Cost(int was, int now) => now == was ? "the tiles lifted and laid again"
        : now > was ? $"{Say.Count(now - was)} more {(now - was == 1 ? "tile" : "tiles")} to make: {Say.Count(now)} instead of {Say.Count(was)}"
        : $"{Say.Count(was - now)} {(was - now == 1 ? "tile" : "tiles")} left over: {Say.Count(now)} instead of {Say.Count(was)}";
}
