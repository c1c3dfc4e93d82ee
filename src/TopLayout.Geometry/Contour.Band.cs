using TopLayout.Geometry.Arrangements;

namespace TopLayout.Geometry;

/// <summary>The contour as the middle line of a strip.</summary>
public sealed partial class Contour
{
    /// <summary>
    /// The area within a distance of the contour: a strip to both sides of it. A closed contour gives a ring. The edges to the right
    /// and the left carry the labels of the contour's; ends take that of the edge before them.
    /// </summary>
    /// <param name="halfWidthMm">To each side, mm, &gt; 0.</param>
    /// <param name="end">How it ends at the ends of an open contour.</param>
    /// <param name="corner">How it goes round corners.</param>
    /// <exception cref="ArgumentOutOfRangeException">The half width is not positive and finite.</exception>
    public Region Band(double halfWidthMm, BandEnd end = BandEnd.Round, Corner corner = default)
    {
        if (!(halfWidthMm > 0) || !double.IsFinite(halfWidthMm))
        {
            throw new ArgumentOutOfRangeException(nameof(halfWidthMm), halfWidthMm, "a half width is positive and finite");
        }

        var back = _segments.Reverse().Select(s => s.Reversed()).ToList();
        IReadOnlyList<Segment>[] loops = IsClosed ? [_segments, back] : [[.. _segments, .. back]];
        BandEnd? EndAfter(int i) => !IsClosed && (i + 1) % _segments.Length == 0 ? end : null;
        return corner.MitreLimit > 0 ? Sweep.Of(loops, halfWidthMm, corner, EndAfter) : RawOffset.Of(loops, halfWidthMm, EndAfter);
    }
}
