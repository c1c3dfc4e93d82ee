using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>A parameter that always has a value: written in the file, or its default, or reading fails.</summary>
public sealed class Parameter<T> : Parameter
    where T : notnull
{
    private readonly ValueKind<T> _kind;
    private readonly (T Value, bool Exists) _default;

    internal Parameter(Section section, string key, string meaning, ValueKind<T> kind, (T Value, bool Exists) fallback)
        : base(section, key, meaning, kind)
    {
        if (fallback.Exists)
        {
            kind.DemandLegal(fallback.Value, Path);
        }

        kind.ByBody?.DemandLegal(kind.Possible!.Value, Path);

        (_kind, _default) = (kind, fallback);
    }

    /// <inheritdoc/>
    public override ParameterNeed Need => _default.Exists ? ParameterNeed.Defaulted : ParameterNeed.Required;

    /// <summary>The same key, without a value when it is not written. Only for a parameter without default.</summary>
    public OptionalParameter<T> Optional() => _default.Exists
        ? throw new InvalidOperationException($"{Path} has a default and cannot be optional")
        : new(Section, Key, Meaning, _kind);

    /// <summary>The line that sets it to a value, as in <c>diameter = 98</c>; lengths in the file's units.</summary>
    public string Line(T value, LengthUnit unit = LengthUnit.Millimetre) => _kind.Line(Key, value, unit);

    /// <inheritdoc/>
    public override string? DefaultText(LengthUnit unit = LengthUnit.Millimetre, BodyType? body = null) =>
        DefaultFor(body) is (var value, true) ? _kind.Shown(value, unit) : null;

    /// <inheritdoc/>
    public override string ExampleLine(LengthUnit unit = LengthUnit.Millimetre, BodyType? body = null) =>
        _kind.Line(Key, DefaultFor(body) is (var value, true) ? _kind.Rounded(value, unit) : _kind.Example(unit, body), unit);

    /// <summary>A value meant for it; mm for a length.</summary>
    public Setting To(T value) => _kind.Setting(this, value);

    /// <inheritdoc/>
    public override Setting? Parse(string canonical) => _kind.Setting(this, canonical);

    internal override Bound? Read(RawEntry entry, ReadingContext context) => _kind.Bind(this, entry, context);

    internal override Bound? Default(SourcePlace header, BodyType? body) =>
        DefaultFor(body) is (var value, true) ? new Bound<T>(_kind, new Sourced<T>(value, header, IsDefault: true)) : null;

    // A required parameter stays required, whatever a kind of body has.
    private (T Value, bool Exists) DefaultFor(BodyType? body) => _default.Exists && _kind.Default(body) is (var own, true) ? (own, true) : _default;
}

/// <summary>A parameter that may be left without a value.</summary>
public sealed class OptionalParameter<T> : Parameter
    where T : notnull
{
    private readonly ValueKind<T> _kind;

    internal OptionalParameter(Section section, string key, string meaning, ValueKind<T> kind)
        : base(section, key, meaning, kind) => _kind = kind;

    /// <inheritdoc/>
    public override ParameterNeed Need => ParameterNeed.Optional;

    /// <summary>The line that sets it to a value, as in <c>angle = 98</c>; lengths in the file's units.</summary>
    public string Line(T value, LengthUnit unit = LengthUnit.Millimetre) => _kind.Line(Key, value, unit);

    /// <inheritdoc/>
    public override string? DefaultText(LengthUnit unit = LengthUnit.Millimetre, BodyType? body = null) => null;

    /// <inheritdoc/>
    public override string ExampleLine(LengthUnit unit = LengthUnit.Millimetre, BodyType? body = null) =>
        _kind.Line(Key, _kind.Example(unit, body), unit);

    /// <summary>A value meant for it; mm for a length.</summary>
    public Setting To(T value) => _kind.Setting(this, value);

    /// <inheritdoc/>
    public override Setting? Parse(string canonical) => _kind.Setting(this, canonical);

    internal override Bound? Read(RawEntry entry, ReadingContext context) => _kind.Bind(this, entry, context);

    internal override Bound? Default(SourcePlace header, BodyType? body) => null;

    /// <summary>The value a group assumes when none of its members is written: a kind of body's own, or the one given.</summary>
    internal Bound Assumed(T value, SourcePlace header, BodyType? body)
    {
        _kind.DemandLegal(value, Path);
        return new Bound<T>(_kind, new Sourced<T>(_kind.Default(body) is (var own, true) ? own : value, header, IsDefault: true));
    }
}
