namespace TopLayout.Geometry;

/// <summary>Fillets and chamfers at the corners of a contour.</summary>
public sealed partial class Contour
{
    /// <summary>
    /// The contour with one corner rounded by an arc of a radius, the first of <see cref="Fillets"/>; null where none fits.
    /// </summary>
    /// <inheritdoc cref="Fillets" path="/exception"/>
    public Contour? TryFillet(int vertex, double radiusMm, string label = "") => Fillets(vertex, radiusMm, label) is [var first, ..] ? first : null;

    /// <summary>
    /// Every way to round a corner by an arc of a radius that leaves the arriving segment and joins the leaving one without a corner,
    /// in its turn's sense and by at most half a turn; the way that cuts off least comes first. Its centre lies at the radius from both, on the
    /// inner side of the corner: a crossing of their parallels. Empty where none fits on the segments, where the joint has no corner,
    /// or where a rest between <see cref="Tolerances.TouchMm"/> and <see cref="Tolerances.ShortestMm"/> would remain; a segment used
    /// up whole is left out. The arc takes the label. At a cusp (half a turn) both sides are tried.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">No corner of the contour (an end of an open one has none), or a radius not above zero.</exception>
    public IReadOnlyList<Contour> Fillets(int vertex, double radiusMm, string label = "")
    {
        var (arriving, leaving) = Corner(vertex);
        if (!(radiusMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(radiusMm), "a radius is above zero");
        }

        var (u, v) = (arriving.TangentAt(1), leaving.TangentAt(0));
        if (IsSmooth(u, v))
        {
            return [];
        }

        ReadOnlySpan<int> turns = Math.Abs(u.Cross(v)) <= Tolerances.SmoothRadians ? [1, -1] : [Math.Sign(u.Cross(v))];
        var found = new List<(double CutOff, Contour Contour)>();
        foreach (var turn in turns)
        {
            foreach (var center in Given.Meet(Centers(arriving, turn * radiusMm), Centers(leaving, turn * radiusMm)))
            {
                var (from, to) = (TouchFraction(arriving, center, turn * radiusMm), TouchFraction(leaving, center, turn * radiusMm));
                if (from is { } f && to is { } t && Cut(vertex, f, t, radiusMm, label) is { } contour)
                {
                    found.Add((((1 - f) * arriving.Length) + (t * leaving.Length), contour));
                }
            }
        }

        return [.. found.OrderBy(f => f.CutOff).Select(f => f.Contour)];
    }

    /// <summary>
    /// The contour with one corner cut off by a line, so many mm before it and after it, measured along the contour; null where a
    /// segment is shorter than its share, or where a rest or the cut would be shorter than <see cref="Tolerances.ShortestMm"/>.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">No corner of the contour, or a length not above zero.</exception>
    public Contour? TryChamfer(int vertex, double beforeMm, double afterMm, string label = "")
    {
        var (arriving, leaving) = Corner(vertex);
        if (!(beforeMm > 0 && afterMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(beforeMm), "a chamfer takes away a length above zero on both sides");
        }

        return beforeMm > arriving.Length + Tolerances.TouchMm || afterMm > leaving.Length + Tolerances.TouchMm
            ? null
            : Cut(vertex, Math.Max(0, 1 - (beforeMm / arriving.Length)), Math.Min(1, afterMm / leaving.Length), 0, label);
    }

    private (Segment Arriving, Segment Leaving) Corner(int vertex) =>
        vertex < 0 || vertex >= Vertices.Length || (!IsClosed && (vertex == 0 || vertex == Vertices.Length - 1))
            ? throw new ArgumentOutOfRangeException(nameof(vertex), "no corner of the contour")
            : (_segments[(vertex + _segments.Length - 1) % _segments.Length], _segments[vertex]);

    // The segment's carrier, moved to the left: an arc's radius may pass zero and grow again beyond its centre.
    private static Given Centers(Segment s, double leftMm) => s.IsArc
        ? new Circle(s.Center, Math.Abs(s.Radius - (Math.Sign(s.Bulge) * leftMm)))
        : Line.Through(s.Start, s.End).Parallel(leftMm);

    // Where a circle so far to the left touches the segment; null beyond its ends.
    private static double? TouchFraction(Segment s, Point2 center, double leftMm)
    {
        var chord = s.End - s.Start;
        var beyondCenter = s.IsArc && s.Radius < Math.Sign(s.Bulge) * leftMm;
        var fraction = s.IsArc
            ? s.FractionOfDirection(beyondCenter ? s.Center - center : center - s.Center)
            : (center - s.Start).Dot(chord) / chord.Dot(chord);
        var slack = Tolerances.TouchMm / s.Length;
        return fraction >= -slack && fraction <= 1 + slack ? Math.Clamp(fraction, 0, 1) : null;
    }

    private Contour? Cut(int vertex, double from, double to, double radiusMm, string label)
    {
        var (arriving, leaving) = Corner(vertex);
        var (before, after) = (arriving.Part(0, from), leaving.Part(to, 1));
        var cut = new Segment(before.End, after.Start, 0, label);
        if (!(Fits(before) && Fits(after) && cut.ChordLength >= Tolerances.ShortestMm))
        {
            return null;
        }

        if (radiusMm > 0)
        {
            var tangent = arriving.TangentAt(from);
            if (tangent.Dot(cut.End - cut.Start) < -Tolerances.SmoothRadians * cut.ChordLength)
            {
                return null;
            }

            cut = Segment.Leaving(cut.Start, tangent, cut.End, label);
        }

        var first = (vertex + _segments.Length - 1) % _segments.Length;
        var pieces = _segments.SelectMany((s, i) => i == first ? [before, cut] : i == vertex ? [after] : (IEnumerable<Segment>)[s]);
        return Chain(pieces.Where(s => s.ChordLength > Tolerances.TouchMm), IsClosed);
    }

    private static bool Fits(Segment rest) => rest.ChordLength <= Tolerances.TouchMm || rest.ChordLength >= Tolerances.ShortestMm;
}
