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

    /// <inheritdoc/>
    protected override double InnerMm(RefitCase refit) => refit.Ring.InnerMm;

    /// <inheritdoc/>
    protected override double OvalAllowance(RefitCase refit) => refit.Ring.OvalMm / 4;

    /// <inheritdoc/>
    protected override RefitOption Judge(RefitCase refit, double inner)
    {
        var margin = inner - refit.HoleRadiusMm;
        var fillers = margin > refit.UsualMarginMm + Tolerances.TouchMm ? (int)((margin - refit.MarginMm) / refit.FillerMm) : 0;
        var isOval = refit.Ring.OvalMm > OvalFromMm;
        var cost = (fillers, isOval) switch
        {
            (0, false) => "nothing but the channel and the hole",
            (_, false) => $"{Say.Count(fillers)} filler lines of {Fine(refit.FillerMm)} inside the ring, or bare wood",
            _ => $"open one joint and let the ring come round: it is {Fine(refit.Ring.OvalMm)} oval",
        };
        var verdict = fillers > MostFillers || isOval ? RefitVerdict.Workable : RefitVerdict.Recommended;
        var reason = fillers > MostFillers ? $"the margin is {Fine(margin)}; {Fine(refit.UsualMarginMm)} or less is usual"
            : $"the ring is not touched, and {Fine(margin)} of wood stays between it and the hole";
        return Option(verdict, reason, cost) with
        {
            ResidueMm = 0,
            ResidueWhere = fillers > 0 ? $"with the fillers {Fine(margin - (fillers * refit.FillerMm))} of margin stays" : "",
            Changes = [new RefitChange(Rosette.Margin.To(margin))],
        };
    }
}
