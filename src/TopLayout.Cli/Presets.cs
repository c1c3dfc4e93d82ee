using System.Reflection;
using System.Text;

namespace TopLayout.Cli;

/// <summary>The designs that come with the program.</summary>
internal static class Presets
{
    private const string Prefix = "preset/";

    /// <summary>Their names, sorted.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..]).Order(StringComparer.Ordinal),
    ];

    /// <summary>The text of one.</summary>
    public static string Text(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>The first line of its comment: what it is.</summary>
    public static string Summary(string name) => Text(name).Split('\n')[0].TrimStart('#', ' ').TrimEnd();
}
