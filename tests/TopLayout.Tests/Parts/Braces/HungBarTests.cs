using System.Globalization;
using TopLayout.Geometry;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts.Braces;

/// <summary>
/// Free bars told from other bars. The preset's hole ends at fret 20 (84.15 mm), 5, 6 and 100; its X crosses 33 below that at 97°, so that the
/// treble leg's axis passes 90 mm to the treble 90/tan 48.5° further.
/// </summary>
public class HungBarTests
{
    private static readonly double Crossing = Axis.Fret(645, 14, 20) + 5 + 6 + 100 + 33;

    private static Point2 OnLeg => new(90, -(Crossing + (90 / Axis.Tan(48.5))));

    /// <summary>From a place on the leg's axis its side lies 4 mm off, half its width, so 4/sin of the angle between the two along the bar.</summary>
    [Fact]
    public void Bar_AgainstALeg_BeginsOnTheLegsSide()
    {
        var layout = Auditorium("[[bar]]\nfrom = \"against the X leg, treble, 90 mm to the treble\"\nend_from_neck_edge = 290\nend_across = 150\nends = \"floating\"");

        var bar = layout.Find("bar 1")!;
        var along = (new Point2(150, -290) - OnLeg).Unit;
        var start = OnLeg + (along * (4 / Math.Abs(along.Cross(new Vec2(Axis.Sin(48.5), -Axis.Cos(48.5))))));
        Axis.Near(start.X, start.Y, Axis.Middle(bar, "bass end"), "butted end");
        Axis.Near(150, -290, Axis.Middle(bar, "treble end"), "free end");
        Assert.Contains(XBrace.TrebleLeg, bar.JoinedWith);
        Assert.Equal(Severity.Pass, Assert.Single(OverlapCheck.Of(layout)).Severity);
    }

    /// <summary>By an angle it runs on towards the tail; 30 long from the side, which its axis at 20° meets at 4/sin(48.5° − 20°) from the leg's.</summary>
    [Fact]
    public void Bar_AgainstALegByAnAngle_RunsFromItAsLongAsSaid()
    {
        var layout = Auditorium("[[bar]]\nfrom = \"against the X leg, treble, 60 mm to the treble\"\nangle = 20\nends = \"floating\"\nlength = 30", bare: true);

        var (start, end) = Axis.Of(layout.Find("bar 1")!, "neck end", "tail end");
        var leg = new Point2(60, -(Crossing + (60 / Axis.Tan(48.5))));
        var along = new Vec2(Axis.Sin(20), -Axis.Cos(20));
        var side = leg + (along * (4 / Axis.Sin(28.5)));
        Axis.Near(side.X, side.Y, start, "butted end");
        Axis.Near(side.X + (30 * along.X), side.Y + (30 * along.Y), end, "free end");
    }

    /// <summary>A ladder bar of 6 at 300 has its tail side at 303; a bar along the body meets it there, and ends in the lining.</summary>
    [Theory]
    [InlineData("ladder bar")]
    [InlineData("ladder bar 1")]
    public void Bar_BetweenALoneLadderBarAndTheRim_IsLetIntoTheLiningAtItsOtherEnd(string called)
    {
        var layout = Auditorium($"[[ladder_bar]]\nfrom_neck_edge = 300\nwidth = 6\n[[bar]]\nfrom = \"against the {called}, 3 cm to the bass\"\nangle = 0", bare: true);

        var bar = layout.Find("bar 1")!;
        Axis.Near(-30, -303, Axis.Middle(bar, "neck end"), "butted end");
        Assert.All(bar.Footprint.Edges.Where(e => e.Label == "tail end"), e => Check.Near(0, layout.InsideOfSides.DistanceTo(e.PointAt(0.5)), 1e-6, "rim end"));
        Assert.Equal(["bass lining", "ladder bar", "treble lining"], bar.JoinedWith.Order());
    }

