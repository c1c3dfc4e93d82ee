using System.Security.Cryptography;
using System.Text;

namespace TopLayout.Cli;

/// <summary>
/// Keeps two runs from writing into one folder at once. The lock is a file of no length in the system's folder for temporary files, named after
/// the folder's full path; it stays there, since a lock that is deleted can be held by one run through its old name and by another through
/// its new one. The system lets go of it when a run ends, however it ends.
/// </summary>
internal static class FolderLock
{
    /// <summary>Holds the folder until disposed.</summary>
    /// <exception cref="IOException">Another run holds it.</exception>
    public static FileStream Hold(string folder)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var key = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(full)))[..24];
        var path = Path.Combine(Path.GetTempPath(), $"toplayout-{Environment.UserName}-{key}.lock");
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException) when (File.Exists(path))
        {
            throw new IOException("another run of toplayout is writing into it; run again when it is done");
        }
    }
}
