namespace TopLayout.Lutherie.Findings;

/// <content>TL9: the files and folders around the program, not the design.</content>
public static partial class Rules
{
    /// <summary>The file cannot be opened or read.</summary>
    public static Rule FileNotReadable { get; } = new("TL9001", "a file cannot be read", """
        The file does not exist, is a folder, may not be read by this user, or is not a text file in the UTF-8 encoding. The design
        itself has not been looked at. Check the spelling of the name and the folder you are in.
            toplayout check designs/my-guitar.toml
        """);

    /// <summary>The file cannot be written.</summary>
    public static Rule FileNotWritable { get; } = new("TL9002", "a file cannot be written", """
        The folder does not exist and cannot be made, may not be written to, or the disk is full. Files are written under another name
        first and renamed when they are complete, so no half-written plan is left and the earlier one is untouched. Choose another
        folder, or make room, and run the same command again.
            toplayout draw my-guitar.toml --out plans
        """);

    /// <summary>A file that this program did not write, or that was changed since.</summary>
    public static Rule ForeignFile { get; } = new("TL9003", "a foreign file is in the way", """
        A file with the name of one to be written is already there, and it was not written by this program or has been changed since. It
        may be your own work, so it is not replaced, and nothing else in the folder is changed either. Move or rename it, draw into
        another folder, or say that it may be replaced.
            toplayout draw my-guitar.toml --out plans --overwrite
        """);

    private static Rule[] Surroundings => [FileNotReadable, FileNotWritable, ForeignFile];
}
