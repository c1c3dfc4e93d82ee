using System.Globalization;
using TopLayout.Lutherie.Mechanics;

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
    }
}
