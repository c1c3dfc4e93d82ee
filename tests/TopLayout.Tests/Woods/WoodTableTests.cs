using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Woods;

public class WoodTableTests
{
    // Wood Handbook, FPL-GTR-190 (2010), Tables 13-5, 5-1, 5-2, 5-3a; E_L = 1.10 × 10.8 GPa.
    [Fact]
    public void Find_SitkaSpruce_HasTheHandbookNumbers()
    {
        var wood = WoodTable.Find("sitka_spruce")!;

        Assert.Equal("Picea sitchensis", wood.ScientificName);
        Check.Near(0.00148, wood.MovementRadial!.Value.Value, 0, "C_R");
        Check.Near(0.00263, wood.MovementTangential!.Value.Value, 0, "C_T");
        Check.Near(11880, wood.ModulusAlongMPa!.Value.Value, 1e-9, "E_L");
        Check.Near(926.64, wood.ModulusRadialMPa!.Value.Value, 1e-9, "E_R");
        Check.Near(35.64, wood.ShearModulusRollingMPa!.Value.Value, 1e-9, "G_RT");
        Check.Near(0.372, wood.PoissonLongitudinalRadial!.Value.Value, 0, "nu_LR");
        Check.Near(2.6, wood.TensionAcrossMPa!.Value.Value, 0, "tension across");
        Assert.Equal("Wood Handbook, FPL-GTR-190 (2010), Table 13-5", wood.MovementRadial.Value.Source);
        Assert.Equal(Provenance.Found, wood.MovementRadial.Value.Provenance);
        Assert.Equal(Provenance.Memory, wood.ShrinkageRadialPercent!.Value.Provenance);
        Assert.Equal(Provenance.Derived, wood.ModulusRadialMPa.Value.Provenance);
    }

    [Fact]
    public void Find_WhatNoSourceHas_StaysUnknown()
    {
        Assert.Null(WoodTable.Find("ebony_african")!.ModulusAlongMPa);
        Assert.Null(WoodTable.Find("sugar_maple")!.TensionAcrossMPa);
        Assert.Null(WoodTable.Find("red_spruce")!.ShearModulusRollingMPa);
        Assert.Null(WoodTable.Find("rosewood_indian")!.MovementRadial);
        Assert.Null(WoodTable.Find("no_such_wood"));
    }

    [Fact]
    public void Find_MapleRollingShear_IsAssumedAndSaysSo()
    {
        var rolling = WoodTable.Find("SUGAR_MAPLE")!.ShearModulusRollingMPa!.Value;

        Check.Near(277.2, rolling.Value, 1e-9, "0.020 E_L");
        Assert.Equal(Provenance.Assumed, rolling.Provenance);
        Assert.Contains("assumed", rolling.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void All_EveryValue_HasASourceAndEveryKeyIsUnique()
    {
        Assert.Equal(24, WoodTable.All.Length);
        Assert.Equal(24, WoodTable.Keys.Distinct().Count());
        foreach (var wood in WoodTable.All)
        {
            var values = typeof(Wood).GetProperties().Where(p => p.PropertyType == typeof(WoodValue?)).Select(p => (WoodValue?)p.GetValue(wood));
            Assert.All(values, v => Assert.True(v is null || v.Value.Source.Length > 0, wood.Key));
            Assert.All(values, v => Assert.True(v is null || v.Value.Value > 0, wood.Key));
        }
    }

    // Wood Handbook Eq. 13-3 with 10 % moisture gives Table 13-5 back from Table 4-3 for spruce, maple and cherry.
    [Theory]
    [InlineData("sitka_spruce")]
    [InlineData("sugar_maple")]
    [InlineData("black_cherry")]
    [InlineData("yellow_birch")]
    public void Movement_FromShrinkage_AgreesWithTheTable(string key)
    {
        var wood = WoodTable.Find(key)!;

        Check.Near(wood.MovementRadial!.Value.Value, Movement.GrowthFromShrinkage(1, wood.ShrinkageRadialPercent!.Value.Value, 10, 11), 5e-6, key);
        Check.Near(wood.MovementTangential!.Value.Value, Movement.GrowthFromShrinkage(1, wood.ShrinkageTangentialPercent!.Value.Value, 10, 11), 5e-6, key);
    }
}
