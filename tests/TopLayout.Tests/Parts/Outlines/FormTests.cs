using System.Globalization;
using System.Text;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts.Outlines;

/// <summary>The forms of an outline in design files.</summary>
public class FormTests
{
    [Fact]
    public void NoForm_IsTheRecipeOfTheBody()
    {
        var (none, written) = (OutlineDesigns.Layout("body = \"jumbo\"\n"), OutlineDesigns.Layout("body = \"jumbo\"\n[outline]\n"));

        Assert.Equal(written.Outline, none.Outline);
        Assert.Equal(none.Outline, none.Body.PlateEdge);
    }

    // The worked values of OutlineFormTests: by a second program in another language.
    [Fact]
    public void Teardrop_Defaults_AreTheWorkedOctaveMandolin()
    {
        var outline = OutlineDesigns.Layout("[teardrop]\n").Outline;

        Check.Near(592, outline.Length / 2, 0.5, "half of the way round");
        Check.Near(1075, outline.SignedArea / 100, 0.5, "area, cm²");
        Assert.Equal([("lower bout", 240.0, 178.0)], BodyWidths.Of(outline).Select(w => (w.Name, Math.Round(w.FromNeckEdge, 9), Math.Round(w.Half, 9))));
    }

    [Fact]
    public void Teardrop_ThatCannotBe_SaysWhatWould()
    {
        Assert.Equal(
            """
            o.toml:5:15: error TL2001: a shoulder that leaves the flat at 48° meets no side of radius 300 mm on its way to the widest place
              also: o.toml:4:1
              hint: with all else as it is, take a `side_radius` from 20 mm to 268.5 mm, or a `shoulder_angle` from 63.4° to 85°
            """.ReplaceLineEndings("\n"),
            OutlineDesigns.Printed("[teardrop]\nside_radius = 300\n"));
        OutlineDesigns.Layout("[teardrop]\nside_radius = 268.5\n");
        OutlineDesigns.Layout("[teardrop]\nside_radius = 300\nshoulder_angle = 63.4\n");
        Assert.NotEqual("", OutlineDesigns.Printed("[teardrop]\nside_radius = 268.6\n"));

        Assert.Contains("make `length` more than `width_at` (240 mm) and at most 418 mm", OutlineDesigns.Printed("[teardrop]\nlength = 420\n"), StringComparison.Ordinal);
    }

    // An auditorium's half as its own arcs, ends to a hundredth and radii to a tenth of a thousandth: the same body again.
    [Fact]
    public void Arcs_OfARecipe_AreTheRecipe()
    {
        var recipe = OutlineRecipeTests.Recipe([500, 290, 100, 242, 190, 396, 376], [.46, .42, .88, .84, .18, .25]);
        var (text, again) = (new StringBuilder(), recipe.Build());
        foreach (var s in recipe.TrebleHalf())
        {
            text.Append(CultureInfo.InvariantCulture, $"[[arc]]\nto_from_neck_edge = {-s.End.Y:0.0000}\nto_from_centre = {Math.Abs(s.End.X):0.0000}\n");
            text.Append(CultureInfo.InvariantCulture, $"bend = \"{(s.Bulge < 0 ? "out" : "in")}\"\nradius = {s.Radius:0.0000}\n");
        }

        var outline = OutlineDesigns.Layout(text.ToString()).Outline;

        Check.Near(again.Length, outline.Length, 0.01, "all round");
        Check.Near(again.SignedArea, outline.SignedArea, 1, "area");
        Assert.All(outline.Segments, s => Check.Near(0, again.DistanceTo(s.PointAt(0.5)), 0.001, s.Label));
    }

    [Fact]
    public void Arcs_OfTwoHalves_KeepEachToItsSide()
    {
        const string Round = "[[arc]]\nto_from_neck_edge = 200\nto_from_centre = {0}\nside = \"{1}\"\n[[arc]]\nto_from_neck_edge = 400\nto_from_centre = 0\nside = \"{1}\"\nbend = \"out\"\nradius = 220\n";
        string Half(int wide, string side) => string.Format(CultureInfo.InvariantCulture, Round, wide, side);

        var outline = OutlineDesigns.Layout(Half(180, "bass") + Half(160, "treble")).Outline;

        Check.Near(180, OutlineDesigns.HalfWidth(outline, 200, -1), 0.001, "bass");
        Check.Near(160, OutlineDesigns.HalfWidth(outline, 200, 1), 0.001, "treble");
    }

    [Theory]
    [InlineData("to_from_centre = 0\n", "to_from_centre = 3\n", "the treble half ends 3 mm from the centre line, so the outline does not close", "give its last `[[arc]]` the line `to_from_centre = 0`")]
    [InlineData("radius = 220\n", "radius = 120\n", "its ends lie 269.1 mm apart, too far for a radius of 120 mm", "make `radius` at least 134.6 mm")]
    [InlineData("radius = 220\n", "", "an arc that bends `out` or `in` needs a radius", "add a `radius` of at least 134.6 mm")]
    [InlineData("bend = \"out\"\n", "", "`radius` has no meaning for a straight piece, nor for one that goes on without a corner", "delete the line, or say whether the arc bends `out` or `in`")]
    [InlineData("to_from_neck_edge = 400\nto_from_centre = 0\n", "to_from_neck_edge = 200\nto_from_centre = 180\n", "this piece ends where it begins", "give it an end further along, or delete it")]
    [InlineData("[[arc]]\nto_from_neck_edge = 200\nto_from_centre = 180\n", "", "one piece only", "write an `[[arc]]` for each piece of it, from the neck to the tail")]
    public void Arcs_ThatMakeNoHalf_SayWhy(string from, string to, string sentence, string cure)
    {
        const string Two = "[[arc]]\nto_from_neck_edge = 200\nto_from_centre = 180\n[[arc]]\nto_from_neck_edge = 400\nto_from_centre = 0\nbend = \"out\"\nradius = 220\n";

        var printed = OutlineDesigns.Printed(Two.Replaced(from, to));

        Assert.Contains(sentence, printed, StringComparison.Ordinal);
        Assert.Contains(cure, printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Arcs_ThatCrossThemselves_AreRefusedWithAPlace()
    {
        const string Twisted = "[[arc]]\nto_from_neck_edge = 300\nto_from_centre = 100\nbend = \"straight\"\n[[arc]]\nto_from_neck_edge = 100\nto_from_centre = 100\nbend = \"straight\"\n"
            + "[[arc]]\nto_from_neck_edge = 400\nto_from_centre = 0\nbend = \"straight\"\n";

        Assert.Contains("the outline crosses itself", OutlineDesigns.Printed(Twisted), StringComparison.Ordinal);
    }

    [Fact]
    public void Forms_Two_AreNamedFromBothEnds()
    {
        var reading = Lutherie.Designs.DesignReader.Read(OutlineDesigns.Head + "[teardrop]\n[outline]\n", "o.toml", Parameters.Table);

        Assert.Contains(reading.Findings, f => f.Sentence == "`[teardrop]` and `[outline]` say the same thing in different ways; only one may be written");
    }
}
