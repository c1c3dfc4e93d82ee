using System.Text;
using TopLayout.Lutherie.Findings;
using TopLayout.Plans;

namespace TopLayout.Cli;

/// <summary>Reads a design file and runs it through the pipeline; what cannot be read comes back as a finding, like everything else.</summary>
internal static class DesignFile
{
    // Twice what a design may be; more is not even read.
    private const long LongestBytes = 4_000_000;

    /// <summary>The review of a file.</summary>
    public static Review Check(string path) => CheckWithText(path).Review;

    /// <summary>The review of a file, and its text with any byte-order mark.</summary>
    public static (Review Review, string Text) CheckWithText(string path) => Read(path) is var (text, problem) && problem is null
        ? (Pipeline.Check(text, path), text)
        : (new Review(null, [problem!]), "");

    private static (string Text, Finding? Problem) Read(string path)
    {
        var bytes = Array.Empty<byte>();
        try
        {
            if (path.Length == 0)
            {
                return ("", Unreadable(path, "a file needs a name"));
            }

            if (Directory.Exists(path))
            {
                return ("", Unreadable(path, "it is a folder"));
            }

            if (new FileInfo(path) is { Exists: true, Length: > LongestBytes })
            {
                return ("", Unreadable(path, "it is larger than any design"));
            }

            bytes = File.ReadAllBytes(path);
            return (new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes), null);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return ("", Unreadable(path, "there is no such file"));
        }
        catch (DecoderFallbackException e)
        {
            return ("", NotText(path, bytes, e.Index));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return ("", Unreadable(path, "this user may not read it, or the disk does not answer"));
        }
    }

    private static Finding Unreadable(string path, string why) =>
        new(Rules.FileNotReadable, Severity.Error, path, $"`{path}` cannot be read: {why}")
        {
            Cure = "check the name and the folder; `toplayout new FILE` starts a design from a preset",
        };

    // The index counts bytes, as the whole file was decoded in one call.
    private static Finding NotText(string path, byte[] bytes, int index)
    {
        var before = new UTF8Encoding(false).GetString(bytes, 0, Math.Clamp(index, 0, bytes.Length));
        var (line, column) = (before.Count(c => c == '\n') + 1, before.Length - before.LastIndexOf('\n'));
        var why = $"it is not text in UTF-8, as the byte at line {Say.Count(line)}, column {Say.Count(column)} shows";
        return new Finding(Rules.FileNotReadable, Severity.Error, path, $"`{path}` cannot be read: {why}")
        {
            Cure = "save it as UTF-8 (your editor's `save as` offers it), or check that it is a design file",
        };
    }
}
