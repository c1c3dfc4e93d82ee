using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>Thin lines are sprung to the new radius in one piece each.</summary>
public sealed class SpringWhole() : RefitStrategy("spring", "spring the lines whole to the new radius")
{
    /// <summary>A piece wider than this breaks rather than springs, mm. Common practice, no source.</summary>
    public const double WidestMm = 3;

    /// <summary>Strain an old, glued line bears without heat. Common practice, no source; about a third of where bending wants heat.</summary>
    public const double MostStrain = 0.003;

    /// <inheritdoc/>
    protected override RefitOption Judge(RefitCase refit, double inner)
    {
        var ring = refit.Ring;
        var (was, now) = (ring.MeanMm, inner + (ring.WidthMm / 2));

        // The curvature changes by |1/R0 − 1/R1|; the edges lie half the width from the middle line.
        var strain = ring.WidestPieceMm / 2 * Math.Abs((1 / was) - (1 / now));
        var missing = 2 * Math.PI * (now - was);
        var isHidden = missing <= refit.HiddenMm(inner);
        var (verdict, reason) = ring.Tiles is { } tiles ? (RefitVerdict.Refused, $"the ring has {tiles.Count} tiles, and every joint would part")
            : ring.WidestPieceMm > WidestMm ? (RefitVerdict.Refused, $"its widest piece is {Fine(ring.WidestPieceMm)} wide; {Fine(WidestMm)} is the most that springs")
            : strain > MostStrain ? (RefitVerdict.Refused, $"it strains its edges by {Mm.Percent(strain)}; {Mm.Percent(MostStrain)} is the most")
            : isHidden ? (RefitVerdict.Recommended, $"it strains its edges by {Mm.Percent(strain)} only")
            : (RefitVerdict.Workable, $"{Fine(missing)} of every line are missing, and {Fine(refit.HiddenMm(inner))} can hide under the board");
        return Option(verdict, reason, missing > 0 ? "free each line, spring it, and let in a piece where it parts" : "free each line, spring it, and trim its end") with
        {
            ResidueMm = missing,
            ResidueWhere = missing > 0 ? isHidden ? "one gap, under the fretboard" : "one gap, let in where it shows least" : "trimmed off",
            Changes = [new RefitChange(Rosette.Margin.To(refit.MarginMm))],
        };
    }
}
