namespace TopLayout.Drawing.Dxf;

/// <summary>The blocks and objects that R2000 asks for even where a drawing has none: the two spaces and the root dictionary.</summary>
internal static class DxfBlocks
{
    private static readonly string[] Spaces = ["*Model_Space", "*Paper_Space"];

    /// <summary>The table of the two spaces; the first becomes the owner of the entities. Returns their handles.</summary>
    public static string[] WriteRecords(DxfRecords records)
    {
        var handles = new List<string>();
        records.Table("BLOCK_RECORD", Spaces.Length, table =>
        {
            foreach (var name in Spaces)
            {
                handles.Add(records.Entry("BLOCK_RECORD", table, "AcDbBlockTableRecord", name, hasFlags: false));
            }
        });
        records.OwnEntities(handles[0]);
        return [.. handles];
    }

    /// <summary>The two spaces as blocks without content.</summary>
    public static void Write(DxfRecords records, string[] owners)
    {
        foreach (var (index, name) in Spaces.Index())
        {
            Start(records, "BLOCK", owners[index], isPaper: index == 1, "AcDbBlockBegin");
            var tags = records.Tags;
            tags.Text(2, name);
            tags.Whole(70, 0);
            tags.Origin();
            tags.Text(3, name);
            tags.Text(1, "");
            Start(records, "ENDBLK", owners[index], isPaper: index == 1, "AcDbBlockEnd");
        }
    }

    /// <summary>The root dictionary and the dictionary of groups in it.</summary>
    public static void WriteObjects(DxfRecords records)
    {
        var (root, groups) = (records.NextHandle(), records.NextHandle());
        var tags = records.Tags;
        tags.Text(0, "DICTIONARY");
        records.Identify(root, "0", 5, "AcDbDictionary");
        tags.Whole(281, 1);
        tags.Text(3, "ACAD_GROUP");
        tags.Text(350, groups);
        tags.Text(0, "DICTIONARY");
        records.Identify(groups, root, 5, "AcDbDictionary");
        tags.Whole(281, 1);
    }

    private static void Start(DxfRecords records, string type, string owner, bool isPaper, string ofClass)
    {
        var tags = records.Tags;
        tags.Text(0, type);
        records.Identify(records.NextHandle(), owner, 5, "AcDbEntity");
        if (isPaper)
        {
            tags.Whole(67, 1);
        }

        tags.Text(8, "0");
        records.Classes(ofClass);
    }
}
