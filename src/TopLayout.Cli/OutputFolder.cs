using TopLayout.Plans;

namespace TopLayout.Cli;

/// <summary>
/// The folder that <c>draw</c> writes into. Files appear whole or not at all: all are written into a folder of their own inside it, then
/// renamed to their places. The manifest, written last, names every file with its hash; only listed files that still have their hash are
/// replaced or removed, so nothing that somebody else put there or changed is lost, and no sheet of another design stays behind.
/// </summary>
internal sealed class OutputFolder(string path)
{
    private const string StagingName = ".toplayout.part";
    private readonly string _path = path;

    private string Staging => Path.Combine(_path, StagingName);

    /// <summary>
    /// Replaces what the folder holds by the given files, or only what they replace when the rest is kept and belongs to the same design. Nothing is
    /// changed where names stand in the way; folders do even when foreign files may be overwritten.
    /// </summary>
    /// <param name="files">The files.</param>
    /// <param name="design">What tells their design from others.</param>
    /// <param name="keepsRest">Whether other files of the same design stay.</param>
    /// <param name="overwrite">Whether foreign files may be replaced.</param>
    /// <exception cref="IOException">The folder cannot be written, or another run is writing into it.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder cannot be written.</exception>
    public Replaced Replace(IReadOnlyList<OutputFile> files, string design, bool keepsRest, bool overwrite)
    {
        Directory.CreateDirectory(_path);
        using var held = FolderLock.Hold(_path);
        var known = Manifest.Read(_path);
        var wanted = files.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        var kept = keepsRest && known?.Design == design ? known : null;
        var stale = kept is null ? (known?.Names ?? []).Where(n => !wanted.Contains(n)).ToList() : [];
        var inTheWay = InTheWay([.. wanted, .. stale], known, overwrite);
        if (inTheWay.Count == 0)
        {
            var written = Manifest.Of(design, files);
            Replace(files, stale, known, kept is null ? written : written.Beside(kept));
        }

        return new Replaced(inTheWay, stale);
    }

    // No manifest: nothing is ours. One that somebody else wrote is itself in the way.
    private List<string> InTheWay(IEnumerable<string> names, Manifest? known, bool overwrite)
    {
        var manifest = Path.Combine(_path, Manifest.Name);
        var foreign = names.Where(n => IsForeign(n, known, overwrite));
        if (Directory.Exists(manifest) || (!overwrite && known is null && File.Exists(manifest)))
        {
            foreign = foreign.Append(Manifest.Name);
        }

        return [.. foreign.Order(StringComparer.Ordinal)];
    }

    private bool IsForeign(string name, Manifest? known, bool overwrite)
    {
        var path = Path.Combine(_path, name);
        var folder = Path.GetDirectoryName(path)!;
        return Directory.Exists(path)
            || File.Exists(folder)
            || (!overwrite && File.Exists(path) && known?.Lists(name, Manifest.Hash(File.ReadAllBytes(path))) != true);
    }

    private void Replace(IReadOnlyList<OutputFile> files, List<string> stale, Manifest? known, Manifest next)
    {
        // What a run that was killed has left behind.
        DeleteStaging();
        try
        {
            Directory.CreateDirectory(Staging);
            foreach (var file in files)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(Staging, file.Name))!);
                WriteWhole(Path.Combine(Staging, file.Name), file.Content);
            }

            // Should the run die among the renames, either version of each file is known to be ours.
            WriteManifest(next.Or(known));
            foreach (var file in files)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_path, file.Name))!);
                File.Move(Path.Combine(Staging, file.Name), Path.Combine(_path, file.Name), overwrite: true);
            }

            foreach (var name in stale)
            {
                Delete(name);
            }

            WriteManifest(next);
        }
        finally
        {
            DeleteStaging();
        }
    }

    // A folder of sheets goes with the last of them.
    private void Delete(string name)
    {
        var path = Path.Combine(_path, name);
        if (!File.Exists(path))
        {
            return;
        }

        File.Delete(path);
        if (name.Contains('/', StringComparison.Ordinal) && Path.GetDirectoryName(path) is { } folder && !Directory.EnumerateFileSystemEntries(folder).Any())
        {
            Directory.Delete(folder);
        }
    }

    private void DeleteStaging()
    {
        if (Directory.Exists(Staging))
        {
            Directory.Delete(Staging, recursive: true);
        }
    }

    private void WriteManifest(Manifest manifest)
    {
        var temporary = Path.Combine(Staging, Manifest.Name);
        WriteWhole(temporary, manifest.Bytes());
        File.Move(temporary, Path.Combine(_path, Manifest.Name), overwrite: true);
    }

    private static void WriteWhole(string path, byte[] content)
    {
        using var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
        stream.Write(content);
        stream.Flush(flushToDisk: true);
    }

    /// <summary>What came of a replacement.</summary>
    /// <param name="InTheWay">Names that stand in the way, in order; then nothing was changed.</param>
    /// <param name="TakenAway">Names of the files of an earlier run that went.</param>
    internal readonly record struct Replaced(IReadOnlyList<string> InTheWay, IReadOnlyList<string> TakenAway);
}
