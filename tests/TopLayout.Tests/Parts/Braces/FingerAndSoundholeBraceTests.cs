using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts.Braces;

public class FingerAndSoundholeBraceTests
{
    /// <summary>The head's middle lies on the leg's side: half its width over sin 72° along the brace from the axis of the leg.</summary>
    [Theory]
    [InlineData(1, 74)]
    [InlineData(2, 74 + 46)]
    public void FingerBraces_Heads_ButtAgainstTheLegAtTheirDistance(int number, double fromCrossing)
    {
        var layout = Built.Preset("concert");
        var crossing = XBrace.Crossing(layout.Design, layout.Hole);

        // The leg runs 47° from the centre line towards the tail; the brace turns 72° outward and up from it.
        var (legX, legY) = (Axis.Sin(47), -Axis.Cos(47));
        var (x, y) = (Axis.Sin(47 + 72), -Axis.Cos(47 + 72));
        var along = 3.75 / Axis.Sin(72);
        foreach (var (name, side) in (ReadOnlySpan<(string, int)>)[("bass", -1), ("treble", 1)])
        {
            var brace = layout.Find($"finger brace {number}, {name}")!;
            Axis.Near(side * ((legX * fromCrossing) + (x * along)), crossing.Y + (legY * fromCrossing) + (y * along), Axis.Middle(brace, "head"), brace.Name);
            Assert.Contains($"X leg, {name}", brace.JoinedWith);
        }
    }

    [Fact]
    public void FingerBraces_Floating_StopShortOfTheLining()
    {
        var layout = Built.Preset("concert");

        var (head, tail) = Axis.Of(layout.Find("finger brace 2, treble")!, "head", "tail");
        Check.Near(0, layout.LiningLine.DistanceTo(tail + ((tail - head).Unit * 4)), 1e-6, "4 mm further on");
        Assert.True(layout.LiningLine.Contains(tail), "inside the linings");
    }

    [Fact]
    public void FingerBraces_LetIn_EndOnTheInsideOfTheSides()
    {
        var layout = Built.Preset("jumbo");
        foreach (var brace in layout.Members.Where(m => m.Name.StartsWith("finger brace", StringComparison.Ordinal)))
        {
            Check.Near(0, layout.InsideOfSides.DistanceTo(brace.Footprint.Edges.First(e => e.Label == "tail").Start), 1e-6, brace.Name);
            Assert.Contains("bass lining", brace.JoinedWith);
        }
    }

    [Fact]
    public void SoundholeBraces_Butted_RunFromTheTransverseBraceToTheLegThatPasses()
    {
        var layout = Built.Preset("jumbo");
        var (radius, centre) = (52.0, Axis.Fret(648, 14, 20) + 5 + 6 + 52);
        foreach (var (name, side, leg) in (ReadOnlySpan<(string, int, string)>)[("bass", -1, XBrace.TrebleLeg), ("treble", 1, XBrace.BassLeg)])
        {
            var brace = layout.Find($"soundhole brace, {name}")!;
            var upper = Axis.Middle(brace, "neck end");

            // The transverse brace's tail side: 20 before the hole, less half of 11.
            var y = -(centre - radius - 20 + 5.5);
            Axis.Near(side * (radius + 20 - ((y + centre) * Axis.Tan(4))), y, upper, brace.Name);
            Check.Near(0, layout.Find(leg)!.Footprint.Outer.DistanceTo(Axis.Middle(brace, "tail end")), 1e-9, $"{brace.Name}, lower end");
            Assert.Contains(leg, brace.JoinedWith);
        }
    }

    [Fact]
    public void SoundholeBraces_WithoutAnX_ButtAgainstTheLadderBarBelow()
    {
        var layout = Built.Preset("classical", t => t.With("[soundhole_braces]\nbeside_hole = 24"));

        Assert.Contains("ladder bar", layout.Find("soundhole brace, bass")!.JoinedWith);
    }

    [Fact]
    public void SoundholeBraces_Floating_LieEvenlyBesideTheHole()
    {
        var layout = Built.Preset("concert", t => t.Without("[hole_reinforcement]").With("[soundhole_braces]\nends = \"floating\"\nlength = 40\nbeside_hole = 14"));

        var hole = layout.Hole.Center.Y;
        var (upper, lower) = Axis.Of(layout.Find("soundhole brace, treble")!, "neck end", "tail end");
        Axis.Near(61, hole + 20, upper, "neck end");
        Axis.Near(61, hole - 20, lower, "tail end");
    }
}
