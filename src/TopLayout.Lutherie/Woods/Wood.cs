namespace TopLayout.Lutherie.Woods;

/// <summary>A wood. (Filled in by the wood table.)</summary>
public sealed record Wood(string Key, string Name);
