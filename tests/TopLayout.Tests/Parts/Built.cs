using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

/// <summary>Layouts of the presets, for tests.</summary>
internal static class Built
{
    public static string PresetText(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", name + ".toml"));

    public static Layout Preset(string name, Func<string, string>? edit = null)
    {
        var text = PresetText(name);
        var reading = DesignReader.Read(edit?.Invoke(text) ?? text, name + ".toml", Parameters.Table);
        Assert.Equal([], reading.Findings.Where(f => f.Severity == Severity.Error).Select(FindingText.Of));
        var (layout, findings) = LayoutBuilder.Build(reading.Design!);
        Assert.Equal([], findings.Select(FindingText.Of));
        return layout!;
    }
}
