using CsCheck;
using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Mechanics;

public class StripTests
{
    private static readonly TopPlate Sitka = new(WoodTable.Find("sitka_spruce")!, 2.8);
    private static readonly double Loss = Season.Default.MoistureLossPercent;

    // Worked by this project from Timoshenko 1925 and Suhir 1986: Sitka 2.8 mm, b 30, L_y 130, ρ 0.5, 60 to 25 % at 21 °C.
    // Half a unit of the last digit printed, or the next where the constants were rounded before.
    [Theory]
    [InlineData("A", "sugar_maple", Sawing.Flat, 0, 8, 1, 14.495, 1.2507e-3, 5.351, .3059, 12.414, 1.6704e-3, 4.107, 4.107, .553, .75)]
    [InlineData("B", "sugar_maple", Sawing.Quarter, 0, 8, 1, 4.728, 8.1937e-4, 6.611, .4603, 6.093, 4.126e-4, 1.026, 1.026, .138, .19)]
    [InlineData("C", "sugar_maple", Sawing.Quarter, 90, 8, 1, -3.585, 4.4360e-4, 8.119, .8257, -8.287, -7.55e-5, -.191, 2.411, .325, -.03)]
    [InlineData("D", "sitka_spruce", Sawing.Quarter, 0, 8, 1, 3.844, 1.2276e-3, 9.071, .2910, 3.132, 4.103e-4, 1.009, 1.009, .136, .18)]
    [InlineData("E", "sugar_maple", Sawing.Flat, 0, 4, 1, 14.495, 2.4414e-3, 3.563, .1578, 6.404, 3.350e-3, 7.484, 7.484, 1.007, 1.51)]
    [InlineData("F", "sugar_maple", Sawing.Quarter, 0, 8, 0, -3.844, 8.1937e-4, 6.611, .4603, -4.955, -3.36e-4, -.834, 2.162, .291, -.15)]
    public void Strip_WorkedCases_AgreeToThePrintedDigits(
        string name, string wood, Sawing sawing, double grain, double thickness, double moved,
        double driver, double lambda, double lag, double share, double force, double curvature, double hinge, double excess, double index, double sagitta)
    {
        var strip = Solve(wood, sawing, grain, thickness, moved);

        Check.Near(driver, strip.DriverMPa, 6e-4, name + " X");
        Check.Near(lambda, strip.AxialCompliance, Math.Abs(lambda) * 6e-5, name + " lambda");
        Check.Near(lag, strip.ShearLagMm, 6e-4, name + " 1/k");
        Check.Near(share, strip.Share, 6e-5, name + " share");
        Check.Near(force, strip.Force, 6e-4, name + " N");
        Check.Near(curvature, strip.Curvature, Math.Abs(curvature) * 1.5e-3, name + " kappa");
        Check.Near(hinge, strip.HingeMPa, 6e-4, name + " sigma_b");
        Check.Near(excess, strip.ExcessMPa, 6e-4, name + " e");
        Check.Near(index, strip.Index, 6e-4, name + " M");
        Check.Near(sagitta, strip.SagittaMm, 6e-3, name + " sagitta");
        Check.Near(3.844, strip.FarStressMPa, 6e-4, name + " sigma_0");
    }

    // Timoshenko 1925, "Analysis of bi-metal thermostats": κ = 6(a₂ − a₁)(1 + m)² / (h(3(1 + m)² + (1 + mn)(m² + 1/(mn)))), and the
    // mean stress from the force N = 2κD/h, both in exact fractions.
    [Theory]
    [InlineData(1000, 2, 1e-3, 3000, 5, 3e-3, 2.3074809999084332e-4, -1.052101455910631)]
    [InlineData(900, 2.8, 1.48e-3, 1800, 8, 3.5e-3, 1.6593346811727216e-4, -0.8609049744255807)]
    public void Strip_WideFreePair_IsTimoshenkosBilayer(double e1, double h1, double a1, double e2, double h2, double a2, double curvature, double stress)
    {
        var free = Calibration.Default with { RimRestraint = 0 };
        var strip = Strip.Of(new TopSection(h1, e1, 10 * e1, 100, 0, a1, 1), new PatchSection(h2, e2, 100, a2), 1000, 1, 1, free);

        Check.Near(curvature, strip.Curvature, 1e-15);
        Check.Near(stress, strip.CoreMPa, 1e-12);
    }

    // σ = E_R C_R ΔM: 926.64 × 0.00148 × 6.6 = 9.051.
    [Fact]
    public void FarStress_WidthHeldFully_IsModulusTimesFreeStrain()
    {
        var held = Calibration.Default with { RimRestraint = 1 };
        var mismatch = Mismatch.Of(Sitka, new Material(Sitka.Wood, GrainLie.InPlane, Sawing.Quarter), 8, Angle.Zero, 30, 6.6, held);

        Check.Near(9.051, mismatch.Steady.FarStressMPa, 5e-4);
    }

    // A piece as the top itself would move, with the rim free, loads nothing.
    [Fact]
    public void Strip_SameWoodFreeRim_HasNoMismatch()
    {
        var free = Calibration.Default with { RimRestraint = 0 };
        var mismatch = Mismatch.Of(Sitka, new Material(Sitka.Wood, GrainLie.InPlane, Sawing.Quarter), 8, Angle.Zero, 30, Loss, free);

        Check.Near(0, mismatch.Steady.Index, 1e-12);
    }

