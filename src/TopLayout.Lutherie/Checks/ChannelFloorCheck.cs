using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>What a channel leaves of the top under it. Nothing is a failure, less than 0.8 mm a warning, less than usual a remark (common practice, no source).</summary>
public static class ChannelFloorCheck
{
    private const double SteelMm = 1.2;
    private const double NylonMm = 1.0;
    private const double UkuleleMm = 0.8;

    /// <summary>Floor below which the top may give way along the channel, mm. Common practice, no source.</summary>
    public const double LeastMm = 0.8;

    /// <summary>Floor usual under a rosette, mm: 1.2 for steel strings, 1.0 for nylon (a classical body or a tie block), 0.8 on a ukulele. Common practice, no source.</summary>
    public static double UsualMm(Design design) => design.Find(Body.Type)?.Value switch
    {
        BodyType.TenorUkulele => UkuleleMm,
        BodyType.Classical => NylonMm,
        _ => design.Get(BridgePins.Style).Value == BridgeStyle.Tie ? NylonMm : SteelMm,
    };

    // A channel less deep holds no inlay, mm. Common practice, no source.
    private const double ShallowestMm = 0.4;

    /// <summary>One finding per channel.</summary>
    public static IEnumerable<Finding> Of(Layout layout) => Of(layout, UsualMm(layout.Design));

    private static IEnumerable<Finding> Of(Layout layout, double usual) =>
        from pair in layout.Members.Where(m => m.Kind == MemberKind.Channel).Zip(Rosette.Channels(layout.Design, layout.Hole.Radius))
        let channel = pair.First
        let floor = layout.Top.ThicknessMm - channel.ThicknessMm
        let severity = floor <= 0 ? Severity.Fail : floor < LeastMm ? Severity.Warning : floor < usual - Geometry.Tolerances.TouchMm ? Severity.Remark : Severity.Pass
        select new Finding(
            Rules.ChannelFloor,
            severity,
            channel.Name,
            floor > 0
                ? $"{Say.The(channel.Name)} leaves a floor of {Say.Mm(floor)} in a top of {Say.Mm(layout.Top.ThicknessMm)}; {Say.Mm(usual)} or more is usual"
                : $"{Say.TheLast(channel.Name)}, {Say.Mm(channel.ThicknessMm)} deep, goes through the top of {Say.Mm(layout.Top.ThicknessMm)}; a floor of {Say.Mm(usual)} or more is usual")
        {
            Measured = new Measurement(floor, "mm", severity >= Severity.Warning ? LeastMm : usual),
            Place = Rosette.DepthPlace(layout.Design, pair.Second),
            OtherPlaces = [layout.Design[Plate.Thickness].Place],
            Cure = severity == Severity.Pass ? null
                : layout.Top.ThicknessMm - usual >= ShallowestMm ? $"make the channel {Say.Mm(layout.Top.ThicknessMm - usual)} deep or less, and its inlay thinner"
                : $"leave the top {Say.Mm(channel.ThicknessMm + usual)} thick there, or do without the channel",
        };
}
