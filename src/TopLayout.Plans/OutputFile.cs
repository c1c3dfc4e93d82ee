namespace TopLayout.Plans;

/// <summary>A file to write: its path inside the output folder and its whole content.</summary>
public sealed class OutputFile(string name, byte[] content)
{
    /// <summary>Path inside the output folder; folders are parted by '/'.</summary>
    public string Name { get; } = name;

    /// <summary>The bytes.</summary>
    public byte[] Content { get; } = content;

    /// <summary>A file as a writer writes it.</summary>
    public static OutputFile Written(string name, Action<Stream> write)
    {
        using var buffer = new MemoryStream();
        write(buffer);
        return new OutputFile(name, buffer.ToArray());
    }
}
