using System.Globalization;
using Tomlyn.Syntax;

namespace TopLayout.Lutherie.Designs;

/// <summary>Values as a design file writes them, in the style of the value they replace.</summary>
internal static class ValueWriter
{
    /// <summary>A value where none stood: a length as a number of the file's unit.</summary>
    public static string New(Setting setting, LengthUnit unit) => Millimetres(setting) is { } millimetres
        ? LengthText.Shortest(millimetres, LengthText.Size(unit), setting.Parameter.Possible!.Value)
        : setting.Value.WrittenIn(unit);

    /// <summary>A value in the place of another; the same text when it says the same already.</summary>
    public static string Rewritten(string written, ValueSyntax syntax, Setting setting, LengthUnit unit)
    {
        if (syntax is not StringValueSyntax text)
        {
            return Says(written, setting, unit) ? written : New(setting, unit);
        }

        var content = text.Value ?? "";
        if (Millimetres(setting) is not { } millimetres)
        {
            return setting.Canonical == content ? written : InQuotesOf(written, setting.Canonical);
        }

        return LengthText.TryRead(content, out var now, out _) && LengthText.IsSame(now, millimetres)
            ? written
            : InQuotesOf(written, LengthText.Restyled(content, millimetres, setting.Parameter.Possible!.Value));
    }

    private static double? Millimetres(Setting setting) => setting.Parameter.Kind == ParameterKind.Length ? setting.Value.Number : null;

    // Whether a bare number, in whatever form TOML allows, is the value already.
    private static bool Says(string written, Setting setting, LengthUnit unit)
    {
        var size = setting.Parameter.Kind == ParameterKind.Length ? LengthText.Size(unit) : 1;
        return setting.Value.Number is { } number
            && double.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out var amount)
            && LengthText.IsSame(LengthText.Converted(amount, size), number);
    }

    // Single quotes stay where what they hold allows it.
    private static string InQuotesOf(string written, string content) =>
        written.StartsWith('\'') && !content.Contains('\'') ? $"'{content}'" : ValueText.Quoted(content);
}
