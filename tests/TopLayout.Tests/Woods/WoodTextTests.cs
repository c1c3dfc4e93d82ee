using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Woods;

public class WoodTextTests
{
    [Fact]
    public void Whole_AWood_ShowsEachValueWithUnitTrustAndSource()
    {
        var text = WoodText.Whole(WoodTable.Find("sitka_spruce")!);

        Assert.StartsWith("sitka_spruce: Sitka spruce (Picea sitchensis)\n\n", text, StringComparison.Ordinal);
        Assert.Contains(
            "movement across the growth rings: 0.00148 per % moisture  [found in the source: Wood Handbook, FPL-GTR-190 (2010), Table 13-5]\n", text, StringComparison.Ordinal);
        Assert.Contains("shrinkage across the growth rings, green to oven-dry: 4.3 %  [FROM MEMORY, check it before relying on it: ", text, StringComparison.Ordinal);
        Assert.Contains("modulus along the grain, E_L: 11880 MPa  [derived from found values: ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Whole_WhatIsUnknownOrAssumed_SaysSo()
    {
        Assert.Contains("modulus along the grain, E_L: unknown\n", WoodText.Whole(WoodTable.Find("ebony_african")!), StringComparison.Ordinal);
        Assert.Contains("rolling shear modulus G_RT: 277.2 MPa  [ASSUMED, no source has it: ", WoodText.Whole(WoodTable.Find("sugar_maple")!), StringComparison.Ordinal);
    }

    [Fact]
    public void List_OfWoods_SaysWhatIsKnownAndUnknown()
    {
        var lines = WoodText.List(WoodTable.All).Split('\n');

        Assert.Equal(WoodTable.All.Length + 1, lines.Length);
        Assert.Equal(
            "sitka_spruce          Sitka spruce              known: movement, shrinkage, gravity, stiffness along, stiffness across, Poisson's ratios, strength",
            lines[0]);
        Assert.Contains(lines, l => l.EndsWith("known: shrinkage; unknown: movement, gravity, stiffness along, stiffness across, Poisson's ratios, strength", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("sugar_maple ", StringComparison.Ordinal) && l.EndsWith("; partly: strength", StringComparison.Ordinal));
    }
}
