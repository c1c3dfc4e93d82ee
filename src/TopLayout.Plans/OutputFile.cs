namespace TopLayout.Plans;

/// <summary>A file to write: its name inside the output folder and its whole content.</summary>
public sealed class OutputFile(string name, byte[] content)
{
    /// <summary>File name without a folder.</summary>
    public string Name { get; } = name;

    /// <summary>The bytes.</summary>
    public byte[] Content { get; } = content;
}
