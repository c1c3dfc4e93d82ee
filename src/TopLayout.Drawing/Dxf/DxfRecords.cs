using System.Globalization;

namespace TopLayout.Drawing.Dxf;

/// <summary>
/// The frame of every record. From R2000 on each carries a handle of its own (hexadecimal, 5), its owner's (330) and its classes (100);
/// in R12 none of the three is written.
/// </summary>
internal sealed class DxfRecords(TagWriter tags, DxfOptions options)
{
    private int _last = 0x20;

    /// <summary>The tags.</summary>
    public TagWriter Tags { get; } = tags;

    /// <summary>What is written.</summary>
    public DxfOptions Options { get; } = options;

    /// <summary>Handle of the block that holds the drawing.</summary>
    public string ModelSpace { get; private set; } = "";

    /// <summary>A handle above all given so far.</summary>
    public string Seed => Hex(_last + 1);

    /// <summary>The name as this level spells it: in capitals in R12.</summary>
    public string Spelled(string name) => Options.HasHandles ? name : name.ToUpperInvariant();

    /// <summary>A new handle.</summary>
    public string NextHandle() => Hex(++_last);

    /// <summary>Names the block that owns the entities.</summary>
    public void OwnEntities(string modelSpace) => ModelSpace = modelSpace;

    /// <summary>Handle, owner and classes, where the level has them.</summary>
    public void Identify(string handle, string owner, int handleCode, params ReadOnlySpan<string> classes)
    {
        if (!Options.HasHandles)
        {
            return;
        }

        Tags.Text(handleCode, handle);
        Tags.Text(330, owner);
        Classes(classes);
    }

    /// <summary>Classes, where the level has them.</summary>
    public void Classes(params ReadOnlySpan<string> classes)
    {
        foreach (var name in Options.HasHandles ? classes : [])
        {
            Tags.Text(100, name);
        }
    }

    /// <summary>A section.</summary>
    public void Section(string name, Action content)
    {
        Tags.Text(0, "SECTION");
        Tags.Text(2, name);
        content();
        Tags.Text(0, "ENDSEC");
    }

    /// <summary>A table with a number of entries, each of which gets the table's handle as its owner.</summary>
    public void Table(string name, int count, Action<string> entries)
    {
        Tags.Text(0, "TABLE");
        Tags.Text(2, name);
        var handle = Options.HasHandles ? NextHandle() : "";
        Identify(handle, "0", 5, "AcDbSymbolTable");
        Tags.Whole(70, count);
        if (name == "DIMSTYLE")
        {
            Classes("AcDbDimStyleTable");
            Tags.Whole(71, 0);
        }

        entries(handle);
        Tags.Text(0, "ENDTAB");
    }

    /// <summary>The start of a table's entry up to its flags; returns its handle.</summary>
    public string Entry(string type, string table, string ofClass, string name, bool hasFlags = true)
    {
        Tags.Text(0, type);
        var handle = Options.HasHandles ? NextHandle() : "";
        Identify(handle, table, type == "DIMSTYLE" ? 105 : 5, "AcDbSymbolTableRecord", ofClass);
        Tags.Text(2, name);
        if (hasFlags)
        {
            Tags.Whole(70, 0);
        }

        return handle;
    }

    private static string Hex(int handle) => handle.ToString("X", CultureInfo.InvariantCulture);
}
