using TopLayout.Drawing;

namespace TopLayout.Tests.Plans;

/// <summary>The templates of flat parts: what they are called, how many to make, and every size and place.</summary>
public class PartSheetTests
{
    [Theory]
    [InlineData("arc-chain", "cleat-1", "Cleats 1 to 4: make 4; template, full size")]
    [InlineData("arc-chain", "hole-reinforcement-bass", "Hole reinforcement, bass and treble: make 2; template, full size")]
    [InlineData("classical", "hole-reinforcement", "Hole reinforcement: template, full size")]
    public void Title_NamesAllPiecesAlikeAndHowMany(string preset, string name, string title) =>
        Assert.Contains(title, Drawn.One(preset, "parts", name).Words());

    /// <summary>By hand: the bridge plate's rear edge 310.6 + a gap of 3 + half of 16 is the first middle at the earliest; 42 from one to the next.</summary>
    [Fact]
    public void Places_OfAlikePieces_AreListedEach()
    {
        var words = Drawn.One("arc-chain", "parts", "cleat-1").Words();

        Assert.Contains("cleat 1: 321.6 to 337.6 mm from neck edge, middle on the centre line", words);
        Assert.Contains("cleat 2: 363.6 to 379.6 mm from neck edge, middle on the centre line", words);
        Assert.Contains("cleat 3: 405.6 to 421.6 mm from neck edge, middle on the centre line", words);
        Assert.Equal(4, words.Count(w => w.StartsWith("cleat ", StringComparison.Ordinal)));
    }

    /// <summary>By hand: hole of 101, inset 2, width 14: from 50.5 + 2 to 66.5 off the centre line on either side.</summary>
    [Fact]
    public void Places_OfPiecesOnBothSides_SayBassAndTreble()
    {
        var words = Drawn.One("arc-chain", "parts", "hole-reinforcement-bass").Words();

        foreach (var side in (string[])["bass", "treble"])
        {
            var place = Assert.Single(words, w => w.StartsWith($"hole reinforcement, {side}: ", StringComparison.Ordinal));
            Assert.EndsWith($"52.5 to 66.5 to {side} of the centre line", place, StringComparison.Ordinal);
        }
    }

    /// <summary>By hand: hole of 86, inset 1, width 11: 88 inside, 110 outside, round the hole's centre.</summary>
    [Fact]
    public void Sizes_OfARing_AreItsTwoDiametersAndItsCentre()
    {
        var words = Drawn.One("classical", "parts", "hole-reinforcement").Words();

        Assert.Contains("outside diameter 110 mm", words);
        Assert.Contains("inside diameter 88 mm", words);
        Assert.Contains("place: centre 154.1 mm from neck edge, on the centre line", words);
        Assert.Contains("1.5 mm thick, Engelmann spruce, quarter-sawn", words);
    }

    /// <summary>A bridge's slot, tie block and holes stand on its template: six holes 58 apart in all, 58 / 5 = 11.6 from one to the next.</summary>
    [Fact]
    public void Bridge_OfATieBlock_HasItsSlotAndTieHoles()
    {
        var sheet = Drawn.One("classical", "parts", "bridge");

        Assert.Contains("Bridge: template, full size", sheet.Words());
        Assert.Contains("tie block: 80 mm long, 12 mm from the rear edge", sheet.Words());
        Assert.Contains("dashed: 6 tie holes from bass to treble, one for each string: outer ones 58 mm apart, each 11.6 mm from the next", sheet.Words());
        Assert.Contains("tie holes: dia 1.6 mm, middles 4 mm above the top, drilled along the body, none through the top", sheet.Words());
        Assert.All(Enumerable.Range(1, 6), n => Assert.Single(sheet.Lines($"tie hole {n}", Role.Hidden)));
        Assert.Contains(Drawn.One("auditorium", "parts", "bridge").Words(), w => w.StartsWith("crosses: drilled later", StringComparison.Ordinal));
    }

    /// <summary>By hand: an X of 97 degrees opens by 2 · 40 · tan 48.5° = 90.4 over the plate's 40.</summary>
    [Fact]
    public void Sizes_OfATrapezoid_AreFrontRearAndDepth()
    {
        var words = Drawn.One("auditorium", "parts", "bridge-plate").Words();

        double Number(string before, string after) => double.Parse(
            Assert.Single(words, w => w.StartsWith(before, StringComparison.Ordinal) && w.EndsWith(after, StringComparison.Ordinal))[before.Length..^after.Length],
            System.Globalization.CultureInfo.InvariantCulture);
        Check.Near(90.4, Number("rear edge ", " mm") - Number("front edge ", " mm"), 0.11, "rear less front");
        Assert.Contains("40 mm", words);
    }

    [Fact]
    public void Blocks_AreDeepThroughTheRim() =>
        Assert.Contains("95 mm deep, through the rim, true mahogany", Drawn.One("auditorium", "parts", "neck-block").Words());

    /// <summary>Each size has a line with two arrows as long as it says, from edge to edge, its number over the middle.</summary>
    [Theory]
    [InlineData("classical", "bridge-plate", "140 mm", 140, false)]
    [InlineData("classical", "bridge-plate", "31 mm", 31, true)]
    [InlineData("classical", "hole-reinforcement", "inside diameter 88 mm", 88, false)]
    [InlineData("auditorium", "bridge-plate", "40 mm", 40, true)]
    [InlineData("concert", "cleat-1", "20 mm", 20, false)]
    public void Sizes_HaveADimensionLine(string preset, string name, string words, double length, bool isUpright)
    {
        var sheet = Drawn.One(preset, "parts", name);
        var label = sheet.Label(words);
        var lines = sheet.Lines("part measures", Role.Dimension).Where(l => !l.Contour.IsClosed).Select(l => l.Contour.Segments[0]).ToList();
        var line = Assert.Single(lines, l => Math.Abs(l.Length - length) < 1e-6 && Math.Abs(isUpright ? l.Start.X - l.End.X : l.Start.Y - l.End.Y) < 1e-9);
        var (middle, at) = (line.PointAt(0.5), label.Bounds.Center);

        Assert.Equal(2, sheet.Lines("part measures", Role.Dimension).Count(l => l.Contour.IsClosed && (l.Contour.DistanceTo(line.Start) < 1e-6 || l.Contour.DistanceTo(line.End) < 1e-6)));
        Check.Near(isUpright ? middle.Y : middle.X, isUpright ? at.Y : at.X, 0.5, "in the middle");
        Assert.True(isUpright ? label.Bounds.Min.X > middle.X : label.Bounds.Min.Y > middle.Y);
    }
}
