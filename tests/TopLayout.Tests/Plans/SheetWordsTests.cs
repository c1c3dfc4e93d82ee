using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Sheets;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>What the sheets beside the plans say, and where.</summary>
public class SheetWordsTests
{
    /// <summary>Of a row of holes each has its number over or under it; the list at the side has the names; no leader runs through the row.</summary>
    [Theory]
    [InlineData("arc-chain")]
    [InlineData("auditorium")]
    public void DrillPoints_OfARow_HaveTheirNumbersBesideThem(string preset)
    {
        var (sheet, layout) = (Drawn.One(preset, "drill-points"), Built.Preset(preset));
        var pins = layout.DrillPoints.Where(BridgePins.IsPin).ToList();

        Assert.Equal(6, pins.Count);
        foreach (var (i, pin) in pins.Index())
        {
            var label = sheet.Label(NumberFormat.Whole(6 - i));
            Check.Near(pin.At.X, label.Frame.Bounds.Center.X, 0.01, label.Text);
            Assert.InRange(label.Frame.Bounds.Center.DistanceTo(pin.At), pin.RadiusMm, pin.RadiusMm + 6);
            Assert.Single(sheet.Words(), w => w.StartsWith($"bridge pin {NumberFormat.Whole(6 - i)}: ", StringComparison.Ordinal));
            Assert.DoesNotContain(sheet.Lines(pin.Name), s => s.Role == Role.Dimension);
        }

        Assert.Contains(sheet.Lines("bridge"), s => s.Emphasis == Emphasis.Faint);
        Assert.Contains(sheet.Lines("soundhole"), s => s.Emphasis == Emphasis.Faint);
    }

    [Theory]
    [InlineData("measured")]
    [InlineData("cutaway")]
    public void Outline_WidthsOfOneHalf_StandOnItsSide(string preset)
    {
        var labels = Drawn.One(preset, "outline").Labels().Where(l => l.Part == "half-widths" && l.Text.Contains(" at ", StringComparison.Ordinal)).ToList();

        Assert.Contains(labels, l => l.Text.Contains(", bass ", StringComparison.Ordinal));
        Assert.All(labels, l => Assert.True(l.Text.Contains(", bass ", StringComparison.Ordinal) == l.Bounds.Center.X < 0, l.Text));
    }

    /// <summary>A line beside the outline begins on it, or on the level line of the neck edge.</summary>
    [Theory]
    [InlineData("auditorium")]
    [InlineData("measured")]
    [InlineData("octave-mandolin")]
    public void Outline_LinesOfMeasures_BeginAtTheOutline(string preset)
    {
        var (sheet, layout) = (Drawn.One(preset, "outline"), Built.Preset(preset));
        var neck = Assert.Single(sheet.Lines("datum"));

        Assert.All(sheet.Lines("half-widths"), l =>
        {
            var start = l.Contour.Vertices[0].Position;
            Assert.True(Math.Min(layout.Outline.DistanceTo(start), neck.Contour.DistanceTo(start)) <= 2.1, $"{start} stands in the air");
        });
    }

    /// <summary>By hand: a neck flat of 60 is 30 to each side; the wall stands 36 off the centre line down to 20; a binding of 1.8 is left.</summary>
    [Theory]
    [InlineData("octave-mandolin", "flat, 30 to each side")]
    [InlineData("cutaway", "straight, 36 from the centre line, to 20 from neck edge")]
    [InlineData("measured", "edge of the plate: 1.8 mm inside the outer face of the rim")]
    [InlineData("measured", "outer face of the rim")]
    public void Outline_SaysWhatIsNoArc(string preset, string words) => Assert.Contains(words, Drawn.One(preset, "outline").Words());

    [Fact]
    public void Outline_OfAPlateInsideABinding_DashesTheRim()
    {
        var sheet = Drawn.One("measured", "outline");

        Assert.Single(sheet.Lines("outline", Role.Hidden));
        Assert.Single(sheet.Lines("plate edge", Role.Mark));
    }

    /// <summary>The arcs of the chain end at the places written for them in the preset.</summary>
    [Theory]
    [InlineData("14; 96.5")]
    [InlineData("79; 146.8")]
    [InlineData("192; 138")]
    [InlineData("384; 199")]
    public void Outline_EndsOfArcs_HaveTheirPlaces(string place) => Assert.Contains(place, Drawn.One("arc-chain", "outline").Words());

    [Theory]
    [InlineData("measured", "half-template-bass", "Half-template of the plate, 1.8 mm inside the rim's outer face, bass half, full size", "1.8: neck end of the plate", "bass half")]
    [InlineData("auditorium", "half-template", "Half-template of the plate, both halves alike, full size", "0: neck edge", "treble half; turn over for bass")]
    public void HalfTemplate_SaysOfWhatItIsHalf(string preset, string name, string title, string neck, string half)
    {
        var sheet = Drawn.One(preset, "half-template", name);

        Assert.Contains(title, sheet.Words());
        Assert.Contains(neck, sheet.Words());
        Assert.Contains(half, sheet.Words());
        Assert.DoesNotContain("BASS", sheet.Words());
    }

