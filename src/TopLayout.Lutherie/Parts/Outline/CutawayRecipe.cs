using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>The shape of a cutaway.</summary>
public enum CutawayShape
{
    /// <summary>A hollow that runs into a round horn: one side can be bent round it.</summary>
    Rounded,

    /// <summary>A hollow that meets the upper bout at a point: two bent sides, mitred.</summary>
    Pointed,
}

/// <summary>
/// A cutaway on the treble side: a wall beside the heel, a hollow, and a horn. Mm; distances from the neck edge, positive to the tail.
/// </summary>
/// <param name="Shape">Rounded or pointed.</param>
/// <param name="HeelHalf">Distance of the wall from the centre line, mm.</param>
/// <param name="Wall">Length of the straight wall along the body, mm, ≥ 0.</param>
/// <param name="Horn">The horn's outermost point: half-width and distance from the neck edge, mm; a pointed horn lies on the body's own outline.</param>
/// <param name="HornRadius">Radius of a rounded horn, mm.</param>
public sealed record CutawayRecipe(CutawayShape Shape, double HeelHalf, double Wall, OutlineRecipe.Station Horn, double HornRadius)
{
    /// <summary>Largest sum of hollow and horn radius: (D² + H²)/(2H) from the wall's end to the horn.</summary>
    public double RadiusSum => HalfLemmas.RadiusSum(Horn.At - Wall, Horn.Half - HeelHalf);

    /// <summary>Radius of the hollow of a rounded cutaway, mm.</summary>
    public double HollowRadius => RadiusSum - HornRadius;

    /// <summary>The outline with the cutaway on the treble side, counter-clockwise; null when the horn does not fit the body.</summary>
    public Contour? Build(OutlineRecipe body)
    {
        var (corner, wallEnd) = (HalfLemmas.Place(0, HeelHalf), HalfLemmas.Place(Wall, HeelHalf));
        var treble = new List<Segment> { new(HalfLemmas.Place(0, 0), corner, 0, "heel") };
        if (Wall > 0)
        {
            treble.Add(new Segment(corner, wallEnd, 0, "cutaway wall"));
        }

        if ((Shape == CutawayShape.Rounded ? Rounded(body, wallEnd) : Pointed(body, wallEnd)) is not { } rest)
        {
            return null;
        }

        treble.AddRange(rest);
        return HalfLemmas.Whole(treble, body.TrebleHalf());
    }

    private List<Segment>? Rounded(OutlineRecipe body, Point2 wallEnd)
    {
        var horn = HalfLemmas.Place(Horn.At, Horn.Half);
        var waist = HalfLemmas.Place(body.Waist.At, body.Waist.Half);
        if (!(Wall < Horn.At && Horn.At < body.Waist.At && HeelHalf < Horn.Half && Horn.Half > body.Waist.Half && HollowRadius > 0 && HornRadius > 0))
        {
            return null;
        }

        var turn = Trig.Atan2(Horn.Half - HeelHalf, Horn.At - Wall) * 2;
        var inflection = wallEnd + ((horn - wallEnd) * (HollowRadius / RadiusSum));
        return turn > Angle.FromDegrees(180) ? null :
        [
            Segment.Leaving(wallEnd, -Vec2.UnitY, inflection, "cutaway hollow"),
            Segment.Arriving(inflection, horn, -Vec2.UnitY, "horn"),
            .. HalfLemmas.Bend(horn, waist, 1 - body.WaistShareUpper, "upper side", "waist"),
            .. body.BelowWaist(),
        ];
    }

    // The hollow is the one arc from the wall to the horn's point; from there the body's own outline runs on.
    private List<Segment>? Pointed(OutlineRecipe body, Point2 wallEnd)
    {
        var half = Contour.Chain(body.TrebleHalf(), isClosed: false);
        var crossings = half.Crossings(new Segment(HalfLemmas.Place(Horn.At, 0), HalfLemmas.Place(Horn.At, body.Length)));
        if (crossings is not [.., var tip] || !(Wall < Horn.At && Horn.At < body.Waist.At) || tip.Point.X <= HeelHalf)
        {
            return null;
        }

        var end = new Location(half.Segments.Length - 1, 1, half.Segments[^1].End);
        return [Segment.Leaving(wallEnd, -Vec2.UnitY, tip.Point, "cutaway hollow"), .. half.Between(tip, end)];
    }
}
