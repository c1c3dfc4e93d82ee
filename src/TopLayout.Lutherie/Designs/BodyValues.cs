using Bounds = (double Low, double High);

namespace TopLayout.Lutherie.Designs;

/// <summary>What a kind of body has instead of a parameter's general values.</summary>
/// <param name="Default">The default, in the parameter's unit; null for the general one.</param>
/// <param name="Usual">The usual range; null for the general one.</param>
public readonly record struct BodyValue(double? Default, Bounds? Usual)
{
    /// <summary>A default alone.</summary>
    public static implicit operator BodyValue(double value) => new(value, null);

    /// <summary>A usual range alone.</summary>
    public static implicit operator BodyValue((double Low, double High) usual) => new(null, usual);

    /// <summary>A default, and the usual range round it.</summary>
    public static implicit operator BodyValue((double Default, double Low, double High) all) => new(all.Default, (all.Low, all.High));
}

/// <summary>
/// A parameter's values by kind of body, written beside its general ones. What is left out keeps the general values. All numbers are
/// common practice, no source.
/// </summary>
public sealed class BodyValues
{
    // By number of BodyType.
    private readonly BodyValue[] _values;

    private BodyValues(BodyValue[] values) => _values = values;

    /// <summary>
    /// Values by kind of body. <paramref name="steel"/> holds for the five bodies for steel strings (parlour, concert, auditorium,
    /// square-shouldered, jumbo) where they are not given.
    /// </summary>
    public static BodyValues Of(
        BodyValue steel = default,
        BodyValue parlour = default,
        BodyValue classical = default,
        BodyValue concert = default,
        BodyValue auditorium = default,
        BodyValue squareShouldered = default,
        BodyValue jumbo = default,
        BodyValue tenorUkulele = default,
        BodyValue octaveMandolin = default)
    {
        BodyValue OrSteel(BodyValue own) => own == default ? steel : own;
        return new([OrSteel(parlour), classical, OrSteel(concert), OrSteel(auditorium), OrSteel(squareShouldered), OrSteel(jumbo), tenorUkulele, octaveMandolin]);
    }

    /// <summary>The values of one kind of body.</summary>
    public BodyValue Of(BodyType body) => _values[(int)body];

    /// <summary>Throws for a value that the parameter itself would refuse, or a default that would be remarked on: the table is wrong, not a design.</summary>
    internal void DemandLegal(Bounds possible, string path)
    {
        foreach (var (fallback, usual) in _values)
        {
            var isSound = (fallback is not { } value || Quantity.Holds(usual ?? possible, value))
                && (usual is not { } range || (range.Low <= range.High && Quantity.Holds(possible, range.Low) && Quantity.Holds(possible, range.High)));
            if (!isSound)
            {
                throw new ArgumentException($"a value by kind of body of {path} is not allowed by its own rule");
            }
        }
    }
}
