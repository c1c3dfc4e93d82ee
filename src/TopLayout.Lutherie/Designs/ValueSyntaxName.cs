using Tomlyn.Syntax;

namespace TopLayout.Lutherie.Designs;

/// <summary>What a value is, in the words of a message.</summary>
internal static class ValueSyntaxName
{
    public static string Of(ValueSyntax value) => value switch
    {
        StringValueSyntax text => $"the text `{ValueText.Quotable(text.Value ?? "")}`",
        IntegerValueSyntax or FloatValueSyntax => $"the number {ValueText.Quotable(value.ToString())}",
        BooleanValueSyntax flag => flag.Value ? "`true`" : "`false`",
        ArraySyntax => "a list",
        InlineTableSyntax => "a section",
        DateTimeValueSyntax => "a date or time",
        _ => "something else",
    };
}
