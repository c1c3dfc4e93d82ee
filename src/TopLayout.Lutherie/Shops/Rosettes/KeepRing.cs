using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>The ring stays as it is; what lies between it and the hole changes, and filler lines take up what is too wide.</summary>
public sealed class KeepRing() : RefitStrategy("keep-ring", "keep the ring, change what surrounds it")
{
    /// <summary>More filler lines than this are a rosette of their own. Common practice, no source.</summary>
    public const int MostFillers = 10;

    /// <summary>Difference of diameters from which a joint wants opening, mm. Common practice, no source.</summary>
    public const double OvalFromMm = 0.4;

    /// <summary>
    /// Strain of the edges of an oval ring that is pressed round whole. Derived: its radius is R + (d/4)·cos 2θ for diameters that differ by d,
    /// its curvature differs from 1/R by 3(d/4)·cos 2θ / R², and the edges lie half the width from the middle line.
    /// </summary>
    public static double PressedRoundStrain(OldRing ring) => 3 * (ring.OvalMm / 4) / (ring.MeanMm * ring.MeanMm) * (ring.WidestPieceMm / 2);

    /// <inheritdoc/>
    protected override double InnerMm(RefitCase refit) => refit.Ring.InnerMm;

    /// <inheritdoc/>
    protected override double OvalAllowance(RefitCase refit) => IsOpened(refit) ? 0 : refit.Ring.OvalMm / 4;

    /// <inheritdoc/>
    protected override RefitOption Judge(RefitCase refit, double inner)
    {
        var margin = inner - refit.HoleRadiusMm;
        var fitting = Fitting(refit, margin);
        var fillers = refit.CanFill && fitting <= MostFillers ? fitting : 0;
        var narrowest = margin - OvalAllowance(refit);
        var (verdict, reason) = Verdict(refit, margin, fitting);
        return Option(verdict, reason, Cost(refit, fitting, fillers)) with
        {
            ResidueMm = 0,
            ResidueWhere = fillers > 0 ? $"with the fillers {Fine(margin - (fillers * refit.FillerMm))} of bare wood stays" : "",
            Fillers = fillers,
            RoomMm = 2 * OvalAllowance(refit),
            Changes = [new RefitChange(Rosette.Margin.To(narrowest - (fillers * refit.FillerMm)))],
        };
    }

    private static bool IsOpened(RefitCase refit) => refit.Ring.OvalMm > OvalFromMm;

    // As many as bring the margin down to the middle of the usual ones; none where the maker leaves more bare wood than is usual anyway.
    private static int Fitting(RefitCase refit, double margin) =>
        margin > refit.UsualMarginMm + Tolerances.TouchMm && refit.MarginMm <= refit.UsualMarginMm + Tolerances.TouchMm
            ? Math.Max(0, (int)((margin - refit.FilledMarginMm + Tolerances.TouchMm) / refit.FillerMm))
            : 0;

    private static (RefitVerdict Verdict, string Reason) Verdict(RefitCase refit, double margin, int fitting) =>
        fitting > MostFillers ? (RefitVerdict.Workable, $"the margin is {Fine(margin)}; {Fine(refit.UsualMarginMm)} or less is usual")
            : IsOpened(refit) ? (RefitVerdict.Workable, $"it is {Fine(refit.Ring.OvalMm)} oval, and pressed round whole it strains its edges by "
                + $"{Mm.Percent(PressedRoundStrain(refit.Ring))}; {Fine(OvalFromMm)} or less is left as it is")
            : (RefitVerdict.Recommended, $"the ring is not touched, and {Fine(margin)} of wood stays between it and the hole");

    private static string Cost(RefitCase refit, int fitting, int fillers)
    {
        var inside = fillers > 0 ? $"{Say.Count(fillers)} filler lines of {Fine(refit.FillerMm)} inside the ring"
            : fitting > MostFillers ? $"bare wood inside the ring, or {Say.Count(fitting)} filler lines of {Fine(refit.FillerMm)}, a rosette of their own"
            : fitting > 0 ? $"bare wood inside the ring, or {Say.Count(fitting)} filler lines of {Fine(refit.FillerMm)}; a design without [[ring]] has no place to say them"
            : "nothing but the channel and the hole";
        return IsOpened(refit) ? $"open one joint and let the ring come round to its mean diameter; {inside}"
            : refit.Ring.OvalMm > 0 ? $"{inside}; the channel {Fine(refit.Ring.OvalMm / 2)} wider, as the ring stays oval"
            : inside;
    }
}
