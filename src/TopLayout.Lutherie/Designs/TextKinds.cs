using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>Free text of one line.</summary>
internal class TextKind(int longest) : ValueKind<string>
{
    public override ParameterKind Kind => ParameterKind.Text;

    public override string AllowedText(LengthUnit unit) => $"one line of 1 to {ValueText.Number(longest, 0)} characters";

    public override string Example(LengthUnit unit, BodyType? body) => "...";

    public override string Shown(string value, LengthUnit unit) => $"`{ValueText.Quotable(value)}`";

    public override string Written(string value, LengthUnit unit) => ValueText.Quoted(value);

    public override string Canonical(string value) => value;

    public override bool TryParse(string canonical, out string value)
    {
        value = canonical;
        return true;
    }

    protected override bool IsLegal(string value) => Problem(value) is null;

    protected override bool TryRead(Parameter parameter, RawEntry entry, ReadingContext context, out string value)
    {
        if (!WordReading.TryText(parameter, entry, context, out value))
        {
            return false;
        }

        if (Problem(value) is { } problem)
        {
            context.Error(
                Rules.UnusableText,
                parameter.Path,
                $"`{parameter.Key}` must be {AllowedText(context.Shown)}; it {problem}",
                entry.Place,
                "write a short text on one line");
            return false;
        }

        return true;
    }

    private string? Problem(string value) => value switch
    {
        _ when value.Trim().Length == 0 => "is empty",
        _ when value.Any(char.IsControl) => "holds a line end, a tab or a control character",
        _ when value.EnumerateRunes().Count() > longest => $"has {ValueText.Number(value.EnumerateRunes().Count(), 0)}",
        _ => null,
    };
}

/// <summary>The key of a wood, from the built-in table or from the file itself.</summary>
internal sealed class WoodKind(Func<IEnumerable<string>> known, Parameter<string>? definedBy) : ValueKind<string>
{
    public override ParameterKind Kind => ParameterKind.Wood;

    public override string AllowedText(LengthUnit unit) => "the key of a wood";

    public override string Example(LengthUnit unit, BodyType? body) => known().First();

    public override string Shown(string value, LengthUnit unit) => $"`{value}`";

    public override string Written(string value, LengthUnit unit) => ValueText.Quoted(value);

    public override string Canonical(string value) => value;

    public override bool TryParse(string canonical, out string value)
    {
        value = canonical;
        return true;
    }

    // The wood table may not be ready while the parameters are made, so a default is not looked up here but by a test.
    protected override bool IsLegal(string value) => value.Length > 0;

    protected override bool TryRead(Parameter parameter, RawEntry entry, ReadingContext context, out string value)
    {
        if (!WordReading.TryText(parameter, entry, context, out value))
        {
            return false;
        }

        var keys = known().Concat(context.EntriesOf(definedBy).Select(ReadingContext.TextOf).OfType<string>()).ToList();
        if (keys.Contains(value, StringComparer.Ordinal))
        {
            return true;
        }

        context.Error(
            Rules.UnknownWood,
            parameter.Path,
            $"`{parameter.Key}` names the wood `{ValueText.Quotable(value)}`, which is not known",
            entry.Place,
            Spelling.Nearest(value, keys) is { } near
                ? $"did you mean `{parameter.Key} = {ValueText.Quoted(near)}`?"
                : "choose a wood from `toplayout woods`" + (definedBy is null ? "" : $", or describe it in {definedBy.Section.Header}"));
        return false;
    }
}

/// <summary>The part of reading that choices, texts and woods share.</summary>
internal static class WordReading
{
    /// <summary>The entry's text; false, with a finding, when it is no text.</summary>
    public static bool TryText(Parameter parameter, RawEntry entry, ReadingContext context, out string text)
    {
        text = (entry.Value as Tomlyn.Syntax.StringValueSyntax)?.Value ?? "";
        if (entry.Value is Tomlyn.Syntax.StringValueSyntax)
        {
            return true;
        }

        context.WrongType(parameter, entry, "text in quotes", context.Example(parameter));
        return false;
    }
}
