using TopLayout.Geometry;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;
using TopLayout.Tests.Parts;
using Xunit.Abstractions;

namespace TopLayout.Tests.Checks;

public class GrainFindingsTests(ITestOutputHelper output)
{
    /// <summary>What a side of a part is judged by itself, a finding tells at least as severely: joined with other edges it is no milder.</summary>
    [Theory]
    [InlineData(20266, false, 400)]
    [InlineData(20267, true, 400)]
    public void Findings_OfRandomDesigns_TellEverySideAtLeastAsSeverelyAsItIsByItself(int seed, bool usual, int count)
    {
        var designs = new RandomDesigns(seed, usual);
        var told = 0;
        for (var n = 0; n < count; n++)
        {
            var text = designs.Next();
            if (DesignReader.Read(text, "drawn", Parameters.Table).Design is not { } design || LayoutBuilder.Build(design).Layout is not { } layout)
            {
                continue;
            }

            var review = GrainCheck.Of(layout);
            foreach (var side in review.Sides.Where(s => s.Pulls && s.Severity > Severity.Pass))
            {
                told++;
                Assert.True(
                    review.Findings.Any(f => f.Severity >= side.Severity && f.Sentence.Contains($"of {Say.TheLast(side.Member)}", StringComparison.Ordinal)),
                    $"seed {seed}, design {n}: {side} is told by none of\n{string.Join('\n', review.Findings.Where(f => f.Severity > Severity.Pass).Select(f => $"{f.Severity} {f.Sentence}"))}\n{text}");
            }
        }

        output.WriteLine($"{told} sides");
        Assert.True(told > count / 10);
    }

    /// <summary>
    /// A notched plate has two edges on one grain line, 70 and 50 mm long and 60 mm apart: a crack along the one is none along the other, which
    /// is judged by its own length.
    /// </summary>
    [Fact]
    public void Findings_TwoStretchesOfOneSideOnOneLine_AreJudgedEachByItself()
    {
        var layout = WithPlate(Contour.Polygon(
            new Point2(0, -900), new Point2(40, -900), new Point2(40, -720), new Point2(0, -720), new Point2(0, -770), new Point2(30, -770), new Point2(30, -830), new Point2(0, -830)));

        var left = GrainCheck.Of(layout).Findings.Where(f => f.Severity > Severity.Pass && f.Subject.StartsWith("plate", StringComparison.Ordinal) && Math.Abs(f.Where!.Value.From.X) < 1).ToList();

        Assert.Equal([(70, Severity.Fail), (50, Severity.Warning)], left.Select(f => (Math.Round(f.Measured!.Value.Value), f.Severity)));
    }

    /// <summary>A strip on each side of the hole: each side's walls are told with the strip of that side.</summary>
    [Theory]
    [InlineData("arc-chain")]
    [InlineData("concert")]
    public void ChannelNotes_WithAStripOnEachSide_AreTheMirrorOfEachOther(string preset)
    {
        var notes = GrainCheck.Of(Built.Preset(preset)).Findings.Where(f => f.Sentence.StartsWith("the walls of the rosette channel", StringComparison.Ordinal)).ToList();

        Assert.Equal(2, notes.Count);
        Assert.Equal(["bass", "treble"], notes.Select(f => f.Sentence.Contains("on the bass side of the hole", StringComparison.Ordinal) ? "bass" : "treble"));
        Assert.All(notes, f => Assert.Equal(2, f.AlsoAt.Prepend(f.Where!.Value).Count(w => w.From.X < 0 == notes.IndexOf(f) < 1)));
    }

    /// <summary>A bridge end that is nothing by itself lies in line with a strut and the plate: told once, with the longer run, and nothing that lies on the line supports it.</summary>
    [Fact]
    public void Findings_ShortRunInLineWithALongerOne_IsToldWithIt()
    {
        var findings = GrainCheck.Of(Built.Preset("tenor-ukulele")).Findings;
        var line = Assert.Single(findings, f => f.Severity > Severity.Pass && f.Sentence.Contains("bass end of the bridge on the other face", StringComparison.Ordinal));

        Assert.StartsWith("fan strut 1", line.Subject, StringComparison.Ordinal);
        Assert.DoesNotContain("elsewhere the bridge", line.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(findings, f => f.Rule != Rules.HoldsTopWide && (f.Subject.StartsWith("bridge, ", StringComparison.Ordinal) || f.Subject == "bridge"));
    }

    /// <summary>A wall and the hole side of a strip on one line: the strip is moved by its inset, and the longest wall is the measure.</summary>
    [Fact]
    public void ChannelNote_WithTheHoleSideOfAStrip_SaysToMoveItAndMeasuresTheLongestWall()
    {
        var note = GrainCheck.Of(Built.Preset("concert")).Findings.First(f => f.Sentence.StartsWith("the walls of the rosette channel", StringComparison.Ordinal));

        Assert.Contains("for 48 and 52 mm", note.Sentence, StringComparison.Ordinal);
        Check.Near(52.06, note.Measured!.Value.Value, 0.01);
        Assert.Contains("move the hole reinforcement, bass, off that line (`inset`)", note.Cure, StringComparison.Ordinal);
        Assert.Equal(48, Math.Round(note.Where!.Value.From.DistanceTo(note.Where.Value.To)));
    }

    // Of flat-sawn maple, far from all that could support it.
    private static Layout WithPlate(Contour outline)
    {
        var layout = Built.Preset("auditorium");
        var plate = new Member
        {
            Name = "plate",
            Kind = MemberKind.Plate,
            Face = TopFace.Inside,
            Footprint = Region.Inside(outline),
            ThicknessMm = 3,
            Material = new Material(WoodTable.Find("sugar_maple")!, GrainLie.InPlane, Sawing.Flat),
            Grain = Angle.Zero,
            Places = [layout.Members[0].Places[0]],
        };
        return new Layout
        {
            Design = layout.Design,
            Top = layout.Top,
            SkewBass = layout.SkewBass,
            SkewTreble = layout.SkewTreble,
            Body = layout.Body,
            InsideOfSides = layout.InsideOfSides,
            LiningLine = layout.LiningLine,
            Frets = layout.Frets,
            Saddle = layout.Saddle,
            Hole = layout.Hole,
            Members = [.. layout.Members, plate],
        };
    }
}
