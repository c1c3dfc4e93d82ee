using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// A place in trade words: <c>25 mm below the soundhole edge, 60 mm to the treble</c>, or <c>at the crossing</c>. A distance without a unit is
/// in the file's units; without a second part the place lies on the centre line.
/// </summary>
/// <param name="Way">−1 above the landmark, towards the neck; +1 below it; 0 at it.</param>
/// <param name="DistanceMm">From the landmark, mm, ≥ 0.</param>
/// <param name="From">The landmark.</param>
/// <param name="AcrossMm">From the centre line, mm, + on the treble side.</param>
internal sealed record AnchorPhrase(int Way, double DistanceMm, Landmark From, double AcrossMm)
{
    /// <summary>An example, as help shows it.</summary>
    public const string Example = "25 mm below the soundhole edge, 60 mm to the treble";

    /// <summary>What is wrong with a phrase: where in it, in how many characters, what was expected there, and what to do.</summary>
    public readonly record struct Problem(int At, int Length, string Expected, string Cure);

    /// <summary>Reads a phrase; gives it, or what is wrong.</summary>
    public static (AnchorPhrase? Phrase, Problem? Wrong) Read(string text, LengthUnit unit)
    {
        var words = new PhraseWords(text, unit);
        var (way, distance) = (0, 0.0);
        if (!words.Take("at"))
        {
            if (words.TakeLength() is not { } length)
            {
                return (null, words.Wrong("a distance such as `25 mm`, or `at`", $"write for example `{Example}`"));
            }

            distance = length;
            if (words.TakeOneOf("above", "below") is not { } which)
            {
                return (null, words.Wrong("`above` or `below`", "above is towards the neck, below towards the tail"));
            }

            way = which == 0 ? -1 : 1;
        }

        words.Take("the");
        var name = words.UpTo(',');
        if (Landmark.All.FirstOrDefault(l => l.Name == name.Text) is not { } landmark)
        {
            return (null, new Problem(name.At, name.Length, "a landmark", Suggestion(name.Text)));
        }

        return Across(words, new AnchorPhrase(way, distance, landmark, 0));
    }

    private static (AnchorPhrase?, Problem?) Across(PhraseWords words, AnchorPhrase phrase)
    {
        if (!words.Take(","))
        {
            return (phrase, null);
        }

        if (words.TakeLength() is not { } aside)
        {
            return (null, words.Wrong("a distance from the centre line such as `60 mm`", $"write for example `{Example}`"));
        }

        if (!words.Take("to"))
        {
            return (null, words.Wrong("`to the bass` or `to the treble`", "the distance is from the centre line"));
        }

        words.Take("the");
        if (words.TakeOneOf("bass", "treble") is not { } side)
        {
            return (null, words.Wrong("`bass` or `treble`", "sides are named as on a right-handed instrument's strings"));
        }

        return words.IsAtEnd
            ? (phrase with { AcrossMm = side == 0 ? -aside : aside }, null)
            : (null, words.Wrong("the end of the phrase", "leave the rest out"));
    }

    private static string Suggestion(string name)
    {
        var names = Landmark.All.Select(l => l.Name).ToList();
        return Spelling.Nearest(name, names) is { } near
            ? $"did you mean `{near}`?"
            : $"the landmarks are {string.Join(", ", names.Select(n => $"`{n}`"))}";
    }
}
