using System.Collections.Immutable;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using Half = System.Collections.Immutable.ImmutableArray<TopLayout.Lutherie.Designs.Sourced<double>>;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// An instrument as it was measured: half-widths at stations, each half its own. Left and right are physical, as seen from outside with
/// the neck up, whatever the hand.
/// </summary>
public static class MeasuredBody
{
    private const int MostStations = 200;

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("measured", "an instrument as it was measured, each half its own, in place of `[outline]`");

    /// <summary>Body length.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(Section, "length", "body length on the centre line", possible: (150, 700));

    /// <summary>Even stations.</summary>
    public static readonly OptionalParameter<double> Every = Parameter.Length(
        Section, "every", "distance of the stations, the first as far from the neck edge", possible: (3, 100)).Optional();

    /// <summary>Stations of one's own.</summary>
    public static readonly OptionalParameter<Half> At = Parameter.Lengths(
        Section, "at", "the stations, from the neck edge; closer together where the edge turns", possible: (0, 700), MostStations).Optional();

    /// <summary>Stations: even ones, or one's own.</summary>
    public static readonly ExactlyOneOf Stations = ExactlyOneOf.Defaulted(Every, 25, At);

    /// <summary>Half-widths on the left.</summary>
    public static readonly Parameter<Half> Left = Parameter.Lengths(
        Section, "left", "half-widths left of the centre line, seen from outside", possible: (0.1, 300), MostStations);

    /// <summary>Half-widths on the right.</summary>
    public static readonly Parameter<Half> Right = Parameter.Lengths(
        Section, "right", "half-widths right of the centre line, seen from outside", possible: (0.1, 300), MostStations);

    /// <summary>Largest difference.</summary>
    public static readonly Parameter<double> Within = Parameter.Length(
        Section, "within", "largest difference between a measured half-width and the arcs drawn", possible: (0.05, 5), usual: (0.2, 1), fallback: 0.5);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Length, Every, At, Left, Right, Within];

    /// <summary>The halves; null, with misfits said, when the numbers make none.</summary>
    internal static BodyHalves? Build(Bench bench)
    {
        var design = bench.Design;
        var (length, left, right) = (design[Length], design.Get(Left), design.Get(Right));
        if (StationsOf(bench) is not { } stations || !Fit(bench, stations.Length, left, "left") | !Fit(bench, stations.Length, right, "right"))
        {
            return null;
        }

        var fits = new[] { left, right }.Select(half => MeasuredHalf.Fit(stations, [.. half.Value.Select(h => h.Value)], length.Value, design[Within].Value)).ToArray();
        var isLeftHanded = design.Get(Identity.Handed).Value == Hand.Left;
        return new BodyHalves(fits[isLeftHanded ? 1 : 0], fits[isLeftHanded ? 0 : 1], length.Place)
        {
            Residuals =
            [
                .. stations.SelectMany((at, n) => new[]
                {
                    new StationResidual(at, IsLeft: true, left.Value[n].Value, MeasuredHalf.HalfWidth(fits[0], at), left.Value[n].Place),
                    new StationResidual(at, IsLeft: false, right.Value[n].Value, MeasuredHalf.HalfWidth(fits[1], at), right.Value[n].Place),
                }),
            ],
        };
    }

    private static ImmutableArray<double>? StationsOf(Bench bench)
    {
        var (design, length) = (bench.Design, bench.Design[Length]);
        if (design.Find(At) is not { } own)
        {
            var every = design.Find(Every)!.Value.Value;
            return [.. Enumerable.Range(1, (int)Math.Ceiling(length.Value / every)).Select(n => n * every).Where(at => at < length.Value)];
        }

        for (var n = 0; n < own.Value.Length; n++)
        {
            var (at, before) = (own.Value[n], n > 0 ? own.Value[n - 1].Value : -1);
            if (at.Value <= before || at.Value > length.Value)
            {
                bench.Misfit(
                    "outline",
                    at.Value > length.Value
                        ? $"the station at {Say.Mm(at.Value)} lies past the body's end at {Say.Mm(length.Value)}"
                        : $"the station at {Say.Mm(at.Value)} does not lie past the one before it, at {Say.Mm(before)}",
                    "write the stations in order from the neck edge, none twice, none past `length`",
                    at.Place,
                    length.Place);
                return null;
            }
        }

        return [.. own.Value.Select(s => s.Value)];
    }

    private static bool Fit(Bench bench, int stations, Sourced<Half> half, string side)
    {
        if (half.Value.Length != stations)
        {
            bench.Misfit(
                "outline",
                $"there are {Say.Count(stations)} stations and {Say.Count(half.Value.Length)} half-widths on the {side}",
                "write one half-width for each station, in the same order",
                half.Place,
                bench.Design.Find(At)?.Place ?? bench.Design.Find(Every)!.Value.Place,
                bench.Design[Length].Place);
        }

        return half.Value.Length == stations;
    }
}
