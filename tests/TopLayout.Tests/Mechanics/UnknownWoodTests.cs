using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Mechanics;

/// <summary>Woods of which the table lacks something: the worst of the known woods stands for them, and it is said.</summary>
public class UnknownWoodTests
{
    private static readonly double Loss = Season.Default.MoistureLossPercent;

    [Fact]
    public void Mismatch_BigleafMaple_IsTheWorstOfTheMaples()
    {
        var bigleaf = Judge("bigleaf_maple", Sawing.Flat, 30);

        Assert.Equal([WoodProperty.ModulusTangential, WoodProperty.ShearModulusRolling], bigleaf.PieceGap!.Missing);
        Assert.Contains(bigleaf.PieceGap.Like, (string[])["sugar maple", "red maple"]);
        Assert.Null(bigleaf.TopGap);

        // Its own movement, C_T 0.00248, with either maple's share of stiffness: E_T 0.065 or 0.067 of 11 000 MPa, G_RT 0.020.
        double Like(double share) => Strip.Of(Top("sitka_spruce"), new PatchSection(8, 11000 * share, 11000 * 0.020, 0.00248), 30, Loss, 1, Calibration.Default).Index;
        Check.Near(Math.Max(Like(0.065), Like(0.067)), bigleaf.Steady.Index, 1e-12);
    }

    [Fact]
    public void Mismatch_UnknownWood_IsNoMilderThanAnyKnownWoodInItsPlace()
    {
        var rosewood = WoodTable.Find("rosewood_indian")!;
        foreach (var sawing in (Sawing[])[Sawing.Flat, Sawing.Quarter])
        {
            foreach (var degrees in (double[])[0, 30, 90])
            {
                var bound = Judge("rosewood_indian", sawing, 30, degrees).Index;
                foreach (var known in WoodTable.All.Where(w => w.ModulusRadialMPa is not null))
                {
                    var scale = rosewood.ModulusAlongMPa!.Value.Value / known.ModulusAlongMPa!.Value.Value;
                    var likeIt = known with
                    {
                        MovementRadial = new WoodValue(0.000916, Provenance.Derived, ""),
                        MovementTangential = new WoodValue(0.002010, Provenance.Derived, ""),
                        ModulusAlongMPa = rosewood.ModulusAlongMPa,
                        ModulusRadialMPa = Times(known.ModulusRadialMPa, scale),
                        ModulusTangentialMPa = Times(known.ModulusTangentialMPa, scale),
                        ShearModulusLongitudinalRadialMPa = Times(known.ShearModulusLongitudinalRadialMPa, scale),
                        ShearModulusLongitudinalTangentialMPa = Times(known.ShearModulusLongitudinalTangentialMPa, scale),
                        ShearModulusRollingMPa = Times(known.ShearModulusRollingMPa, scale),
                    };
                    var index = Mismatch.Of(Members.Top, new Material(likeIt, GrainLie.InPlane, sawing), 8, Angle.FromDegrees(degrees), 30, Loss, Calibration.Default).Index;
                    Assert.True(index <= bound + 0.002, $"{sawing}, {degrees}: {known.Key} {index:R} over {bound:R}");
                }
            }
        }
    }

    // Length alone would fail the first two: 220 mm and 200 mm along the grain.
    [Theory]
    [InlineData("rosewood_indian", "sitka_spruce")]
    [InlineData("ebony_african", "sitka_spruce")]
    [InlineData("red_spruce", "red_spruce")]
    [InlineData("white_spruce", "engelmann_spruce")]
    public void Verdict_NarrowBarOfUnknownWoodAlongTheGrain_StaysQuiet(string wood, string top)
    {
        var bar = Members.Make("bar", MemberKind.Bar, Shapes.Rectangle(6, 220, -3, -260), 8, wood);
        var (length, _, verdict) = Members.Judge(bar, [], top: new TopPlate(WoodTable.Find(top)!, 2.8));

        Check.Near(220, length, 0.01);
        Assert.Equal(Severity.Pass, verdict.Severity);
    }

    [Theory]
    [InlineData("bigleaf_maple")]
    [InlineData("ebony_african")]
    [InlineData("rosewood_indian")]
    public void Verdict_StraightSideOfUnknownWood_Fails(string wood)
    {
        var (length, load, verdict) = Members.Judge(
            Members.Make("tongue", MemberKind.Tongue, Shapes.Rectangle(60, 90), 8, wood, Sawing.Flat), [], Members.Rim);

        Check.Near(84, length, 0.01);
        Assert.NotNull(load.Mismatch!.PieceGap);
        Assert.Equal(Severity.Fail, verdict.Severity);
    }

    [Fact]
    public void Mismatch_BarOfTheTopsOwnUnknownWood_IsLikeOneWoodInBoth()
    {
        var red = WoodTable.Find("red_spruce")!;
        var mismatch = Mismatch.Of(
            new TopPlate(red, 2.8), new Material(red, GrainLie.InPlane, Sawing.Quarter), 8, Angle.Zero, 30, Loss, Calibration.Default with { RimRestraint = 0 });

        Assert.Equal(mismatch.TopGap!.Like, mismatch.PieceGap!.Like);
        Check.Near(0, mismatch.Steady.Index, 1e-12, "a piece as the top itself loads nothing");
    }

    private static TopSection Top(string key) => TopSection.Of(new TopPlate(WoodTable.Find(key)!, 2.8), new WoodReader(WoodTable.Find(key)!));

    private static WoodValue? Times(WoodValue? value, double factor) => value is { } v ? v with { Value = v.Value * factor } : null;

    private static Mismatch Judge(string wood, Sawing sawing, double halfWidth, double degrees = 0) => Mismatch.Of(
        Members.Top, new Material(WoodTable.Find(wood)!, GrainLie.InPlane, sawing), 8, Angle.FromDegrees(degrees), halfWidth, Loss, Calibration.Default);
}
