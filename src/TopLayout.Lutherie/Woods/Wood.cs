namespace TopLayout.Lutherie.Woods;

/// <summary>A wood. (Filled in by the wood table.)</summary>
public sealed record Wood(string Key, string Name);

/// <summary>Stand-in.</summary>
public static class WoodTable
{
    /// <summary>Stand-in.</summary>
    public static IEnumerable<string> Keys => ["sitka_spruce", "mahogany_true", "sugar_maple", "rosewood_indian", "american_basswood"];

    /// <summary>Stand-in.</summary>
    public static Wood? Find(string key) => new(key, key);
}
