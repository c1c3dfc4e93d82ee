using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>A point of a free bar's axis.</summary>
/// <param name="At">The point; on the axis of the bar that it butts against.</param>
/// <param name="Holder">The bar that it butts against there; null when it butts against none.</param>
internal readonly record struct BarAnchor(Point2 At, Member? Holder);

/// <summary>A point of a free bar that the design says in trade words, turned into a point.</summary>
/// <param name="bench">Holds what is built, and takes what is wrong.</param>
/// <param name="section">The bar's.</param>
/// <param name="name">The bar's.</param>
/// <param name="key">The key that says the point.</param>
/// <param name="said">The words.</param>
internal sealed class BarAnchors(Bench bench, DesignSection section, string name, Parameter key, Sourced<string> said)
{
    /// <summary>The point; null, with the finding said, when the words cannot be read or name what is not there.</summary>
    public BarAnchor? Find(BarRoom room)
    {
        var (phrase, wrong) = AnchorPhrase.Read(said.Value, bench.Design.Units);
        if (phrase is null)
        {
            SayUnreadable(wrong!.Value);
            return null;
        }

        return phrase.Bar is { } bar ? OnBar(phrase, bar) : FromLandmark(room, phrase, phrase.From!);
    }

    private BarAnchor? FromLandmark(BarRoom room, AnchorPhrase phrase, Landmark mark)
    {
        if ((mark.Needs is { } needs && !bench.Design.Has(needs)) || mark.Edges(bench, room) is not var (upper, lower))
        {
            SayMissing(mark.Name, mark.Needs, said.Place);
            return null;
        }

        if (phrase.Way == AnchorWay.At && upper != lower)
        {
            var at = said.Value.IndexOf("at", StringComparison.OrdinalIgnoreCase);
            SayUnreadable(new AnchorPhrase.Problem(at, 2, $"a distance `above` or `below`, for {Say.The(mark.Name)} has an upper and a lower edge", $"write `0 mm above {Say.TheLast(mark.Name)}` or `0 mm below {Say.TheLast(mark.Name)}`"));
            return null;
        }

        return new BarAnchor(Beside(phrase, phrase.AcrossMm ?? 0, (upper, lower)), null);
    }

    private BarAnchor? OnBar(AnchorPhrase phrase, NamedBar named)
    {
        var place = PlaceIn(named.At, named.Length);
        if ((bench.Find(named.Member) ?? (named.Number == 1 ? bench.Find(named.Alone) : null)) is not { } member)
        {
            SayMissing(named.Member, named.Section, place);
            return null;
        }

        var bar = new BarAxis(member);
        return named.End is { } end ? AtEnd(phrase, member, bar, end, place) : BesideOrAgainst(phrase, member, bar, place);
    }

    private BarAnchor? AtEnd(AnchorPhrase phrase, Member member, BarAxis bar, string end, SourcePlace place)
    {
        if (bar.End(end) is { } at)
        {
            return new BarAnchor(Beside(phrase, phrase.AcrossMm ?? at.X, (-at.Y, -at.Y)), null);
        }

        bench.LeaveOut(
            name,
            $"`{key.Key}` of {Say.The(name)} names the {end} of {Say.TheLast(member.Name)}, which has none",
            $"its ends are {string.Join(" and ", bar.Ends.Select(e => $"`{e}`"))}",
            place,
            member.Places[0]);
        return null;
    }

    private BarAnchor? BesideOrAgainst(AnchorPhrase phrase, Member member, BarAxis bar, SourcePlace place)
    {
        var (across, isAgainst) = (phrase.AcrossMm ?? 0, phrase.Way == AnchorWay.Against);
        if (!isAgainst && bar.EdgesAt(across) is { } edges)
        {
            return new BarAnchor(Beside(phrase, across, edges), null);
        }

        var (through, way) = phrase.FromNeckEdgeMm is { } far ? (new Point2(0, -far), Vec2.UnitX) : (new Point2(across, 0), Vec2.UnitY);
        if (isAgainst && bar.Meeting(through, way) is { } met)
        {
            return new BarAnchor(met, member);
        }

        bench.LeaveOut(
            name,
            $"`{key.Key}` of {Say.The(name)} names a place of {Say.TheLast(member.Name)}, {Where(phrase)}, where it does not pass",
            $"name one where it does, with `, 60 mm to the bass` or `to the treble`{(isAgainst ? ", or with `, 250 mm from the neck edge`" : "")}",
            place,
            member.Places[0]);
        return null;
    }

    private static string Where(AnchorPhrase phrase) => phrase switch
    {
        { FromNeckEdgeMm: { } far } => $"{Say.Mm(far)} from the neck edge",
        { AcrossMm: { } across } when across != 0 => $"{Say.Mm(Math.Abs(across))} to the {(across < 0 ? "bass" : "treble")}",
        _ => "on the centre line",
    };

    private static Point2 Beside(AnchorPhrase phrase, double across, (double Upper, double Lower) edges) =>
        new(across, phrase.Way == AnchorWay.Above ? phrase.DistanceMm - edges.Upper : -(edges.Lower + phrase.DistanceMm));

    private void SayUnreadable(AnchorPhrase.Problem wrong)
    {
        var found = said.Value[wrong.At..(wrong.At + wrong.Length)];
        bench.Error(
            Rules.UnreadableAnchor,
            key.Path,
            wrong.Length == 0 ? $"`{key.Key}` ends where it needs {wrong.Expected}" : $"`{key.Key}` has `{found}` where it needs {wrong.Expected}",
            wrong.Cure,
            PlaceIn(wrong.At, wrong.Length));
    }

    private void SayMissing(string mark, Section? needs, SourcePlace place)
    {
        var isAsked = needs is not null && bench.Design.Has(needs);
        bench.LeaveOut(
            name,
            $"`{key.Key}` of {Say.The(name)} starts from {Say.TheLast(mark)}, and the top has none",
            needs is null || isAsked ? "bring that part onto the top, or start from another landmark" : $"add the section {needs.Header}, or start from another landmark",
            place,
            isAsked ? bench.Design.PlaceOf(needs!) : section.Place);
    }

    // The characters inside the quotes; the whole value where it is written with escapes, so that counting would mislead.
    private SourcePlace PlaceIn(int at, int length) => said.Place.Length == said.Value.Length + 2
        ? said.Place with { Column = said.Place.Column + 1 + at, Length = length }
        : said.Place;
}
