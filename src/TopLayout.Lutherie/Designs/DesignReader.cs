namespace TopLayout.Lutherie.Designs;

/// <summary>Design text to design: the only place where a unit of the user's becomes mm.</summary>
public static class DesignReader
{
    /// <summary>The longest text read, in characters.</summary>
    public const int LongestText = 1_000_000;

    /// <summary>Reads a design against a table; never throws for what a text contains.</summary>
    public static Reading Read(string text, string file, ParameterTable table)
    {
        throw new NotImplementedException();
    }
}
