namespace TopLayout.Cli;

/// <summary>Standard output and standard error when nobody takes what is printed: a full disk, a reader that has gone.</summary>
internal static class Streams
{
    /// <summary>Says in one line, where anybody listens, that something was not printed; returns the exit code.</summary>
    public static int Lost(IOException why)
    {
        try
        {
            Console.Error.WriteLine($"error: what was to be printed could not be written: {why.Message.TrimEnd('.')}");
        }
        catch (IOException)
        {
            // Nobody does.
        }

        return ExitCode.CouldNotRun;
    }
}
