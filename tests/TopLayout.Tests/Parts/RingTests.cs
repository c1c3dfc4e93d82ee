using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Tests.Parts;

/// <summary>Rings from the hole outward: the channels they make, and what they may not say together.</summary>
public class RingTests
{
    private const string TwoChannels = """
        margin = 4
        depth = 1.4
        clearance = 0.1

        [[ring]]
        kind = "line"
        width = 0.6

        [[ring]]
        kind = "tiles"
        width = 5
        tile_length = 4
        wood = "sugar_maple"

        [[ring]]
        kind = "band"
        width = 2
        gap = 3

        """;

    /// <summary>By hand: 0.6 + 5 + 0.1 wide from 4; 3 of bare wood; 2 + 0.1 wide. The wall's circles are true circles about the hole's centre.</summary>
    [Fact]
    public void Rings_WithAGapBetween_MakeTwoChannelsWithTheClearanceInEach()
    {
        var layout = Built.Preset("auditorium", t => t.WithRosette(TwoChannels));

        var channels = layout.Members.Where(m => m.Kind == MemberKind.Channel).ToList();
        Assert.Equal(["rosette channel 1", "rosette channel 2"], channels.Select(c => c.Name));
        Assert.Equal([54, 59.7, 62.7, 64.8], channels.SelectMany(c => c.Footprint.Loops).Select(l => Math.Round(l.Bounds.Width / 2, 9)).Order());
        Assert.All(channels.SelectMany(c => c.Footprint.Loops), l => Assert.True(l.Bounds.Center.IsNear(layout.Hole.Center, 1e-9)));
    }

    /// <summary>By hand: the tiles' mean radius is 50 + 4 + 0.6 + 2.5 = 57.1; 2π·57.1 / 4 = 89.7, so 90 tiles.</summary>
    [Fact]
    public void TileLength_IsRoundedToAWholeNumberOfTiles()
    {
        var layout = Built.Preset("auditorium", t => t.WithRosette(TwoChannels));

        var tiles = Assert.Single(Rosette.Channels(layout.Design, 50).SelectMany(c => c.Rings), r => r.Kind == RingKind.Tiles);
        Assert.Equal(90, tiles.Tiles!.Count);
        Assert.Equal((4.6, 9.6), (Math.Round(tiles.InnerMm, 9), Math.Round(tiles.OuterMm, 9)));
    }

    /// <summary>By hand: 89.7 tiles of 4 mm are nearest to 90; in motifs of 4 to 88, of 7 to 91; of two woods by turns to 90.</summary>
    [Theory]
    [InlineData("", 90)]
    [InlineData("repeat = 4", 88)]
    [InlineData("repeat = 7", 91)]
    [InlineData("second_wood = \"ebony_african\"", 90)]
    [InlineData("repeat = 100", 100)]
    public void TileLength_WithAMotif_ClosesThePattern(string motif, int count)
    {
        var layout = Built.Preset("auditorium", t => t.WithRosette(TwoChannels.Replaced("tile_length = 4", "tile_length = 4\n" + motif)));

        Assert.Equal(count, Assert.Single(Rosette.Channels(layout.Design, 50).SelectMany(c => c.Rings), r => r.Kind == RingKind.Tiles).Tiles!.Count);
    }

    /// <summary>By hand: the line makes 54 to 54.7, 1.4 deep; the tiles, 1.1 deep, 54.7 to 59.8. They share the wall at 54.7, and each keeps its floor.</summary>
    [Fact]
    public void RingOfAnotherDepth_HasAChannelThatSharesTheWall()
    {
        var layout = Built.Preset("auditorium", t => t.WithRosette(TwoChannels.Replaced("tile_length = 4", "tile_length = 4\ndepth = 1.1")));

        var channels = layout.Members.Where(m => m.Kind == MemberKind.Channel).ToList();
        Assert.Equal([1.4, 1.1, 1.4], channels.Select(c => c.ThicknessMm));
        Assert.Equal([54, 54.7, 54.7, 59.8, 62.8, 64.9], channels.SelectMany(c => c.Footprint.Loops.Select(l => Math.Round(l.Bounds.Width / 2, 9)).Order()));
        var floors = ChannelFloorCheck.Of(layout).ToList();
        Assert.Equal([1.4, 1.7, 1.4], floors.Select(f => Math.Round(f.Measured!.Value.Value, 9)));
        Assert.Equal("depth = 1.1", Line(floors[1].Place!.Value.Line));
        Assert.Equal("depth = 1.4", Line(floors[0].Place!.Value.Line));

        string Line(int number) => Built.PresetText("auditorium").WithRosette(TwoChannels.Replaced("tile_length = 4", "tile_length = 4\ndepth = 1.1")).Split('\n')[number - 1];
    }

