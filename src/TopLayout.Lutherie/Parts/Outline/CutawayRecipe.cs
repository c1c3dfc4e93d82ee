using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;

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
/// <param name="WallHalf">Distance of the wall from the centre line, mm.</param>
/// <param name="Wall">Length of the straight wall along the body, mm, ≥ 0.</param>
/// <param name="Horn">The horn's outermost point: half-width and distance from the neck edge, mm; a pointed horn lies on the body's own outline.</param>
/// <param name="HornRadius">Radius of a rounded horn, mm.</param>
public sealed record CutawayRecipe(CutawayShape Shape, double WallHalf, double Wall, OutlineRecipe.Station Horn, double HornRadius)
{
    /// <summary>Largest sum of hollow and horn radius: (D² + H²)/(2H) from the wall's end to the horn.</summary>
    public double RadiusSum => HalfLemmas.RadiusSum(Horn.At - Wall, Horn.Half - WallHalf);

    /// <summary>Radius of the hollow of a rounded cutaway, mm.</summary>
    public double HollowRadius => RadiusSum - HornRadius;

    /// <summary>The treble half with the cutaway in it, from the neck to the tail, or why there is none: a sentence.</summary>
    internal (IReadOnlyList<Segment>? Half, string Misfit) Cut(BodyHalves body)
    {
        if (Misfit(body) is { } misfit)
        {
            return (null, misfit);
        }

        var (corner, wallEnd) = (HalfLemmas.Place(0, WallHalf), HalfLemmas.Place(Wall, WallHalf));
        var half = new List<Segment> { new(HalfLemmas.Place(0, 0), corner, 0, "heel") };
        if (Wall >= Tolerances.ShortestMm)
        {
            half.Add(new Segment(corner, wallEnd, 0, "cutaway wall"));
        }

        half.AddRange(Shape == CutawayShape.Rounded ? Rounded(body.Recipe!, half[^1].End) : Pointed(body, half[^1].End));
        return (half, "");
    }

    private string? Misfit(BodyHalves body) => this switch
    {
        _ when Wall >= Horn.At => $"the wall ends {Say.Mm(Wall)} from the neck edge and the horn stands at {Say.Mm(Horn.At)}, so no hollow fits between them",
        { Shape: CutawayShape.Pointed } => Tip(body) is { } tip && tip.Point.X > WallHalf ? null
            : $"at {Say.Mm(Horn.At)} from the neck edge the body has no side outside the wall for the horn's point to lie on",
        _ when body.Recipe is not { } recipe => "a rounded horn runs into a waist, which only `[outline]` has",
        _ when Horn.At >= body.Recipe.Waist.At => $"the horn stands at {Say.Mm(Horn.At)} from the neck edge, not above the waist at {Say.Mm(body.Recipe.Waist.At)}",
        _ when Horn.Half <= WallHalf => $"the horn reaches {Say.Mm(Horn.Half)} from the centre line, not past the wall at {Say.Mm(WallHalf)}",
        _ when Horn.Half <= body.Recipe.Waist.Half => $"the horn reaches {Say.Mm(Horn.Half)} from the centre line, not past the waist at {Say.Mm(body.Recipe.Waist.Half)}",
        _ when HollowRadius < Tolerances.ShortestMm => $"a horn of radius {Say.Mm(HornRadius)} leaves no hollow: between wall and horn both radii together are {Say.Mm(RadiusSum)}",
        _ => null,
    };

    private IEnumerable<Segment> Rounded(OutlineRecipe body, Point2 wallEnd)
    {
        var horn = HalfLemmas.Place(Horn.At, Horn.Half);
        var waist = HalfLemmas.Place(body.Waist.At, body.Waist.Half);
        return
        [
            .. HalfLemmas.Bend(wallEnd, horn, HollowRadius / RadiusSum, "cutaway hollow", "horn"),
            .. HalfLemmas.Bend(horn, waist, 1 - body.WaistShareUpper, "upper side", "waist"),
            .. body.BelowWaist(),
        ];
    }

    // The hollow is the one arc from the wall to the horn's point; from there the body's own outline runs on.
    private IEnumerable<Segment> Pointed(BodyHalves body, Point2 wallEnd)
    {
        var (half, tip) = (Contour.Chain(body.Treble, isClosed: false), Tip(body)!.Value);
        var end = new Location(half.Segments.Length - 1, 1, half.Segments[^1].End);
        return [Segment.Leaving(wallEnd, -Vec2.UnitY, tip.Point, "cutaway hollow"), .. half.Between(tip, end)];
    }

    private Location? Tip(BodyHalves body)
    {
        var half = Contour.Chain(body.Treble, isClosed: false);
        var across = new Segment(HalfLemmas.Place(Horn.At, 0), HalfLemmas.Place(Horn.At, half.Bounds.Max.X + 1));
        return half.Crossings(across) is [.., var outermost] ? outermost : null;
    }
}
