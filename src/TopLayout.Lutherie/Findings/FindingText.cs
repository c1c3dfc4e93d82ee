using System.Globalization;
using System.Text;

namespace TopLayout.Lutherie.Findings;

/// <summary>The one place that turns a finding into lines of text.</summary>
public static class FindingText
{
    /// <summary>
    /// <c>file:line:column: error CODE: sentence</c>, then the other places and the hint, each on its own line; no line feed at the end.
    /// </summary>
    public static string Of(Finding finding)
    {
        var text = new StringBuilder();
        if (finding.Place is { } place)
        {
            text.Append(Of(place)).Append(": ");
        }

        text.Append(Word(finding.Severity)).Append(' ').Append(finding.Rule.Code).Append(": ").Append(finding.Sentence);
        foreach (var other in finding.OtherPlaces)
        {
            text.Append("\n  also: ").Append(Of(other));
        }

        return finding.Cure is null ? text.ToString() : text.Append("\n  hint: ").Append(finding.Cure).ToString();
    }

    /// <summary>"file:line:column".</summary>
    public static string Of(SourcePlace place) =>
        string.Create(CultureInfo.InvariantCulture, $"{place.File}:{place.Line}:{place.Column}");

    /// <summary>The severity in one word, as printed.</summary>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Fail => "fail",
        Severity.Warning => "warning",
        Severity.Note => "note",
        Severity.Remark => "remark",
        Severity.Pass => "pass",
        _ => throw new ArgumentOutOfRangeException(nameof(severity)),
    };
}
