namespace TopLayout.Lutherie.Findings;

/// <summary>One kind of finding: its stable code, the name of the defect, and what `explain` prints about it.</summary>
/// <param name="Code">TL and four digits; never renumbered, never used again.</param>
/// <param name="Name">The defect in a few words.</param>
/// <param name="Explanation">What it means, why it matters, what cures it, where the rule comes from and where it ends.</param>
public sealed record Rule(string Code, string Name, string Explanation);
