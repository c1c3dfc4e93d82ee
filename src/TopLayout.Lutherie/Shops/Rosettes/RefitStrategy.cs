using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>One way to put a ring round another hole. Whatever it thinks of itself, the margin and the floor have the last word.</summary>
public abstract class RefitStrategy(string key, string title)
{
    /// <summary>The least bare wood between the hole and a channel, mm. Common practice, no source.</summary>
    public const double LeastMarginMm = 2;

    /// <summary>All of them, the gentlest first: of two equally sound the earlier is offered first.</summary>
    public static ImmutableArray<RefitStrategy> All { get; } = [new KeepRing(), new SpringWhole(), new KeepTileCount(), new KeepTileLength(), new LaySegments()];

    /// <summary>Its word on the command line.</summary>
    public string Key { get; } = key;

    /// <summary>All ways weighed, best first.</summary>
    public static ImmutableArray<RefitOption> Weighed(RefitCase refit) => [.. All.Select(s => s.Weigh(refit)).OrderBy(o => o.Verdict)];

    /// <summary>Weighs it.</summary>
    public RefitOption Weigh(RefitCase refit)
    {
        var inner = InnerMm(refit);
        var option = Judge(refit, inner);
        var placed = option with { InnerMm = inner, OuterMm = inner + refit.Ring.WidthMm, MarginMm = inner - refit.HoleRadiusMm };
        return Objection(refit, placed.MarginMm) is { } objection ? placed with { Verdict = RefitVerdict.Refused, Reason = objection } : placed;
    }

    /// <summary>The ring's inner radius in its new place, mm.</summary>
    protected virtual double InnerMm(RefitCase refit) => refit.LaidInnerMm;

    /// <summary>How much less than its mean radius the ring may have somewhere, mm; an oval one that is not opened.</summary>
    protected virtual double OvalAllowance(RefitCase refit) => 0;

    /// <summary>What is thought of it, margin and floor aside.</summary>
    protected abstract RefitOption Judge(RefitCase refit, double inner);

    /// <summary>An option in its first words.</summary>
    protected RefitOption Option(RefitVerdict verdict, string reason, string cost) => new(Key, title, verdict, reason, cost);

    /// <summary>A length to a hundredth of a mm.</summary>
    protected static string Fine(double mm) => Mm.Fine(mm);

    // A hair is allowed for rounding in the file.
    private string? Objection(RefitCase refit, double margin)
    {
        var (least, most) = (margin - OvalAllowance(refit), Rosette.Margin.Possible!.Value.High);
        return least < LeastMarginMm - Tolerances.TouchMm ? $"a margin of {Fine(least)} between hole and ring; {Fine(LeastMarginMm)} is the least"
            : margin > most ? $"a margin of {Fine(margin)} between hole and ring; {Fine(most)} is the most a design may say"
            : refit.FloorMm < ChannelFloorCheck.LeastMm - Tolerances.TouchMm ? $"a floor of {Fine(refit.FloorMm)} under the channel; {Fine(ChannelFloorCheck.LeastMm)} is the least"
            : null;
    }
}
