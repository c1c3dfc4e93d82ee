using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Mechanics;

/// <summary>The distance of the transverse supports beside a member, which sharpens the hinge of the top at its edge.</summary>
public class SupportBayTests
{
    private static readonly Contour Body = new(
        [new Vertex(new Point2(-200, 0)), new Vertex(new Point2(-200, -400)), new Vertex(new Point2(200, -400)), new Vertex(new Point2(200, 0))], isClosed: true);

    private static readonly Member Plate = Members.Make("plate", MemberKind.Plate, Shapes.Rectangle(40, 60, -20, -150), 3, "sugar_maple");

    [Theory]
    [InlineData(-100, -220, 120)]
    [InlineData(-60, -150, 90)]
    [InlineData(-100, -180, 80)]
    [InlineData(-10, -390, 130)]
    public void Beside_BetweenTwoBraces_IsTheirDistanceUpToTheUsual(double upper, double lower, double expected) =>
        Check.Near(expected, Beside(Members.BraceAt(upper), Members.BraceAt(lower)), 1e-9);

    [Fact]
    public void Beside_BraceAlongTheGrain_IsNone()
    {
        var along = Members.Make("bar", MemberKind.Bar, Shapes.Rectangle(200, 8, -100, -120), 15, "sitka_spruce");

        Check.Near(130, Beside(along, Members.BraceAt(-180)), 1e-9, "180 mm from the rim, more than the usual");
    }

    [Fact]
    public void Load_InANarrowBay_IsNoMilder()
    {
        double Index(double bay) => MemberLoad.Of(Plate, Members.Top, Members.Straight, Season.Default.MoistureLossPercent, Calibration.Default, bay).Mismatch!.Index;

        Assert.True(Index(60) > Index(130), $"{Index(60):R}, {Index(130):R}");
        var set = Calibration.Default with { SupportSpacingMm = 130 };
        Check.Near(Index(130), MemberLoad.Of(Plate, Members.Top, Members.Straight, Season.Default.MoistureLossPercent, set, 60).Mismatch!.Index, 0, "what the design sets goes before");
    }

    private static double Beside(params Member[] braces)
    {
        var shapes = new MemberShapes([Plate, .. braces]);
        return new SupportBays(shapes, Members.Straight, Body, Calibration.Default).Beside(shapes.All[0]);
    }
}
