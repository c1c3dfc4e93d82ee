using System.Globalization;
using Bounds = (double Low, double High);

namespace TopLayout.Lutherie.Designs;

/// <summary>A number with a possible range, and perhaps a usual one: lengths, angles, fractions, percentages, temperatures, counts.</summary>
internal sealed class NumericKind<T>(
    ParameterKind kind, Bounds possible, Bounds? usual, BodyValues? byBody, Func<double, T> make, Func<T, double> unmake) : ValueKind<T>
    where T : notnull
{
    public override ParameterKind Kind => kind;

    public override Bounds? Possible => possible;

    public override Bounds? Usual => usual;

    public override BodyValues? ByBody => byBody;

    public override string AllowedText(LengthUnit unit) => Quantity.Range(kind, possible, unit);

    public override string? UsualText(LengthUnit unit, BodyType? body) => UsualFor(body) is { } range ? Quantity.Range(kind, range, unit) : null;

    public override T Example(LengthUnit unit, BodyType? body) =>
        make(Quantity.Between(kind, UsualFor(body) ?? possible, UsualFor(body) ?? possible, unit, decimals: 0));

    public override (T Value, bool Exists) Default(BodyType? body) =>
        body is { } type && byBody?.Of(type).Default is { } value ? (make(value), true) : default;

    public override T Rounded(T value, LengthUnit unit) => kind == ParameterKind.Length && unit == LengthUnit.Inch
        ? make(Quantity.Between(kind, (unmake(value), unmake(value)), possible, unit, decimals: 2))
        : value;

    public override string Shown(T value, LengthUnit unit) => Quantity.Shown(kind, unmake(value), unit);

    public override string Written(T value, LengthUnit unit) => Quantity.Amount(kind, unmake(value), unit, 6);

    public override string Canonical(T value) => ValueText.Number(unmake(value), 6);

    public override double? Number(T value) => unmake(value);

    public override bool TryParse(string canonical, out T value)
    {
        var isNumber = double.TryParse(canonical, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number);
        value = make(isNumber ? number : 0);
        return isNumber && (kind != ParameterKind.Count || number == Math.Truncate(number));
    }

    protected override bool IsLegal(T value) => Quantity.Holds(possible, unmake(value));

    protected override bool TryRead(Parameter parameter, RawEntry entry, ReadingContext context, out T value)
    {
        var read = NumberReading.Read(parameter, entry, context);
        value = make(read ?? 0);
        return read is not null;
    }
}
