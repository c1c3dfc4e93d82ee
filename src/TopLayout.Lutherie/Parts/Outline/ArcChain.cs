using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>Which half of the body a piece of the chain belongs to.</summary>
public enum ChainSide
{
    /// <summary>Both, mirrored.</summary>
    Both,

    /// <summary>The bass half.</summary>
    Bass,

    /// <summary>The treble half.</summary>
    Treble,
}

/// <summary>How a piece of the chain runs to its end.</summary>
public enum ChainBend
{
    /// <summary>As an arc that goes on without a corner.</summary>
    Smooth,

    /// <summary>As an arc of a radius, swelling outwards.</summary>
    Out,

    /// <summary>As an arc of a radius, hollow.</summary>
    In,

    /// <summary>Straight.</summary>
    Straight,
}

/// <summary>
/// An outline piece by piece, as from an old drawing: each <c>[[arc]]</c> runs from where the one before ended to its own end. The first
/// starts on the centre line at the neck, the last ends on the centre line at the tail.
/// </summary>
public static class ArcChain
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Repeatable(
        "arc", "the outline piece by piece from the neck to the tail, in place of `[outline]`", most: 80);

    /// <summary>Which half.</summary>
    public static readonly Parameter<ChainSide> Side = Parameter.OneOf<ChainSide>(Section, "side", "the half it belongs to, or both, mirrored", ChainSide.Both);

    /// <summary>End, from the neck edge.</summary>
    public static readonly Parameter<double> ToFromNeckEdge = Parameter.Length(
        Section, "to_from_neck_edge", "where it ends, from the neck edge", possible: (0, 700));

    /// <summary>End, from the centre line.</summary>
    public static readonly Parameter<double> ToFromCentre = Parameter.Length(
        Section, "to_from_centre", "where it ends, from the centre line; 0 for the last", possible: (0, 300));

    /// <summary>How it runs.</summary>
    public static readonly Parameter<ChainBend> Bend = Parameter.OneOf<ChainBend>(
        Section, "bend", "smooth: goes on without a corner; out or in: an arc of a radius, swelling or hollow; or straight", ChainBend.Smooth);

    /// <summary>Radius of a piece that swells or is hollow.</summary>
    public static readonly OptionalParameter<double> Radius = Parameter.Length(
        Section, "radius", "radius where `bend` is out or in", possible: (5, 5000)).Optional();

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Side, ToFromNeckEdge, ToFromCentre, Bend, Radius];

    /// <summary>The halves; null, with misfits said, when the pieces do not make them.</summary>
    internal static BodyHalves? Build(Bench bench)
    {
        var pieces = bench.Design.Each(Section);
        var (bass, treble) = (Half(bench, pieces, ChainSide.Bass), Half(bench, pieces, ChainSide.Treble));
        if (bass is null || treble is null)
        {
            return null;
        }

        var (bassTail, trebleTail) = (bass[^1].End, treble[^1].End);
        if (bassTail.IsNear(trebleTail))
        {
            return new BodyHalves(bass, treble, pieces[^1][ToFromNeckEdge].Place);
        }

        bench.Misfit(
            "outline",
            $"the bass half ends {Say.Mm(-bassTail.Y)} from the neck edge and the treble half {Say.Mm(-trebleTail.Y)}",
            "let the last `[[arc]]` of both halves end in one place of the centre line",
            [.. new[] { ChainSide.Bass, ChainSide.Treble }.Select(s => pieces.Last(p => IsOf(p, s))[ToFromNeckEdge].Place)]);
        return null;
    }

    private static bool IsOf(DesignSection piece, ChainSide side) => piece.Get(Side).Value is var own && (own == ChainSide.Both || own == side);

    private static List<Segment>? Half(Bench bench, IEnumerable<DesignSection> pieces, ChainSide side)
    {
        var half = new List<Segment>();
        foreach (var piece in pieces.Where(p => IsOf(p, side)))
        {
            var from = half.Count > 0 ? half[^1].End : default;
            var (segment, misfit, cure) = Piece(piece, from, half.Count > 0 ? half[^1].TangentAt(1) : Vec2.UnitX);
            if (misfit.Length > 0)
            {
                // Both halves say the same of a piece they share.
                if (side == ChainSide.Treble || piece.Get(Side).Value == ChainSide.Bass)
                {
                    bench.Misfit($"arc {Say.Count(piece.Number)}", misfit, cure, piece.PlaceOf(Radius), piece[ToFromNeckEdge].Place, piece[ToFromCentre].Place);
                }

                return null;
            }

            half.Add(segment);
        }

        return Ended(bench, half, side);
    }

    private static List<Segment>? Ended(Bench bench, List<Segment> half, ChainSide side)
    {
        var word = side == ChainSide.Bass ? "bass" : "treble";
        if (half.Count < 2)
        {
            bench.Misfit(
                "outline",
                $"the {word} half has {(half.Count == 0 ? "no piece" : "one piece only")}",
                "write an `[[arc]]` for each piece of it, from the neck to the tail",
                bench.Design.PlaceOf(Section));
            return null;
        }

        if (half[^1].End.X <= Tolerances.TouchMm)
        {
            return half;
        }

        var last = bench.Design.Each(Section).Last(p => IsOf(p, side));
        bench.Misfit(
            "outline",
            $"the {word} half ends {Say.Mm(half[^1].End.X)} from the centre line, so the outline does not close",
            "give its last `[[arc]]` the line `to_from_centre = 0`",
            last[ToFromCentre].Place);
        return null;
    }

    private static (Segment Piece, string Misfit, string Cure) Piece(DesignSection piece, Point2 from, Vec2 heading)
    {
        var to = HalfLemmas.Place(piece[ToFromNeckEdge].Value, piece[ToFromCentre].Value);
        var (bend, label, chord) = (piece.Get(Bend).Value, $"arc {Say.Count(piece.Number)}", from.DistanceTo(to));
        if (chord < Tolerances.ShortestMm)
        {
            return (default, "this piece ends where it begins", "give it an end further along, or delete it");
        }

        return (bend, piece.Find(Radius)?.Value) switch
        {
            (ChainBend.Straight or ChainBend.Smooth, not null) =>
                (default, "`radius` has no meaning for a straight piece, nor for one that goes on without a corner", "delete the line, or say whether the arc bends `out` or `in`"),
            (ChainBend.Straight, _) => (new Segment(from, to, 0, label), "", ""),
            (ChainBend.Smooth, _) => heading.Dot(to - from) <= 0
                ? (default, "this piece cannot go on without a corner: its end lies behind its start", "give it an end further along, or say `bend = \"straight\"`, `\"out\"` or `\"in\"`")
                : (Segment.Leaving(from, heading, to, label), "", ""),
            (_, null) => (default, "an arc that bends `out` or `in` needs a radius", $"add a `radius` of at least {Say.Mm(Math.Ceiling(chord / 2 * 10) / 10)}"),
            (_, { } radius) => radius < chord / 2
                ? (default, $"its ends lie {Say.Mm(chord)} apart, too far for a radius of {Say.Mm(radius)}", $"make `radius` at least {Say.Mm(Math.Ceiling(chord / 2 * 10) / 10)}")
                : (new Segment(from, to, (bend == ChainBend.Out ? -1 : 1) * Bulge(chord, radius), label), "", ""),
        };
    }

    // tan(a/2) of half the sweep a = asin(chord/2r), from (1 − cos a)/sin a.
    private static double Bulge(double chord, double radius)
    {
        var sine = Math.Min(1, chord / (2 * radius));
        return sine / (1 + Math.Sqrt(1 - (sine * sine)));
    }
}
