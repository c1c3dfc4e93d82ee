namespace TopLayout.Geometry;

/// <summary>Places along a contour and measures of what it encloses.</summary>
public sealed partial class Contour
{
    /// <summary>
    /// Area, centroid and second moments of the enclosed area. Only meaningful when free of crossings; the centroid and the moments
    /// of a contour that encloses no area are not numbers.
    /// </summary>
    /// <exception cref="InvalidOperationException">The contour is open.</exception>
    public AreaMoments Moments() => IsClosed ? AreaMoments.Of(this) : throw new InvalidOperationException("an open contour encloses no area");

    /// <summary>
    /// How often a closed contour runs round the point counter-clockwise: 0 outside, ±1 inside a simple one. A level ray to the right counts
    /// the chords it meets, up or down, and a point between chord and arc is turned round once more. A point on the border may go either way.
    /// </summary>
    public int WindingNumber(Point2 p)
    {
        if (!Bounds.Contains(p))
        {
            return 0;
        }

        var turns = 0;
        foreach (var s in _segments)
        {
            var (from, to) = (s.Start - p, s.End - p);
            var isLeft = IsLeftOf(from, to);
            var (startsBelow, endsBelow) = (from.Y <= 0, to.Y <= 0);
            if (startsBelow != endsBelow && startsBelow == isLeft)
            {
                turns += isLeft ? 1 : -1;
            }

            if (s.IsArc && (s.Bulge > 0) != isLeft && IsInCap(from, to, Math.Abs(s.Bulge)))
            {
                turns += Math.Sign(s.Bulge);
            }
        }

        return turns;
    }

    // Whether the origin lies left of a chord; on it, as the point next to it at right does, and next above where the chord is level.
    private static bool IsLeftOf(Vec2 from, Vec2 to)
    {
        var (side, chord) = (from.Cross(to), to - from);
        return side > 0 || (side == 0 && (chord.Y != 0 ? chord.Y < 0 : chord.X > 0));
    }

    // Of a point on the arc's side: inside its circle the chord is seen under more than half a turn less half the sweep (inscribed angle), and
    // the cotangent of half the sweep is (1 - b²)/2b.
    private static bool IsInCap(Vec2 from, Vec2 to, double bulge) =>
        (2 * bulge * from.Dot(to)) + ((1 - (bulge * bulge)) * Math.Abs(from.Cross(to))) < 0;

    /// <summary>True when the point lies inside a closed contour, whatever its sense; a point on the border may go either way.</summary>
    public bool Contains(Point2 p) => WindingNumber(p) != 0;

    /// <summary>The place at a length from the start, clamped to [0, <see cref="Length"/>], mm; at a vertex the end of the arriving segment.</summary>
    public Location LocationAt(double lengthMm)
    {
        for (var i = 0; i < _segments.Length; i++)
        {
            var (s, length) = (_segments[i], _segments[i].Length);
            if (lengthMm <= length)
            {
                var fraction = length > 0 ? Math.Max(0, lengthMm / length) : 0;
                return new Location(i, fraction, s.PointAt(fraction));
            }

            lengthMm -= length;
        }

        return new Location(_segments.Length - 1, 1, _segments[^1].End);
    }

    /// <summary>The length from the start to a place, mm.</summary>
    public double LengthTo(Location place) =>
        _segments.Take(place.Segment).Sum(s => s.Length) + (place.Fraction * _segments[place.Segment].Length);

    /// <summary>The point at a length from the start, clamped to the contour, mm.</summary>
    public Point2 PointAt(double lengthMm) => LocationAt(lengthMm).Point;

    /// <summary>The unit tangent, in the sense of travel, at a length from the start, clamped, mm; at a vertex that of the arriving segment.</summary>
    public Vec2 TangentAt(double lengthMm)
    {
        var place = LocationAt(lengthMm);
        return _segments[place.Segment].TangentAt(place.Fraction);
    }

    /// <summary>The place of the contour nearest to a point; of several the first from the start.</summary>
    public Location ClosestTo(Point2 p)
    {
        var (best, least) = (default(Location), double.PositiveInfinity);
        for (var i = 0; i < _segments.Length; i++)
        {
            var fraction = _segments[i].NearestFraction(p);
            var place = new Location(i, fraction, _segments[i].PointAt(fraction));
            if (place.Point.DistanceTo(p) < least)
            {
                (best, least) = (place, place.Point.DistanceTo(p));
            }
        }

        return best;
    }

    /// <summary>Distance from a point to the nearest point of the contour, mm.</summary>
    public double DistanceTo(Point2 p) => _segments.Min(s => s.DistanceTo(p));
}
