using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>A design read without error: every value legal, in mm, with its place in the file.</summary>
public sealed class Design
{
    private readonly ImmutableDictionary<Section, ImmutableArray<DesignSection>> _sections;
    private readonly SourcePlace _start;

    internal Design(string file, LengthUnit units, ImmutableDictionary<Section, ImmutableArray<DesignSection>> sections)
    {
        (File, Units, _sections) = (file, units, sections);
        _start = new SourcePlace(file, 1, 1, 0);
        foreach (var section in sections.Values.SelectMany(all => all))
        {
            section.Design = this;
        }

        Resolved = [.. sections.Values.SelectMany(all => all).SelectMany(s => s.Resolved()).Order(StringComparer.Ordinal)];
    }

    /// <summary>The file as the user named it.</summary>
    public string File { get; }

    /// <summary>The unit of the file's bare lengths, for printing back to its author.</summary>
    public LengthUnit Units { get; }

    /// <summary>Every value as "section.key = value" in mm, degrees, % and °C to six decimals, sorted; equal designs, equal lines.</summary>
    public ImmutableArray<string> Resolved { get; }

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
        where T : notnull => In(parameter.Section).Get(parameter);

    /// <summary>The value of an optional parameter; null when it is not written.</summary>
    public Sourced<T>? Find<T>(OptionalParameter<T> parameter)
        where T : notnull => In(parameter.Section).Find(parameter);

    /// <summary>Whether the part is in the design: always for an always-section, else when the file has the section.</summary>
    public bool Has(Section section) => Each(section).Length > 0;

    /// <summary>The one section of that kind; throws when the design has none, or when the section is repeatable.</summary>
    public DesignSection In(Section section) => section.Presence == SectionPresence.Repeatable
        ? throw new InvalidOperationException($"{section} is repeatable: use Each")
        : Each(section) is [var only] ? only : throw new InvalidOperationException($"the design has no {section}: ask Has first");

    /// <summary>All sections of that kind in file order; throws for a section outside the table.</summary>
    public ImmutableArray<DesignSection> Each(Section section) => _sections[section];

    /// <summary>The header of the (first) section of that kind; the file's first line when there is none.</summary>
    public SourcePlace PlaceOf(Section section) => Each(section) is [var first, ..] ? first.Place : _start;

    /// <summary>Where a parameter of a section that stands once is set: its value, or the section's header when it is not written.</summary>
    public SourcePlace PlaceOf(Parameter parameter) => In(parameter.Section).PlaceOf(parameter);

    /// <summary><see cref="Resolved"/> as lines ending in a line feed: what a hash of the design is taken over.</summary>
    public string ResolvedText() => string.Concat(Resolved.Select(line => line + "\n"));
}
