using System.Collections.Immutable;
using System.Globalization;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>One section of a design: a part, or one of several alike.</summary>
public sealed class DesignSection
{
    private readonly ImmutableDictionary<Parameter, Bound> _values;

    internal DesignSection(Section section, int number, SourcePlace place, ImmutableDictionary<Parameter, Bound> values) =>
        (Section, Number, Place, _values) = (section, number, place, values);

    /// <summary>The design it belongs to.</summary>
    public Design Design { get; internal set; } = null!;

    /// <summary>Which section it is.</summary>
    public Section Section { get; }

    /// <summary>Which of several alike, counted from 1 in file order.</summary>
    public int Number { get; }

    /// <summary>Its header; the file's first line when it is not written.</summary>
    public SourcePlace Place { get; }

    /// <summary>A length in mm, or a number, with its place.</summary>
    public Sourced<double> this[Parameter<double> parameter] => Get(parameter);

    /// <summary>An angle with its place.</summary>
    public Sourced<Angle> this[Parameter<Angle> parameter] => Get(parameter);

    /// <summary>A count with its place.</summary>
    public Sourced<int> this[Parameter<int> parameter] => Get(parameter);

    /// <summary>A text or wood key with its place.</summary>
    public Sourced<string> this[Parameter<string> parameter] => Get(parameter);

    /// <summary>Any value with its place; the way to read a choice.</summary>
    public Sourced<T> Get<T>(Parameter<T> parameter)
        where T : notnull => ((Bound<T>)_values[parameter]).Sourced;

    /// <summary>The value of an optional parameter; null when it is not written.</summary>
    public Sourced<T>? Find<T>(OptionalParameter<T> parameter)
        where T : notnull => _values.TryGetValue(parameter, out var bound) ? ((Bound<T>)bound).Sourced : null;

    /// <summary>Where a parameter is set: its value, or this section's header when it is not written.</summary>
    public SourcePlace PlaceOf(Parameter parameter) => _values.TryGetValue(parameter, out var bound) ? bound.Place : Place;

    /// <summary>What stands before a key in <see cref="Design.Resolved"/>: "soundhole.", "tone_bar.02.", nothing in the root.</summary>
    internal static string Prefix(Section section, int number)
    {
        var which = section.Presence == SectionPresence.Repeatable ? number.ToString("00", CultureInfo.InvariantCulture) + "." : "";
        return section.IsRoot ? "" : $"{section.Key}.{which}";
    }

    internal IEnumerable<string> Resolved()
    {
        var prefix = Prefix(Section, Number);
        return _values.Select(pair => $"{prefix}{pair.Key.Key} = {pair.Value.Canonical}");
    }
}
