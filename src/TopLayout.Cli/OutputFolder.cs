using System.Security.Cryptography;
using System.Text.Json;
using TopLayout.Plans;

namespace TopLayout.Cli;

/// <summary>
/// The folder that <c>draw</c> writes into. Files appear whole or not at all: each is written beside its place and renamed. The
/// manifest, written last, names every file with its hash; only listed files that still have their hash are replaced or removed, so
/// nothing that somebody else put there or changed is lost, and no sheet of an earlier design stays behind.
/// </summary>
internal sealed class OutputFolder(string path)
{
    /// <summary>Name of the manifest.</summary>
    public const string ManifestName = "toplayout.files.json";

    private const string LockName = ".toplayout.lock";
    private readonly string _path = path;

    /// <summary>
    /// Replaces what the folder holds by the given files. Returns the names that stand in the way, in order; then nothing was changed.
    /// </summary>
    /// <exception cref="IOException">The folder cannot be written, or another run is writing into it.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder cannot be written.</exception>
    public IReadOnlyList<string> Replace(IReadOnlyList<OutputFile> files, bool overwrite)
    {
        Directory.CreateDirectory(_path);
        using var held = new FileStream(
            Path.Combine(_path, LockName), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        var known = ReadManifest();
        var wanted = files.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        var stale = known.Keys.Where(n => !wanted.Contains(n)).Order(StringComparer.Ordinal).ToList();
        var inTheWay = overwrite
            ? []
            : wanted.Concat(stale).Where(n => IsForeign(n, known)).Order(StringComparer.Ordinal).ToList();
        if (inTheWay.Count > 0)
        {
            return inTheWay;
        }

        var written = WriteBeside(files);
        try
        {
            // Should the run die among the renames, either version of each file is known to be ours.
            var both = known.ToDictionary(k => k.Key, k => k.Value, StringComparer.Ordinal);
            foreach (var f in files)
            {
                both[f.Name] = [.. both.GetValueOrDefault(f.Name, []), Hash(f.Content)];
            }

            WriteManifest(both);
            foreach (var (temporary, final) in written)
            {
                File.Move(temporary, final, overwrite: true);
            }

            foreach (var name in stale)
            {
                File.Delete(Path.Combine(_path, name));
            }

            WriteManifest(files.ToDictionary(f => f.Name, f => new[] { Hash(f.Content) }, StringComparer.Ordinal));
            return [];
        }
        finally
        {
            foreach (var (temporary, _) in written)
            {
                File.Delete(temporary);
            }
        }
    }

    private List<(string Temporary, string Final)> WriteBeside(IReadOnlyList<OutputFile> files)
    {
        var written = new List<(string Temporary, string Final)>();
        try
        {
            foreach (var file in files)
            {
                var final = Path.Combine(_path, file.Name);
                written.Add((Temporary(final), final));
                WriteWhole(written[^1].Temporary, file.Content);
            }

            return written;
        }
        catch
        {
            written.ForEach(w => File.Delete(w.Temporary));
            throw;
        }
    }

    private static string Temporary(string final) =>
        Path.Combine(Path.GetDirectoryName(final)!, $".{Path.GetFileName(final)}.{Environment.ProcessId}.part");

    private static void WriteWhole(string path, byte[] content)
    {
        using var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
        stream.Write(content);
        stream.Flush(flushToDisk: true);
    }

    private bool IsForeign(string name, Dictionary<string, string[]> known)
    {
        var path = Path.Combine(_path, name);
        if (Directory.Exists(path))
        {
            return true;
        }

        return File.Exists(path) && !(known.TryGetValue(name, out var hashes) && hashes.Contains(Hash(File.ReadAllBytes(path))));
    }

    // A manifest that is not ours is itself a foreign file: nothing is known then, so nothing is replaced.
    private Dictionary<string, string[]> ReadManifest()
    {
        var path = Path.Combine(_path, ManifestName);
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(path));
            return json.RootElement.GetProperty("files").EnumerateObject()
                .Where(p => Path.GetFileName(p.Name) == p.Name)
                .ToDictionary(p => p.Name, p => p.Value.EnumerateArray().Select(v => v.GetString() ?? "").ToArray(), StringComparer.Ordinal);
        }
        catch (Exception e) when (e is FileNotFoundException or JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return [];
        }
    }

    private void WriteManifest(Dictionary<string, string[]> files)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("about", "files written by toplayout draw, with the SHA-256 of each; draw replaces only these");
            json.WriteStartObject("files");
            foreach (var (name, hashes) in files.OrderBy(f => f.Key, StringComparer.Ordinal))
            {
                json.WriteStartArray(name);
                foreach (var hash in hashes)
                {
                    json.WriteStringValue(hash);
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        buffer.WriteByte((byte)'\n');
        var final = Path.Combine(_path, ManifestName);
        WriteWhole(Temporary(final), buffer.ToArray());
        File.Move(Temporary(final), final, overwrite: true);
    }

    private static string Hash(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));
}
