using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>The ring itself is cut into segments short enough to lie on the new circle.</summary>
public sealed class LaySegments() : RefitStrategy("segments", "cut the ring into segments and lay them on the new circle")
{
    /// <summary>How far a segment may stand off the new circle, mm. Common practice, no source.</summary>
    public const double OffMm = 0.1;

    // Shorter pieces are a mosaic, not a ring. Common practice, no source.
    private const double ShortestMm = 12;

    /// <summary>The longest segment of one radius that lies on another within <see cref="OffMm"/>, mm: arcs over a chord c differ by (c²/8)·|1/R0 − 1/R1|.</summary>
    public static double LongestChord(double was, double now) => Math.Sqrt(8 * OffMm / Math.Abs((1 / was) - (1 / now)));

    /// <inheritdoc/>
    protected override RefitOption Judge(RefitCase refit, double inner)
    {
        var (was, now) = (refit.Ring.MeanMm, inner + (refit.Ring.WidthMm / 2));
        var missing = 2 * Math.PI * (now - was);
        var chord = Math.Min(LongestChord(was, now), 2 * Math.Min(was, now));
        var joints = (int)Math.Ceiling(2 * Math.PI * now / chord);
        var (verdict, reason) = chord < ShortestMm
            ? (RefitVerdict.Refused, $"a segment may be {Fine(chord)} long to lie within {Fine(OffMm)}; {Fine(ShortestMm)} is the least")
            : (RefitVerdict.Workable, $"segments of {Fine(chord)} lie within {Fine(OffMm)}, with {Say.Count(joints)} joints that show");
        var more = missing > 0 ? $", and {Fine(missing)} of new ring to match" : missing < 0 ? $", and {Fine(-missing)} of ring left over" : "";
        var option = Option(verdict, reason, $"{Say.Count(joints)} cuts{more}") with
        {
            ResidueMm = missing,
            ResidueWhere = missing <= 0 ? "trimmed at the joints" : missing <= refit.HiddenMm(inner) ? "one gap, under the fretboard" : "pieces let in between segments",
            Changes = [new RefitChange(Rosette.Margin.To(refit.MarginMm))],
        };
        return refit.Ring.Tiles is { } tiles ? WithTiles(option, refit, tiles, inner) : option;
    }

    // The tiles stay as long as they are, so what is let in or left over changes their number; a pattern that it does not close breaks once.
    private static RefitOption WithTiles(RefitOption option, RefitCase refit, OldTiles tiles, double inner)
    {
        var (was, now) = TileRadii.Of(refit, tiles, inner);
        var count = Rings.Nearest(tiles.Count * now / was, 1);
        var laid = option with { Tiles = count, Changes = TileRadii.Kept(refit, tiles, was, count) };
        return count % tiles.Repeat == 0 ? laid : laid with
        {
            Reason = $"{laid.Reason}; with {Say.Count(count)} tiles the pattern of {Say.Count(tiles.Repeat)} breaks at one of them",
            Changes = [.. laid.Changes, .. tiles.RingNumber is { } number && Motif(count) is { } motif ? [new RefitChange(Rings.Repeat.To(motif), number)] : (ReadOnlySpan<RefitChange>)[]],
        };
    }

    // The smallest motif that closes with a number of tiles; the whole row for a prime number. Null where a design can say none.
    private static int? Motif(int count) => Enumerable.Range(2, (int)Rings.Repeat.Possible!.Value.High - 1).Where(m => count % m == 0).Select(m => (int?)m).FirstOrDefault();
}
