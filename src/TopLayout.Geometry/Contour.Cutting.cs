namespace TopLayout.Geometry;

/// <summary>A place on a contour.</summary>
/// <param name="Segment">Index of the segment.</param>
/// <param name="Fraction">Fraction of that segment's length, in [0, 1].</param>
/// <param name="Point">The point itself, mm.</param>
public readonly record struct Location(int Segment, double Fraction, Point2 Point);

/// <summary>Crossing and cutting a contour.</summary>
public sealed partial class Contour
{
    /// <summary>Where a segment meets the contour, in the order of travel along <paramref name="cut"/>; a shared vertex counts once.</summary>
    public IReadOnlyList<Location> Crossings(Segment cut)
    {
        var found = new List<(double Along, Location Place)>();
        for (var i = 0; i < _segments.Length; i++)
        {
            foreach (var m in Intersections.Of(cut, _segments[i]))
            {
                if (!found.Exists(f => f.Place.Point.IsNear(m.Point, 10 * Tolerances.TouchMm)))
                {
                    found.Add((m.First, new Location(i, m.Second, m.Point)));
                }
            }
        }

        return [.. found.OrderBy(f => f.Along).Select(f => f.Place)];
    }

    /// <summary>
    /// The pieces of the contour from one place to another in the sense of travel; on a closed contour it runs past the first vertex
    /// if it must. Pieces shorter than <see cref="Tolerances.ShortestMm"/> are left out and their neighbour takes their end.
    /// </summary>
    /// <exception cref="ArgumentException">The contour is open and <paramref name="to"/> lies before <paramref name="from"/>.</exception>
    public IReadOnlyList<Segment> Between(Location from, Location to)
    {
        var ahead = from.Segment < to.Segment || (from.Segment == to.Segment && from.Fraction <= to.Fraction);
        if (!ahead && !IsClosed)
        {
            throw new ArgumentException("an open contour is not travelled past its end", nameof(to));
        }

        if (ahead && from.Segment == to.Segment)
        {
            return [_segments[from.Segment].Part(from.Fraction, to.Fraction) with { Start = from.Point, End = to.Point }];
        }

        var pieces = new List<Segment>();
        Add(pieces, _segments[from.Segment].Part(from.Fraction, 1) with { Start = from.Point });
        for (var i = (from.Segment + 1) % _segments.Length; i != to.Segment; i = (i + 1) % _segments.Length)
        {
            Add(pieces, _segments[i]);
        }

        Add(pieces, _segments[to.Segment].Part(0, to.Fraction) with { End = to.Point });
        if (pieces.Count == 0)
        {
            return [new Segment(from.Point, to.Point, 0, _segments[from.Segment].Label)];
        }

        pieces[0] = pieces[0] with { Start = from.Point };
        pieces[^1] = pieces[^1] with { End = to.Point };
        return pieces;
    }

    /// <summary>The shorter way along a closed contour from one place to another; backwards pieces are reversed.</summary>
    public IReadOnlyList<Segment> ShorterWay(Location from, Location to)
    {
        var forward = IsClosed || Precedes(from, to) ? Between(from, to) : null;
        var backward = IsClosed || Precedes(to, from) ? Between(to, from) : null;
        return backward is null || (forward is not null && forward.Sum(s => s.Length) <= backward.Sum(s => s.Length))
            ? forward!
            : [.. backward.Reverse().Select(s => s.Reversed())];
    }

    private static bool IsSmooth(Vec2 arriving, Vec2 leaving) =>
        arriving.Dot(leaving) > 0 && Math.Abs(arriving.Cross(leaving)) <= Tolerances.SmoothRadians;

    private static bool Precedes(Location a, Location b) =>
        a.Segment < b.Segment || (a.Segment == b.Segment && a.Fraction <= b.Fraction);

    private static void Add(List<Segment> pieces, Segment piece)
    {
        if (piece.ChordLength >= Tolerances.ShortestMm)
        {
            pieces.Add(pieces.Count > 0 ? piece with { Start = pieces[^1].End } : piece);
        }
        else if (pieces.Count > 0)
        {
            pieces[^1] = pieces[^1] with { End = piece.End };
        }
    }
}
