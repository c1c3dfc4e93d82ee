using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Tests.Parts;
using TopLayout.Tests.Parts.Braces;

namespace TopLayout.Tests.Checks;

public class SeamCheckTests
{
    /// <summary>
    /// The last bar lies 24 behind the hole of 86 mm, which begins at the board's end: fret 19 at 108.1, and 3; half its width of 6 further the
    /// joint lies open from 224.1 to the tail block's face, 487 less sides of 2 and a block of 15.
    /// </summary>
    [Fact]
    public void Joint_OpenBehindTheLastBar_IsRemarkedWithTheCleatsItWants()
    {
        var finding = Assert.Single(SeamCheck.Of(Built.Preset("classical", Bare)));

        Assert.Equal((Rules.SeamNotBridged, Severity.Remark), (finding.Rule, finding.Severity));
        Check.Near(470 - (Axis.Fret(650, 12, 19) + 3 + 86 + 24 + 3), finding.Measured!.Value.Value, 1e-6, "open piece");
        Assert.Equal("the longest open piece of the centre joint, 245.9 mm, lies between the ladder bar and the tail block; up to 90 mm is usual", finding.Sentence);
        Assert.Equal("put 2 cleats there: [cleats] with `row_from = 225` and `row_to = 470`", finding.Cure);
    }

    /// <summary>Bars of 6 at 300 and 385 leave 224.1 to 297, 303 to 382, and 388 to 470, which is the longest.</summary>
    [Fact]
    public void Joint_WithBarsAcrossIt_Passes()
    {
        var bars = "[[ladder_bar]]\nfrom_neck_edge = 300\nwidth = 6\n[[ladder_bar]]\nfrom_neck_edge = 385\nwidth = 6";
        var finding = Assert.Single(SeamCheck.Of(Built.Preset("classical", t => Bare(t).With(bars))));

        Assert.Equal(Severity.Pass, finding.Severity);
        Check.Near(82, finding.Measured!.Value.Value, 1e-6, "open piece");
    }

    private static string Bare(string text) => text.Without("[bridge_plate]").Without("[fan]").Without("[closing_bars]");
}
