using System.Runtime.CompilerServices;

namespace TopLayout.Tests.HouseRules;

/// <summary>The project's own files, for tests that hold its rules.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", "..", ".."));

    public static IEnumerable<string> SourceFiles(string folder) => Directory
        .EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"))
        .Order(StringComparer.Ordinal);

    public static string Name(string file) => Path.GetRelativePath(Root, file).Replace('\\', '/');

    private static string Here([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
