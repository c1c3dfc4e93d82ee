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
        Section, "length", "body length on the centre line", possible: (150, 700), usual: (290, 545), fallback: 500,
        byBody: new()
        {
            Parlour = (475, 455, 485), Classical = (487, 480, 495), Concert = (490, 470, 500),
            Auditorium = (500, 490, 510), SquareShouldered = (508, 500, 515), Jumbo = (528, 520, 545),
            TenorUkulele = (304, 290, 315), OctaveMandolin = (405, 380, 430),
        });

    /// <summary>Upper bout.</summary>
    public static readonly Parameter<double> UpperWidth = Parameter.Length(
        Section, "upper_width", "widest place of the upper bout", possible: (60, 500), usual: (158, 330), fallback: 290,
        byBody: new()
        {
            Parlour = (243, 225, 255), Classical = (282, 270, 295), Concert = (262, 245, 275),
            Auditorium = (290, 275, 300), SquareShouldered = (294, 285, 300), Jumbo = (318, 305, 330),
            TenorUkulele = (168, 158, 178), OctaveMandolin = (250, 230, 270),
        });

    /// <summary>Station of the upper bout.</summary>
    public static readonly Parameter<double> UpperAt = Parameter.Length(
        Section, "upper_at", "its distance from the neck edge", possible: (10, 300), usual: (50, 120), fallback: 100,
        byBody: new()
        {
            Parlour = (92, 82, 102), Classical = (98, 91, 104), Concert = (95, 85, 105), Auditorium = (100, 93, 107),
            SquareShouldered = (88, 80, 103), Jumbo = (112, 99, 120), TenorUkulele = (60, 52, 66), OctaveMandolin = 78,
        });

    /// <summary>Waist.</summary>
    public static readonly Parameter<double> WaistWidth = Parameter.Length(
        Section, "waist_width", "narrowest place of the waist", possible: (40, 480), usual: (122, 285), fallback: 242,
        byBody: new()
        {
            Parlour = (196, 180, 205), Classical = (237, 225, 245), Concert = (216, 205, 230),
            Auditorium = (242, 230, 255), SquareShouldered = (276, 265, 285), Jumbo = (262, 250, 285),
            TenorUkulele = (134, 122, 142), OctaveMandolin = 212,
        });

    /// <summary>Station of the waist.</summary>
    public static readonly Parameter<double> WaistAt = Parameter.Length(
        Section, "waist_at", "its distance from the neck edge", possible: (20, 500), usual: (105, 215), fallback: 190,
        byBody: new()
        {
            Parlour = (180, 168, 194), Classical = (187, 178, 198), Concert = (184, 169, 195),
            Auditorium = (190, 176, 199), SquareShouldered = (192, 180, 211), Jumbo = (204, 192, 218),
            TenorUkulele = (116, 107, 126), OctaveMandolin = 150,
        });

    /// <summary>Lower bout.</summary>
    public static readonly Parameter<double> LowerWidth = Parameter.Length(
        Section, "lower_width", "widest place of the lower bout", possible: (80, 600), usual: (215, 435), fallback: 396,
        byBody: new()
        {
            Parlour = (330, 310, 340), Classical = (368, 355, 375), Concert = (358, 340, 372),
            Auditorium = (396, 380, 405), SquareShouldered = (398, 390, 405), Jumbo = (428, 415, 435),
            TenorUkulele = (224, 215, 235), OctaveMandolin = (356, 335, 380),
        });

    /// <summary>Station of the lower bout.</summary>
    public static readonly Parameter<double> LowerAt = Parameter.Length(
        Section, "lower_at", "its distance from the neck edge", possible: (40, 650), usual: (215, 420), fallback: 376,
        byBody: new()
        {
            Parlour = (357, 337, 373), Classical = (368, 355, 381), Concert = (368, 348, 385),
            Auditorium = (376, 363, 393), SquareShouldered = (384, 370, 397), Jumbo = (394, 385, 414),
            TenorUkulele = (230, 215, 243), OctaveMandolin = 290,
        });

    /// <summary>Share of the waist arc above the waist.</summary>
    public static readonly Parameter<double> WaistShareUpper = Share("waist_share_upper", "waist arc's share of the radii above the waist", 0.46,
        byBody: new()
        {
            Parlour = 0.45, Classical = 0.48, Concert = 0.46, Auditorium = 0.46, SquareShouldered = 0.55, Jumbo = 0.44,
            TenorUkulele = 0.46, OctaveMandolin = 0.46,
        });

    /// <summary>Share of the waist arc below the waist.</summary>
    public static readonly Parameter<double> WaistShareLower = Share("waist_share_lower", "waist arc's share of the radii below the waist", 0.42,
        byBody: new()
        {
            Parlour = 0.4, Classical = 0.4, Concert = 0.38, Auditorium = 0.42, SquareShouldered = 0.44, Jumbo = 0.42,
            TenorUkulele = 0.42, OctaveMandolin = 0.42,
        });

    /// <summary>Corner at the neck end.</summary>
    public static readonly Parameter<double> NeckCorner = Share("neck_corner", "upper corner radius, share of the largest", 0.88, 1,
        byBody: new()
        {
            Parlour = 0.82, Classical = 0.85, Concert = 0.87, Auditorium = 0.88, SquareShouldered = 0.9, Jumbo = 0.87,
            TenorUkulele = 0.86, OctaveMandolin = 0.86,
        });

    /// <summary>Corner at the tail end.</summary>
    public static readonly Parameter<double> TailCorner = Share("tail_corner", "lower corner radius, share of the largest", 0.84, 1,
        byBody: new()
        {
            Parlour = 0.8, Classical = 0.8, Concert = 0.8, Auditorium = 0.84, SquareShouldered = 0.82, Jumbo = 0.88,
            TenorUkulele = 0.82, OctaveMandolin = 0.82,
        });

    /// <summary>Run-on of the upper side arc.</summary>
    public static readonly Parameter<double> UpperReach = Reach("upper_reach", "how far the upper side arc runs on towards the neck", 0.18,
        byBody: new()
        {
            Parlour = 0.2, Classical = 0.18, Concert = 0.2, Auditorium = 0.18, SquareShouldered = 0.12, Jumbo = 0.1,
            TenorUkulele = 0.15, OctaveMandolin = 0.15,
        });

    /// <summary>Run-on of the lower side arc.</summary>
    public static readonly Parameter<double> LowerReach = Reach("lower_reach", "how far the lower side arc runs on towards the tail", 0.25,
        byBody: new()
        {
            Parlour = 0.28, Classical = 0.28, Concert = 0.28, Auditorium = 0.25, SquareShouldered = 0.28, Jumbo = 0.15,
            TenorUkulele = 0.25, OctaveMandolin = 0.25,
        });

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

    private static Parameter<double> Share(string key, string meaning, double fallback, double largest = 0.95, BodyValues? byBody = null) =>
        Parameter.Number(Section, key, meaning, possible: (0.05, largest), fallback: fallback, byBody: byBody);

    private static Parameter<double> Reach(string key, string meaning, double fallback, BodyValues byBody) =>
        Parameter.Number(Section, key, meaning + ", share of the possible", possible: (0, 0.95), fallback: fallback, byBody: byBody);
}
