using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Mechanics;

/// <summary>
/// What supports a glued edge and how far: common practice, no source; the numbers are the model's. A straight tongue 60 x 90 with its
/// sides at x = ±30 is crossed by one thing at a time.
/// </summary>
public class SupportTests
{
    private static readonly Member Tongue =
        Members.Make("tongue", MemberKind.Tongue, Shapes.Rectangle(60, 90), 8, "sugar_maple", Sawing.Flat, joinedWith: "other");

    [Fact]
    public void Support_BraceAcross_HoldsItsWidthAndSixOnBothSides()
    {
        var held = Held(Brace(new Point2(-100, -50), new Point2(100, -50)));

        Check.Near(20, held, 1e-9, "8 mm of brace and 6 mm beside it, each way");
    }

    // The borders of the reach are parallels of the brace, which stands 30° from square: (8 + 12)/cos 30° on the edge.
    [Fact]
    public void Support_BraceAtAnAngle_IsCutByItsParallels()
    {
        var half = GrainAngle.Direction(Angle.FromDegrees(60)) * 120;

        Check.Near(20 / Math.Cos(Math.PI / 6), Held(Brace(new Point2(30, -50) - half, new Point2(30, -50) + half, 60)), 1e-9);
    }

    [Theory]
    [InlineData(39.9, false)]
    [InlineData(40.1, true)]
    public void Support_BraceNearTheGrain_DoesNotCount(double degrees, bool counts)
    {
        var half = GrainAngle.Direction(Angle.FromDegrees(degrees)) * 200;

        Assert.Equal(counts, Held(Brace(new Point2(30, -50) - half, new Point2(30, -50) + half, degrees)) > 0);
    }

    [Theory]
    [InlineData(41.9, false)]
    [InlineData(42.1, true)]
    public void Support_BraceThatEndsBeyondTheEdge_CountsFromTwelve(double end, bool counts) =>
        Assert.Equal(counts, Held(Brace(new Point2(-100, -50), new Point2(end, -50))) > 0);

    [Theory]
    [InlineData(1.9, 30, false)]
    [InlineData(2.1, 14.9, false)]
    [InlineData(2.1, 15.1, true)]
    [InlineData(4.1, 8, true)]
    public void Support_FlatBrace_CountsWhenWide(double height, double width, bool counts)
    {
        var flat = Make(MemberKind.Plate, Shapes.Bar(new Point2(-100, -50), new Point2(100, -50), width), height, 90);

        Assert.Equal(counts, Held(flat) > 0);
    }

    [Fact]
    public void Support_ThinPatchOverTheWholeEdge_Counts() =>
        Check.Near(90, Held(Make(MemberKind.Plate, Shapes.Bar(new Point2(-60, -45), new Point2(60, -45), 100), 1.5, 90)), 1e-9);

    [Theory]
    [InlineData(14, false)]
    [InlineData(16, true)]
    public void Support_BlockAlongTheGrain_CountsWhenThick(double thickness, bool counts)
    {
        var block = Make(MemberKind.Block, Shapes.Rectangle(80, 25), thickness, 0);

        Check.Near(counts ? 31 : 0, Held(block), 1e-9, "25 mm of block and 6 mm before its face");
    }

    [Fact]
    public void Support_BlockNoWiderThanTheTongue_DoesNotCount() =>
        Check.Near(0, Held(Make(MemberKind.Block, Shapes.Rectangle(66, 25), 60, 0)), 1e-9);

    [Fact]
    public void Support_SameFaceWithoutAJoint_DoesNotCount()
    {
        var alone = Members.Make("tongue", MemberKind.Tongue, Shapes.Rectangle(60, 90), 8, "sugar_maple", Sawing.Flat);

        Check.Near(0, Held(Brace(new Point2(-100, -50), new Point2(100, -50)), alone), 1e-9);
    }

    [Theory]
    [InlineData(MemberKind.Channel)]
    [InlineData(MemberKind.Fretboard)]
    public void Support_ChannelsAndFretboards_NeverHold(MemberKind kind) =>
        Check.Near(0, Held(Members.Make(
            "other", kind, Shapes.Bar(new Point2(-100, -50), new Point2(100, -50), 20), 15, "sitka_spruce", grain: 90, face: TopFace.Outside)), 1e-9);

    [Fact]
    public void Support_BridgeOnTheOtherFace_NeedsNoJoint() =>
        Check.Near(32, Held(Members.Make(
            "bridge", MemberKind.Bridge, Shapes.Bar(new Point2(-80, -60), new Point2(80, -60), 20), 8, "sitka_spruce", grain: 90, face: TopFace.Outside)), 1e-9);

    [Fact]
    public void Support_RimWhereTheMemberEndsOnIt_HoldsSixMillimetres()
    {
        Check.Near(84, Free([Tongue], Members.Rim), 1e-9);
        Check.Near(90, Free([Tongue], null), 1e-9);
        Check.Near(90, Free([Tongue], new Contour([new Vertex(new Point2(-200, 3)), new Vertex(new Point2(200, 3))], isClosed: false)), 1e-9, "it ends short of it");
    }

