using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>A cutaway beside the heel, on the treble side; on a left-handed instrument it is mirrored with all the rest. Usual ranges: common practice, no source.</summary>
public static class Cutaway
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("cutaway", "a hollow in the treble side beside the heel");

    /// <summary>Rounded or pointed.</summary>
    public static readonly Parameter<CutawayShape> Shape = Parameter.OneOf<CutawayShape>(
        Section, "shape", "rounded: the hollow runs into a round horn above a waist; pointed: it ends in a point on the body's own side", CutawayShape.Rounded);

    /// <summary>The wall's distance from the centre line.</summary>
    public static readonly Parameter<double> WallFromCentre = Parameter.Length(
        Section, "wall_from_centre", "from the centre line to the straight wall beside the heel", possible: (10, 150), usual: (24, 48), fallback: 34,
        byBody: BodyValues.Of(classical: 36, tenorUkulele: 27));

    /// <summary>Length of the wall.</summary>
    public static readonly Parameter<double> WallLength = Parameter.Length(
        Section, "wall_length", "length of the wall from the neck edge", possible: (0, 150), usual: (0, 50), fallback: 18,
        byBody: BodyValues.Of(tenorUkulele: 10));

    /// <summary>Station of the horn.</summary>
    public static readonly Parameter<double> HornAt = Parameter.Length(
        Section, "horn_at", "from the neck edge to the horn's outermost point", possible: (15, 350), usual: (60, 150), fallback: 118,
        byBody: BodyValues.Of(parlour: 108, classical: 116, concert: 112, squareShouldered: 112, jumbo: 128, tenorUkulele: 70, octaveMandolin: 95));

    /// <summary>Reach of a rounded horn.</summary>
    public static readonly Parameter<double> HornFromCentre = Parameter.Length(
        Section, "horn_from_centre", "from the centre line to a rounded horn's outermost point", possible: (20, 300), usual: (75, 160), fallback: 138,
        byBody: BodyValues.Of(
            parlour: (114, 106, 120), classical: (134, 126, 140), concert: (124, 118, 130), auditorium: (138, 130, 145),
            squareShouldered: (144, 143.5, 148), jumbo: (150, 144, 158), tenorUkulele: (79, 73, 83), octaveMandolin: (119, 110, 124)));

    /// <summary>Radius of a rounded horn.</summary>
    public static readonly Parameter<double> HornRadius = Parameter.Length(
        Section, "horn_radius", "radius of a rounded horn", possible: (5, 200), usual: (20, 60), fallback: 38,
        byBody: BodyValues.Of(tenorUkulele: 24));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Shape, WallFromCentre, WallLength, HornAt, HornFromCentre, HornRadius];

    /// <summary>The recipe as read.</summary>
    public static CutawayRecipe Recipe(Design design) => new(
        design.Get(Shape).Value,
        design[WallFromCentre].Value,
        design[WallLength].Value,
        new(2 * design[HornFromCentre].Value, design[HornAt].Value),
        design[HornRadius].Value);

    /// <summary>The halves with the cutaway of the design, if it has one; null, with the misfit said, when it does not fit.</summary>
    internal static BodyHalves? Cut(Bench bench, BodyHalves body)
    {
        if (!bench.Design.Has(Section))
        {
            return body;
        }

        var recipe = Recipe(bench.Design);
        var (half, misfit) = recipe.Cut(body);
        if (half is not null)
        {
            SayUnused(bench, recipe);
            return body with { Treble = half };
        }

        var places = Numbers(recipe).Select(n => bench.Design[n.Parameter].Place);
        bench.Misfit("cutaway", misfit, Cure(recipe, body), [.. places, bench.Design.Get(Shape).Place, body.Place]);
        return null;
    }

    // What one number alone could mend.
    private static string Cure(CutawayRecipe recipe, BodyHalves body)
    {
        var cures = new List<string>();
        foreach (var (parameter, value, with) in Numbers(recipe))
        {
            if (LegalInterval.Nearest(v => with(v).Cut(body).Half is not null, value, parameter.Possible!.Value) is var (low, high))
            {
                cures.Add($"`{parameter.Key}` from {Say.Mm(Math.Ceiling(low * 10) / 10)} to {Say.Mm(Math.Floor(high * 10) / 10)}");
            }
        }

        return cures.Count > 0 ? $"with all else as it is, take {string.Join(", or ", cures)}"
            : recipe.Shape == CutawayShape.Rounded && body.Recipe is null ? "write `shape = \"pointed\"`, or describe the body by `[outline]`"
            : "begin with a wall, a horn and a radius from the usual ranges, and move the horn above the waist";
    }

    private static IEnumerable<(Parameter<double> Parameter, double Value, Func<double, CutawayRecipe> With)> Numbers(CutawayRecipe recipe)
    {
        yield return (HornAt, recipe.Horn.At, v => recipe with { Horn = recipe.Horn with { At = v } });
        if (recipe.Shape == CutawayShape.Rounded)
        {
            yield return (HornFromCentre, recipe.Horn.Half, v => recipe with { Horn = recipe.Horn with { Width = 2 * v } });
            yield return (HornRadius, recipe.HornRadius, v => recipe with { HornRadius = v });
        }

        yield return (WallLength, recipe.Wall, v => recipe with { Wall = v });
        yield return (WallFromCentre, recipe.WallHalf, v => recipe with { WallHalf = v });
    }

    private static void SayUnused(Bench bench, CutawayRecipe recipe)
    {
        foreach (var written in (ReadOnlySpan<Parameter<double>>)[HornFromCentre, HornRadius])
        {
            if (recipe.Shape == CutawayShape.Pointed && bench.Design[written] is { IsDefault: false } value)
            {
                bench.Fault(
                    Rules.DrawnOtherwise, Severity.Remark, "cutaway", $"`{written.Key}` says nothing of a pointed cutaway", "delete the line, or write `shape = \"rounded\"`", null, null, value.Place);
            }
        }
    }
}
