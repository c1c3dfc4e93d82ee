using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text.Json;
using TopLayout.Plans;

namespace TopLayout.Cli;

/// <summary>The list of the files that <c>draw</c> wrote into a folder, each with the hashes by which it is known to be ours.</summary>
internal sealed class Manifest
{
    /// <summary>Its file name.</summary>
    public const string Name = "toplayout.files.json";

    private const string About = "files written by toplayout draw, with the SHA-256 of each; draw replaces only these";
    private readonly ImmutableSortedDictionary<string, ImmutableArray<string>> _hashes;

    private Manifest(string? design, IEnumerable<KeyValuePair<string, ImmutableArray<string>>> hashes) =>
        (Design, _hashes) = (design, hashes.ToImmutableSortedDictionary(StringComparer.Ordinal));

    /// <summary>What tells the design of the files from others; null where the manifest does not say.</summary>
    public string? Design { get; }

    /// <summary>The listed names, sorted.</summary>
    public IEnumerable<string> Names => _hashes.Keys;

    /// <summary>The manifest of files about to be written.</summary>
    public static Manifest Of(string design, IEnumerable<OutputFile> files) => new(design, files.Select(f => KeyValuePair.Create(f.Name, ImmutableArray.Create(Hash(f.Content)))));

    /// <summary>The manifest of a folder; null when there is none, or when it is not one that this program wrote.</summary>
    public static Manifest? Read(string folder)
    {
        var path = Path.Combine(folder, Name);
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(path));
            return json.RootElement.GetProperty("about").GetString() == About
                ? new Manifest(json.RootElement.TryGetProperty("design", out var design) ? design.GetString() : null, [.. json.RootElement.GetProperty("files").EnumerateObject().Select(Entry)])
                : null;
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentException or FormatException)
        {
            return null;
        }
    }

    /// <summary>True when the file is listed with this hash.</summary>
    public bool Lists(string name, string hash) => _hashes.TryGetValue(name, out var hashes) && hashes.Contains(hash);

    /// <summary>Both together: a file is known by either.</summary>
    public Manifest Or(Manifest? other) => other is null
        ? this
        : new Manifest(Design, Names.Union(other.Names).Select(n => KeyValuePair.Create(n, HashesOf(n).AddRange(other.HashesOf(n)).Distinct().ToImmutableArray())));

    /// <summary>This one, and of another the files that it does not list itself.</summary>
    public Manifest Beside(Manifest other) => new(Design, [.. _hashes, .. other._hashes.Where(h => !_hashes.ContainsKey(h.Key))]);

    /// <summary>As JSON.</summary>
    public byte[] Bytes()
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("about", About);
            if (Design is not null)
            {
                json.WriteString("design", Design);
            }

            json.WriteStartObject("files");
            foreach (var (name, hashes) in _hashes)
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
        return buffer.ToArray();
    }

    /// <summary>The SHA-256 of a file's bytes, as hexadecimal digits.</summary>
    public static string Hash(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));

    private ImmutableArray<string> HashesOf(string name) => _hashes.GetValueOrDefault(name, []);

    // A name that leads out of the folder is none that this program wrote.
    private static KeyValuePair<string, ImmutableArray<string>> Entry(JsonProperty entry) => IsInside(entry.Name)
        ? KeyValuePair.Create(entry.Name, entry.Value.EnumerateArray().Select(v => v.GetString() ?? "").ToImmutableArray())
        : throw new FormatException($"`{entry.Name}` is no file of this folder");

    // A file name, or one folder and a file name.
    private static bool IsInside(string name) => name != Name
        && name.Split('/') is { Length: <= 2 } parts
        && parts.All(p => p is not ("" or "." or "..") && Path.GetFileName(p) == p && !p.Contains('\\', StringComparison.Ordinal));
}