    [Fact]
    public void Support_LiningThatABarEnters_HoldsAndIsNotHeldItself()
    {
        var lining = Members.Make("lining", MemberKind.Lining, Shapes.Rectangle(200, 6), 10, "sitka_spruce");
        var bar = Members.Make("bar", MemberKind.Bar, Shapes.Rectangle(6, 90, -3, -92), 8, "sitka_spruce");
        var pieces = GluedEdges.Of([bar, lining], Members.Straight, Members.Rim, Calibration.Default);

        Check.Near(80, Length(pieces, "bar", EdgeSide.Right, isSupported: false), 1e-9, "92 less lining 6 and reach 6");
        Assert.All(pieces.Where(p => p.Member == "lining"), p => Assert.False(p.IsSupported));
    }

    [Fact]
    public void Pieces_TwoHalves_AreSplitAtTheCentreAndTurnedIntoTheirFrames()
    {
        var bar = Members.Make("bar", MemberKind.Bar, Shapes.Bar(new Point2(-50, -60), new Point2(50, -55), 8), 8, "sitka_spruce", grain: 90);
        var pieces = GluedEdges.Of([bar], TopGrain.Halves(Angle.FromDegrees(2), Angle.FromDegrees(3)), null, Calibration.Default);

        Assert.All(pieces, p => Assert.Equal(p.Half == TopHalf.Left ? -2 : 3, p.Grain.Degrees));
        Check.Near(2 * (bar.Footprint.Outer.Length / 2), pieces.Sum(p => p.Edge.Length), 1e-9);
        Assert.Equal(6, pieces.Length);
    }

    [Fact]
    public void Runs_OfASkewHalf_AreReportedInTopCoordinates()
    {
        // An edge exactly along the right half's grain, which leans 3° outward towards the tail.
        var direction = new Vec2(Math.Sin(Math.PI / 60), -Math.Cos(Math.PI / 60));
        var bar = Members.Make(
            "bar", MemberKind.Bar, Shapes.Bar(new Point2(30, -20), new Point2(30, -20) + (direction * 150), 20), 8, "sitka_spruce", grain: 3);
        var pieces = GluedEdges.Of([bar], TopGrain.Halves(Angle.FromDegrees(2), Angle.FromDegrees(3)), null, Calibration.Default);
        var runs = GrainRuns.PerSide(pieces, Calibration.Default);

        Assert.Equal(2, runs.Length);
        Assert.All(runs, r => Check.Near(150, r.LengthMm, 1e-6));
        Assert.All(runs, r => Assert.Equal(TopHalf.Right, r.Half));
        Check.Near(0, bar.Footprint.Outer.DistanceTo(runs[0].From), 1e-6, "the run lies on the edge");
        Check.Near(0, bar.Footprint.Outer.DistanceTo(runs[0].To), 1e-6);
    }

    [Fact]
    public void Support_MirroredLayout_IsMirrored()
    {
        var half = GrainAngle.Direction(Angle.FromDegrees(62)) * 130;
        var brace = Brace(new Point2(10, -50) - half, new Point2(10, -50) + half, 62);
        var (pieces, mirrored) = (Pieces([Tongue, brace]), Pieces([Mirrored(Tongue), Mirrored(brace)]));

        Check.Near(Length(pieces, "tongue", EdgeSide.Left, false), Length(mirrored, "tongue", EdgeSide.Right, false), 1e-9);
        Check.Near(Length(pieces, "tongue", EdgeSide.Right, false), Length(mirrored, "tongue", EdgeSide.Left, false), 1e-9);
        Assert.Equal(
            GrainRuns.Distinct(pieces, Calibration.Default, 10).Select(r => Math.Round(r.LengthMm, 8)),
            GrainRuns.Distinct(mirrored, Calibration.Default, 10).Select(r => Math.Round(r.LengthMm, 8)));
    }

    private static Member Brace(Point2 from, Point2 to, double grain = 90) => Make(MemberKind.Bar, Shapes.Bar(from, to, 8), 15, grain);

    private static Member Make(MemberKind kind, Region footprint, double thickness, double grain) =>
        Members.Make("other", kind, footprint, thickness, "sitka_spruce", grain: grain);

    private static double Held(Member other, Member? member = null) =>
        Length(Pieces([member ?? Tongue, other]), "tongue", EdgeSide.Right, isSupported: true);

    private static ImmutableArray<EdgePiece> Pieces(Member[] members) => GluedEdges.Of(members, Members.Straight, null, Calibration.Default);

    private static double Free(Member[] members, Contour? rim) =>
        Length(GluedEdges.Of(members, Members.Straight, rim, Calibration.Default), "tongue", EdgeSide.Right, isSupported: false);

    private static double Length(IEnumerable<EdgePiece> pieces, string member, EdgeSide side, bool isSupported) =>
        pieces.Where(p => p.Member == member && p.Side == side && p.IsSupported == isSupported).Sum(p => p.Edge.Length);

    private static Member Mirrored(Member m) => new()
    {
        Name = m.Name,
        Kind = m.Kind,
        Face = m.Face,
        Footprint = m.Footprint.Placed(Placement.MirroredAcrossY),
        ThicknessMm = m.ThicknessMm,
        Material = m.Material,
        Grain = -m.Grain,
        UngluedEdges = m.UngluedEdges,
        JoinedWith = m.JoinedWith,
        Places = [],
    };
}
