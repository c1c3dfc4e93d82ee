using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Plans.Sheets;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>What a maker needs on a sheet and would otherwise have to reckon out.</summary>
public class SheetFactsTests
{
    /// <summary>By hand: the block reaches from the sides, 2 thick, 35 to its face at 37; the tongue from there 44 on.</summary>
    [Theory]
    [InlineData("root 50 mm wide, where the flanks drawn on meet the block face")]
    [InlineData("44 mm long, 8 mm thick, black cherry, flat-sawn")]
    [InlineData("place of the tongue: 37 to 81 mm from neck edge, middle on the centre line")]
    [InlineData("place of the neck block: 2 to 37 mm from neck edge, middle on the centre line")]
    [InlineData("long grain of tongue and block")]
    [InlineData("tongue and block are one piece, sawn out in one")]
    [InlineData("covered, not glued")]
    public void Tongue_SaysItsRootItsStuffAndItsPlace(string words) => Assert.Contains(words, Drawn.One("tapered-tongue", "tongue").Words());

    /// <summary>A block that stays in an old rim is nothing to cut.</summary>
    [Fact]
    public void Block_OfAnOldRim_IsThereToCompare()
    {
        var sheet = Drawn.One("measured", "parts", "tail-block");

        Assert.Contains("Tail block: old block, to compare; do not make, full size", sheet.Words());
        Assert.Empty(sheet.Lines("tail block", Role.Cut));
        Assert.DoesNotContain(sheet.Labels(), l => l.Part == "cautions");
    }

    /// <summary>As the design says: the wall 36 from the centre line and 14 long.</summary>
    [Theory]
    [InlineData("0: 36 corner")]
    [InlineData("14: 36 end of the straight")]
    public void HalfTemplate_OfACutaway_HasItsCornersAndTheWallsEnd(string words) => Assert.Contains(words, Drawn.One("pointed-cutaway", "half-template", "half-template-treble").Words());

    [Fact]
    public void Tongue_OfABlockWithUprightGrain_HasTheGrainOfEach()
    {
        var words = Drawn.One("tapered-tongue", "tongue", edit: t => t.Replaced("grain = \"along\"\nsawing = \"flat\"\n\n[tongue]", "grain = \"upright\"\nsawing = \"flat\"\n\n[tongue]")).Words();

        Assert.Contains("tongue and block are two pieces, jointed at the block's face", words);
        Assert.Contains("long grain of the tongue", words);
        Assert.Contains("grain of the block upright, through the depth of the rim", words);
    }

    /// <summary>The point lies at 82 from the neck edge, near the widest place of an upper bout of 264, at 96; the mitre runs from it into the body, seen from inside to the other side.</summary>
    [Theory]
    [InlineData("outline", 1)]
    [InlineData("inside-plan", -1)]
    public void Mitre_OfAPointedCutaway_RunsFromThePointInward(string kind, int side)
    {
        var sheet = Drawn.One("pointed-cutaway", kind);
        var layout = Built.Preset("pointed-cutaway");
        var line = Assert.Single(sheet.Lines(Mitres.Part, Role.Mark)).Contour.Vertices.Select(v => v.Position).ToList();

        Check.Near(-82, line[0].Y, 1e-6, "the point");
        Check.Near(0, layout.Outline.DistanceTo(new Point2(side * line[0].X, line[0].Y)), 1e-6, "on the outline");
        Assert.InRange(side * line[0].X, 130, 132);
        Assert.Equal(3, line.Count);
        Check.Near(1.9, layout.Outline.DistanceTo(new Point2(side * line[1].X, line[1].Y)), 1e-6, "inside of the sides");
        Check.Near(1.9 + 6.5, layout.Outline.DistanceTo(new Point2(side * line[2].X, line[2].Y)), 1e-6, "inside of the linings");
        Assert.Contains("mitre", sheet.Words());
        Assert.Equal(kind == "outline", sheet.Words().Contains(Mitres.Meaning));
    }

