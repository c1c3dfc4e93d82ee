using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Checks;

/// <summary>The preset's sides are 2.1 and its linings 6.5 thick: 8.6 together. Its top is 2.8.</summary>
public class LedgeCheckTests
{
    [Theory]
    [InlineData("width = 2\npurfling_width = 1.5", 5.1, Severity.Pass)]
    [InlineData("width = 2.6\npurfling_width = 4.4", 1.6, Severity.Remark)]
    [InlineData("width = 3\npurfling_width = 5.6", 0, Severity.Fail)]
    public void Ledges_RoundTheEdge_LeaveTheWoodWorkedByHand(string lines, double left, Severity severity)
    {
        var finding = Assert.Single(Of(lines), f => f.Subject == "ledge");

        Check.Near(left, finding.Measured!.Value.Value, 1e-9, lines);
        Assert.Equal((Rules.LedgeLeaves, severity), (finding.Rule, finding.Severity));
    }

    /// <summary>A shallow purfling cuts no brace; binding of 2.6 takes 0.5 of the 6.5 in the lining, a purfling deeper than the top all of its ledge.</summary>
    [Theory]
    [InlineData("width = 2\npurfling_width = 4", null)]
    [InlineData("width = 2.6\npurfling_width = 4", 6.0)]
    [InlineData("width = 2.6\npurfling_width = 4\npurfling_depth = 3", 2.0)]
    public void Ledges_AtTheBraceEnds_CutWhatReachesInsideTheSides(string lines, double? left)
    {
        var finding = Of(lines).SingleOrDefault(f => f.Subject == "ledge and brace ends");

        Assert.Equal(left is null, finding is null);
        if (left is { } value)
        {
            Check.Near(value, finding!.Measured!.Value.Value, 1e-9, lines);
        }
    }

    /// <summary>The sides are 2.1: behind a binding of 5 the top ends 2.9 inside them, and every brace let into the linings reaches past it.</summary>
    [Theory]
    [InlineData("5", 2.9)]
    [InlineData("2", null)]
    public void OldLedge_WiderThanTheSides_SaysWhatReachesPastThePlate(string binding, double? past)
    {
        var layout = Built.Preset("auditorium", t => t.With($"[ledge]\nbinding = {binding}"));

        var finding = LedgeCheck.Of(layout).SingleOrDefault(f => f.Subject == "brace ends and plate");

        Assert.Equal(past, finding?.Measured?.Value is { } mm ? Math.Round(mm, 9) : null);

        // Glue holds them on the plate only.
        var (leg, plate) = (layout.Find(XBrace.BassLeg)!, layout.Body.PlateEdge);
        Assert.All(layout.GluedArea(leg).Edges, e => Assert.True(plate.Contains(e.PointAt(0.5)) || plate.DistanceTo(e.PointAt(0.5)) < 1e-6));
        Assert.Equal(past is not null, layout.GluedArea(leg).Area < leg.Footprint.Area - 1);
    }

    /// <summary>The top is 2.8 and the lining 4 high: the lining ends 6.8 down. A binding of 2.1 is as wide as the side.</summary>
    [Theory]
    [InlineData("width = 2.1\ndepth = 7.5", 0.7)]
    [InlineData("width = 2\ndepth = 7.5", null)]
    [InlineData("width = 2.5\ndepth = 6.8", null)]
    public void Ledge_BelowTheLining_OpensTheBox(string lines, double? beyond)
    {
        var layout = Built.Preset("auditorium", t => t.Replaced("height = 16", "height = 4").With($"[binding]\n{lines}"));

        var finding = LedgeCheck.Of(layout).SingleOrDefault(f => f.Subject == "binding ledge and side");

        Assert.Equal(beyond is null, finding is null);
        if (beyond is { } mm)
        {
            Check.Near(mm, finding!.Measured!.Value.Value, 1e-9, lines);
            Assert.Equal(Severity.Fail, finding.Severity);
        }
    }

    /// <summary>A new purfling behind an old binding of 2: the wider of the two reaches 3.5 in, and 5.1 of 8.6 are left; of 4 in all, 4.6.</summary>
    [Theory]
    [InlineData(2, 5.1)]
    [InlineData(4, 4.6)]
    public void Ledge_OldAndCut_IsJudgedOnceByTheWider(double old, double left)
    {
        var finding = Assert.Single(Of(FormattableString.Invariant($"width = 2\npurfling_width = 1.5\n[ledge]\nbinding = {old}")), f => f.Subject == "ledge");

        Check.Near(left, finding.Measured!.Value.Value, 1e-9, "wood left");
        Assert.Equal(Severity.Pass, finding.Severity);
    }

    [Fact]
    public void Ledge_ThatLeavesLittle_SaysWhatMendsIt()
    {
        var finding = Assert.Single(Of("width = 2.6\npurfling_width = 4.4"), f => f.Subject == "ledge");

        Assert.Equal("inside the ledge, 7 mm from the edge, 1.6 mm of sides and lining are left to glue to; 2 mm or more is usual", finding.Sentence);
        Assert.Equal("widen the lining by 0.4 mm or more, or narrow the purfling or the binding", finding.Cure);
    }

    [Fact]
    public void Ledges_OnThePlan_RunBesideTheOutline()
    {
        var layout = Built.Preset("auditorium", t => t.With("[binding]\nwidth = 2\npurfling_width = 1.5"));

        foreach (var (name, off) in (ReadOnlySpan<(string, double)>)[(Binding.LedgeName, 2), (Binding.PurflingName, 3.5)])
        {
            Assert.All(layout.FindMark(name)!.Line.Segments, s => Check.Near(off, layout.Outline.DistanceTo(s.PointAt(0.5)), 1e-6, name));
        }
    }

    private static IEnumerable<Finding> Of(string lines) => LedgeCheck.Of(Built.Preset("auditorium", t => t.With($"[binding]\n{lines}")));
}
