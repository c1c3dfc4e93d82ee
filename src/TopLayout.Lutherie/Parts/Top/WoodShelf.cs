using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The woods one design may name: those it describes itself, and the built-in table.</summary>
public sealed class WoodShelf(Design design)
{
    /// <summary>The design's own woods in file order, then the built-in ones.</summary>
    public IEnumerable<Wood> All => design.Each(OwnWood.Section).Select(OwnWood.Read).Concat(WoodTable.All);

    /// <summary>The wood that a value of the design names; reading has made sure that there is one.</summary>
    public Wood this[Sourced<string> key] => All.First(w => w.Key == key.Value);
}
