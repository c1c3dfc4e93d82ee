using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Checks;

public class IdleKeysCheckTests
{
    [Theory]
    [InlineData("auditorium", "style = \"pins\"", "style = \"plain\"", "pins, pins_behind_saddle, pin_line, pin_diameter")]
    [InlineData("auditorium", "style = \"pins\"", "style = \"pins\"\ntie_block = 10\ntie_holes = 6", "tie_block, tie_holes")]
    [InlineData("auditorium", "diameter = 100", "diameter = 100\ncorner_radius = 9\nstraight_side = \"tail\"", "corner_radius, straight_side")]
    [InlineData("straight-tongue", "shape = \"straight\"", "shape = \"straight\"\nedge_angle = 20\nroot_hollow = 4", "edge_angle, root_hollow")]
    public void Keys_ThatAnotherLineSetsAside_AreRemarked(string preset, string line, string edited, string keys)
    {
        var layout = Built.Preset(preset, t => t.Replaced(line, edited));

        var said = IdleKeysCheck.Of(layout).ToList();

        Assert.Equal(keys.Split(", ").Order(StringComparer.Ordinal), said.Select(f => f.Subject).Order(StringComparer.Ordinal));
        Assert.All(said, f => Assert.Equal((Severity.Remark, Rules.DrawnOtherwise), (f.Severity, f.Rule)));
        Assert.All(said, f => Assert.StartsWith($"`{f.Subject}` says nothing of", f.Sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void TrussRod_IntoATongueThatIsNotThere_IsRemarked() =>
        Assert.Equal("into_tongue", Assert.Single(IdleKeysCheck.Of(Built.Preset("auditorium", t => t.With("[truss_rod]\ninto_tongue = 20")))).Subject);

    [Fact]
    public void Presets_HaveNoIdleKeys() =>
        Assert.All(Built.PresetNames, p => Assert.Empty(IdleKeysCheck.Of(Built.Preset(p))));
}
