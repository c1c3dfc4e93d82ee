namespace TopLayout.Lutherie.Woods;

/// <summary>How far a number about a wood can be trusted, best first. A number made from others has the worst of theirs.</summary>
public enum Provenance
{
    /// <summary>Read in the source, or in another's transcription of it.</summary>
    Found,

    /// <summary>Computed from values that were found.</summary>
    Derived,

    /// <summary>Given in the design file; the source is what the file says.</summary>
    Described,

    /// <summary>The source is known but its number is from memory; check it before relying on it.</summary>
    Memory,

    /// <summary>No source has it; the source text says what was assumed and why.</summary>
    Assumed,
}

/// <summary>A number about a wood and where it comes from. The unit is that of the property that holds it.</summary>
/// <param name="Value">The number.</param>
/// <param name="Provenance">How far to trust it.</param>
/// <param name="Source">Where it stands: document and table, or the assumption.</param>
public readonly record struct WoodValue(double Value, Provenance Provenance, string Source)
{
    /// <summary>The product of two values: the worse provenance, both sources.</summary>
    public WoodValue Times(WoodValue other) => new(
        Value * other.Value,
        Worse(Worse(Provenance, other.Provenance), Provenance.Derived),
        Source == other.Source ? Source : $"{Source}, times {other.Source}");

    private static Provenance Worse(Provenance a, Provenance b) => a > b ? a : b;
}
