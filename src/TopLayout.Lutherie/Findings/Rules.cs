using System.Collections.Immutable;

namespace TopLayout.Lutherie.Findings;

/// <summary>
/// The one table of rules: TL0 reading, TL1 values, TL2 construction, TL3 checks, TL9 the machine around. A code is never renumbered and
/// never used again. Each group stands in its own file.
/// </summary>
public static partial class Rules
{
    /// <summary>Every rule, by code.</summary>
    public static ImmutableArray<Rule> All => [.. Reading, .. Values, .. Construction, .. Checks, .. Fitting, .. Outlines, .. Fittings, .. Surroundings];

    /// <summary>The rule with that code, whatever the case of its letters; null when there is none.</summary>
    public static Rule? Find(string code) => All.FirstOrDefault(r => string.Equals(r.Code, code, StringComparison.OrdinalIgnoreCase));
}
