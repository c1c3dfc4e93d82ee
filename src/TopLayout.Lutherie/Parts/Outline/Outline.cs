using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The outline: the finished outer face of the sides, from three widths and where each stands.</summary>
public static class Outline
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("outline", "the outer face of the sides, from three widths; assumed when no other form is written");

    /// <summary>Body length on the centre line.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "body length on the centre line", possible: (150, 700), usual: (290, 545), fallback: 500,
        byBody: BodyValues.Of(
            parlour: (475, 455, 485), classical: (487, 480, 495), concert: (490, 470, 500),
            auditorium: (500, 490, 510), squareShouldered: (508, 500, 515), jumbo: (528, 520, 545),
            tenorUkulele: (304, 290, 315), octaveMandolin: (405, 380, 430)));

    /// <summary>Upper bout.</summary>
    public static readonly Parameter<double> UpperWidth = Parameter.Length(
        Section, "upper_width", "widest place of the upper bout", possible: (60, 500), usual: (158, 330), fallback: 290,
        byBody: BodyValues.Of(
            parlour: (243, 225, 255), classical: (282, 270, 295), concert: (262, 245, 275),
            auditorium: (290, 275, 300), squareShouldered: (294, 285, 300), jumbo: (318, 305, 330),
            tenorUkulele: (168, 158, 178), octaveMandolin: (250, 230, 270)));

    /// <summary>Station of the upper bout.</summary>
    public static readonly Parameter<double> UpperAt = Parameter.Length(
        Section, "upper_at", "its distance from the neck edge", possible: (10, 300), usual: (50, 120), fallback: 100,
        byBody: BodyValues.Of(
            parlour: (92, 82, 102), classical: (98, 91, 104), concert: (95, 85, 105), auditorium: (100, 93, 107),
            squareShouldered: (88, 80, 103), jumbo: (112, 99, 120), tenorUkulele: (60, 52, 66), octaveMandolin: 78));

    /// <summary>Waist.</summary>
    public static readonly Parameter<double> WaistWidth = Parameter.Length(
        Section, "waist_width", "narrowest place of the waist", possible: (40, 480), usual: (122, 285), fallback: 242,
        byBody: BodyValues.Of(
            parlour: (196, 180, 205), classical: (237, 225, 245), concert: (216, 205, 230),
            auditorium: (242, 230, 255), squareShouldered: (276, 265, 285), jumbo: (262, 250, 285),
            tenorUkulele: (134, 122, 142), octaveMandolin: 212));

    /// <summary>Station of the waist.</summary>
    public static readonly Parameter<double> WaistAt = Parameter.Length(
        Section, "waist_at", "its distance from the neck edge", possible: (20, 500), usual: (105, 215), fallback: 190,
        byBody: BodyValues.Of(
            parlour: (180, 168, 194), classical: (187, 178, 198), concert: (184, 169, 195),
            auditorium: (190, 176, 199), squareShouldered: (192, 180, 211), jumbo: (204, 192, 218),
            tenorUkulele: (116, 107, 126), octaveMandolin: 150));

    /// <summary>Lower bout.</summary>
    public static readonly Parameter<double> LowerWidth = Parameter.Length(
        Section, "lower_width", "widest place of the lower bout", possible: (80, 600), usual: (215, 435), fallback: 396,
        byBody: BodyValues.Of(
            parlour: (330, 310, 340), classical: (368, 355, 375), concert: (358, 340, 372),
            auditorium: (396, 380, 405), squareShouldered: (398, 390, 405), jumbo: (428, 415, 435),
            tenorUkulele: (224, 215, 235), octaveMandolin: (356, 335, 380)));

    /// <summary>Station of the lower bout.</summary>
    public static readonly Parameter<double> LowerAt = Parameter.Length(
        Section, "lower_at", "its distance from the neck edge", possible: (40, 650), usual: (215, 420), fallback: 376,
        byBody: BodyValues.Of(
            parlour: (357, 337, 373), classical: (368, 355, 381), concert: (368, 348, 385),
            auditorium: (376, 363, 393), squareShouldered: (384, 370, 397), jumbo: (394, 385, 414),
            tenorUkulele: (230, 215, 243), octaveMandolin: 290));

    /// <summary>Share of the waist arc above the waist.</summary>
    public static readonly Parameter<double> WaistShareUpper = Share("waist_share_upper", "waist arc's share of the radii above the waist", 0.46,
        byBody: BodyValues.Of(
            parlour: 0.45, classical: 0.48, concert: 0.46, auditorium: 0.46, squareShouldered: 0.55, jumbo: 0.44,
            tenorUkulele: 0.46, octaveMandolin: 0.46));

    /// <summary>Share of the waist arc below the waist.</summary>
    public static readonly Parameter<double> WaistShareLower = Share("waist_share_lower", "waist arc's share of the radii below the waist", 0.42,
        byBody: BodyValues.Of(
            parlour: 0.4, classical: 0.4, concert: 0.38, auditorium: 0.42, squareShouldered: 0.44, jumbo: 0.42,
            tenorUkulele: 0.42, octaveMandolin: 0.42));

    /// <summary>Corner at the neck end.</summary>
    public static readonly Parameter<double> NeckCorner = Share("neck_corner", "upper corner radius, share of the largest", 0.88, 1,
        byBody: BodyValues.Of(
            parlour: 0.82, classical: 0.85, concert: 0.87, auditorium: 0.88, squareShouldered: 0.9, jumbo: 0.87,
            tenorUkulele: 0.86, octaveMandolin: 0.86));

    /// <summary>Corner at the tail end.</summary>
    public static readonly Parameter<double> TailCorner = Share("tail_corner", "lower corner radius, share of the largest", 0.84, 1,
        byBody: BodyValues.Of(
            parlour: 0.8, classical: 0.8, concert: 0.8, auditorium: 0.84, squareShouldered: 0.82, jumbo: 0.88,
            tenorUkulele: 0.82, octaveMandolin: 0.82));

    /// <summary>Run-on of the upper side arc.</summary>
    public static readonly Parameter<double> UpperReach = Reach("upper_reach", "how far the upper side arc runs on towards the neck", 0.18,
        byBody: BodyValues.Of(
            parlour: 0.2, classical: 0.18, concert: 0.2, auditorium: 0.18, squareShouldered: 0.12, jumbo: 0.1,
            tenorUkulele: 0.15, octaveMandolin: 0.15));

    /// <summary>Run-on of the lower side arc.</summary>
    public static readonly Parameter<double> LowerReach = Reach("lower_reach", "how far the lower side arc runs on towards the tail", 0.25,
        byBody: BodyValues.Of(
            parlour: 0.28, classical: 0.28, concert: 0.28, auditorium: 0.25, squareShouldered: 0.28, jumbo: 0.15,
            tenorUkulele: 0.25, octaveMandolin: 0.25));

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

    /// <summary>The halves; null, with misfits said, when the stations contradict each other.</summary>
    internal static BodyHalves? Build(Bench bench)
    {
        var recipe = Recipe(bench.Design);
        var contradictions = recipe.Contradictions().ToList();
        foreach (var (sentence, cure, parameters) in contradictions)
        {
            bench.Misfit("outline", sentence, cure, [.. parameters.Select(p => bench.Design[p].Place)]);
        }

        return contradictions.Count == 0 ? BodyHalves.Alike(recipe.TrebleHalf(), bench.Design[Length].Place) with { Recipe = recipe } : null;
    }

    private static Parameter<double> Share(string key, string meaning, double fallback, double largest = 0.95, BodyValues? byBody = null) =>
        Parameter.Number(Section, key, meaning, possible: (0.05, largest), fallback: fallback, byBody: byBody);

    private static Parameter<double> Reach(string key, string meaning, double fallback, BodyValues byBody) =>
        Parameter.Number(Section, key, meaning + ", share of the possible", possible: (0, 0.95), fallback: fallback, byBody: byBody);
}
