namespace TopLayout.Lutherie.Designs;

/// <summary>How the values of a parameter are read, held to their range and written.</summary>
internal abstract class ValueKind
{
    public abstract ParameterKind Kind { get; }

    public virtual (double Low, double High)? Possible => null;

    public virtual (double Low, double High)? Usual => null;

    /// <summary>What bodies of one kind have instead; null when it makes no difference.</summary>
    public virtual BodyValues? ByBody => null;

    public (double Low, double High)? UsualFor(BodyType? body) => (body is { } type ? ByBody?.Of(type).Usual : null) ?? Usual;

    /// <summary>The words of a choice; none for other kinds.</summary>
    public virtual IReadOnlyList<string> Words => [];

    public abstract string AllowedText(LengthUnit unit);

    public virtual string? UsualText(LengthUnit unit, BodyType? body) => null;
}

/// <inheritdoc/>
internal abstract class ValueKind<T> : ValueKind
    where T : notnull
{
    /// <summary>The entry's value, or null with findings added.</summary>
    public Bound? Bind(Parameter parameter, RawEntry entry, ReadingContext context) => TryRead(parameter, entry, context, out var value)
        ? new Bound<T>(this, new Sourced<T>(value, entry.Place, IsDefault: false))
        : null;

    /// <summary>A legal value to show as an example.</summary>
    public abstract T Example(LengthUnit unit, BodyType? body);

    /// <summary>The default that a kind of body has in place of the general one, if it has.</summary>
    public virtual (T Value, bool Exists) Default(BodyType? body) => default;

    /// <summary>The value itself, or near it one that is short to write in the unit.</summary>
    public virtual T Rounded(T value, LengthUnit unit) => value;

    /// <summary>The value as a message shows it, with its unit.</summary>
    public abstract string Shown(T value, LengthUnit unit);

    /// <summary>The value as the file writes it.</summary>
    public abstract string Written(T value, LengthUnit unit);

    /// <summary>The value in mm, degrees, % or °C to six decimals, or its word.</summary>
    public abstract string Canonical(T value);

    /// <summary>The number in mm, degrees, % or °C; null for a word or text.</summary>
    public virtual double? Number(T value) => null;

    /// <summary>The value of a canonical text, legal or not; false when it is not of this kind.</summary>
    public abstract bool TryParse(string canonical, out T value);

    /// <summary>A value meant for a parameter.</summary>
    public Setting Setting(Parameter parameter, T value) => new(parameter, new Bound<T>(this, new Sourced<T>(value, default, IsDefault: false)));

    /// <summary>A value meant for a parameter, from its canonical text.</summary>
    public Setting? Setting(Parameter parameter, string canonical) => TryParse(canonical, out var value) ? Setting(parameter, value) : null;

    public string Line(string key, T value, LengthUnit unit) => $"{key} = {Written(value, unit)}";

    /// <summary>Throws for a default that its own parameter would refuse: the table is wrong, not the design.</summary>
    public void DemandLegal(T value, string path)
    {
        if (!IsLegal(value))
        {
            throw new ArgumentException($"the default of {path} is not allowed by its own rule");
        }
    }

    protected abstract bool IsLegal(T value);

    protected abstract bool TryRead(Parameter parameter, RawEntry entry, ReadingContext context, out T value);
}
