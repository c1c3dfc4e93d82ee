using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The outline: the finished outer face of the sides, from three widths and where each stands.</summary>
public static class Outline
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("outline", "the outer face of the sides");

    /// <summary>Body length on the centre line.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "body length on the centre line", possible: (150, 700), usual: (290, 545), fallback: 500);

    /// <summary>Upper bout.</summary>
    public static readonly Parameter<double> UpperWidth = Parameter.Length(
        Section, "upper_width", "widest place of the upper bout", possible: (60, 500), usual: (158, 330), fallback: 290);

    /// <summary>Station of the upper bout.</summary>
    public static readonly Parameter<double> UpperAt = Parameter.Length(
        Section, "upper_at", "its distance from the neck edge", possible: (10, 300), usual: (50, 120), fallback: 100);

    /// <summary>Waist.</summary>
    public static readonly Parameter<double> WaistWidth = Parameter.Length(
        Section, "waist_width", "narrowest place of the waist", possible: (40, 480), usual: (122, 285), fallback: 242);

    /// <summary>Station of the waist.</summary>
    public static readonly Parameter<double> WaistAt = Parameter.Length(
        Section, "waist_at", "its distance from the neck edge", possible: (20, 500), usual: (105, 215), fallback: 190);

    /// <summary>Lower bout.</summary>
    public static readonly Parameter<double> LowerWidth = Parameter.Length(
        Section, "lower_width", "widest place of the lower bout", possible: (80, 600), usual: (215, 435), fallback: 396);

    /// <summary>Station of the lower bout.</summary>
    public static readonly Parameter<double> LowerAt = Parameter.Length(
        Section, "lower_at", "its distance from the neck edge", possible: (40, 650), usual: (215, 420), fallback: 376);

    /// <summary>Share of the waist arc above the waist.</summary>
    public static readonly Parameter<double> WaistShareUpper = Share("waist_share_upper", "waist arc's share of the radii above the waist", 0.46);

    /// <summary>Share of the waist arc below the waist.</summary>
    public static readonly Parameter<double> WaistShareLower = Share("waist_share_lower", "waist arc's share of the radii below the waist", 0.42);

    /// <summary>Corner at the neck end.</summary>
    public static readonly Parameter<double> NeckCorner = Share("neck_corner", "upper corner radius, share of the largest", 0.88, 1);

    /// <summary>Corner at the tail end.</summary>
    public static readonly Parameter<double> TailCorner = Share("tail_corner", "lower corner radius, share of the largest", 0.84, 1);

    /// <summary>Run-on of the upper side arc.</summary>
    public static readonly Parameter<double> UpperReach = Reach("upper_reach", "how far the upper side arc runs on towards the neck", 0.18);

    /// <summary>Run-on of the lower side arc.</summary>
    public static readonly Parameter<double> LowerReach = Reach("lower_reach", "how far the lower side arc runs on towards the tail", 0.25);

    /// <summary>Flat at the heel.</summary>
    public static readonly Parameter<double> NeckFlat = Parameter.Length(
        Section, "neck_flat", "width of the straight piece at the neck heel", possible: (0, 120), usual: (0, 75), fallback: 0);

    /// <summary>Flat at the tail.</summary>
    public static readonly Parameter<double> TailFlat = Parameter.Length(
        Section, "tail_flat", "width of the straight piece at the tail", possible: (0, 120), usual: (0, 60), fallback: 0);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All =>
    [
        Length, UpperWidth, UpperAt, WaistWidth, WaistAt, LowerWidth, LowerAt,
        WaistShareUpper, WaistShareLower, NeckCorner, TailCorner, UpperReach, LowerReach, NeckFlat, TailFlat,
    ];

    /// <summary>The recipe as read.</summary>
    public static OutlineRecipe Recipe(Design design) => new()
    {
        Length = design[Length].Value,
        Upper = new(design[UpperWidth].Value, design[UpperAt].Value),
        Waist = new(design[WaistWidth].Value, design[WaistAt].Value),
        Lower = new(design[LowerWidth].Value, design[LowerAt].Value),
        WaistShareUpper = design[WaistShareUpper].Value,
        WaistShareLower = design[WaistShareLower].Value,
        Neck = new(design[NeckCorner].Value, design[UpperReach].Value, design[NeckFlat].Value / 2),
        Tail = new(design[TailCorner].Value, design[LowerReach].Value, design[TailFlat].Value / 2),
    };

    /// <summary>The outline; null, with misfits said, when the stations contradict each other.</summary>
    internal static Contour? Build(Bench bench)
    {
        var recipe = Recipe(bench.Design);
        var contradictions = recipe.Contradictions().ToList();
        foreach (var (sentence, cure, parameters) in contradictions)
        {
            bench.Misfit("outline", sentence, cure, [.. parameters.Select(p => bench.Design[p].Place)]);
        }

        return contradictions.Count == 0 ? recipe.Build() : null;
    }

    private static Parameter<double> Share(string key, string meaning, double fallback, double largest = 0.95) =>
        Parameter.Number(Section, key, meaning, possible: (0.05, largest), fallback: fallback);

    private static Parameter<double> Reach(string key, string meaning, double fallback) =>
        Parameter.Number(Section, key, meaning + ", share of the possible", possible: (0, 0.95), fallback: fallback);
}