    [Theory]
    [InlineData("tenor-ukulele")]
    [InlineData("octave-mandolin")]
    [InlineData("auditorium")]
    public void HalfTemplate_Cautions_EndWhereTheTitleBlockDoes(string preset)
    {
        var sheet = Drawn.One(preset, "half-template");
        var frame = sheet.Lines("title block", Role.Text).MaxBy(s => s.Bounds.Width)!.Bounds;

        Assert.All(sheet.Labels().Where(l => l.Part == "cautions"), l => Assert.True(l.Bounds.Max.X <= frame.Max.X + 1e-6, l.Text));
    }

    /// <summary>By hand: 645 and the mean of 2 and 4.5 to the saddle, 7 on to the pins: 655.25, a half told away from zero. The slot's middle runs 10 behind the front edge on the centre line, half its width is 1.5; the ends lie as far up and down.</summary>
    [Fact]
    public void BridgePlace_OfAuditorium_HasItsPinsAndBothEndsOfTheSlot()
    {
        var words = Drawn.One("auditorium", "bridge-place").Words();

        Assert.Contains("locating pins 297.6 mm from neck edge, 655.3 mm from nut, 60 mm to each side, hole 3 mm", words);
        var slot = Assert.Single(words, w => w.StartsWith("slot 3 mm x 74 mm, 5 mm deep; front wall behind the front edge: ", StringComparison.Ordinal));
        Assert.EndsWith("10.2 mm at the bass end, 6.8 mm at the treble", slot, StringComparison.Ordinal);
        Check.Near(2 * (10 - 1.5), 10.2 + 6.8, 0.11, "the mean of both is the middle's");
        Assert.Equal(2, Drawn.One("auditorium", "bridge-place").Shapes.OfType<ContourShape>().Count(s => s.Part.StartsWith("locating pin", StringComparison.Ordinal) && s.Contour.IsClosed));
    }

    /// <summary>By hand: six pins over a spread of 55 stand 11 apart, 27.5 to each side; 13 behind the saddle, which lies 2 and 4.5 behind 645.</summary>
    [Fact]
    public void BridgePlace_OfAuditorium_HasBothOuterPins()
    {
        var words = Drawn.One("auditorium", "bridge-place").Words();

        Assert.Contains("outer treble pin 13 mm behind the saddle there, 27.5 mm from the centre line; 302.3 mm from neck edge, 660 mm from nut", words);
        Assert.Contains("outer bass pin 13 mm behind the saddle there, 27.5 mm from the centre line; 304.8 mm from neck edge, 662.5 mm from nut", words);
        Assert.Contains("6 pins, each 11 mm across from the next, on a straight line; holes 5 mm", words);
    }

    [Fact]
    public void BridgePlace_OfAClassical_HasItsTieBlock() =>
        Assert.Contains("tie block 12 mm x 80 mm, its front edge 16 mm behind the bridge's", Drawn.One("classical", "bridge-place").Words());

    [Theory]
    [InlineData("rosette")]
    [InlineData("rosette-enlarged")]
    public void Rosette_OfALinedHole_HasTheLiner(string kind)
    {
        var sheet = Drawn.One("arc-chain", kind);

        Assert.NotEmpty(sheet.Lines("soundhole liner"));
        Assert.Single(sheet.Words(), w => w.StartsWith("soundhole liner: 0.8 mm thick", StringComparison.Ordinal));
    }

    /// <summary>By hand: hole 52, the row of tiles from 56.6 to 65.3; a joint on the centre line is not hidden by it.</summary>
    [Theory]
    [InlineData("rosette", 1)]
    [InlineData("rosette-enlarged", 5)]
    public void Rosette_CentreLine_IsBrokenOverTheTiles(string kind, double times)
    {
        var (sheet, layout) = (Drawn.One("jumbo", kind), Built.Preset("jumbo"));
        var centre = kind == "rosette" ? layout.Hole.Center.Y : 0;

        Assert.All(sheet.Lines("centre line"), l => Assert.DoesNotContain(
            ((double[])[57, 61, 65]).Select(r => new Point2(0, (centre - r) * times)), p => l.Contour.DistanceTo(p) < 0.1));
    }

    [Fact]
    public void RosetteEnlarged_Section_IsHatchedAndTheHoleIsOutsideTheWood()
    {
        var sheet = Drawn.One("auditorium", "rosette-enlarged");
        var wood = Box2.Around(sheet.Lines("wood", Role.Hatch).Select(s => s.Bounds));

        Assert.True(sheet.Label("hole").Bounds.Max.X < wood.Min.X);
        Assert.Contains(sheet.Words(), w => w.StartsWith("Rosette, enlarged: outside face", StringComparison.Ordinal));
        Assert.True(sheet.Shapes.OfType<ContourShape>().Select(s => Pen.For(s).Colour).Distinct().Count() >= 4);
        Assert.DoesNotContain(sheet.Lines("ring names"), l => l.Contour.Segments.Any(s => Math.Abs(s.Start.X - s.End.X) < 1e-9));
    }

