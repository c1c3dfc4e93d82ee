using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// Arcs through the measured half-widths of one half. So that the ends cross the centre line square, the first places are repeated on the
/// other side of it and the arcs cut there; a half that has a width at the very end has a straight piece there, and its corner is meant.
/// </summary>
internal static class MeasuredHalf
{
    /// <summary>Label of the fitted arcs.</summary>
    public const string Label = "measured side";

    // How many places are repeated beyond the centre line.
    private const int Repeated = 3;

    // A row of places that turns by more has a corner in it, or a number that is wrong.
    private static readonly Angle Corner = Angle.FromDegrees(50);

    /// <summary>The half from the neck to the tail, drawn on the treble side: the coarsest fit that keeps every half-width, or the best there is.</summary>
    /// <param name="stations">From the neck edge, rising, mm.</param>
    /// <param name="halves">Half-widths there, mm.</param>
    /// <param name="length">Body length, mm.</param>
    /// <param name="within">Largest difference of a half-width, mm.</param>
    public static IReadOnlyList<Segment> Fit(IReadOnlyList<double> stations, IReadOnlyList<double> halves, double length, double within)
    {
        const int Finest = 64;
        var places = stations.Zip(halves, HalfLemmas.Place).ToList();
        var best = (Half: (IReadOnlyList<Segment>)[], Worst: double.PositiveInfinity);
        for (var finer = 1; finer <= Finest && best.Worst > within; finer *= 2)
        {
            var half = Fit(places, length, within / finer);
            var worst = places.Max(p => Math.Abs(HalfWidth(half, -p.Y) - p.X));
            best = worst < best.Worst ? (half, worst) : best;
        }

        return best.Half;
    }

    /// <summary>Half the width of a half at a station, mm: where it is crossed furthest out; 0 where it is not.</summary>
    public static double HalfWidth(IReadOnlyList<Segment> half, double at)
    {
        var across = new Segment(HalfLemmas.Place(at, 0), HalfLemmas.Place(at, half.Max(s => s.Bounds().Max.X) + 1));
        return Contour.Chain(half, isClosed: false).Crossings(across) is [.., var outermost] ? outermost.Point.X : 0;
    }

    private static List<Segment> Fit(List<Point2> places, double length, double within)
    {
        var (neck, tail) = (HalfLemmas.Place(0, 0), HalfLemmas.Place(length, 0));
        var (flatNeck, flatTail) = (places[0].Y == neck.Y, places[^1].Y == tail.Y);
        IEnumerable<Point2> Beyond(IEnumerable<Point2> near) => near.Take(Repeated).Select(p => new Point2(-p.X, p.Y));
        List<Point2> row =
        [
            .. flatNeck ? [] : Beyond(places).Reverse().Append(neck),
            .. places,
            .. flatTail ? [] : Beyond(places.AsEnumerable().Reverse()).Prepend(tail),
        ];
        var chain = ArcFit.Through(row, isClosed: false, within, Corner, Label);
        List<Segment> half = [.. chain.Between(chain.ClosestTo(flatNeck ? places[0] : neck), chain.ClosestTo(flatTail ? places[^1] : tail))];
        return Ended(half, neck, tail, flatNeck, flatTail);
    }

    // From centre line to centre line: a straight end is added, the cut end of a round one moved onto it.
    private static List<Segment> Ended(List<Segment> half, Point2 neck, Point2 tail, bool flatNeck, bool flatTail)
    {
        if (flatNeck)
        {
            half.Insert(0, new Segment(neck, half[0].Start, 0, "neck flat"));
        }
        else
        {
            half[0] = Segment.Arriving(neck, half[0].End, half[0].TangentAt(1), Label);
        }

        if (flatTail)
        {
            half.Add(new Segment(half[^1].End, tail, 0, "tail flat"));
        }
        else
        {
            half[^1] = Segment.Leaving(half[^1].Start, half[^1].TangentAt(0), tail, Label);
        }

        return half;
    }
}
