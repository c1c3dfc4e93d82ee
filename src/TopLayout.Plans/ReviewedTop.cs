using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans;

/// <summary>A layout and what the checks said of it: what sheets and reports are functions of.</summary>
public sealed class ReviewedTop(Layout layout, GrainReview grain, ImmutableArray<Finding> findings)
{
    /// <summary>The layout.</summary>
    public Layout Layout { get; } = layout;

    /// <summary>The grain check's findings, verdicts and profile.</summary>
    public GrainReview Grain { get; } = grain;

    /// <summary>All findings, worst first: reading's remarks and checks.</summary>
    public ImmutableArray<Finding> Findings { get; } = findings;

    /// <summary>First twelve digits of the SHA-256 of the resolved parameters: two sheets with the same are of the same design.</summary>
    public string Hash { get; } =
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(layout.Design.ResolvedText())))[..12];
}
