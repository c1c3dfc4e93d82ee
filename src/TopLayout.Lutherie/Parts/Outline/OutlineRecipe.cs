using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The outline from three widths and their stations, as tangent arcs in closed form. Every shape choice is a fraction of what the
/// widths allow, so that every combination is legal once the stations are. Mm; distances from the neck edge, positive to the tail.
/// Derived for this project from three lemmas: the arc that leaves a point and touches a circle; two arcs between parallel
/// headings (the inflection lies on the chord, at the share of the first radius); the quarter from the widest point to the body's end.
/// </summary>
public sealed record OutlineRecipe
{
    /// <summary>Body length on the centre line, mm.</summary>
    public required double Length { get; init; }

    /// <summary>Widest place of the upper bout.</summary>
    public required Station Upper { get; init; }

    /// <summary>Narrowest place of the waist.</summary>
    public required Station Waist { get; init; }

    /// <summary>Widest place of the lower bout.</summary>
    public required Station Lower { get; init; }

    /// <summary>The waist arc's share of the radii between upper bout and waist, in (0, 1).</summary>
    public required double WaistShareUpper { get; init; }

    /// <summary>The waist arc's share of the radii between waist and lower bout, in (0, 1).</summary>
    public required double WaistShareLower { get; init; }

    /// <summary>Shape of the neck end.</summary>
    public required EndShape Neck { get; init; }

    /// <summary>Shape of the tail end.</summary>
    public required EndShape Tail { get; init; }

    /// <summary>A width and where it stands.</summary>
    /// <param name="Width">Whole width, mm.</param>
    /// <param name="At">Distance from the neck edge, mm.</param>
    public readonly record struct Station(double Width, double At)
    {
        /// <summary>Half the width, mm.</summary>
        public double Half => Width / 2;
    }

    /// <summary>The shape of one end of the body.</summary>
    /// <param name="Corner">Corner radius as a fraction of the largest, in (0, 1]: small is a pointed corner, 1 a flat end.</param>
    /// <param name="SideReach">How far the side arc runs on past the widest point, fraction of the possible, in [0, 1).</param>
    /// <param name="FlatHalf">Half-width of the straight piece across the centre line, mm, ≥ 0.</param>
    public readonly record struct EndShape(double Corner, double SideReach, double FlatHalf);

    /// <summary>Sum of side and waist radius between two stations D apart along and H apart across: (D² + H²)/(2H).</summary>
    public static double RadiusSum(Station bout, Station waist) => HalfLemmas.RadiusSum(waist.At - bout.At, bout.Half - waist.Half);

    /// <summary>The side radius left at the upper bout, mm.</summary>
    public double UpperSideRadius => (1 - WaistShareUpper) * RadiusSum(Upper, Waist);

    /// <summary>The side radius left at the lower bout, mm.</summary>
    public double LowerSideRadius => (1 - WaistShareLower) * RadiusSum(Lower, Waist);

    /// <summary>
    /// The outline as one closed contour, counter-clockwise, in layout coordinates (x across, treble at +x; y = 0 at the neck edge,
    /// body below). The stations must be in order and legal; <see cref="Contradictions"/> says whether they are.
    /// </summary>
    public Contour Build()
    {
        var half = TrebleHalf();
        return HalfLemmas.Whole(half, half);
    }

    /// <summary>What makes the stations impossible: the sentence, the cure, and the keys on both sides of it; empty when all is well.</summary>
    public IEnumerable<(string Sentence, string Cure, Parameter<double>[] Keys)> Contradictions()
    {
        if (!(0 < Upper.At && Upper.At < Waist.At && Waist.At < Lower.At && Lower.At < Length))
        {
            yield return (
                "the stations must come in order from the neck: upper bout, waist, lower bout, tail",
                "raise or lower `upper_at`, `waist_at` and `lower_at` until they do, below `length`",
                [Outline.UpperAt, Outline.WaistAt, Outline.LowerAt, Outline.Length]);
        }

        if (!(Waist.Width < Upper.Width && Waist.Width < Lower.Width))
        {
            yield return (
                "the waist must be narrower than both bouts",
                "make `waist_width` smaller than `upper_width` and `lower_width`",
                [Outline.WaistWidth, Outline.UpperWidth, Outline.LowerWidth]);
        }

        if (Upper.At > Upper.Half - Neck.FlatHalf)
        {
            yield return (
                "`upper_at` must not exceed half of `upper_width` less half of `neck_flat`, or no round shoulder fits",
                "move the upper bout nearer to the neck edge, or widen it",
                [Outline.UpperAt, Outline.UpperWidth, Outline.NeckFlat]);
        }

        if (Length - Lower.At > Lower.Half - Tail.FlatHalf)
        {
            yield return (
                "`length` less `lower_at` must not exceed half of `lower_width` less half of `tail_flat`, or no round tail fits",
                "move the lower bout nearer to the tail, or widen it",
                [Outline.LowerAt, Outline.Length, Outline.LowerWidth, Outline.TailFlat]);
        }
    }

    /// <summary>The treble half from the centre line at the neck to the centre line at the tail: clockwise round the body.</summary>
    internal List<Segment> TrebleHalf() =>
    [
        .. HalfLemmas.Quarter(Upper, UpperSideRadius, Neck, new("shoulder", "upper corner", "upper side")),
        .. HalfLemmas.Bend(HalfLemmas.Place(Upper.At, Upper.Half), HalfLemmas.Place(Waist.At, Waist.Half), 1 - WaistShareUpper, "upper side", "waist"),
        .. BelowWaist(),
    ];

    /// <summary>The treble half from the waist to the centre line at the tail.</summary>
    internal List<Segment> BelowWaist() =>
    [
        .. HalfLemmas.Bend(HalfLemmas.Place(Waist.At, Waist.Half), HalfLemmas.Place(Lower.At, Lower.Half), WaistShareLower, "waist", "lower side"),
        .. HalfLemmas.TailQuarter(Length, Lower, LowerSideRadius, Tail),
    ];
}
