using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

public class LayoutTests
{
    public static TheoryData<string> Presets => new("auditorium", "classical", "concert", "jumbo", "straight-tongue", "tapered-tongue");

    /// <summary>
    /// Worked by hand for a hole of radius 51, a crossing 33 below it and 97° between the legs of 8 mm: clearance to the hole (51 + 33)·sin 48.5° − 51 − 4 = 7.9;
    /// the axis of a leg stands (y − y₀)·tan 48.5° from the centre line.
    /// </summary>
    [Fact]
    public void XBrace_WorkedExample_ClearanceAndOffsetsAgree()
    {
        var layout = Built.Preset("auditorium", text => text.Replace("diameter = 100", "diameter = 102", StringComparison.Ordinal));

        var leg = layout.Find(XBrace.TrebleLeg)!;
        var clearance = layout.Hole.ClearanceOf(leg.Footprint);
        var crossing = XBrace.Crossing(layout.Design, layout.Hole);
        Check.Near(7.9, clearance, 0.05, "clearance");
        Check.Near(50 * Math.Tan(48.5 * Math.PI / 180), XBrace.OffsetAt(layout.Design, layout.Hole, -crossing.Y + 50), 1e-9, "offset 50 mm below the crossing");
    }

    [Theory]
    [MemberData(nameof(Presets))]
    public void Bars_LetIntoTheLining_EndOnTheInsideOfTheSides(string preset)
    {
        var layout = Built.Preset(preset);
        foreach (var bar in layout.Members.Where(m => m.Kind == MemberKind.Bar))
        {
            foreach (var end in bar.Footprint.Edges.Where(e => e.Label is "upper end" or "lower end" or "bass end" or "treble end"))
            {
                Check.Near(0, layout.InsideOfSides.DistanceTo(end.Start), 1e-6, $"{bar.Name}, {end.Label}");
                Check.Near(0, layout.InsideOfSides.DistanceTo(end.PointAt(0.5)), 1e-6, $"{bar.Name}, {end.Label}, middle");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Presets))]
    public void Lines_InsideTheOutline_LieAtTheirDistanceAllRound(string preset)
    {
        var layout = Built.Preset(preset);
        var sides = layout.Design[Rim.SideThickness].Value;
        foreach (var s in layout.InsideOfSides.Segments)
        {
            Check.Near(sides, layout.Outline.DistanceTo(s.PointAt(0.37)), 1e-7, "inside of the sides");
        }

        foreach (var s in layout.LiningLine.Segments)
        {
            Check.Near(sides + layout.Design[Rim.LiningWidth].Value, layout.Outline.DistanceTo(s.PointAt(0.37)), 1e-7, "lining line");
        }
    }

    [Theory]
    [MemberData(nameof(Presets))]
    public void Members_Footprints_LieInsideTheOutline(string preset)
    {
        var layout = Built.Preset(preset);
        foreach (var member in layout.Members)
        {
            Assert.True(member.Footprint.Area > 0, member.Name);
            Assert.All(member.Footprint.Edges, e => Assert.True(
                layout.Outline.Contains(e.PointAt(0.5)) || layout.Outline.DistanceTo(e.PointAt(0.5)) < 1e-6, $"{member.Name}, {e.Label}"));
        }
    }

    [Fact]
    public void BridgePlate_BetweenTheLegs_KeepsItsFitGap()
    {
        var layout = Built.Preset("auditorium");
        var plate = layout.Find(BridgePlate.Name)!;
        foreach (var legName in (string[])[XBrace.BassLeg, XBrace.TrebleLeg])
        {
            var leg = layout.Find(legName)!;
            var gap = plate.Footprint.Outer.Vertices.Min(v => leg.Footprint.DistanceTo(v.Position));
            Check.Near(0.5, gap, 1e-9, legName);
        }
    }

    [Fact]
    public void ToneBar_Head_ButtsAgainstTheTrebleLeg()
    {
        var layout = Built.Preset("auditorium");
        var bar = layout.Find("tone bar 1")!;
        var head = bar.Footprint.Edges.Single(e => e.Label == "head");

        Assert.True(head.PointAt(0.5).X > 0, "the head lies on the treble side");
        Check.Near(0, layout.Find(XBrace.TrebleLeg)!.Footprint.Outer.DistanceTo(head.PointAt(0.5)), 1e-9, "head to leg");
    }

    [Fact]
    public void Hole_BehindTheFretboard_FollowsTheScale()
    {
        var before = Built.Preset("auditorium");
        var after = Built.Preset("auditorium", text => text.Replace("length = 645", "length = 655", StringComparison.Ordinal));

        var moved = Fretboard.EndFromNeckEdge(after.Design) - Fretboard.EndFromNeckEdge(before.Design);
        Check.Near(10 * (Math.Pow(2, -14 / 12.0) - Math.Pow(2, -20 / 12.0)), moved, 1e-9, "fretboard end");
        Check.Near(moved, before.Hole.Center.Y - after.Hole.Center.Y, 1e-9, "hole");
        Check.Near(moved, XBrace.Crossing(before.Design, before.Hole).Y - XBrace.Crossing(after.Design, after.Hole).Y, 1e-9, "X crossing");
    }

    [Fact]
    public void Linings_OfBothSides_MirrorEachOther()
    {
        var layout = Built.Preset("auditorium");
        var (bass, treble) = (layout.Find("bass lining")!.Footprint, layout.Find("treble lining")!.Footprint);

        Check.Near(treble.Area, bass.Area, 1e-6, "area");
        Assert.All(bass.Outer.Vertices, v => Check.Near(0, treble.Outer.DistanceTo(new Point2(-v.Position.X, v.Position.Y)), 1e-7, "mirrored corner"));
    }
}
