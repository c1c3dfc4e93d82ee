using System.Globalization;
using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Mechanics;

public class MoistureTests
{
    // Wood Handbook, FPL-GTR-190 (2010), Table 4-2 against Eq. 4-5: the table prints one decimal, so 0.05 of rounding and 0.01 of fit.
    [Fact]
    public void AtEquilibrium_WholeHandbookTable_AgreesWithin006()
    {
        using var stream = typeof(MoistureTests).Assembly.GetManifestResourceStream("emc_table.csv")!;
        var lines = new StreamReader(stream).ReadToEnd().Split('\n').Where(l => l.Length > 0 && char.IsAsciiDigit(l[0])).ToList();

        Assert.Equal(192, lines.Count);
        foreach (var line in lines)
        {
            var n = line.Split(',').Select(t => double.Parse(t, CultureInfo.InvariantCulture)).ToArray();
            Check.Near(n[2], MoistureContent.AtEquilibrium(n[1], (n[0] - 32) / 1.8), 0.06, line);
        }
    }

    // Eq. 4-5 worked out once by hand at 21 °C.
    [Theory]
    [InlineData(20, 4.49)]
    [InlineData(25, 5.36)]
    [InlineData(30, 6.17)]
    [InlineData(45, 8.46)]
    [InlineData(50, 9.25)]
    [InlineData(60, 10.97)]
    [InlineData(65, 11.96)]
    public void AtEquilibrium_At21Degrees_IsTheEquation(double humidity, double expected) =>
        Check.Near(expected, MoistureContent.AtEquilibrium(humidity, 21), 0.01);

    [Fact]
    public void Season_Default_LosesFivePointSixPercent()
    {
        Check.Near(5.6065, Season.Default.MoistureLossPercent, 5e-5);
        Check.Near(3.10, new Season(45, 25, 21).MoistureLossPercent, 0.005);
        Assert.True(new Season(25, 60, 21).MoistureLossPercent < 0);
    }

    // Wood Handbook p. 13-17: white fir, flat-grained, 232 mm, 8 to 11 %, C_T 0.00245, prints 1.7 mm (233.7 mm).
    [Fact]
    public void Growth_HandbookWhiteFir_Is1705() => Check.Near(1.7052, Movement.Growth(232, 0.00245, 3), 1e-9);

    // 400 mm of quartersawn Sitka (S_R 4.3, C_R 0.00148), 65 to 20 % humidity at 21.1 °C, by Eq. 13-3 and Eq. 13-2.
    [Fact]
    public void Growth_SitkaTop_AgreesWithBothEquations()
    {
        var (from, to) = (MoistureContent.AtEquilibrium(65, 21.1), MoistureContent.AtEquilibrium(20, 21.1));

        Check.Near(-4.394, Movement.GrowthFromShrinkage(400, 4.3, from, to), 0.0005);
        Check.Near(-4.420, Movement.Growth(400, 0.00148, to - from), 0.0005);
        Check.Near(-7.819, Movement.GrowthFromShrinkage(400, 7.5, from, to), 0.0005);
        Check.Near(-7.855, Movement.Growth(400, 0.00263, to - from), 0.0005);
    }

    // The same top in other seasons, by Eq. 4-5 and Eq. 13-2: 45 to 35, 65 and 20 %.
    [Theory]
    [InlineData(35, -0.898)]
    [InlineData(65, 2.072)]
    [InlineData(20, -2.349)]
    public void Growth_SitkaTopFrom45Percent_IsWorkedOut(double used, double expected) =>
        Check.Near(expected, Movement.Growth(400, 0.00148, -new Season(45, used, 21.1).MoistureLossPercent), Math.Abs(expected) * 1e-3);

    // A spruce brace 300 mm long glued at an angle to the grain, 65 to 20 % (7.4664 %): the top shrinks along the brace by
    // a_L cos² + C_R sin² per %, the brace by a_L; over 300 mm 0, 0.801, 1.602, 2.402 and 3.203 mm (turned tensor, by hand).
    [Theory]
    [InlineData(0, 0)]
    [InlineData(30, -0.801)]
    [InlineData(45, -1.602)]
    [InlineData(60, -2.402)]
    [InlineData(90, -3.203)]
    public void FreeStrain_BraceAtAnAngle_TheTopShrinksMoreAlongIt(double degrees, double expected)
    {
        var top = FreeStrain.InPlane(5.0e-5, 0.00148, Angle.Zero);
        var brace = FreeStrain.InPlane(5.0e-5, 0.00148, Angle.FromDegrees(degrees));
        var loss = new Season(65, 20, 21.1).MoistureLossPercent;

        // Along the brace: the direction whose normal stands at `degrees` to the brace's own across direction.
        Check.Near(expected, -300 * loss * (top - brace).AcrossEdge(Angle.FromDegrees(90 + degrees)), 0.0016);
    }

    // Full restraint across the grain: 926.64 MPa × (0.00148 − 0.00005) = 1.325 MPa per %; 2.6 MPa are reached after 1.962 %, from 45 %
    // down to 32.1 % at 21.1 °C.
    [Fact]
    public void Strip_RigidPieceAcross_HoldsTheTopFully()
    {
        var free = Calibration.Default with { RimRestraint = 0 };
        var top = new TopSection(2.8, 926.64, 11880, 35.64, 0.372, 0.00148, 2.6);
        Strip Rigid(double loss) => Strip.Of(top, new PatchSection(1000, 1e9, 1e9, 5.0e-5), 1e4, loss, 1, free);

        Check.Near(1.325, Rigid(1).CoreMPa, 0.001);
        Check.Near(2.6, Rigid(new Season(45, 32.1, 21.1).MoistureLossPercent).CoreMPa, 0.01);
        Check.Near(1, Rigid(Season.Default.MoistureLossPercent).RestraintIndex, 0.001, "what the creep factor was set for");
    }

    // Eq. 13-3 for one percent from 10 %: Brazilian rosewood 0.00099 and 0.00158, Indian rosewood 0.00092 and 0.00201, cocobolo 0.00092
    // and 0.00148, East Indian ebony 0.00187 and 0.00312; Sitka spruce as Table 13-5 has it.
    [Theory]
    [InlineData("rosewood_brazilian", 0.00099, 0.00158)]
    [InlineData("rosewood_indian", 0.00092, 0.00201)]
    [InlineData("cocobolo", 0.00092, 0.00148)]
    [InlineData("ebony_east_indian", 0.00187, 0.00312)]
    [InlineData("sitka_spruce", 0.00148, 0.00263)]
    public void WithMovement_WoodOfKnownShrinkage_MovesByEquation13Dash3(string key, double radial, double tangential)
    {
        var wood = WoodCases.WithMovement(WoodTable.Find(key)!);

        Check.Near(radial, wood.MovementRadial!.Value.Value, 5.5e-6);
        Check.Near(tangential, wood.MovementTangential!.Value.Value, 5.5e-6);
    }
}
