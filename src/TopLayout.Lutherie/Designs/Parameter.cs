namespace TopLayout.Lutherie.Designs;

/// <summary>What a parameter's value is in the file.</summary>
public enum ParameterKind
{
    /// <summary>A length: a number in the file's units, or text with its unit; mm inside.</summary>
    Length,

    /// <summary>Several lengths in square brackets, each as a length is written.</summary>
    Lengths,

    /// <summary>An angle in degrees.</summary>
    Angle,

    /// <summary>A bare number.</summary>
    Number,

    /// <summary>A percentage; 45 means 45 %.</summary>
    Percent,

    /// <summary>A temperature in °C.</summary>
    Temperature,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>Free text of one line.</summary>
    Text,

    /// <summary>The key of a wood.</summary>
    Wood,
}

/// <summary>What happens when a parameter is not written.</summary>
public enum ParameterNeed
{
    /// <summary>An error.</summary>
    Required,

    /// <summary>Its default is used.</summary>
    Defaulted,

    /// <summary>There is no value.</summary>
    Optional,
}

/// <summary>
/// One key of the design file: where it stands, what it may be, what it means. Lives as a static field beside the builder that uses
/// it; the factories are in <c>Parameter.Factories.cs</c>.
/// </summary>
public abstract partial class Parameter
{
    private readonly ValueKind _kind;

    private protected Parameter(Section section, string key, string meaning, ValueKind kind) =>
        (Section, Key, Meaning, _kind) = (section, key, meaning, kind);

    /// <summary>The section it stands in.</summary>
    public Section Section { get; }

    /// <summary>Its key in that section.</summary>
    public string Key { get; }

    /// <summary>What it sets, in one line.</summary>
    public string Meaning { get; }

    /// <summary>What its value is.</summary>
    public ParameterKind Kind => _kind.Kind;

    /// <summary>What happens when it is left out.</summary>
    public abstract ParameterNeed Need { get; }

    /// <summary>Section and key, as in "soundhole.diameter"; the key alone in the root.</summary>
    public string Path => Section.IsRoot ? Key : $"{Section.Key}.{Key}";

    /// <summary>Lowest and highest possible value in mm, degrees, % or °C; null for words and text.</summary>
    public (double Low, double High)? Possible => _kind.Possible;

    /// <summary>Lowest and highest usual value, in the same unit; null when practice sets none.</summary>
    public (double Low, double High)? Usual => _kind.Usual;

    /// <summary>What is allowed, as in "from 10 to 200 mm" or "`round` or `oval`".</summary>
    public string AllowedText(LengthUnit unit = LengthUnit.Millimetre) => _kind.AllowedText(unit);

    /// <summary>The words of a choice; none for other kinds.</summary>
    public IReadOnlyList<string> Words => _kind.Words;

    /// <summary>The values by kind of body; null when it makes no difference.</summary>
    public BodyValues? ByBody => _kind.ByBody;

    /// <summary>The usual range for a kind of body, or else the general one; null when practice sets none.</summary>
    public (double Low, double High)? UsualFor(BodyType? body) => _kind.UsualFor(body);

    /// <summary>What is usual, for a kind of body or in general, as in "from 80 to 110 mm"; null when practice sets no range.</summary>
    public string? UsualText(LengthUnit unit = LengthUnit.Millimetre, BodyType? body = null) => _kind.UsualText(unit, body);

    /// <summary>As a message says it: "usual is from 80 to 110 mm", "usual for a classical body is from 82 to 90 mm"; null without a range.</summary>
    public string? UsualPhrase(LengthUnit unit, BodyType? body)
    {
        var whose = body is { } type && ByBody?.Of(type).Usual is not null ? $" for {Body.Phrase(type)}" : "";
        return UsualText(unit, body) is { } range ? $"usual{whose} is {range}" : null;
    }

    /// <summary>The default, of a kind of body or in general, with its unit, as in "98 mm"; null when there is none.</summary>
    public abstract string? DefaultText(LengthUnit unit = LengthUnit.Millimetre, BodyType? body = null);

    /// <summary>A line a user could add, as in <c>diameter = 98</c>: the default, or else a usual value.</summary>
    public abstract string ExampleLine(LengthUnit unit = LengthUnit.Millimetre, BodyType? body = null);

    /// <summary>The example line of a length as text with its unit.</summary>
    internal string ExampleLineWithUnit(LengthUnit unit, BodyType? body)
    {
        var parts = ExampleLine(unit, body).Split(" = ", 2);
        return $"{Key} = {ValueText.Quoted($"{parts[1]} {LengthText.Symbol(unit)}")}";
    }

    /// <summary>The path.</summary>
    public override string ToString() => Path;

    /// <summary>A setting from its canonical text: mm, degrees, % or °C, or the word; null when that is not of this kind.</summary>
    public abstract Setting? Parse(string canonical);

    /// <summary>Reads the entry; null, with findings added, when it cannot.</summary>
    internal abstract Bound? Read(RawEntry entry, ReadingContext context);

    /// <summary>The default, of a kind of body or in general, set by the given header; null when there is none.</summary>
    internal abstract Bound? Default(Findings.SourcePlace header, BodyType? body);
}
