using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>What a channel leaves of the top under it. Nothing is a failure, less than 0.8 mm a warning, less than usual a remark (common practice, no source).</summary>
public static class ChannelFloorCheck
{
    /// <summary>Floor usual under a steel-string's rosette, mm. Common practice, no source.</summary>
    public const double UsualMm = 1.2;

    /// <summary>Floor below which the top may give way along the channel, mm. Common practice, no source.</summary>
    public const double LeastMm = 0.8;

    /// <summary>One finding per channel.</summary>
    public static IEnumerable<Finding> Of(Layout layout) =>
        from pair in layout.Members.Where(m => m.Kind == MemberKind.Channel).Zip(Rosette.Channels(layout.Design, layout.Hole.Radius))
        let channel = pair.First
        let floor = layout.Top.ThicknessMm - channel.ThicknessMm
        let severity = floor <= 0 ? Severity.Fail : floor < LeastMm ? Severity.Warning : floor < UsualMm - Geometry.Tolerances.TouchMm ? Severity.Remark : Severity.Pass
        select new Finding(
            Rules.ChannelFloor,
            severity,
            channel.Name,
            floor > 0
                ? $"the {channel.Name} leaves a floor of {Say.Mm(floor)} in a top of {Say.Mm(layout.Top.ThicknessMm)}; {Say.Mm(UsualMm)} or more is usual"
                : $"the {channel.Name}, {Say.Mm(channel.ThicknessMm)} deep, goes through the top of {Say.Mm(layout.Top.ThicknessMm)}; a floor of {Say.Mm(UsualMm)} or more is usual")
        {
            Measured = new Measurement(floor, "mm", severity >= Severity.Warning ? LeastMm : UsualMm),
            Place = Rosette.DepthPlace(layout.Design, pair.Second),
            OtherPlaces = [layout.Design[Plate.Thickness].Place],
            Cure = severity == Severity.Pass ? null : $"make the channel {Say.Mm(Math.Max(0, layout.Top.ThicknessMm - UsualMm))} deep or less, and its inlay thinner",
        };
}
