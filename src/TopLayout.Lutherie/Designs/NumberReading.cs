using System.Globalization;
using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>Reads a numeric entry and holds it to its ranges.</summary>
internal static class NumberReading
{
    /// <summary>The number in mm, degrees, % or °C; null, with a finding, when there is none or it is not possible.</summary>
    public static double? Read(Parameter parameter, RawEntry entry, ReadingContext context) => entry.Value switch
    {
        IntegerValueSyntax whole => Bare(parameter, entry, whole.Value, context),
        FloatValueSyntax real when parameter.Kind != ParameterKind.Count => Bare(parameter, entry, real.Value, context),
        StringValueSyntax text when parameter.Kind == ParameterKind.Length => WithUnit(parameter, entry, text.Value ?? "", context),
        _ => Refused(parameter, entry, context),
    };

    private static double? Bare(Parameter parameter, RawEntry entry, double amount, ReadingContext context)
    {
        if (!double.IsFinite(amount))
        {
            context.Error(
                Rules.NotFinite,
                parameter.Path,
                $"`{parameter.Key}` must be a finite number; it is `{ValueSyntaxName.Digits(entry.Value)}`",
                entry.Place,
                $"write for example `{context.Example(parameter)}`");
            return null;
        }

        if (parameter.Kind != ParameterKind.Length)
        {
            return Judged(parameter, entry, amount, context, "");
        }

        // Without the file's unit a bare length says nothing yet; the missing unit is reported already.
        return context.Units is { } unit
            ? Judged(parameter, entry, LengthText.Converted(amount, LengthText.Size(unit)), context, "", UnitSlip(parameter, amount, unit, context.Body))
            : amount;
    }

    private static double? WithUnit(Parameter parameter, RawEntry entry, string text, ReadingContext context)
    {
        var quoted = $"`{ValueText.Quotable(text)}`";
        if (LengthText.TryRead(text, out var millimetres, out var problem))
        {
            return Judged(parameter, entry, millimetres, context, $" ({quoted})");
        }

        var cure = text.Contains(',', StringComparison.Ordinal)
            ? "the decimal mark is a point"
            : $"write a number and `mm`, `cm` or `in`, for example `{parameter.ExampleLineWithUnit(context.Shown, context.Body)}`";
        context.Error(Rules.UnreadableLength, parameter.Path, $"`{parameter.Key}` must be a length; {quoted} {problem}", entry.Place, cure);
        return null;
    }

    private static double? Judged(
        Parameter parameter, RawEntry entry, double value, ReadingContext context, string asWritten, string? slip = null)
    {
        var unit = context.Shown;
        var shown = Quantity.Shown(parameter.Kind, value, unit, parameter.Possible!.Value);
        if (!Quantity.Holds(parameter.Possible!.Value, value))
        {
            var usual = parameter.UsualPhrase(unit, context.Body) is { } phrase ? $"; {phrase}" : "";
            context.Error(
                Rules.OutOfRange,
                parameter.Path,
                $"`{parameter.Key}` must be {parameter.AllowedText(unit)}; it is {shown}{asWritten}",
                entry.Place,
                (slip ?? FractionSlip(parameter, value)) is { } meant
                    ? $"did you mean `{parameter.Key} = {meant}`?"
                    : $"write for example `{context.Example(parameter)}`{usual}");
            return null;
        }

        if (parameter.UsualFor(context.Body) is { } practice && !Quantity.Holds(practice, value))
        {
            context.Remark(
                Rules.Unusual, parameter.Path, $"`{parameter.Key}` is {shown}{asWritten}; {parameter.UsualPhrase(unit, context.Body)}", entry.Place);
        }

        return value;
    }

    private static double? Refused(Parameter parameter, RawEntry entry, ReadingContext context)
    {
        var bare = entry.Value is StringValueSyntax text && IsNumber(text.Value ?? "") ? text.Value!.Trim() : null;
        context.WrongType(
            parameter, entry, Wanted(parameter.Kind), bare is null ? context.Example(parameter) : $"{parameter.Key} = {bare}");
        return null;
    }

    private static bool IsNumber(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out _);

    private static string Wanted(ParameterKind kind) => kind switch
    {
        ParameterKind.Length => "a length",
        ParameterKind.Angle => "an angle in degrees, a number",
        ParameterKind.Percent => "a percentage, a number without its sign",
        ParameterKind.Temperature => "a temperature in °C, a number",
        ParameterKind.Count => "a whole number",
        _ => "a number",
    };

    /// <summary>The same amount in another unit when that makes it possible; the more usual one first.</summary>
    private static string? UnitSlip(Parameter parameter, double amount, LengthUnit unit, BodyType? body)
    {
        (string Symbol, double Size)[] others = [("in", LengthText.MillimetresPerInch), ("cm", 10), ("mm", 1)];
        var legal = others.Where(o => o.Size != LengthText.Size(unit) && Quantity.Holds(parameter.Possible!.Value, amount * o.Size)).ToList();
        var best = legal.OrderByDescending(o => parameter.UsualFor(body) is { } usual && Quantity.Holds(usual, amount * o.Size)).FirstOrDefault();
        return best.Symbol is null ? null : ValueText.Quoted($"{ValueText.Number(amount, 6)} {best.Symbol}");
    }

    /// <summary>45 where a fraction belongs, 0.45 where a percentage does.</summary>
    private static string? FractionSlip(Parameter parameter, double value)
    {
        var meant = parameter.Kind switch
        {
            ParameterKind.Number when parameter.Possible!.Value.High <= 1 && value > 1 => value / 100,
            ParameterKind.Percent when value is > 0 and < 1 => value * 100,
            _ => double.NaN,
        };
        return Quantity.Holds(parameter.Possible!.Value, meant) ? ValueText.Number(meant, 6) : null;
    }
}
