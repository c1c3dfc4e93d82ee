using TopLayout.Plans.Reports;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>The numbers of the hole's edge and of what lies round it, as a maker reads them.</summary>
public class HoleNumbersTests
{
    /// <summary>
    /// By hand, hole 50, liner 1.5: its middle line runs at 49.25, so 309.45 mm, and 324.45 with a lap of 15. Its inner face at 48.5: strain
    /// 0.75 / 49.25 = 1.52 %.
    /// </summary>
    [Theory]
    [InlineData("", "309.45", "on its middle line; its ends butt", "bend strain 1.52 %: bend it hot first, the iron burns")]
    [InlineData("liner_lap = 15", "324.45", "on its middle line, with a lap of 15 mm: taper both ends over it", "bend strain 1.52 %: bend it hot first, the iron burns")]
    [InlineData("liner_of = \"sheet\"", "309.45", "on its middle line; its ends butt", "bend strain 1.52 %: warm it in hot water; solvents and flames are a danger with plastic sheet: air, no flame")]
    public void Liner_HasItsStripAndWhatBendingAsks(string line, string length, string remark, string bending)
    {
        var rows = Rows($"diameter = 100\nliner = 1.5\n{line}\n");

        Assert.Equal([length, remark], rows["soundhole liner, length of the strip"]);
        Assert.Equal(["48.50", bending], rows["soundhole liner, tightest inner radius"]);
    }

    [Fact]
    public void LinerLap_WithoutALiner_IsNamed() => Assert.Equal(
        "it is said what the liner is of, or how it laps, and there is no liner",
        Assert.Single(Built.Misfits("auditorium", t => t.Replaced("diameter = 100", "diameter = 100\nliner_lap = 10"))).Sentence);

    /// <summary>By hand: the channel lies 4 to 13 from the hole. A plate from 1 to 17 covers 3 and 4 past its walls; to 15 only 2; to 13.5 ends half a mm off its outer wall.</summary>
    [Theory]
    [InlineData(16, "; the hole reinforcement covers both walls")]
    [InlineData(14, "; the hole reinforcement reaches 2 mm past the walls, which carries the floor; 3 mm are usual where there is room")]
    [InlineData(12.5, "; an edge of the hole reinforcement lies under a wall: move it")]
    public void Depth_SaysWhatTheReinforcementDoesForTheFloor(double width, string said)
    {
        var rows = Rows("diameter = 100\n", FormattableString.Invariant($"[hole_reinforcement]\nstyle = \"ring\"\ninset = 1\nwidth = {width}"));

        Assert.Equal(["1.40", "below the finished face; 1.6 mm when cut, 0.2 mm of it levelled off; leaves a floor of 1.4 mm" + said], rows["rosette channel, depth"]);
    }

    /// <summary>By hand, board's end 6 from the hole, so 56 from its centre: a ring from 54 reaches past it, but its inner edge does not; one from 60 hides; one to 55.5 shows.</summary>
    [Theory]
    [InlineData("margin = 4\nwidth = 9\ndepth = 1.4\n", "to the board's edges: too little to hide a joint; level the ring there, or relieve the underside of the board")]
    [InlineData("margin = 12\nwidth = 3\ndepth = 1.4\n", "hides joints and gaps; level the ring there, or relieve the underside of the board")]
    [InlineData("margin = 4\nwidth = 1.5\ndepth = 1.4\n", "the whole ring shows: fit it exactly, its joint at the neck end")]
    public void Ring_AtTheBoardsEnd_HidesOrShows(string rosette, string said)
    {
        var layout = Built.Preset("auditorium", t => t.WithRosette(rosette));

        var rows = HoleNumbers.Rows(layout).Select(r => r.Select(c => CellText.Of(c, layout.Design.Units)).ToList()).Where(r => r[0].StartsWith("ring", StringComparison.Ordinal)).ToList();
        Assert.Equal(said, rows[^1][2]);

        // A length of nothing is no row.
        Assert.Equal(said.StartsWith("hides", StringComparison.Ordinal), rows.Exists(r => r[0].StartsWith("ring's middle line hidden 3 mm", StringComparison.Ordinal)));
        Assert.Equal(said.StartsWith("the whole", StringComparison.Ordinal), rows.Exists(r => r[1] == "none"));
        Assert.DoesNotContain(rows, r => r[1] == "0.00");
    }

    private static Dictionary<string, string[]> Rows(string hole, string sections = "")
    {
        var layout = Built.Preset("auditorium", t => t.WithRosette().Replaced("diameter = 100\n", hole).Replaced("[season]", sections + "\n\n[season]"));
        return HoleNumbers.Rows(layout).ToDictionary(r => CellText.Of(r[0], layout.Design.Units), r => r.Skip(1).Select(c => CellText.Of(c, layout.Design.Units)).ToArray());
    }
}
