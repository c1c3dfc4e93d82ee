using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Plans;

/// <summary>What came of a design file: the reviewed top, unless an error stopped it, and every finding.</summary>
public sealed class Review(ReviewedTop? top, ImmutableArray<Finding> findings)
{
    /// <summary>The top; null exactly when a finding is an error.</summary>
    public ReviewedTop? Top { get; } = top;

    /// <summary>All findings, worst first.</summary>
    public ImmutableArray<Finding> Findings { get; } = findings;

    /// <summary>True when a check failed.</summary>
    public bool HasFailed => Findings.Any(f => f.Severity == Severity.Fail);
}
