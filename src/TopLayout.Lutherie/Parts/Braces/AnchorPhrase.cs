using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>How a place in words lies to what it names.</summary>
internal enum AnchorWay
{
    /// <summary>At it.</summary>
    At,

    /// <summary>Above it, towards the neck.</summary>
    Above,

    /// <summary>Below it, towards the tail.</summary>
    Below,

    /// <summary>On the axis of a bar, so that what ends there is cut against that bar's side.</summary>
    Against,
}

/// <summary>
/// A place in trade words: <c>25 mm below the soundhole edge, 60 mm to the treble</c>, <c>at the crossing</c>, or
/// <c>against the X leg, treble, 70 mm to the treble</c>. A distance without a unit is in the file's units; without a second part the place
/// lies on the centre line, or straight above or below the end of a bar it names.
/// </summary>
/// <param name="Way">How it lies to what it names.</param>
/// <param name="DistanceMm">From the landmark or bar, mm, ≥ 0.</param>
/// <param name="From">The landmark; null where another bar is named.</param>
/// <param name="Bar">The other bar; null where a landmark is named.</param>
/// <param name="AcrossMm">From the centre line, mm, + on the treble side; null when not said.</param>
/// <param name="FromNeckEdgeMm">From the neck edge, mm, instead, for a place on a bar; null when not said.</param>
internal sealed record AnchorPhrase(AnchorWay Way, double DistanceMm, Landmark? From, NamedBar? Bar, double? AcrossMm, double? FromNeckEdgeMm)
{
    /// <summary>An example, as help shows it.</summary>
    public const string Example = "25 mm below the soundhole edge, 60 mm to the treble";

    /// <summary>What is wrong with a phrase: where in it, in how many characters, what was expected there, and what to do.</summary>
    public readonly record struct Problem(int At, int Length, string Expected, string Cure);

    /// <summary>Reads a phrase; gives it, or what is wrong.</summary>
    public static (AnchorPhrase? Phrase, Problem? Wrong) Read(string text, LengthUnit unit)
    {
        var words = new PhraseWords(text, unit);
        var start = words.Next;
        var (way, distance) = (AnchorWay.At, 0.0);
        if (words.Take("against"))
        {
            way = AnchorWay.Against;
        }
        else if (!words.Take("at"))
        {
            if (words.TakeLength() is not { } length)
            {
                return (null, words.Wrong("a distance such as `25 mm`, `at` or `against`", $"write for example `{Example}`"));
            }

            distance = length;
            if (words.TakeOneOf("above", "below") is not { } which)
            {
                return (null, words.Wrong("`above` or `below`", "above is towards the neck, below towards the tail"));
            }

            way = which == 0 ? AnchorWay.Above : AnchorWay.Below;
        }

        words.Take("the");
        var phrase = new AnchorPhrase(way, distance, null, null, null, null);
        var (named, wrong) = Named(words, phrase, start);
        return named is null ? (null, wrong) : Across(words, named);
    }

    // What the place is measured from: a bar where a bar is meant, else a landmark.
    private static (AnchorPhrase?, Problem?) Named(PhraseWords words, AnchorPhrase phrase, int start)
    {
        var name = words.UpTo(',');
        var isAgainst = phrase.Way == AnchorWay.Against;
        if (!isAgainst && Landmark.All.FirstOrDefault(l => l.Name == name.Text) is { } landmark)
        {
            return (phrase with { From = landmark }, null);
        }

        var (bar, wrong) = NamedBar.Read(words, name);
        if (wrong is not null)
        {
            return (null, wrong);
        }

        return (bar, isAgainst, bar?.End) switch
        {
            (null, true, _) => (null, new Problem(name.At, name.Length, "a bar", Suggestion(name.Text, NamedBar.Examples, "bars are named as on the plan:"))),
            (null, _, _) => (null, new Problem(name.At, name.Length, "a landmark", Suggestion(name.Text, Landmark.All.Select(l => l.Name).Concat(NamedBar.Examples), "the landmarks are"))),
            (_, true, not null) => (null, new Problem(name.At, name.Length, "a bar, not its end", $"write `against the {bar.Member}`, or `at the {bar.End} of the {bar.Member}`")),
            (_, false, null) when phrase.Way == AnchorWay.At => (null, new Problem(
                start, "at".Length, $"`against`, or a distance `above` or `below`, for {Say.The(bar.Member)} has two sides",
                $"write `against the {bar.Member}` to butt against it, or `0 mm below the {bar.Member}`")),
            _ => (phrase with { Bar = bar }, null),
        };
    }

    private static (AnchorPhrase?, Problem?) Across(PhraseWords words, AnchorPhrase phrase)
    {
        if (!words.Take(","))
        {
            return words.IsAtEnd ? (phrase, null) : (null, words.Wrong("the end of the phrase", "leave the rest out"));
        }

        if (words.TakeLength() is not { } aside)
        {
            return (null, words.Wrong("a distance from the centre line such as `60 mm`", $"write for example `{Example}`"));
        }

        if (phrase.Way == AnchorWay.Against && words.Take("from"))
        {
            words.Take("the");
            return !words.Take("neck edge") ? (null, words.Wrong("`neck edge`", "a place on a bar is told from the centre line or from the neck edge"))
                : Ended(words, phrase with { FromNeckEdgeMm = aside });
        }

        if (!words.Take("to"))
        {
            return (null, words.Wrong(
                phrase.Way == AnchorWay.Against ? "`to the bass`, `to the treble` or `from the neck edge`" : "`to the bass` or `to the treble`",
                phrase.Way == AnchorWay.Against ? "the distance tells where on the bar's axis the place lies" : "the distance is from the centre line"));
        }

        words.Take("the");
        return words.TakeOneOf("bass", "treble") is { } side ? Ended(words, phrase with { AcrossMm = side == 0 ? -aside : aside })
            : (null, words.Wrong("`bass` or `treble`", "sides are named as on a right-handed instrument's strings"));
    }

    private static (AnchorPhrase?, Problem?) Ended(PhraseWords words, AnchorPhrase phrase) =>
        words.IsAtEnd ? (phrase, null) : (null, words.Wrong("the end of the phrase", "leave the rest out"));

    private static string Suggestion(string name, IEnumerable<string> known, string list) => Spelling.Nearest(name, known) is { } near
        ? $"did you mean `{near}`?"
        : $"{list} {string.Join(", ", known.Select(n => $"`{n}`"))}";
}
