using System.Globalization;
using System.Text.RegularExpressions;
using Tomlyn;
using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>Syntax errors in a maker's words: the usual slips are recognised from the line, the rest keep the parser's own message.</summary>
internal static partial class SyntaxProblems
{
    private const int MostLines = 10;
    private const int LongestLine = 300;
    private const int LongestMessage = 160;

    /// <summary>One finding for each of the first lines in error.</summary>
    public static void Add(IEnumerable<DiagnosticMessage> diagnostics, ReadingContext context)
    {
        var firsts = diagnostics.OrderBy(d => d.Span.Start.Offset).DistinctBy(d => context.Source.LineOf(d.Span.Start.Offset));
        foreach (var first in firsts.Take(MostLines))
        {
            var place = context.Source.Place(first.Span.Start.Offset, first.Span.End.Offset + 1);
            AddFor(context.Source.LineAt(place.Line), place, first.Message, context);
        }
    }

    /// <summary>The parser's refusal of lists nested too deeply.</summary>
    public static void AddTooDeep(TomlException exception, ReadingContext context)
    {
        var place = new SourcePlace(context.Source.File, Math.Max(1, exception.Line ?? 1), Math.Max(1, exception.Column ?? 1), 0);
        context.Error(Rules.Syntax, "syntax", "brackets are nested too deeply", place, "delete the brackets that are not meant");
    }

    private static void AddFor(string line, SourcePlace place, string message, ReadingContext context)
    {
        var match = KeyValue().Match(line.Length <= LongestLine ? line : "");
        var value = match.Groups["value"];
        if (match.Success && Slip(match.Groups["key"].Value, value.Value) is { } slip)
        {
            context.Error(Rules.Syntax, "syntax", slip.Sentence, Stretch(place, line, value.Index, value.Length), slip.Cure);
        }
        else if (line.Length <= LongestLine && NeitherKeyNorHeader().IsMatch(line))
        {
            context.Error(
                Rules.Syntax,
                "syntax",
                "the line is neither `key = value` nor a `[section]`",
                Stretch(place, line, line.Length - line.TrimStart().Length, line.Trim().Length),
                "add what is missing, or begin a comment with `#`");
        }
        else
        {
            context.Error(Rules.Syntax, "syntax", InOurStyle(message), place, "`toplayout explain TL0001` shows how lines are written");
        }
    }

    /// <summary>A stretch of the line a place is on, given in UTF-16 units.</summary>
    private static SourcePlace Stretch(SourcePlace place, string line, int from, int length) => place with
    {
        Column = line[..from].EnumerateRunes().Count() + 1,
        Length = line.Substring(from, length).EnumerateRunes().Count(),
    };

    /// <summary>A value that TOML does not take, and what was most likely meant.</summary>
    private static (string Sentence, string Cure)? Slip(string key, string value)
    {
        var quoted = $"`{ValueText.Quotable(value)}`";
        if (value.Length == 0)
        {
            return ($"`{key}` has no value", "write a value after `=`, or delete the line");
        }

        if (CommaNumber().IsMatch(value))
        {
            return ($"{quoted} is not a number", $"the decimal mark is a point: `{key} = {value.Replace(',', '.')}`");
        }

        if (value[0] is '"' or '\'' && value.Count(c => c == value[0]) == 1)
        {
            return ("the text has no closing quote", $"end it with `{value[0]}`");
        }

        if (LengthText.TryRead(value, out _, out var problem))
        {
            return ($"{quoted} is not in quotes", $"write `{key} = {InQuotes(value)}`");
        }

        if (problem == "has no unit")
        {
            return !double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
                ? ($"{quoted} is not a number", $"a fraction needs quotes and its unit: `{key} = {ValueText.Quoted(value + " in")}`")
                : Math.Abs(number) >= 1e15 ? ($"{quoted} is too large a number", "write a smaller number")
                : ($"{quoted} is not a number as TOML writes it", $"write `{key} = {ValueText.Number(number, 9)}`");
        }

        return char.IsLetter(value[0]) && !value.Contains('"') ? ($"{quoted} is not in quotes", $"write `{key} = {ValueText.Quoted(value)}`") : null;
    }

    // A " for inches stands in single quotes.
    private static string InQuotes(string value) => value.Contains('"') ? $"'{value}'" : ValueText.Quoted(value);

    private static string InOurStyle(string message)
    {
        var text = ValueText.Cut(ValueText.Printable(message), LongestMessage).TrimEnd('.');
        return text.Length == 0 ? "the line cannot be read" : char.ToLowerInvariant(text[0]) + text[1..];
    }

    [GeneratedRegex(@"^\s*(?<key>[A-Za-z0-9_.-]+)\s*=\s*(?<value>[^#\[{]*?)\s*(#.*)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex KeyValue();

    [GeneratedRegex(@"^[^=\[\]#""'{}]+(#.*)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex NeitherKeyNorHeader();

    [GeneratedRegex("^[-+]?[0-9]+,[0-9]+$", RegexOptions.CultureInvariant)]
    private static partial Regex CommaNumber();
}
