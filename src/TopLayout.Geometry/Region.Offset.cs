using TopLayout.Geometry.Arrangements;

namespace TopLayout.Geometry;

/// <summary>The area grown or shrunk.</summary>
public sealed partial class Region
{
    /// <summary>
    /// The area grown by a distance, or shrunk by a negative one: all points within it of the area, or all deeper in the area than it. Exact:
    /// the offset of an arc is an arc. Edges keep their labels, joins take the label of the edge before. A grown area may close its holes
    /// and grow together; a shrunk one may fall apart, and vanishes to <see cref="Empty"/> where it is narrow throughout.
    /// </summary>
    /// <param name="mm">Outward, mm; negative inward.</param>
    /// <param name="corner">How corners are gone round where the border spreads: outward ones when growing, inward ones when shrinking.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not finite.</exception>
    public Region Offset(double mm, Corner corner = default)
    {
        if (!double.IsFinite(mm))
        {
            throw new ArgumentOutOfRangeException(nameof(mm), mm, "an offset is finite");
        }

        if (IsEmpty || mm == 0)
        {
            return Union([this]);
        }

        var loops = Loops.Select(l => (IReadOnlyList<Segment>)l.Segments);
        return corner.MitreLimit > 0 ? Sweep.Of(loops, mm, corner, _ => null) : RawOffset.Of(loops, mm, _ => null);
    }
}
