using TopLayout.Geometry.Arrangements;

namespace TopLayout.Geometry;

/// <summary>
/// Area algebra on exact lines and arcs. All of it is one planar arrangement with winding numbers; the remarks of the class
/// <c>Arrangement</c> explain it. No operation fails: where nothing is left the result is <see cref="Empty"/>. Borders nearer than
/// <see cref="Tolerances.TouchMm"/> are one border. Edges keep their labels; neighbours with one label on one line or circle are
/// joined. An edge that would be shorter than <see cref="Tolerances.ShortestMm"/> is taken out: the border there may move by that much,
/// the area by <see cref="Tolerances.UnseenMm"/> times the chords of that edge and of those next to it. Left out altogether are loops of
/// two edges one of which is that short, and loops no wider on the average than <see cref="Tolerances.TouchMm"/>.
/// </summary>
public sealed partial class Region
{
    /// <summary>
    /// The area a closed contour covers by the non-zero rule: all points it winds round, however often and in whichever sense. Resolves
    /// contours that cross or overlap themselves.
    /// </summary>
    /// <exception cref="ArgumentException">The contour is open.</exception>
    public static Region Covered(Contour contour)
    {
        var strands = Closed(contour).Segments.Select(s => new Strand(s));
        return Outlines.Region(Arrangement.Of([.. strands]), winding => winding != 0);
    }

    /// <summary>The area in any of the regions; of coincident edges the first region's label stays.</summary>
    public static Region Union(IEnumerable<Region> regions) =>
        Outlines.Region(Arrangement.Of(Strands.Of([.. regions])), winding => winding >= 1);

    /// <summary>The area in this region or the other, or both; of coincident edges this region's label stays.</summary>
    public Region Union(Region other) => Union([this, other]);

    /// <summary>The area in both regions; of coincident edges this region's label stays.</summary>
    public Region Intersect(Region other) =>
        Outlines.Region(Arrangement.Of(Strands.Of([this, other])), winding => winding >= 2);

    /// <summary>The area of this region outside the other; edges left by the other keep the other's labels.</summary>
    public Region Subtract(Region other) => Outlines.Region(
        Arrangement.Of([.. Strands.Of(this, 0), .. other.Edges.Select(s => new Strand(s.Reversed(), 1, 1))]),
        winding => winding >= 1);

    /// <summary>
    /// The parts into which a contour, open or closed, cuts the region, from the bottom up; the cut's labels stand on the new edges. A cut,
    /// or an end of it, that does not divide leaves no trace.
    /// </summary>
    public IReadOnlyList<Region> Split(Contour cut) =>
        Outlines.Faces(Arrangement.Of([.. Strands.Of(this, 0), .. Strands.Of(cut)]), winding => winding >= 1);

    /// <summary>
    /// The parts of a path inside the area, in the order and sense of travel; a part that runs along the border counts as inside. A closed
    /// path wholly inside comes back closed. Parts shorter than <see cref="Tolerances.ShortestMm"/> are left out.
    /// </summary>
    public IReadOnlyList<Contour> Clip(Contour path) => PathClip.Of(this, path);

    /// <summary>The connected parts, each with its holes. Parts that touch in a point are apart.</summary>
    public IReadOnlyList<Region> Parts => Outlines.Parts(Loops);
}
