namespace TopLayout.Cli;

/// <summary>What the program's exit code means.</summary>
internal static class ExitCode
{
    /// <summary>It ran, and no check failed.</summary>
    public const int Clean = 0;

    /// <summary>It ran, and a check failed.</summary>
    public const int CheckFailed = 1;

    /// <summary>It could not run: a bad design, bad arguments, or a file that cannot be read or written.</summary>
    public const int CouldNotRun = 2;

    /// <summary>A bug in the program.</summary>
    public const int Bug = 70;
}
