using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>The two ends of a free bar as the design says them, by numbers or in trade words, turned into points.</summary>
internal static class BarAnchors
{
    /// <summary>A point given by an anchor phrase; null, with the finding said, when it cannot be read or names what is not there.</summary>
    public static Point2? Of(Bench bench, BarRoom room, DesignSection section, string name, Parameter key, Sourced<string> said)
    {
        var (phrase, wrong) = AnchorPhrase.Read(said.Value, bench.Design.Units);
        if (phrase is null)
        {
            SayUnreadable(bench, key, said, wrong!.Value);
            return null;
        }

        var mark = phrase.From;
        if ((mark.Needs is { } needs && !bench.Design.Has(needs)) || mark.Edges(bench, room) is not var (upper, lower))
        {
            SayMissing(bench, section, name, key, said, mark);
            return null;
        }

        if (phrase.Way == 0 && mark.HasTwoEdges(bench, room))
        {
            var at = said.Value.IndexOf("at", StringComparison.OrdinalIgnoreCase);
            SayUnreadable(bench, key, said, new AnchorPhrase.Problem(at, 2, $"a distance `above` or `below`, for the {mark.Name} has an upper and a lower edge", $"write `0 mm above the {mark.Name}` or `0 mm below the {mark.Name}`"));
            return null;
        }

        return new Point2(phrase.AcrossMm, phrase.Way < 0 ? phrase.DistanceMm - upper : -(lower + phrase.DistanceMm));
    }

    private static void SayUnreadable(Bench bench, Parameter key, Sourced<string> said, AnchorPhrase.Problem wrong)
    {
        var found = said.Value[wrong.At..(wrong.At + wrong.Length)];
        bench.Error(
            Rules.UnreadableAnchor,
            key.Path,
            wrong.Length == 0 ? $"`{key.Key}` ends where it needs {wrong.Expected}" : $"`{key.Key}` has `{found}` where it needs {wrong.Expected}",
            wrong.Cure,
            PlaceIn(said, wrong));
    }

    private static void SayMissing(Bench bench, DesignSection section, string name, Parameter key, Sourced<string> said, Landmark mark)
    {
        var isAsked = mark.Needs is { } needs && bench.Design.Has(needs);
        bench.LeaveOut(
            name,
            $"`{key.Key}` of the {name} starts from the {mark.Name}, and the top has none",
            mark.Needs is null || isAsked ? "bring that part onto the top, or start from another landmark" : $"add the section {mark.Needs.Header}, or start from another landmark",
            said.Place,
            isAsked ? bench.Design.PlaceOf(mark.Needs!) : section.Place);
    }

    // The characters inside the quotes; the whole value where it is written with escapes, so that counting would mislead.
    private static SourcePlace PlaceIn(Sourced<string> said, AnchorPhrase.Problem wrong) => said.Place.Length == said.Value.Length + 2
        ? said.Place with { Column = said.Place.Column + 1 + wrong.At, Length = wrong.Length }
        : said.Place;
}
