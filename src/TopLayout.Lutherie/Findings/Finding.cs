using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Lutherie.Findings;

/// <summary>What was measured and the limit it was held against.</summary>
/// <param name="Value">The measured value.</param>
/// <param name="Unit">Its unit as printed: "mm", "°", or empty for a bare number.</param>
/// <param name="Limit">The limit that decided, in the same unit.</param>
public readonly record struct Measurement(double Value, string Unit, double Limit);

/// <summary>
/// The one form of every message about a design: reading and checks alike. A sentence that stands alone, in lower case without a
/// full stop, keys in backticks; where in the design file; where on the top; what was measured; what to do.
/// </summary>
public sealed class Finding(Rule rule, Severity severity, string subject, string sentence)
{
    /// <summary>The rule behind it.</summary>
    public Rule Rule { get; } = rule;

    /// <summary>How much it matters.</summary>
    public Severity Severity { get; } = severity;

    /// <summary>What it is about: a key, a part, an edge of a part.</summary>
    public string Subject { get; } = subject;

    /// <summary>What was found and what is allowed.</summary>
    public string Sentence { get; } = sentence;

    /// <summary>The value and its limit, when the rule measures one.</summary>
    public Measurement? Measured { get; init; }

    /// <summary>The stretch on the top that the drawing marks, in outside coordinates, mm; from end to end.</summary>
    public (Point2 From, Point2 To)? Where { get; init; }

    /// <summary>Further stretches of which the same is to be said.</summary>
    public ImmutableArray<(Point2 From, Point2 To)> AlsoAt { get; init; } = [];

    /// <summary>
    /// For <see cref="Where"/>, then for each of <see cref="AlsoAt"/>, the pieces of edges that make the stretch, named by their edge, each with its part
    /// to the left, in outside coordinates, mm; empty where no edges make it.
    /// </summary>
    public ImmutableArray<ImmutableArray<Segment>> Traces { get; init; } = [];

    /// <summary>The edges of parts it speaks of.</summary>
    public ImmutableArray<(string Part, string Edge)> Edges { get; init; } = [];

    /// <summary>The place in the design file to change.</summary>
    public SourcePlace? Place { get; init; }

    /// <summary>Further places that shaped it, or the other end of a contradiction.</summary>
    public ImmutableArray<SourcePlace> OtherPlaces { get; init; } = [];

    /// <summary>What to do about it; null when nothing needs doing.</summary>
    public string? Cure { get; init; }

    /// <summary>Worst first, then by line, column, code and subject: the order in which findings are shown.</summary>
    public static IEnumerable<Finding> Sorted(IEnumerable<Finding> findings) => findings
        .OrderByDescending(f => f.Severity)
        .ThenBy(f => f.Place?.Line ?? int.MaxValue)
        .ThenBy(f => f.Place?.Column ?? int.MaxValue)
        .ThenBy(f => f.Rule.Code, StringComparer.Ordinal)
        .ThenBy(f => f.Subject, StringComparer.Ordinal);
}
