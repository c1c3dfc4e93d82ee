namespace TopLayout.Lutherie.Designs;

/// <summary>A resolved value of some parameter, its type known only to the parameter.</summary>
internal abstract class Bound
{
    /// <summary>The value in mm, the same text however the file wrote it.</summary>
    public abstract string Canonical { get; }

    /// <summary>The value as a file of a unit writes it.</summary>
    public abstract string WrittenIn(LengthUnit unit);

    /// <summary>The number in mm, degrees, % or °C; null for a word or text.</summary>
    public abstract double? Number { get; }

    /// <summary>The value with its unit, mm for a length.</summary>
    public abstract string Shown { get; }

    public abstract Findings.SourcePlace Place { get; }
}

internal sealed class Bound<T>(ValueKind<T> kind, Sourced<T> sourced) : Bound
    where T : notnull
{
    public Sourced<T> Sourced => sourced;

    public override string Canonical => kind.Canonical(sourced.Value);

    public override string WrittenIn(LengthUnit unit) => kind.Written(sourced.Value, unit);

    public override double? Number => kind.Number(sourced.Value);

    public override string Shown => kind.Shown(sourced.Value, LengthUnit.Millimetre);

    public override Findings.SourcePlace Place => sourced.Place;
}
