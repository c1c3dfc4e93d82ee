using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts.Braces;

public class FanTests
{
    // Fretboard's end, hole of 86, ladder bar 24 below it and 6 wide.
    private static readonly double HoleFar = Axis.Fret(650, 12, 19) + 3 + 86;
    private static readonly double HeadLine = HoleFar + 24 + 3;
    private static readonly double BridgeRear = (650 * Math.Pow(2, -1)) + 1.75 - 8 + 28;

    [Fact]
    public void Struts_HeadsAndAngles_PartEvenlyAboutTheCentreLine()
    {
        var layout = Built.Preset("classical");
        for (var i = 0; i < 7; i++)
        {
            var strut = layout.Find($"fan strut {i + 1}")!;
            Axis.Near(20 * (i - 3), -HeadLine, Axis.Middle(strut, "head"), strut.Name);
            Check.Near(8.0 * (i - 3) / 3, strut.Grain.Degrees, 1e-9, $"{strut.Name}, angle");
            Assert.Contains("ladder bar", strut.JoinedWith);
            Assert.Contains(BridgePlate.Name, strut.JoinedWith);
        }

        Assert.Null(layout.Find("fan strut 8"));
    }

    [Fact]
    public void Struts_WithClosingBars_ButtAgainstThemButForTheMiddleOne()
    {
        var layout = Built.Preset("classical");
        foreach (var (number, bar) in (ReadOnlySpan<(int, string)>)[(1, "closing bar, bass"), (3, "closing bar, bass"), (5, "closing bar, treble"), (7, "closing bar, treble")])
        {
            var strut = layout.Find($"fan strut {number}")!;
            var tail = strut.Footprint.Edges.Single(e => e.Label == "tail");
            Check.Near(0, layout.Find(bar)!.Footprint.Outer.DistanceTo(tail.Start), 1e-9, strut.Name);
            Check.Near(0, layout.Find(bar)!.Footprint.Outer.DistanceTo(tail.End), 1e-9, strut.Name);
            Assert.Contains(bar, strut.JoinedWith);
        }

        // The tail block's face stands 2 + 15 before the tail, the strut 20 before it.
        Axis.Near(0, -(487 - 17 - 20), Axis.Middle(layout.Find("fan strut 4")!, "tail"), "the middle strut");
    }

    [Fact]
    public void Struts_WithoutClosingBars_StopShortOfTheLining()
    {
        var layout = Built.Preset("classical", t => t.Without("[closing_bars]"));

        var (head, tail) = Axis.Of(layout.Find("fan strut 7")!, "head", "tail");
        Check.Near(0, layout.LiningLine.DistanceTo(tail + ((tail - head).Unit * 20)), 1e-6, "20 mm further on");
        Check.Near(8, Math.Atan2(tail.X - head.X, head.Y - tail.Y) * 180 / Math.PI, 1e-7, "angle of the axis");
    }

    [Theory]
    [InlineData(1, new[] { 0.0 })]
    [InlineData(2, new[] { -10.0, 10 })]
    [InlineData(6, new[] { -50.0, -30, -10, 10, 30, 50 })]
    public void Struts_AnyNumber_StandEvenlyOnTheHeadLine(int count, double[] across)
    {
        var layout = Built.Preset("classical", t => t.Replaced("count = 7 ", $"count = {count} ").Replaced("head_behind_bar = 0 ", "head_below_hole = 40 "));

        var heads = layout.Members.Where(m => m.Name.StartsWith("fan strut", StringComparison.Ordinal)).Select(m => Axis.Middle(m, "head")).ToList();
        Assert.Equal(across.Length, heads.Count);
        for (var i = 0; i < across.Length; i++)
        {
            Axis.Near(across[i], -(HoleFar + 40), heads[i], $"strut {i + 1} of {count}");
        }
    }

    [Fact]
    public void Fan_Struts_MirrorEachOther()
    {
        var layout = Built.Preset("classical");
        foreach (var (bass, treble) in (ReadOnlySpan<(string, string)>)[("fan strut 1", "fan strut 7"), ("fan strut 3", "fan strut 5"), ("closing bar, bass", "closing bar, treble")])
        {
            var other = layout.Find(treble)!.Footprint.Outer;
            Assert.All(layout.Find(bass)!.Footprint.Outer.Vertices, v => Check.Near(0, other.DistanceTo(new Point2(-v.Position.X, v.Position.Y)), 1e-7, bass));
        }
    }

    /// <summary>The axes meet 100 behind the bridge; an inner end 8 from the centre line lies 8/tan 66° nearer to the neck.</summary>
    [Fact]
    public void ClosingBars_Axes_MeetBehindTheBridgeAndStopShort()
    {
        var layout = Built.Preset("classical");

        var (inner, outer) = Axis.Of(layout.Find("closing bar, treble")!, "inner end", "outer end");
        Axis.Near(8, -(BridgeRear + 100) + (8 / Axis.Tan(66)), inner, "inner end");
        Check.Near(66, Math.Atan2(outer.X - inner.X, outer.Y - inner.Y) * 180 / Math.PI, 1e-7, "angle");
        Check.Near(0, layout.LiningLine.DistanceTo(outer + ((outer - inner).Unit * 14)), 1e-6, "14 mm further on");
    }

    [Fact]
    public void ClosingBars_LetIn_EndOnTheInsideOfTheSides()
    {
        var layout = Built.Preset("classical", t => t.Replaced("stop_short = 14", "ends = \"lining\""));

        var end = layout.Find("closing bar, bass")!.Footprint.Edges.Where(e => e.Label == "outer end").ToList();
        Assert.NotEmpty(end);
        Assert.All(end, e => Check.Near(0, layout.InsideOfSides.DistanceTo(e.PointAt(0.5)), 1e-6, "outer end"));
    }
}
