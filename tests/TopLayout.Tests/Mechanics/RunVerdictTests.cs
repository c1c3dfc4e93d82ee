using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Mechanics;

/// <summary>The rules of the verdict; their limits are calibration of this project.</summary>
public class RunVerdictTests
{
    private static readonly Calibration Shipped = Calibration.Default;

    [Theory]
    [InlineData(29.9, LengthClass.Stops)]
    [InlineData(30, LengthClass.Doubtful)]
    [InlineData(60, LengthClass.RunsOn)]
    public void ClassOf_Limits_BelongToTheWorseClass(double length, LengthClass expected) =>
        Assert.Equal(expected, RunVerdict.ClassOf(length, Shipped));

    // A straight side of 84 mm fails in every common hardwood, though R stays below 1 in most: mahogany, cherry, khaya, birch, walnut.
    [Theory]
    [InlineData("mahogany_true")]
    [InlineData("mahogany_african")]
    [InlineData("black_cherry")]
    [InlineData("yellow_birch")]
    [InlineData("black_walnut")]
    [InlineData("red_maple")]
    public void Verdict_StraightSideOfFlatSawnHardwood_Fails(string wood) => Assert.Equal(Severity.Fail, Judge(84, Load(wood, Sawing.Flat, 8, 30)).Severity);

    // R as printed by the model: mahogany 0.96, cherry 0.94, khaya 0.79 on 84 mm.
    [Theory]
    [InlineData("mahogany_true", .96)]
    [InlineData("black_cherry", .94)]
    [InlineData("mahogany_african", .79)]
    public void Verdict_StraightSideOfOtherHardwoods_HasThePrintedR(string wood, double r) =>
        Check.Near(r, Judge(84, Load(wood, Sawing.Flat, 8, 30)).R!.Value, 0.006);

    [Fact]
    public void Verdict_CrossGrainMember_WarnsAtItsEndsAndNeverFails()
    {
        var stiff = Load("sugar_maple", Sawing.Quarter, 2.5, 90, 90);

        Assert.Equal(Severity.Warning, Judge(200, stiff).Severity);
        Assert.True(Judge(200, stiff).IsHeldToWarning);
        Assert.Equal(Severity.Pass, Judge(200, stiff, isLongSide: true).Severity);
    }

    [Fact]
    public void Verdict_CrossGrainMemberBesideAFailingBlock_DoesNotSaveIt()
    {
        var verdict = RunVerdict.Of(
            Run(("block", 84, false), ("plate", 10, false)),
            new Dictionary<string, MemberLoad> { ["block"] = Load("sugar_maple", Sawing.Flat, 8, 30), ["plate"] = Load("sugar_maple", Sawing.Quarter, 2.5, 90, 90) },
            Shipped);

        Assert.Equal(Severity.Fail, verdict.Severity);
    }

    [Fact]
    public void Verdict_SeveralMembers_WeighsTheirIndicesByLength()
    {
        var (a, b) = (Load("sugar_maple", Sawing.Flat, 8, 30), Load("sitka_spruce", Sawing.Quarter, 8, 3));
        var verdict = RunVerdict.Of(
            Run(("a", 30, false), ("b", 10, false)), new Dictionary<string, MemberLoad> { ["a"] = a, ["b"] = b }, Shipped);

        Check.Near(((30 * a.Mismatch!.Index) + (10 * b.Mismatch!.Index)) / 40, verdict.Index!.Value, 1e-12);
        Check.Near(40 / 30.0 * verdict.Index.Value, verdict.R!.Value, 1e-12);
    }

    [Fact]
    public void Verdict_ChannelWallAlone_IsANote()
    {
        var wall = new MemberLoad(null, false, 1);

        Assert.Equal(Severity.Note, Judge(50, wall).Severity);
        Assert.Equal(Severity.Pass, Judge(20, wall).Severity);
        Assert.Null(Judge(50, wall).R);
    }

    [Fact]
    public void Verdict_ChannelWallUnderABlockEdge_IsTheBlocks()
    {
        var loads = new Dictionary<string, MemberLoad> { ["wall"] = new(null, false, 1), ["block"] = Load("sugar_maple", Sawing.Flat, 8, 30) };
        var verdict = RunVerdict.Of(Run(("wall", 50, false), ("block", 40, false)), loads, Shipped);

        Assert.Equal(Severity.Warning, verdict.Severity);
        Check.Near(0.553, verdict.Index!.Value, 1e-3);
    }

    // Rosette channel walls of R 50 and R 68: 48 and 56 mm, plus what merging adds.
    [Theory]
    [InlineData(50, 47.50)]
    [InlineData(68, 55.86)]
    public void Verdict_RosetteChannel_IsANote(double radius, double closedForm)
    {
        var center = new Point2(0, -150);
        var channel = Members.Make(
            "channel", MemberKind.Channel, Region.Between(Contour.Circle(center, radius), Contour.Circle(center, radius - 2)), 1.5, "", face: TopFace.Outside);
        var (length, load, verdict) = Members.Judge(channel, []);

        Check.Near(closedForm, length, 0.5);
        Assert.Null(load.Mismatch);
        Assert.Equal(Severity.Note, verdict.Severity);
    }

    private static MemberLoad Load(string wood, Sawing sawing, double thickness, double halfWidth, double grain = 0) => new(
        Mismatch.Of(
            Members.Top, new Material(WoodTable.Find(wood)!, GrainLie.InPlane, sawing), thickness, Angle.FromDegrees(grain), halfWidth,
            Season.Default.MoistureLossPercent, Shipped),
        grain >= 40,
        halfWidth);

    private static RunVerdict Judge(double length, MemberLoad load, bool isLongSide = false) => RunVerdict.Of(
        Run(("a", length, isLongSide)), new Dictionary<string, MemberLoad> { ["a"] = load }, Shipped);

    private static GrainRun Run(params (string Member, double Length, bool IsLongSide)[] parts) => new(
        TopHalf.Whole, Angle.Zero, 0, 0, parts.Sum(p => p.Member == "wall" ? 0 : p.Length),
        [.. parts.Select(p => new Contribution(p.Member, EdgeSide.Right, "side", p.IsLongSide, p.Length, Angle.Zero, 0))]);
}