    /// <summary>Of a binding of 2 the outside plan has the mitre; a rounded horn, and the corner at the heel, have none.</summary>
    [Fact]
    public void Mitre_OnTheOutside_IsThatOfTheBinding()
    {
        var sheet = Drawn.One("pointed-cutaway", "outside-plan", edit: t => t.Replaced("[cleats]", "[binding]\nwidth = 2\n\n[cleats]"));

        Assert.Equal(2, Assert.Single(sheet.Lines(Mitres.Part, Role.Mark)).Contour.Vertices.Length);
        Assert.Empty(Drawn.One("pointed-cutaway", "outside-plan").Lines(Mitres.Part));
        Assert.Empty(Drawn.One("cutaway", "inside-plan").Lines(Mitres.Part));
    }

    /// <summary>By hand: a binding of 1.8 is left in place of a body 487 long.</summary>
    [Theory]
    [InlineData("outside-plan")]
    [InlineData("inside-plan")]
    [InlineData("outline")]
    public void Plans_OfAMeasuredOutline_HaveTheEndsOfThePlate(string kind)
    {
        Assert.Contains("1.8 neck end of the plate", Drawn.One("measured", kind).Words());
        Assert.Contains("485.2 tail end of the plate", Drawn.One("measured", kind).Words());
        Assert.DoesNotContain(Drawn.One("concert", kind).Words(), w => w.EndsWith("of the plate", StringComparison.Ordinal));
    }

    /// <summary>Each edge is named on its own side: no leader meets the other edge.</summary>
    [Fact]
    public void Outline_OfAMeasuredPlate_NamesEachEdgeWithALeader()
    {
        var (sheet, layout) = (Drawn.One("measured", "outline"), Built.Preset("measured"));
        foreach (var (part, own, other) in (ReadOnlySpan<(string, Contour, Contour)>)[("plate edge", layout.Body.PlateEdge, layout.Outline), ("outline", layout.Outline, layout.Body.PlateEdge)])
        {
            var leader = Assert.Single(sheet.Lines(part, Role.Dimension), l => !l.Contour.IsClosed).Contour.Segments[0];
            Check.Near(0, own.DistanceTo(leader.End), 1e-6, part);
            Assert.DoesNotContain(other.Segments, e => Intersections.Of(leader, e).Count > 0);
        }
    }

    [Theory]
    [InlineData("inside-plan", "soundhole liner")]
    [InlineData("outside-plan", "soundhole liner")]
    [InlineData("rosette", "fretboard extension")]
    public void Lines_ThatRunCloseToOthers_AreNamedWithALeader(string kind, string part) =>
        Assert.NotEmpty(Drawn.One("arc-chain", kind).Lines(part, Role.Dimension));

    [Fact]
    public void Legend_TellsTheCoveredSlotFromTheOtherFace()
    {
        var sheet = Drawn.One("tapered-tongue", "inside-plan");

        Assert.Contains("covered, not glued", sheet.Words());
        Assert.Contains("other face", sheet.Words());
        Assert.DoesNotContain("other face", Drawn.One("tapered-tongue", "tongue").Words());
        Assert.DoesNotContain("covered, not glued", Drawn.One("concert", "inside-plan").Words());
    }

    /// <summary>No line of the sheet comes nearer than half a millimetre to the letters of a radius.</summary>
    [Theory]
    [InlineData("pointed-cutaway")]
    [InlineData("inches")]
    [InlineData("measured")]
    [InlineData("octave-mandolin")]
    [InlineData("arc-chain")]
    public void Outline_Radii_StandClearOfEveryLine(string preset)
    {
        var sheet = Drawn.One(preset, "outline");
        var lines = sheet.Shapes.OfType<ContourShape>().Where(s => s.Role is Role.Dimension or Role.Centre).ToList();
        foreach (var label in sheet.Labels().Where(l => l.Part == "radii"))
        {
            var box = label.Bounds.Grown(0.5);
            Assert.DoesNotContain(lines, l => l.Part != "radii" && l.Bounds.Overlaps(box) && l.Contour.Segments.Any(s => s.Start.Y <= box.Max.Y && s.Start.Y >= box.Min.Y && s.Bounds().Overlaps(box)));
        }
    }