    [Theory]
    [InlineData("auditorium", "Rosette: disc, rings and tiles, full size")]
    [InlineData("arc-chain", "Rosette: disc of the hole, walls of the channel, full size")]
    public void RosetteTemplates_AreNamedByWhatIsThere(string preset, string title) => Assert.Contains(title, Drawn.One(preset, "rosette-templates").Words());

    [Theory]
    [InlineData("classical", "outside-plan", "channel wall")]
    [InlineData("classical", "inside-plan", "glued (linings too)")]
    public void Legend_SaysWhatIsDrawn(string preset, string kind, string words)
    {
        var sheet = Drawn.One(preset, kind);

        Assert.Contains(words, sheet.Words());
        Assert.DoesNotContain(sheet.Shapes, s => s.Part == "legend" && s.Role is Role.Cut or Role.Pocket && s.Part == "legend");
    }

    [Fact]
    public void CutAndMark_AreToldApartInBlack() => Assert.True(Pen.For(Role.Cut).WidthMm >= 2 * Pen.For(Role.Mark).WidthMm);

    /// <summary>What lies on the face that is seen is not dashed as what lies behind.</summary>
    [Fact]
    public void XCap_OnTheInsidePlan_IsOfThisFace() => Assert.Single(Drawn.One("auditorium", "inside-plan").Lines("X cap", Role.Mark));

    [Theory]
    [InlineData("arc-chain")]
    [InlineData("auditorium")]
    [InlineData("jumbo")]
    public void GlueArea_OfTheBridgePlate_IsAskewToAllItsEdges(string preset)
    {
        var plate = Built.Preset(preset).Members.Single(m => m.Name == "bridge plate").Footprint.Placed(new FaceView(TopFace.Inside, Hand.Right).Placement);
        var strokes = Drawn.One(preset, "inside-plan").Lines(GlueAreas.Part, Role.Hatch).SelectMany(s => s.Contour.Segments).Where(s => plate.Contains(s.PointAt(0.5))).ToList();

        Assert.NotEmpty(strokes);
        foreach (var edge in plate.Edges)
        {
            Assert.All(strokes, s => Assert.InRange(Math.Abs((s.End - s.Start).Unit.Cross((edge.End - edge.Start).Unit)), Math.Sin(14.9 * Math.PI / 180), 1));
        }
    }

    /// <summary>Remarks are broken at 90 mm; tables hang on columns that stand equally far apart.</summary>
    [Theory]
    [InlineData("jumbo")]
    [InlineData("classical")]
    [InlineData("auditorium")]
    public void Numbers_LongRemarks_AreBroken(string preset)
    {
        var sheet = Drawn.One(preset, "numbers");

        Assert.All(sheet.Labels().Where(l => l.Part is not "title block"), l => Assert.True(l.HeightMm > SheetBoard.TextMm || l.Bounds.Width <= 90.01, l.Text));
        var starts = sheet.Labels().Where(l => Math.Abs(l.HeightMm - 3.5) < 1e-9 && l.Part != "title block").Select(l => Math.Round(l.Anchor.X, 6)).Distinct().Order().ToList();
        var pitch = starts.Zip(starts.Skip(1)).Min(p => p.Second - p.First);
        Assert.All(starts, x => Check.Near(Math.Round(x / pitch), x / pitch, 1e-4, "column"));
        Assert.InRange(sheet.Page.Width, 400, 720);
    }

    /// <summary>The slot lies in the face glued to the top: dashed from inside, free of the hatching of glue, and on the block's template too.</summary>
    [Fact]
    public void TrussRodSlot_IsDashedAndNotGlued()
    {
        foreach (var (kind, name) in (ReadOnlySpan<(string, string)>)[("inside-plan", "inside-plan"), ("tongue", "tongue"), ("parts", "neck-block")])
        {
            var sheet = Drawn.One("tapered-tongue", kind, name);
            var slot = sheet.Shapes.OfType<ContourShape>().Where(s => s.Part == "truss-rod slot").ToList();
            Assert.NotEmpty(slot);
            Assert.All(slot, s => Assert.Equal(Role.Hidden, s.Role));
            var box = Box2.Around(slot.Select(s => s.Bounds)).Grown(-1);
            Assert.DoesNotContain(sheet.Shapes.OfType<ContourShape>(), s => s.Role == Role.Hatch && box.Overlaps(s.Bounds) && box.Contains(s.Contour.Segments[0].PointAt(0.5)));
        }

        Assert.Contains("dashed: truss-rod slot, 7 mm wide, 4 mm deep, in the face glued to the top", Drawn.One("tapered-tongue", "parts", "neck-block").Words());
    }
}