    // Lekhnitskii's hole with the Sitka numbers: 2.3112 across the grain, 5.6950 along it.
    [Fact]
    public void HoleStress_Sitka_IsLekhnitskiis()
    {
        const double Along = 11880, Across = 926.64, Shear = 760.32, Poisson = 0.372;

        Check.Near(2.3112, HoleStress.Factor(Across, Along, Shear, Poisson * Across / Along), 5e-5);
        Check.Near(5.6950, HoleStress.Factor(Along, Across, Shear, Poisson), 1.5e-4);
    }

    // 1/E at an angle, Sitka in the L-R plane: 11 880, 6394, 2860, 1656, 1180, 927 MPa (standard orthotropic elasticity).
    [Theory]
    [InlineData(0, 11880)]
    [InlineData(15, 6394)]
    [InlineData(30, 2860)]
    [InlineData(45, 1656)]
    [InlineData(60, 1180)]
    [InlineData(90, 926.64)]
    public void Modulus_SitkaAtAnAngle_IsTheTurnedCompliance(double degrees, double expected) =>
        Check.Near(expected, Orthotropic.Modulus(11880, 926.64, 760.32, 0.372, Angle.FromDegrees(degrees)), 0.5);

    // Sitka, 45° to the top: e = 0.000765 both ways, γ = 0.00143 per % (sign by the sense of the turn).
    [Fact]
    public void FreeStrain_SitkaAt45_IsTheTurnedTensor()
    {
        var quarter = new Material(Sitka.Wood, GrainLie.InPlane, Sawing.Quarter);
        var strain = FreeStrain.Of(quarter, Angle.FromDegrees(45))!.Value;

        Check.Near(0.000765, strain.Across, 1e-12);
        Check.Near(0.000765, strain.Along, 1e-12);
        Check.Near(0.00143, strain.Shear, 1e-12);
        Check.Near(0.00148, strain.AcrossEdge(Angle.FromDegrees(45)), 1e-12, "its own across direction stands at 45° to x");
        Check.Near(0.00005, strain.AcrossEdge(Angle.FromDegrees(135)), 1e-12, "its grain stands at 135° to x");
    }

    [Fact]
    public void FreeStrain_AnyAngle_KeepsTraceAndIsItselfAcrossTheGrain()
    {
        foreach (var degrees in Shapes.Samples(Gen.Double[-180, 180], 200))
        {
            var strain = FreeStrain.InPlane(5e-5, 1.48e-3, Angle.FromDegrees(degrees));
            Check.Near(1.53e-3, strain.Across + strain.Along, 1e-15);
            Check.Near(1.48e-3, strain.AcrossEdge(Angle.FromDegrees(degrees)), 1e-15);
            Check.Near(5e-5, strain.AcrossEdge(Angle.FromDegrees(degrees + 90)), 1e-15);
        }
    }

    [Fact]
    public void Mismatch_SawingNotSaid_TakesTheWorseAndSaysSo()
    {
        var mismatch = Mismatch.Of(Sitka, Maple(Sawing.Unknown), 8, Angle.Zero, 30, Loss, Calibration.Default);

        Assert.True(mismatch.SawingAssumed);
        Assert.Equal(Sawing.Flat, mismatch.Sawing);
        Check.Near(0.553, mismatch.Index, 6e-4);
        Assert.NotNull(mismatch.FastDrop);
    }

    [Fact]
    public void Mismatch_ThinMember_HasNoFastDropCase() =>
        Assert.Null(Mismatch.Of(Sitka, Maple(Sawing.Flat), 5.5, Angle.Zero, 30, Loss, Calibration.Default).FastDrop);

    [Fact]
    public void Mismatch_Wetting_HasNoIndex() =>
        Assert.Equal(0, Mismatch.Of(Sitka, Maple(Sawing.Flat), 8, Angle.Zero, 30, -3, Calibration.Default).Index);

    // The piece's section is continuous where the special cases of 0° and 90° meet the general angle.
    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    public void Mismatch_NearlyStraightGrain_IsNearlyTheStraightCase(double degrees)
    {
        var straight = Mismatch.Of(Sitka, Maple(Sawing.Flat), 8, Angle.FromDegrees(degrees), 30, Loss, Calibration.Default);
        var nearly = Mismatch.Of(Sitka, Maple(Sawing.Flat), 8, Angle.FromDegrees(degrees + 1e-6), 30, Loss, Calibration.Default);

        Check.Near(straight.Index, nearly.Index, 1e-7);
    }

    // Upright maple block moving radially across: E_R, C_R, G_LR; curls like case B but for the glue line's shear.
    [Fact]
    public void Mismatch_UprightBlock_MovesAcrossBySawing()
    {
        var quarter = Mismatch.Of(Sitka, Maple(Sawing.Quarter) with { Lie = GrainLie.Upright }, 8, Angle.Zero, 30, Loss, Calibration.Default);
        var flat = Mismatch.Of(Sitka, Maple(Sawing.Flat) with { Lie = GrainLie.Upright }, 8, Angle.Zero, 30, Loss, Calibration.Default);

        Check.Near(4.728, quarter.Steady.DriverMPa, 6e-4);
        Check.Near(8.1937e-4, quarter.Steady.AxialCompliance, 1e-8);
        Check.Near(14.495, flat.Steady.DriverMPa, 6e-4);
    }

    private static Material Maple(Sawing sawing) => new(WoodTable.Find("sugar_maple")!, GrainLie.InPlane, sawing);

    private static Strip Solve(string wood, Sawing sawing, double grain, double thickness, double moved)
    {
        var material = new Material(WoodTable.Find(wood)!, GrainLie.InPlane, sawing);
        var mismatch = Mismatch.Of(Sitka, material, thickness, Angle.FromDegrees(grain), 30, Loss, Calibration.Default);
        return moved == 1 ? mismatch.Steady : mismatch.FastDrop!;
    }
}
