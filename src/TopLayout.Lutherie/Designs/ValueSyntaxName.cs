using Tomlyn.Syntax;

namespace TopLayout.Lutherie.Designs;

/// <summary>What a value is, in the words of a message.</summary>
internal static class ValueSyntaxName
{
    public static string Of(ValueSyntax value) => value switch
    {
        StringValueSyntax text => $"the text `{ValueText.Quotable(text.Value ?? "")}`",
        IntegerValueSyntax or FloatValueSyntax => $"the number `{Digits(value)}`",
        BooleanValueSyntax flag => flag.Value ? "`true`" : "`false`",
        ArraySyntax => "a list",
        InlineTableSyntax => "a section",
        DateTimeValueSyntax => "a date or time",
        _ => "something else",
    };

    /// <summary>A number as it is written; the syntax node's own text may carry a comment.</summary>
    public static string Digits(ValueSyntax value) => ValueText.Quotable(value switch
    {
        IntegerValueSyntax whole => whole.Token?.Text ?? "",
        FloatValueSyntax real => real.Token?.Text ?? "",
        _ => throw new ArgumentException("not a number", nameof(value)),
    });
}
