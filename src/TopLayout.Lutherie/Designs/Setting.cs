namespace TopLayout.Lutherie.Designs;

/// <summary>A value meant for a parameter, as <see cref="DesignEditor"/> writes it; made by the parameter itself.</summary>
public sealed class Setting
{
    internal Setting(Parameter parameter, Bound value) => (Parameter, Value) = (parameter, value);

    /// <summary>The parameter.</summary>
    public Parameter Parameter { get; }

    /// <summary>The value in mm, degrees, % or °C to six decimals, or its word.</summary>
    public string Canonical => Value.Canonical;

    internal Bound Value { get; }

    /// <summary>As in "soundhole.diameter = 98".</summary>
    public override string ToString() => $"{Parameter.Path} = {Canonical}";
}
