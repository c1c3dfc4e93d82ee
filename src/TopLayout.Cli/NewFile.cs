using System.Text;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Cli;

/// <summary>Writes a text into a file of its own, whole or not at all, and over another file only when told to.</summary>
internal static class NewFile
{
    /// <summary>What hinders it; null when the file is written.</summary>
    public static Finding? Write(string file, string text, bool overwrite)
    {
        if (file.Length == 0)
        {
            return new Finding(Rules.FileNotWritable, Severity.Error, file, "a file needs a name") { Cure = "give one; nothing was written" };
        }

        if (Directory.Exists(file) || (File.Exists(file) && !overwrite))
        {
            return new Finding(Rules.ForeignFile, Severity.Error, file, $"`{file}` is already there") { Cure = "choose another name, or say `--overwrite`; nothing was written" };
        }

        var staging = file + ".part";
        try
        {
            File.WriteAllBytes(staging, new UTF8Encoding(false).GetBytes(text));
            File.Move(staging, file, overwrite);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return new Finding(Rules.FileNotWritable, Severity.Error, file, $"`{file}` cannot be written: {e.Message.TrimEnd('.')}") { Cure = "choose a folder that exists and is writable" };
        }
    }
}