    [Theory]
    [InlineData("12 mm below the tail of the tone bar 1", 0.0, -12)]
    [InlineData("at tail of tone bar 1, 20 mm to the bass", null, 0)]
    public void Bar_FromTheEndOfABar_LiesStraightBelowItUnlessItSaysHowFarAcross(string phrase, double? across, double along)
    {
        var layout = Auditorium($"[[bar]]\nfrom = \"{phrase}\"\nangle = 90\nends = \"floating\"\nlength = 16");

        var tail = Axis.Middle(layout.Find("tone bar 1")!, "tail");
        var centre = layout.Find("bar 1")!.Footprint.Bounds.Center;
        Axis.Near(across is null ? -20 : tail.X, tail.Y + along, centre, phrase);
    }

    /// <summary>The bar of 8 at 45° through (0, −300) has its tail side 4·√2 below its axis; 40 mm to the treble the axis lies 40 nearer to the tail.</summary>
    [Fact]
    public void Bar_BelowASlantingBar_IsMeasuredFromItsSideAtThatPlace()
    {
        var layout = Auditorium(
            "[[bar]]\nfrom = \"10 mm below bar 2, 40 mm to the treble\"\nangle = 90\nends = \"floating\"\nlength = 12\n"
            + "[[bar]]\nfrom_neck_edge = 300\nangle = 45\nwidth = 8\nends = \"floating\"\nlength = 160",
            bare: true);

        Axis.Near(40, -(340 + (4 * Math.Sqrt(2)) + 10), layout.Find("bar 1")!.Footprint.Bounds.Center, "centre");
    }

    /// <summary>It hangs on the leg, and on nothing else of the bracing.</summary>
    [Theory]
    [InlineData("angle = 97", "angle = 98", true)]
    [InlineData("below_hole = 33", "below_hole = 33.2", true)]
    [InlineData("angle = 69", "angle = 70", false)]
    [InlineData("behind_plate = 16", "behind_plate = 17", false)]
    public void Bar_AgainstALeg_MovesWithItAndWithNothingElse(string from, string to, bool moves)
    {
        const string bar = "[[bar]]\nfrom = \"against the X leg, treble, 90 mm to the treble\"\nend_from_neck_edge = 290\nend_across = 150\nends = \"floating\"";
        List<Vertex> Corners(Func<string, string> edit) => [.. Built.Preset("auditorium", t => edit(t).With(bar)).Find("bar 1")!.Footprint.Outer.Vertices];

        Assert.Equal(moves, !Corners(t => t).SequenceEqual(Corners(t => t.Replaced(from, to))));
    }

    [Fact]
    public void Bars_InAnyOrderOfTheFile_AreTheSame()
    {
        const string hung = "[[bar]]\nfrom = \"against the bar {0}, 320 mm from the neck edge\"\nend_from_neck_edge = 340\nend_across = 90\nends = \"floating\"\n";
        const string free = "[[bar]]\nfrom_neck_edge = 250\nacross = 12\nend_from_neck_edge = 390\nend_across = 20\nends = \"floating\"\n";
        var (first, last) = (Auditorium(string.Format(CultureInfo.InvariantCulture, hung, 2) + free, bare: true), Auditorium(free + string.Format(CultureInfo.InvariantCulture, hung, 1), bare: true));

        foreach (var (a, b) in ((string, string)[])[("bar 1", "bar 2"), ("bar 2", "bar 1")])
        {
            Assert.Equal(first.Find(a)!.Footprint.Outer.Vertices.ToList(), [.. last.Find(b)!.Footprint.Outer.Vertices]);
        }
    }

