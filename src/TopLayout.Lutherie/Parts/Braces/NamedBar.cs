using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>A bar that an anchor names as the plan does, or one of its ends.</summary>
/// <param name="Member">The member's name, with its number where it is said.</param>
/// <param name="Section">The section without which there is no such bar.</param>
/// <param name="Number">Which of several alike, counted from 1; 0 for a bar of which there is one, or one on each side.</param>
/// <param name="End">The end's name; null for the bar as a whole.</param>
/// <param name="At">Where in the phrase it is named, counted from 0.</param>
/// <param name="Length">In how many characters.</param>
internal sealed partial record NamedBar(string Member, Section Section, int Number, string? End, int At, int Length)
{
    // Two names for one brace: the plan's own, and the one by which it is a landmark.
    private static readonly ImmutableArray<Kind> Kinds =
    [
        new("X leg", XBrace.Section, IsSided: true), new(TransverseBrace.Name, TransverseBrace.Section),
        new("transverse brace", TransverseBrace.Section) { Member = TransverseBrace.Name }, new(FlatBrace.Name, FlatBrace.Section),
        new("tone bar", ToneBars.Section, IsNumbered: true) { MayBeAlone = true }, new("ladder bar", LadderBars.Section, IsNumbered: true) { MayBeAlone = true },
        new("soundhole brace", SoundholeBraces.Section, IsSided: true), new("finger brace", FingerBraces.Section, IsNumbered: true, IsSided: true) { MayBeAlone = true },
        new("fan strut", Fan.Section, IsNumbered: true) { MayBeAlone = true }, new("closing bar", ClosingBars.Section, IsSided: true),
        new("bar", FreeBars.Section, IsNumbered: true),
    ];

    private static readonly ImmutableArray<string> Ends =
        ["head", "tail", "bass end", "treble end", "upper end", "lower end", "neck end", "tail end", "inner end", "outer end"];

    /// <summary>One of each kind, as an example of its name.</summary>
    public static IEnumerable<string> Examples { get; } = Kinds.Select(k => k.Words + (k.IsNumbered ? " 1" : "") + (k.IsSided ? ", bass" : ""));

    /// <summary>The name of one of several alike, counted from 1; a lone one has no number.</summary>
    public static string Numbered(string words, int number, int count) => count == 1 ? words : $"{words} {Say.Count(number)}";

    /// <summary>The name without its number: that of the first of a kind where it is the only one.</summary>
    public string Alone => Member.Replace($" {Say.Count(Number)}", "", StringComparison.Ordinal);

    /// <summary>
    /// Reads a name that begins with words already taken; the side that some names end with is still to be taken. Null for both when no bar
    /// is named so.
    /// </summary>
    public static (NamedBar? Bar, AnchorPhrase.Problem? Wrong) Read(PhraseWords words, (string Text, int At, int Length) taken)
    {
        var match = Name().Match(taken.Text);
        var (name, number, end) = (match.Groups["name"].Value, match.Groups["number"], match.Groups["end"]);
        if (Kinds.FirstOrDefault(k => k.Words.Equals(name, StringComparison.OrdinalIgnoreCase) && (k.IsNumbered == number.Success || (k.MayBeAlone && !number.Success))) is not { } kind
            || (end.Success && !Ends.Contains(end.Value)))
        {
            return (null, null);
        }

        var member = kind.Member + (number.Success ? $" {number.Value}" : "");
        var length = taken.Length;
        if (kind.IsSided)
        {
            if (!words.Take(",") || words.TakeOneOf("bass", "treble") is not { } side)
            {
                return (null, words.Wrong("a side, `bass` or `treble`", $"write `{member}, bass` or `{member}, treble`"));
            }

            (member, length) = ($"{member}, {(side == 0 ? "bass" : "treble")}", words.At - taken.At);
        }

        var which = number.Success ? int.Parse(number.ValueSpan, CultureInfo.InvariantCulture) : 0;
        return (new NamedBar(member, kind.Section, which, end.Success ? end.Value : null, taken.At, length), null);
    }

    // No design has a number of more digits.
    [GeneratedRegex("^(?:(?<end>[a-z ]+) of (?:the )?)?(?<name>[a-z ]*[a-z])(?: (?<number>[1-9][0-9]{0,4}))?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Name();

    private sealed record Kind(string Words, Section Section, bool IsNumbered = false, bool IsSided = false)
    {
        public string Member { get; init; } = Words;

        // Where there is only one, the plan names it without a number.
        public bool MayBeAlone { get; init; }
    }
}
