using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>How a member loads the top along its edges.</summary>
/// <param name="Mismatch">Its mismatch; null when nothing pulls (a channel).</param>
/// <param name="IsCrossGrain">
/// True when its long grain crosses the top's: what it does is hold the top wide, whatever the angle of its edges.
/// </param>
/// <param name="HalfWidthMm">b, mm.</param>
public sealed record MemberLoad(Mismatch? Mismatch, bool IsCrossGrain, double HalfWidthMm)
{
    /// <summary>The load of a member.</summary>
    /// <param name="member">The member.</param>
    /// <param name="top">The top.</param>
    /// <param name="grain">The top's grain.</param>
    /// <param name="lossPercent">Moisture lost since gluing, in percent.</param>
    /// <param name="calibration">The settings.</param>
    /// <param name="baySpanMm">Distance of the transverse supports beside it, mm, for settings that do not say it.</param>
    public static MemberLoad Of(
        Member member, TopPlate top, TopGrain grain, double lossPercent, Calibration calibration, double? baySpanMm = null) =>
        Of(member, new TopCases(top), grain, lossPercent, calibration, baySpanMm);

    /// <summary>The same on a top whose cases are at hand.</summary>
    internal static MemberLoad Of(
        Member member, TopCases top, TopGrain grain, double lossPercent, Calibration calibration, double? baySpanMm)
    {
        var fromTop = member.Grain - grain.Under(member.Footprint);
        var halfWidth = HalfWidth.Of(member, grain);
        if (member.Kind == MemberKind.Channel || member.Material is not { } material)
        {
            return new MemberLoad(null, false, halfWidth);
        }

        var crosses = material.Lie == GrainLie.InPlane && GrainAngle.Between(fromTop, Angle.Zero) >= calibration.SupportLeastAngle;
        calibration = calibration with { SupportSpacingMm = calibration.SupportSpacingMm ?? baySpanMm };
        return new MemberLoad(
            Mechanics.Mismatch.Of(top, material, member.ThicknessMm, fromTop, halfWidth, lossPercent, calibration), crosses, halfWidth);
    }
}