    /// <summary>
    /// By hand: the horn's radius of 40 begins on the line from the wall's end, 36 from the centre line and 20 from the neck edge, to the horn, 138 and
    /// 128. Both radii together are (108² + 102²)/(2 × 102) = 108.18, the hollow's share is 0.6302: 36 + 0.6302 × 102 = 100.3, 20 + 0.6302 × 108 = 88.1.
    /// </summary>
    [Theory]
    [InlineData("88.1: 100.3 start of the horn's radius, 40")]
    [InlineData("128: 138 end of the horn's radius, 40")]
    [InlineData("128: 138 horn, furthest out")]
    public void HalfTemplate_OfARoundedCutaway_HasItsHorn(string words) => Assert.Contains(words, Drawn.One("cutaway", "half-template", "half-template-treble").Words());

    /// <summary>The pins stand in their order, the outer ones with their sides, and their words on the side where those lie.</summary>
    [Theory]
    [InlineData("right", -1)]
    [InlineData("left", 1)]
    public void Bridge_Pins_AreNumberedFromTheBass(string hand, int bassSide)
    {
        var sheet = Drawn.One("auditorium", "bridge-place", edit: t => t.Replace("handed = \"right\"", $"handed = \"{hand}\"", StringComparison.Ordinal));
        var numbers = sheet.Labels().Where(l => l.Part.StartsWith("bridge pin", StringComparison.Ordinal)).OrderBy(l => l.Bounds.Center.X * -bassSide).Select(l => l.Text).ToList();

        Assert.Equal(bassSide < 0 ? ["bass 6", "5", "4", "3", "2", "1 treble"] : ["6 bass", "5", "4", "3", "2", "treble 1"], numbers);
    }

    /// <summary>A ring too narrow for its name has it level, at a leader.</summary>
    [Fact]
    public void OutsidePlan_NarrowChannels_HaveLevelNamesAtLeaders()
    {
        var sheet = Drawn.One("classical", "outside-plan");
        foreach (var name in (string[])["rosette channel 1", "rosette channel 3"])
        {
            Assert.Equal(Angle.Zero, sheet.Label(name).Rotation);
            Assert.NotEmpty(sheet.Lines(name, Role.Dimension));
        }
    }

    /// <summary>Where there are tables alone nothing is measured off the paper.</summary>
    [Fact]
    public void Numbers_SayNothingOfABar()
    {
        var sheet = Drawn.One("auditorium", "numbers");

        Assert.DoesNotContain(sheet.Words(), w => w.Contains("measure the bar", StringComparison.Ordinal) || w == "100 mm");
        Assert.Contains(sheet.Words(), w => w.StartsWith("design ", StringComparison.Ordinal));
    }

    /// <summary>No line of a broken caution is shorter than half the longest.</summary>
    [Theory]
    [InlineData("tenor-ukulele")]
    [InlineData("octave-mandolin")]
    [InlineData("auditorium")]
    public void HalfTemplate_Cautions_AreBrokenInLinesNearlyAlike(string preset)
    {
        var lines = Drawn.One(preset, "half-template").Labels().Where(l => l.Part == "cautions").ToList();

        Assert.NotEmpty(lines);
        Assert.All(lines, l => Assert.True(l.Bounds.Width >= lines.Max(m => m.Bounds.Width) / 2, l.Text));
    }

    /// <summary>The widths of the bouts stand over the middle of their lines.</summary>
    [Theory]
    [InlineData("auditorium", "396 mm")]
    [InlineData("concert", "358 mm")]
    public void Bouts_StandInTheMiddle(string preset, string words) => Check.Near(0, Drawn.One(preset, "outside-plan").Label(words).Bounds.Center.X, 0.5, words);
}
