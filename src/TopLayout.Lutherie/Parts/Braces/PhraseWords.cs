using System.Globalization;
using System.Text.RegularExpressions;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The words of a phrase, taken one after the other; knows where it stands.</summary>
internal sealed partial class PhraseWords(string text, LengthUnit unit)
{
    private int _at;

    /// <summary>Whether nothing but blanks is left.</summary>
    public bool IsAtEnd => text.AsSpan(Skipped()).IsEmpty;

    /// <summary>Where the words taken so far end.</summary>
    public int At => _at;

    /// <summary>Where the next word begins.</summary>
    public int Next => Skipped();

    /// <summary>Takes a word, in whatever case; false when another stands there.</summary>
    public bool Take(string word)
    {
        var from = Skipped();
        var end = from + word.Length;
        var isThere = string.Compare(text, from, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0
            && (end >= text.Length || !char.IsLetter(word[^1]) || !char.IsLetter(text[end]));
        _at = isThere ? end : _at;
        return isThere;
    }

    /// <summary>Takes one of two words; its number, or null.</summary>
    public int? TakeOneOf(string first, string second) => Take(first) ? 0 : Take(second) ? 1 : null;

    /// <summary>Takes a length with its unit, or a bare number in the file's, mm; null when none stands there.</summary>
    public double? TakeLength()
    {
        var match = Length().Match(text, Skipped());
        if (!match.Success)
        {
            return null;
        }

        var hasUnit = match.Groups["unit"].Success;
        var written = hasUnit ? match.Value : $"{match.Groups["number"].Value} {(unit == LengthUnit.Inch ? "in" : "mm")}";
        if (!LengthText.TryRead(written, out var mm, out _))
        {
            return null;
        }

        _at = match.Index + match.Length;
        return mm;
    }

    /// <summary>Takes all up to a mark or the end, small letters and single blanks; with where it stands.</summary>
    public (string Text, int At, int Length) UpTo(char mark)
    {
        var from = Skipped();
        var end = text.IndexOf(mark, from);
        var piece = text[from..(end < 0 ? text.Length : end)].TrimEnd();
        _at = from + piece.Length;
        var plain = string.Join(' ', piece.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToLower(CultureInfo.InvariantCulture);
        return (plain, from, piece.Length);
    }

    /// <summary>Says that something else was expected at the next word.</summary>
    public AnchorPhrase.Problem Wrong(string expected, string cure)
    {
        var from = Skipped();
        var end = from;
        while (end < text.Length && !char.IsWhiteSpace(text[end]) && (end == from || text[end] != ','))
        {
            end++;
        }

        return new AnchorPhrase.Problem(from, end - from, expected, cure);
    }

    private int Skipped()
    {
        var at = _at;
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at;
    }

    // A number, a fraction, or both; then perhaps a unit.
    [GeneratedRegex(
        """\G(?<number>[0-9]+(?:\s+|\s*-\s*)[0-9]+\s*/\s*[0-9]+|[0-9]+\s*/\s*[0-9]+|[0-9]+(?:\.[0-9]+)?|\.[0-9]+)(?:\s*(?<unit>mm\b|cm\b|inches\b|inch\b|in\b|"|″))?""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase)]
    private static partial Regex Length();
}
