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
    /// How often a closed contour runs round the point counter-clockwise: 0 outside, ±1 inside a simple one. Each segment turns round
    /// the point by the angle its chord does, and by a full turn more where the point lies between chord and arc, that is where the
    /// chord is seen under more than half a turn less half the sweep (inscribed angle). A point on the border may go either way.
    /// </summary>
    public int WindingNumber(Point2 p)
    {
        if (!Bounds.Contains(p))
        {
            return 0;
        }

        var turn = 0.0;
        foreach (var s in _segments)
        {
            var seen = Trig.Turn(s.Start - p, s.End - p).Degrees;
            var isInCap = s.IsArc && seen * s.Bulge < 0 && Math.Abs(seen) + Math.Abs(s.Sweep.Degrees / 2) > 180;
            turn += isInCap ? seen + (360 * Math.Sign(s.Bulge)) : seen;
        }

        return (int)Math.Round(turn / 360);
    }

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
