using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;
using TopLayout.Plans;

namespace TopLayout.Tests.Woods;

/// <summary>Woods that the design file describes itself.</summary>
public class OwnWoodTests
{
    private const string Loft = """
        name = "n"
        units = "in"
        scale.length = 25.4
        top.wood = "loft_spruce"
        tongue = { wood = "loft_spruce", length = "24 mm" }

        [[wood]]
        key = "loft_spruce"
        name = "spruce from the loft"
        movement_radial = 0.0014
        movement_tangential = 0.0026
        modulus_along = 11
        modulus_radial_ratio = 0.08
        source = "two strips weighed and measured over a winter"

        [[wood]]
        key = "plum"
        name = "plum"
        modulus_tangential_ratio = 0.06
        source = "felled in the garden"

        """;

    [Fact]
    public void Read_AWoodOfTheFile_HasItsNumbersAndSaysWhereTheyAreFrom()
    {
        var design = Read(Loft).Design!;

        var wood = Plate.Read(design).Wood;

        Assert.Equal(("loft_spruce", "spruce from the loft", ""), (wood.Key, wood.Name, wood.ScientificName));
        Assert.Equal(
            new WoodValue(0.0014, Provenance.Described, "described in the design file: two strips weighed and measured over a winter"), wood.MovementRadial);
        Check.Near(11_000, wood.ModulusAlongMPa!.Value.Value, 1e-9);
        Check.Near(880, wood.ModulusRadialMPa!.Value.Value, 1e-9);
        Assert.Equal(Provenance.Described, wood.ModulusRadialMPa.Value.Provenance);
        Assert.Null(wood.ModulusTangentialMPa);
        Assert.Null(wood.TensionAcrossMPa);
        Assert.Null(wood.ShrinkageRadialPercent);
    }

    [Fact]
    public void Shelf_OfADesign_HoldsItsOwnWoodsAndTheBuiltInOnes()
    {
        var shelf = new WoodShelf(Read(Loft).Design!);

        Assert.Equal(WoodTable.Keys.Prepend("plum").Prepend("loft_spruce"), shelf.All.Select(w => w.Key));
        Assert.Null(shelf.All.ElementAt(1).ModulusTangentialMPa);
    }

    [Fact]
    public void Check_PartsOfAnOwnWood_AreMadeOfIt()
    {
        var layout = Pipeline.Check(Loft, "t.toml").Top!.Layout;

        Assert.Equal("spruce from the loft", layout.Top.Wood.Name);
        Assert.Equal("spruce from the loft", layout.Find(Tongue.Name)!.Material!.Wood.Name);
        Assert.Equal("Indian rosewood", layout.Find(Bridge.Name)!.Material!.Wood.Name);
    }

    [Fact]
    public void Check_TheNumbersOfABuiltInWood_GiveTheSameFindingsUnderAnotherKey()
    {
        var sitka = WoodTable.Find("sitka_spruce")!;
        double Share(WoodValue? value) => value!.Value.Value / sitka.ModulusAlongMPa!.Value.Value;
        var own = FormattableString.Invariant($"""

            [[wood]]
            key = "copy"
            name = "Sitka spruce"
            source = "the built-in table"
            movement_radial = {sitka.MovementRadial!.Value.Value}
            movement_tangential = {sitka.MovementTangential!.Value.Value}
            shrinkage_radial = {sitka.ShrinkageRadialPercent!.Value.Value}
            shrinkage_tangential = {sitka.ShrinkageTangentialPercent!.Value.Value}
            specific_gravity = {sitka.SpecificGravity!.Value.Value}
            modulus_along = {sitka.ModulusAlongMPa!.Value.Value / 1000}
            modulus_radial_ratio = {Share(sitka.ModulusRadialMPa)}
            modulus_tangential_ratio = {Share(sitka.ModulusTangentialMPa)}
            shear_radial_ratio = {Share(sitka.ShearModulusLongitudinalRadialMPa)}
            shear_tangential_ratio = {Share(sitka.ShearModulusLongitudinalTangentialMPa)}
            shear_rolling_ratio = {Share(sitka.ShearModulusRollingMPa)}
            poisson_radial = {sitka.PoissonLongitudinalRadial!.Value.Value}
            poisson_tangential = {sitka.PoissonLongitudinalTangential!.Value.Value}
            tension_across = {sitka.TensionAcrossMPa!.Value.Value}
            shear_strength = {sitka.ShearStrengthMPa!.Value.Value}
            """);
        var text = TopLayout.Tests.Parts.Built.PresetText("straight-tongue");

        var (before, after) = (Pipeline.Check(text, "t.toml"), Pipeline.Check(text.Replace("\"sitka_spruce\"", "\"copy\"", StringComparison.Ordinal) + own, "t.toml"));

        Assert.Equal(before.Findings.Select(FindingText.Of), after.Findings.Select(FindingText.Of));
    }

    [Fact]
    public void Read_AWoodThatSaysTooLittleOrTooMuch_IsNamed()
    {
        var printed = string.Join("\n", Read("name = \"n\"\nunits = \"mm\"\nscale.length = 645\n[[wood]]\nkey = \"black_cherry\"\nname = \"cherry\"\n").Findings.Select(FindingText.Of));

        Assert.Equal(
            """
            t.toml:4:1: error TL1001: `source` is missing from `[[wood]]`
              hint: add a line such as `source = "..."` below `[[wood]]`
            t.toml:5:7: error TL1012: the wood `black_cherry` is described here, and the built-in table already has it
              hint: give it a key of its own, such as "my_black_cherry"
            """.ReplaceLineEndings("\n"),
            printed);
    }

    [Fact]
    public void Read_AnUnknownWood_HintsAtTheFilesOwn()
    {
        var finding = Assert.Single(Read(Loft.Replace("top.wood = \"loft_spruce\"", "top.wood = \"plumb\"", StringComparison.Ordinal)).Findings);

        Assert.Equal("did you mean `wood = \"plum\"`?", finding.Cure);
    }

    private static Reading Read(string text) => DesignReader.Read(text, "t.toml", Parameters.Table);
}
