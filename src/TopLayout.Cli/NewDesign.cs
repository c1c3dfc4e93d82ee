using System.Text;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Cli;

/// <summary>Makes a design file from a preset; never over an existing file.</summary>
internal static class NewDesign
{
    /// <summary>Runs it; returns the exit code.</summary>
    public static int Make(string file, string preset)
    {
        if (!Presets.Names.Contains(preset))
        {
            return Print.UnknownName("preset", preset, Presets.Names);
        }

        if (file.Length == 0)
        {
            Print.Findings([new Finding(Rules.FileNotWritable, Severity.Error, file, "a file needs a name") { Cure = "`toplayout new FILE` makes a design with that name; nothing was written" }], Severity.Error);
            return ExitCode.CouldNotRun;
        }

        try
        {
            using var stream = new FileStream(file, FileMode.CreateNew, FileAccess.Write);
            stream.Write(Encoding.UTF8.GetBytes(Presets.Text(preset)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            var exists = File.Exists(file) || Directory.Exists(file);
            var problem = exists
                ? new Finding(Rules.ForeignFile, Severity.Error, file, $"`{file}` is already there") { Cure = "choose another name; nothing was written" }
                : new Finding(Rules.FileNotWritable, Severity.Error, file, $"`{file}` cannot be written: {e.Message.TrimEnd('.')}") { Cure = "choose a folder that exists and is writable" };
            Print.Findings([problem], Severity.Error);
            return ExitCode.CouldNotRun;
        }

        Console.Out.WriteLine($"{file}: from the preset {preset}; now `toplayout draw {file}`");
        return ExitCode.Clean;
    }
}
