using TopLayout.Drawing;
using TopLayout.Plans;
using TopLayout.Plans.Sheets;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>Sheets of the presets, and what they say, for tests.</summary>
internal static class Drawn
{
    /// <summary>The sheets of a kind.</summary>
    public static IReadOnlyList<Sheet> All(string preset, string kind, Func<string, string>? edit = null)
    {
        var text = Built.PresetText(preset);
        return [.. SheetCatalog.All.Single(e => e.Name == kind).Draw(Pipeline.Check(edit?.Invoke(text) ?? text, preset + ".toml").Top!)];
    }

    /// <summary>The one sheet of a name.</summary>
    public static Sheet One(string preset, string kind, string? name = null, Func<string, string>? edit = null) =>
        All(preset, kind, edit).Single(s => s.Name == (name ?? kind));

    /// <summary>All labels.</summary>
    public static IEnumerable<LabelShape> Labels(this Sheet sheet) => sheet.Shapes.OfType<LabelShape>();

    /// <summary>The one label of a text.</summary>
    public static LabelShape Label(this Sheet sheet, string text) => Assert.Single(sheet.Labels(), l => l.Text == text);

    /// <summary>All texts.</summary>
    public static IReadOnlyList<string> Words(this Sheet sheet) => [.. sheet.Labels().Select(l => l.Text)];

    /// <summary>Lines of a part in a role.</summary>
    public static IReadOnlyList<ContourShape> Lines(this Sheet sheet, string part, Role? role = null) =>
        [.. sheet.Shapes.OfType<ContourShape>().Where(s => s.Part == part && (role is null || s.Role == role))];
}
