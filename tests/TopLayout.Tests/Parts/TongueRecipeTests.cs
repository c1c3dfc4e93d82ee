using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

public class TongueRecipeTests
{
    /// <summary>Worked by hand: ρ = (40 cos 14° − 70 sin 14°)/(1 − sin 14°) = (38.812 − 16.935)/0.75808 = 28.86; face 40 + 6·0.75808/0.97030 = 44.69.</summary>
    [Fact]
    public void Tongue_WorkedExample_TipAndFaceAgree()
    {
        var tongue = new TongueRecipe(40, 70, Angle.FromDegrees(14), 6);

        Check.Near(28.86, tongue.TipRadius, 0.005, "tip radius");
        Check.Near(44.69, tongue.FaceHalf, 0.005, "half-width at the face");
        Assert.True(tongue.HasFlank);
    }

    /// <summary>Worked by hand from tan θ &lt; b/L and L(1 + sin θ) ≥ b cos θ + r(1 − sin θ): at b 40, r 6 a flank needs 21.5° at L 30 and 28.4° at L 26.</summary>
    [Theory]
    [InlineData(30, 21.4, false)]
    [InlineData(30, 21.6, true)]
    [InlineData(26, 28.3, false)]
    [InlineData(26, 28.5, true)]
    [InlineData(70, 29.8, false)]
    public void HasFlank_ShortOrSharp_SaysSo(double length, double degrees, bool expected) =>
        Assert.Equal(expected, new TongueRecipe(40, length, Angle.FromDegrees(degrees), 6).HasFlank);

    [Fact]
    public void Build_AnyTongue_NoEdgeNearerToTheGrainThanTheFlankAndNoCorner()
    {
        const int seed = 15;
        var random = new Random(seed);
        var built = 0;
        for (var n = 0; n < 2000; n++)
        {
            var flank = Angle.FromDegrees(8 + (30 * random.NextDouble()));
            var tongue = new TongueRecipe(15 + (35 * random.NextDouble()), 20 + (70 * random.NextDouble()), flank, 1 + (9 * random.NextDouble()));
            if (!tongue.HasFlank || tongue.TipRadius < 1)
            {
                continue;
            }

            built++;
            var outline = tongue.Build(-40).Outer;
            foreach (var (edge, next) in outline.Segments.Zip(outline.Segments.Skip(1).Append(outline.Segments[0])).Where(e => e.First.Label != TongueRecipe.Root))
            {
                Assert.True(GrainAngle.Least(edge, Angle.Zero).Degrees >= flank.Degrees - 1e-7, $"seed {seed}, draw {n}: {edge.Label}");
                if (next.Label != TongueRecipe.Root)
                {
                    Check.Near(0, edge.TangentAt(1).Cross(next.TangentAt(0)), 1e-9, $"seed {seed}, draw {n}: {edge.Label} to {next.Label}");
                }
            }

            Check.Near(-40 - tongue.Length, outline.Bounds.Min.Y, 1e-9, $"seed {seed}, draw {n}: tip");
        }

        Assert.True(built > 500, $"only {built} tongues were possible");
    }

    /// <summary>Sides 30 long and a half circle of 30: 60·30 + π·30²/2. Only 18 long it is one arc is a circle of (30² + 18²)/36 = 34.</summary>
    [Fact]
    public void StraightRound_LongAndShort_HasARoundTip()
    {
        var tongue = TongueRecipe.StraightRound(30, 60, -40);
        Check.Near((60 * 30) + (Math.PI * 450), tongue.Area, 1e-9, "area");
        Check.Near(-100, tongue.Bounds.Min.Y, 1e-9, "tip");
        Assert.All(tongue.Outer.Segments.Where(s => s.Label is TongueRecipe.FlankBass or TongueRecipe.FlankTreble), s => Check.Near(30, s.Length, 1e-9, s.Label));

        var blunt = TongueRecipe.StraightRound(30, 18, -40).Outer.Segments.Single(s => s.Label == TongueRecipe.Tip);
        Check.Near(34, blunt.Radius, 1e-9, "radius");
    }

    [Fact]
    public void LargestFlank_WithThatAngle_TipHasTheWantedRadius()
    {
        var tongue = new TongueRecipe(30, 60, Angle.FromDegrees(10), 5);

        var sharpest = tongue with { Flank = tongue.LargestFlank(4) };

        Check.Near(4, sharpest.TipRadius, 1e-9, "tip radius");
    }
}
