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
    public static Review Check(string path) => Read(path) is var (text, problem) && problem is null
        ? Pipeline.Check(text, path)
        : new Review(null, [problem!]);

    private static (string Text, Finding? Problem) Read(string path)
    {
        try
        {
            if (Directory.Exists(path))
            {
                return ("", Unreadable(path, "it is a folder"));
            }

            if (new FileInfo(path) is { Exists: true, Length: > LongestBytes })
            {
                return ("", Unreadable(path, "it is larger than any design"));
            }

            return (new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(path)), null);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return ("", Unreadable(path, "there is no such file"));
        }
        catch (DecoderFallbackException)
        {
            return ("", Unreadable(path, "it is not text in UTF-8"));
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
}
