using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using Station = TopLayout.Lutherie.Parts.OutlineRecipe.Station;

namespace TopLayout.Tests.Parts;

public class OutlineRecipeTests
{
    /// <summary>
    /// Widths, stations and fractions with the radii, one side's strip (mm) and plate area (cm²) they give. Computed for this project by
    /// a second program in another language (Python), written from the three lemmas alone; printed to the digits shown.
    /// </summary>
    public static TheoryData<string, double[], double[], double[]> Worked => new()
    {
        { "parlour", [475, 243, 92, 196, 180, 330, 357], [.45, .40, .82, .80, .20, .28], [169, 74, 97, 79, 107, 160, 84, 283, 687, 1171] },
        { "classical", [487, 282, 98, 237, 187, 368, 368], [.48, .40, .85, .80, .18, .28], [241, 83, 97, 90, 113, 170, 84, 383, 733, 1382] },
        { "concert", [490, 262, 95, 216, 184, 358, 368], [.46, .38, .87, .80, .20, .28], [218, 81, 99, 84, 104, 170, 87, 337, 724, 1321] },
        { "auditorium", [500, 290, 100, 242, 190, 396, 376], [.46, .42, .88, .84, .18, .25], [268, 89, 98, 83, 111, 153, 97, 456, 766, 1494] },
        { "square-shouldered", [508, 294, 88, 276, 192, 398, 384], [.55, .44, .90, .82, .12, .28], [435, 72, 272, 333, 146, 186, 89, 474, 775, 1589] },
        { "jumbo", [528, 318, 112, 262, 204, 428, 394], [.44, .42, .87, .88, .10, .15], [239, 99, 92, 73, 109, 150, 115, 491, 814, 1699] },
        { "tenor ukulele", [304, 168, 60, 134, 116, 224, 230], [.46, .42, .86, .82, .15, .25], [126, 53, 54, 46, 70, 97, 56, 221, 453, 511] },
    };

    [Theory]
    [MemberData(nameof(Worked))]
    public void Build_WorkedBodies_RadiiStripAndAreaAgree(string body, double[] stations, double[] fractions, double[] expected)
    {
        var outline = Recipe(stations, fractions).Build();

        var half = outline.Segments.Where(s => s.Start.X > -1e-9 && s.End.X > -1e-9).Reverse().ToList();
        double Radius(string label, bool last) => (last ? half.Last(s => s.Label == label) : half.First(s => s.Label == label)).Radius;
        double[] found =
        [
            Radius("shoulder", false), Radius("upper corner", false), half.Last(s => s.Label == "upper side").Radius, Radius("waist", false),
            Radius("waist", true), Radius("lower side", false), Radius("lower corner", false), Radius("tail", true),
            outline.Length / 2, outline.SignedArea / 100,
        ];
        for (var i = 0; i < expected.Length; i++)
        {
            Assert.True(Math.Round(found[i]) == expected[i], $"{body}, value {i}: expected {expected[i]}, got {found[i]:F3}");
        }
    }

    [Fact]
    public void Build_AnyFractions_JointsRunOnAndWidthsStand()
    {
        const int seed = 20261125;
        var random = new Random(seed);
        double Draw(double from, double to) => from + ((to - from) * random.NextDouble());
        for (var n = 0; n < 5000; n++)
        {
            var length = Draw(200, 560);
            var lower = length * Draw(.60, .90);
            var upper = lower * Draw(.60, .95);
            var flat = random.Next(3) == 0 ? length * .03 : 0;
            var upperAt = Math.Min(length * Draw(.12, .25), .999 * ((upper / 2) - flat));
            var lowerAt = Math.Max(length * Draw(.66, .80), length - (.999 * ((lower / 2) - flat)));
            double[] stations = [length, upper, upperAt, upper * Draw(.65, .99), upperAt + ((lowerAt - upperAt) * Draw(.2, .6)), lower, lowerAt];
            double Corner() => random.Next(2) == 0 ? 1 : Draw(.05, 1);
            double Reach() => random.Next(2) == 0 ? 0 : Draw(0, .95);
            var recipe = Recipe(stations, [Draw(.05, .95), Draw(.05, .95), Corner(), Corner(), Reach(), Reach()], flat);

            Assert.Empty(recipe.Contradictions());
            var outline = recipe.Build();

            var bounds = outline.Bounds;
            Check.Near(lower, bounds.Width, 1e-7, $"seed {seed}, draw {n}: lower bout");
            Check.Near(length, bounds.Height, 1e-7, $"seed {seed}, draw {n}: length");
            for (var i = 0; i < outline.Segments.Length; i++)
            {
                var (a, b) = (outline.Segments[i], outline.Segments[(i + 1) % outline.Segments.Length]);
                var flattened = 4 * Tolerances.FlatSagittaMm / Math.Min(a.ChordLength, b.ChordLength);
                Check.Near(0, a.TangentAt(1).Cross(b.TangentAt(0)), 1e-7 + flattened, $"seed {seed}, draw {n}: joint {i} ({a.Label}/{b.Label})");
            }
        }
    }

    internal static OutlineRecipe Recipe(double[] s, double[] f, double flat = 0) => new()
    {
        Length = s[0],
        Upper = new Station(s[1], s[2]),
        Waist = new Station(s[3], s[4]),
        Lower = new Station(s[5], s[6]),
        WaistShareUpper = f[0],
        WaistShareLower = f[1],
        Neck = new OutlineRecipe.EndShape(f[2], f[4], flat),
        Tail = new OutlineRecipe.EndShape(f[3], f[5], flat),
    };
}
