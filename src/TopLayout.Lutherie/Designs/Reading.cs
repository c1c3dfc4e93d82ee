using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>What came of reading a design file: a design exactly when no finding is an error.</summary>
public sealed class Reading
{
    internal Reading(Design? design, IEnumerable<Finding> findings)
    {
        Findings = [.. Finding.Sorted(findings)];
        Design = Findings.Any(f => f.Severity == Severity.Error) ? null : design;
    }

    /// <summary>The design; null when there is an error.</summary>
    public Design? Design { get; }

    /// <summary>Errors and remarks, worst first.</summary>
    public ImmutableArray<Finding> Findings { get; }
}
