using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>A body without a waist. The defaults are those of a flat-top octave mandolin; all usual ranges common practice, no source.</summary>
public static class Teardrop
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("teardrop", "a body without a waist, in place of `[outline]`");

    /// <summary>Body length on the centre line.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "body length on the centre line", possible: (150, 700), usual: (290, 440), fallback: 405);

    /// <summary>Flat at the heel.</summary>
    public static readonly Parameter<double> NeckFlat = Parameter.Length(
        Section, "neck_flat", "width of the straight piece at the neck heel; its two corners are meant", possible: (10, 200), usual: (40, 80), fallback: 60);

    /// <summary>Angle of the shoulder.</summary>
    public static readonly Parameter<Angle> ShoulderAngle = Parameter.Angle(
        Section, "shoulder_angle", "of the shoulder to the centre line, where it leaves the flat", possible: (5, 85), usual: (35, 65), fallback: 48);

    /// <summary>Widest place.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width at the widest place", possible: (80, 600), usual: (220, 390), fallback: 356);

    /// <summary>Station of the widest place.</summary>
    public static readonly Parameter<double> WidthAt = Parameter.Length(
        Section, "width_at", "its distance from the neck edge", possible: (40, 650), usual: (170, 280), fallback: 240);

    /// <summary>Radius of the side.</summary>
    public static readonly Parameter<double> SideRadius = Parameter.Length(
        Section, "side_radius", "radius of the side at the widest place", possible: (20, 2000), usual: (110, 260), fallback: 205);

    /// <summary>Corner at the tail end.</summary>
    public static readonly Parameter<double> TailCorner = Parameter.Number(
        Section, "tail_corner", "lower corner radius, share of the largest", possible: (0.05, 1), fallback: 0.9);

    /// <summary>Run-on of the side arc.</summary>
    public static readonly Parameter<double> LowerReach = Parameter.Number(
        Section, "lower_reach", "how far the side arc runs on towards the tail, share of the possible", possible: (0, 0.95), fallback: 0.15);

    /// <summary>Flat at the tail.</summary>
    public static readonly Parameter<double> TailFlat = Parameter.Length(
        Section, "tail_flat", "width of the straight piece at the tail", possible: (0, 120), usual: (0, 60), fallback: 0);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Length, NeckFlat, ShoulderAngle, Width, WidthAt, SideRadius, TailCorner, LowerReach, TailFlat];

    /// <summary>The halves; null, with misfits said, when no such body can be drawn.</summary>
    internal static BodyHalves? Build(Bench bench)
    {
        var design = bench.Design;
        var recipe = Recipe(design);
        if (recipe.Half() is { } half)
        {
            return BodyHalves.Alike(half, design[Length].Place);
        }

        if (recipe.IsTailLegal)
        {
            SayShoulder(bench, recipe);
        }
        else
        {
            bench.Misfit(
                "teardrop",
                $"the tail lies {Say.Mm(recipe.Length - recipe.Lower.At)} past the widest place, and half the width less half of `tail_flat` is {Say.Mm(recipe.Lower.Half - recipe.Tail.FlatHalf)}: no round tail fits",
                $"make `length` more than `width_at` ({Say.Mm(recipe.Lower.At)}) and at most {Say.Mm(recipe.Lower.At + recipe.Lower.Half - recipe.Tail.FlatHalf)}",
                design[Length].Place,
                design[WidthAt].Place,
                design[Width].Place,
                design[TailFlat].Place);
        }

        return null;
    }

    private static TeardropRecipe Recipe(Design design) => new(
        design[Length].Value,
        design[NeckFlat].Value / 2,
        design[ShoulderAngle].Value,
        new(design[Width].Value, design[WidthAt].Value),
        design[SideRadius].Value,
        new(design[TailCorner].Value, design[LowerReach].Value, design[TailFlat].Value / 2));

    private static void SayShoulder(Bench bench, TeardropRecipe recipe)
    {
        var radii = LegalInterval.Nearest(r => (recipe with { SideRadius = r }).Half() is not null, recipe.SideRadius, SideRadius.Possible!.Value);
        var angles = LegalInterval.Nearest(
            a => (recipe with { Shoulder = Angle.FromDegrees(a) }).Half() is not null, recipe.Shoulder.Degrees, ShoulderAngle.Possible!.Value);
        string?[] cures =
        [
            radii is var (smallest, largest) ? $"a `side_radius` from {Say.Mm(Math.Ceiling(smallest * 10) / 10)} to {Say.Mm(Math.Floor(largest * 10) / 10)}" : null,
            angles is var (least, most) ? $"a `shoulder_angle` from {Say.Tenth(Math.Ceiling(least * 10) / 10)}° to {Say.Tenth(Math.Floor(most * 10) / 10)}°" : null,
        ];
        bench.Misfit(
            "teardrop",
            $"a shoulder that leaves the flat at {Say.Degrees(recipe.Shoulder)} meets no side of radius {Say.Mm(recipe.SideRadius)} on its way to the widest place",
            cures.OfType<string>().Any()
                ? $"with all else as it is, take {string.Join(", or ", cures.OfType<string>())}"
                : "move the widest place further from the neck, or make `neck_flat` narrower",
            bench.Design[SideRadius].Place,
            bench.Design[ShoulderAngle].Place,
            bench.Design[NeckFlat].Place,
            bench.Design[WidthAt].Place);
    }
}