    [Fact]
    public void Bars_ThatHangOnEachOther_AreNamedOnceAndLeftOut()
    {
        var misfits = Misfits(
            "[[bar]]\nfrom = \"against the bar 2\"\nangle = 10\n[[bar]]\nfrom_neck_edge = 300\nto = \"5 mm above the bar 3, 9 mm to the bass\"\n"
            + "[[bar]]\nfrom = \"12 mm below the neck end of the bar 1\"\nangle = 80\n[[bar]]\nfrom = \"against the bar 3\"\nangle = 5");

        Assert.Equal(
            [
                ("bar 1 hangs on bar 2, bar 2 on bar 3, bar 3 on bar 1: none of them has a place; left out of the plan", "tell the place of one of them from a landmark, or in numbers", "from to from"),
                ("`from` of bar 4 starts from bar 3, and the top has none; left out of the plan", "bring that part onto the top, or start from another landmark", "from [[bar]]"),
            ],
            misfits);
    }

    [Theory]
    [InlineData("from = \"against the bar 1\"\nangle = 10", "bar 1 hangs on itself; left out of the plan", "tell the place of one of them from a landmark, or in numbers", "from")]
    [InlineData("from = \"against the tone bar 1\"\nto = \"against the tone bar 1\"", "bar 1 finds no room to run off from tone bar 1 that it butts against; left out of the plan", "set its points further apart, or turn it across tone bar 1", "to from")]
    [InlineData("from = \"at the saddle\"\nto = \"at the saddle\"", "the two points of bar 1 are 0 mm apart, less than its width; left out of the plan", "set them further apart, or give one point and `angle`", "to from")]
    [InlineData("from = \"against the bar 7\"\nangle = 10", "`from` of bar 1 starts from bar 7, and the top has none; left out of the plan", "bring that part onto the top, or start from another landmark", "from [[bar]]")]
    [InlineData("from = \"against the fan strut 2\"\nangle = 10", "`from` of bar 1 starts from fan strut 2, and the top has none; left out of the plan", "add the section [fan], or start from another landmark", "from [[bar]]")]
    [InlineData(
        "from = \"at the bass end of the tone bar 1\"\nangle = 10",
        "`from` of bar 1 names the bass end of tone bar 1, which has none; left out of the plan",
        "its ends are `tail` and `head`",
        "from angle")]
    [InlineData(
        "from = \"against the tone bar 1, 150 mm to the treble\"\nangle = 10",
        "`from` of bar 1 names a place of tone bar 1, 150 mm to the treble, where it does not pass; left out of the plan",
        "name one where it does, with `, 60 mm to the bass` or `to the treble`, or with `, 250 mm from the neck edge`",
        "from angle")]
    [InlineData(
        "from = \"against the tone bar 1\"\nto = \"0 mm below the tone bar 1\"",
        "bar 1 finds no room to run off from tone bar 1 that it butts against; left out of the plan",
        "set its points further apart, or turn it across tone bar 1",
        "to from")]
    public void Bar_ThatHangsOnNothing_IsLeftOutWithItsReason(string lines, string sentence, string cure, string keys) =>
        Assert.Equal((sentence, cure, keys), Assert.Single(Misfits($"[[bar]]\n{lines}")));

    // Each hangs on the next, the last on itself: no deep recursion, and each is left out for its own reason.
    [Fact]
    public void ManyBars_InOneChain_AreAllSaid()
    {
        const int count = 5000;
        var text = string.Concat(Enumerable.Range(1, count).Select(n => $"[[bar]]\nfrom = \"1 mm below bar {Math.Min(count, n + 1)}\"\nangle = 90\n"));

        Assert.Equal(count, Auditorium(text).Faults.Count(f => f.Rule == Rules.PartLeftOut));
    }

    private static Layout Auditorium(string sections, bool bare = false) => Built.Preset("auditorium", t => (bare ? Bare(t) : t).With(sections));

    private static string Bare(string text) => text.Without("[[tone_bar]]").Without("[[tone_bar]]").Without("[bridge_plate]");

    private static IEnumerable<(string Sentence, string? Cure, string Keys)> Misfits(string sections) =>
        Built.Misfits("auditorium", t => t.With(sections)).Where(m => m.Sentence.EndsWith("left out of the plan", StringComparison.Ordinal));
}
