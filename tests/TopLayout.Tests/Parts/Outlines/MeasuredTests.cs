using TopLayout.Geometry;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Sheets;

namespace TopLayout.Tests.Parts.Outlines;

/// <summary>Measured bodies: kept to, each half its own, left and right whatever the hand.</summary>
public class MeasuredTests
{
    private const string Bell = "[measured]\nlength = 400\nat = [5, 15, 30, 60, 100, 150, 200, 250, 300, 340, 370, 385, 395]\n"
        + "left = [44, 76, 106, 143, 171, 190, 200, 201, 186, 158, 120, 88, 52]\nright = [44, 76, 106, 143, 171, 189, 197, 196, 181, 154, 118, 87, 52]\n";

    [Fact]
    public void Halves_AreWithinTheStatedDifferenceAndAsReported()
    {
        var layout = Built.Preset("measured");
        var within = layout.Design[MeasuredBody.Within].Value;

        Assert.Equal(2 * layout.Design.Find(MeasuredBody.At)!.Value.Value.Length, layout.Body.Residuals.Length);
        Assert.All(layout.Body.Residuals, r =>
        {
            var drawn = OutlineDesigns.HalfWidth(layout.Outline, r.FromNeckEdge, r.IsLeft ? -1 : 1);
            Check.Near(drawn, r.Drawn, 0.01, $"drawn at {r.FromNeckEdge}");
            Check.Near(r.Measured, drawn, within + 0.01, $"measured at {r.FromNeckEdge}");
            Check.Near(drawn - r.Measured, r.Difference, 0.01, "difference");
        });
    }

    // 375 mm from the neck edge one side measures 177.5 mm and the other 175 mm.
    [Fact]
    public void Halves_ThatDiffer_StayDifferent()
    {
        var outline = Built.Preset("measured").Outline;

        Check.Near(2.5, OutlineDesigns.HalfWidth(outline, 375, -1) - OutlineDesigns.HalfWidth(outline, 375, 1), 1.6, "left less right");
        Assert.NotEqual(outline.SignedArea, 2 * BodyWidths.Half(outline, 1).Sum(s => s.AreaTerm()), 1.0);
    }

    [Theory]
    [InlineData("right")]
    [InlineData("left")]
    public void Halves_OnTheSheetOfEitherHand_LieWhereTheyWereMeasured(string hand)
    {
        var layout = Built.Preset("measured", t => t.Replaced("handed = \"right\"", $"handed = \"{hand}\""));
        var sheet = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value).Map(layout.Outline);

        Check.Near(177.5, OutlineDesigns.HalfWidth(sheet, 375, -1), 0.8, "left");
        Check.Near(175, OutlineDesigns.HalfWidth(sheet, 375, 1), 0.8, "right");
    }

    [Fact]
    public void Ends_OfRoundHalves_CrossTheCentreLineNearlySquare()
    {
        var outline = OutlineDesigns.Layout(Bell).Outline;

        foreach (var end in outline.Segments.Where(s => s.Start.X == 0))
        {
            Check.Near(0, Math.Abs(Trig.Atan2(end.TangentAt(0).Y, Math.Abs(end.TangentAt(0).X)).Degrees), 3, "heading at the centre line");
        }
    }

    [Fact]
    public void HalfWidthAtTheVeryEnd_IsAStraightPieceThere()
    {
        var outline = OutlineDesigns.Layout(Bell.Replaced("[5, 15", "[0, 15").Replaced("left = [44", "left = [30").Replaced("right = [44", "right = [28")).Outline;

        Assert.Equal([-30, 28], outline.Segments.Where(s => s.Label == "neck flat").Select(s => Math.Round(s.Start.X + s.End.X, 9)).Order());
    }

    [Theory]
    [InlineData("right = [44, ", "right = [", "there are 13 stations and 12 half-widths on the right", 7)]
    [InlineData("150, 200, 250, 300", "150, 250, 200, 300", "the station at 200 mm does not lie past the one before it, at 250 mm", 6)]
    [InlineData("385, 395", "385, 405", "the station at 405 mm lies past the body's end at 400 mm", 6)]
    public void Numbers_ThatMakeNoBody_AreNamedWhereTheyStand(string from, string to, string sentence, int line)
    {
        var (layout, findings) = OutlineDesigns.Built(Bell.Replaced(from, to));

        Assert.Null(layout);
        Assert.Contains(findings, f => f.Sentence == sentence && f.Place!.Value.Line == line + (line == 7 ? 1 : 0));
    }

    // One half-width written 30 mm too large: the arcs follow it into a corner, and the check says where.
    [Fact]
    public void SlipOfThePencil_IsACornerThatTheCheckNames()
    {
        var layout = OutlineDesigns.Layout(Bell.Replaced("171, 190, 200, 201", "171, 190, 230, 201"));

        var found = MeasuredOutlineCheck.Of(layout).Concat(BendRadiusCheck.Of(layout)).Where(f => f.Severity >= Severity.Warning).ToList();

        Assert.NotEmpty(found);
        Assert.Contains(found, f => f.Where is var (at, _) && Math.Abs(at.Y + 200) < 60);
    }

    [Fact]
    public void EvenStations_AreCountedFromTheNeckEdge()
    {
        const string Even = "[measured]\nlength = 200\nevery = 40\nleft = [70, 90, 90, 70]\nright = [70, 90, 90, 70]\n";

        Assert.Equal([40, 80, 120, 160], OutlineDesigns.Layout(Even).Body.Residuals.Where(r => r.IsLeft).Select(r => r.FromNeckEdge));
    }

    [Fact]
    public void Lists_WithAWrongNumber_PointAtThatNumber()
    {
        var reading = DesignReader.Read(OutlineDesigns.Head + "[measured]\nlength = 400\nleft = [10, \"3/4 in\", -5]\nright = 7\n", "o.toml", Parameters.Table);

        Assert.Equal(
            """
            o.toml:6:23: error TL1002: `left[3]` must be from 0.1 to 300 mm; it is -5 mm
              hint: write for example `left[3] = 150`
            o.toml:7:9: error TL1003: `right` must be a list of lengths in square brackets; it is the number `7`
              hint: write for example `right = [50, 100, 150]`
            """.ReplaceLineEndings("\n"),
            string.Join("\n", reading.Findings.Select(FindingText.Of)));
    }
}
