using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

/// <summary>Layouts of the presets, for tests.</summary>
internal static class Built
{
    public static IEnumerable<string> PresetNames { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "presets"), "*.toml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

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

    /// <summary>What does not fit in a preset after an edit: sentence, cure, and the keys (or headers) its places stand at.</summary>
    public static IReadOnlyList<(string Sentence, string? Cure, string Keys)> Misfits(string name, Func<string, string> edit)
    {
        var text = edit(PresetText(name));
        var reading = DesignReader.Read(text, name + ".toml", Parameters.Table);
        Assert.Equal([], reading.Findings.Where(f => f.Severity == Severity.Error).Select(FindingText.Of));
        string KeyAt(SourcePlace place) => text.Split('\n')[place.Line - 1].Split('=', '#')[0].Trim();
        return [.. Failed(reading.Design!).Select(f => (f.Sentence, f.Cure, string.Join(' ', f.OtherPlaces.Prepend(f.Place!.Value).Select(KeyAt))))];
    }

    /// <summary>What keeps a design from being built, or fails or warns when it is.</summary>
    public static IReadOnlyList<Finding> Failed(Design design)
    {
        var (layout, findings) = LayoutBuilder.Build(design);
        return layout is null ? findings : [.. LayoutChecks.Of(layout).Where(f => f.Severity >= Severity.Warning)];
    }

    /// <summary>The text with a piece of it replaced; the piece must stand there.</summary>
    public static string Replaced(this string text, string from, string to)
    {
        Assert.Contains(from, text, StringComparison.Ordinal);
        return text.Replace(from, to, StringComparison.Ordinal);
    }

    /// <summary>The text without a section.</summary>
    public static string Without(this string text, string header)
    {
        var start = text.IndexOf(header, StringComparison.Ordinal);
        Assert.True(start >= 0, header);
        return text.Remove(start, text.IndexOf("\n[", start, StringComparison.Ordinal) + 1 - start);
    }

    /// <summary>The text with another rosette in the place of its own and its rings; none when the lines are left out.</summary>
    public static string WithRosette(this string text, string? lines = "margin = 4\nwidth = 9\ndepth = 1.4\n")
    {
        var (start, last) = (text.IndexOf("[rosette]", StringComparison.Ordinal), text.LastIndexOf("[[ring]]", StringComparison.Ordinal));
        Assert.True(start >= 0, "no rosette");
        var end = text.IndexOf("\n[", Math.Max(start, last), StringComparison.Ordinal) + 1;
        return text[..start] + (lines is null ? "" : $"[rosette]\n{lines}\n") + text[end..];
    }

    /// <summary>The text with sections added before the last.</summary>
    public static string With(this string text, string sections) => text.Replaced("[season]", sections + "\n\n[season]");
}