    /// <summary>A step down is cut with the deeper channel: every wall once, the outermost first, each as deep as its channel and what is levelled; the hole through 2.8, after that.</summary>
    [Fact]
    public void CutsOfChannelsThatShareAWall_NameItOnce()
    {
        var cuts = CutterSettings.Of(Built.Preset("auditorium", t => t.WithRosette(TwoChannels.Replaced("tile_length = 4", "tile_length = 4\ndepth = 1.1"))));

        Assert.Equal([64.9, 62.8, 59.8, 54.7, 54, 50], cuts.Select(c => Math.Round(c.RadiusMm, 9)));
        Assert.Equal([1.6, 1.6, 1.3, 1.6, 1.6, 2.8], cuts.Select(c => Math.Round(c.DepthMm, 9)));
    }

    [Fact]
    public void NoRings_OneChannelOfTheWidthWritten()
    {
        var layout = Built.Preset("auditorium", t => t.WithRosette());

        var channel = Assert.Single(layout.Members, m => m.Kind == MemberKind.Channel);
        Assert.Equal("rosette channel", channel.Name);
        Assert.Equal([54, 63], channel.Footprint.Loops.Select(l => l.Bounds.Width / 2).Order());
    }

    [Theory]
    [InlineData("depth = 1.4\n", "depth = 1.4\nwidth = 9\n", "the channel has a `width`, and rings that make it as wide as they are")]
    [InlineData("width = 0.6\n", "width = 0.6\ngap = 1\n", "the first ring has a `gap`; what lies between it and the hole is the rosette's `margin`")]
    [InlineData("tile_length = 4", "tile_length = 4\ntiles = 60", "the tiles are given by number and by length")]
    [InlineData("tile_length = 4\n", "", "it is not said how many tiles there are")]
    [InlineData("kind = \"tiles\"", "kind = \"band\"", "a band has no tiles")]
    [InlineData("kind = \"band\"", "kind = \"filler\"\nrepeat = 2", "a filler has no tiles")]
    [InlineData("tile_length = 4", "tiles = 45\nrepeat = 4", "45 tiles do not hold whole motifs of 4")]
    [InlineData("tile_length = 4", "tiles = 45\nrepeat = 3\nsecond_wood = \"ebony_african\"", "a motif of 3 tiles of two woods by turns would meet like beside like")]
    [InlineData("tile_length = 4", "tile_length = 0.8", "it takes 448 tiles of that length; 400 is the most")]
    [InlineData("tile_length = 4", "tiles = 45\nsecond_wood = \"ebony_african\"", "45 tiles of two woods by turns would meet like beside like")]
    public void Rings_ThatContradictThemselves_AreNamed(string from, string to, string sentence)
    {
        var misfits = Built.Misfits("auditorium", t => t.WithRosette(TwoChannels.Replaced(from, to)));

        Assert.Equal(sentence, Assert.Single(misfits).Sentence);
    }

    [Fact]
    public void Rings_WithoutARosette_AreNamed()
    {
        var misfits = Built.Misfits("auditorium", t => t.WithRosette(null).With("[[ring]]\nkind = \"line\"\nwidth = 1"));

        Assert.Equal("there are rings, and no [rosette] to say how far from the hole and how deep they lie", Assert.Single(misfits).Sentence);
    }
}
