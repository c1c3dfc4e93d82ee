using System.Globalization;
using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;
using Lengths = System.Collections.Immutable.ImmutableArray<TopLayout.Lutherie.Designs.Sourced<double>>;

namespace TopLayout.Lutherie.Designs;

/// <summary>A list of lengths in square brackets; each is read as a length of its own, so that a message points at the one that is wrong.</summary>
internal sealed class LengthListKind(Section section, string key, (double Low, double High) possible, int most) : ValueKind<Lengths>
{
    // In a canonical text; a file has a blank after it.
    private const char Comma = ',';

    public override ParameterKind Kind => ParameterKind.Lengths;

    public override (double Low, double High)? Possible => possible;

    public override string AllowedText(LengthUnit unit) =>
        $"1 to {ValueText.Number(most, 0)} lengths in square brackets, each {Quantity.Range(ParameterKind.Length, possible, unit)}";

    public override Lengths Example(LengthUnit unit, BodyType? body) =>
    [
        .. Enumerable.Range(1, 3).Select(n => Quantity.Between(ParameterKind.Length, (possible.Low, possible.High * n / 3), possible, unit, decimals: 0))
            .Select(value => new Sourced<double>(value, default, IsDefault: false)),
    ];

    public override string Shown(Lengths value, LengthUnit unit) => $"{ValueText.Number(value.Length, 0)} lengths";

    public override string Written(Lengths value, LengthUnit unit) =>
        $"[{string.Join(", ", value.Select(v => LengthText.Shortest(v.Value, LengthText.Size(unit), possible)))}]";

    public override string Canonical(Lengths value) => string.Join(Comma, value.Select(v => ValueText.Number(v.Value, 6)));

    public override bool TryParse(string canonical, out Lengths value)
    {
        var numbers = canonical.Split(Comma).Select(t => double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out var n) ? n : double.NaN).ToList();
        value = [.. numbers.Select(n => new Sourced<double>(n, default, IsDefault: false))];
        return numbers.TrueForAll(double.IsFinite);
    }

    protected override bool IsLegal(Lengths value) => value.Length >= 1 && value.Length <= most && value.All(v => Quantity.Holds(possible, v.Value));

    protected override bool TryRead(Parameter parameter, RawEntry entry, ReadingContext context, out Lengths value)
    {
        value = [];
        if (entry.Value is not ArraySyntax array)
        {
            context.WrongType(parameter, entry, "a list of lengths in square brackets", context.Example(parameter));
            return false;
        }

        var items = array.Items.Select(i => i.Value).OfType<ValueSyntax>().ToList();
        if (items.Count < 1 || items.Count > most)
        {
            context.Error(
                Rules.OutOfRange,
                parameter.Path,
                $"`{parameter.Key}` must be {AllowedText(context.Shown)}; it has {ValueText.Number(items.Count, 0)}",
                entry.Place,
                $"write for example `{context.Example(parameter)}`");
            return false;
        }

        value = [.. items.Select((item, index) => Item(item, index + 1, context)).OfType<Sourced<double>>()];
        return value.Length == items.Count;
    }

    private Sourced<double>? Item(ValueSyntax item, int number, ReadingContext context)
    {
        var each = Parameter.Length(section, $"{key}[{ValueText.Number(number, 0)}]", "", possible);
        var place = context.Source.Place(item.Span.Start.Offset, item.Span.End.Offset + 1);
        return NumberReading.Read(each, new RawEntry(each.Key, place, item, place), context) is { } mm ? new Sourced<double>(mm, place, IsDefault: false) : null;
    }
}
