using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Sheets;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>Where the marks of findings lie, and what the list under the plan says of them.</summary>
public class FindingMarkTests
{
    public static TheoryData<string> Presets => [.. Built.PresetNames];

    /// <summary>A mark of a round wall goes along it, 1.2 mm off it on the side of the wood, and never inside the channel, on both faces and for both hands.</summary>
    [Theory]
    [InlineData("concert", "grain", "right")]
    [InlineData("concert", "inside-plan", "right")]
    [InlineData("parlour", "grain", "right")]
    [InlineData("jumbo", "outside-plan", "left")]
    public void Marks_OfAChannel_GoAlongItsWalls(string preset, string kind, string hand)
    {
        var sheet = Drawn.One(preset, kind, edit: t => t.Replace("handed = \"right\"", $"handed = \"{hand}\"", StringComparison.Ordinal));
        var layout = Built.Preset(preset);
        var channels = layout.Members.Where(m => m.Kind == MemberKind.Channel).ToList();
        var arcs = sheet.Lines("grain run 1", Role.Finding).SelectMany(s => s.Contour.Segments).Where(s => s.IsArc).ToList();

        Assert.NotEmpty(arcs);
        Assert.DoesNotContain(sheet.Lines("grain run 1", Role.Finding).SelectMany(s => s.Contour.Segments), s => !s.IsArc && s.Length > 10);
        foreach (var p in arcs.SelectMany(a => ((double[])[0, 0.3, 0.5, 1]).Select(a.PointAt)))
        {
            Check.Near(1.2, channels.SelectMany(c => c.Footprint.Loops).Min(w => w.DistanceTo(p)), 1e-6, "off the wall");
            Assert.DoesNotContain(channels, c => c.Footprint.Contains(p));
        }
    }

    /// <summary>The pieces of edges that a run is told to lie on reach from end to end of it, but for gaps of 5 mm at most, and lie in its band of 3 mm.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void Traces_OfEveryRun_ReachFromEndToEnd(string preset)
    {
        var runs = GrainCheck.Of(Built.Preset(preset)).Findings.Where(f => f.Severity > Severity.Pass && f.Where is not null && !f.Traces.IsEmpty).ToList();

        Assert.NotEmpty(runs);
        foreach (var finding in runs)
        {
            Assert.Equal(1 + finding.AlsoAt.Length, finding.Traces.Length);
            foreach (var ((from, to), trace) in finding.AlsoAt.Prepend(finding.Where!.Value).Zip(finding.Traces))
            {
                var reached = from.Y;
                foreach (var box in trace.Select(s => s.Bounds()).OrderBy(b => b.Min.Y))
                {
                    Assert.InRange(box.Min.Y - reached, double.NegativeInfinity, 5.1);
                    reached = Math.Max(reached, box.Max.Y);
                    Assert.InRange(box.Center.X, from.X - 6.2, from.X + 6.2);
                }

                Check.Near(to.Y, reached, 0.5, $"{finding.Subject}: the neck end");
                Check.Near(from.Y, trace.Min(s => s.Bounds().Min.Y), 0.5, $"{finding.Subject}: the tail end");
            }
        }
    }

    /// <summary>Each line of the list says something else: its side, or its wall.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void List_OfMarks_SaysNothingTwice(string preset)
    {
        foreach (var kind in (string[])["grain", "outside-plan"])
        {
            var lines = Drawn.One(preset, kind).Labels().Where(l => l.Part == "findings").Select(l => l.Text[(l.Text.IndexOf(' ', StringComparison.Ordinal) + 1)..]).ToList();

            Assert.NotEmpty(lines);
            Assert.Equal(lines.Distinct(), lines);
        }
    }

    [Theory]
    [InlineData("concert", "2 note: rosette channel, treble side, outer wall 52 and hole-side wall 48 mm")]
    [InlineData("parlour", "1 note: rosette channel, both sides, hole-side wall/outer wall 69 and outer wall 50 mm")]
    [InlineData("parlour", "4 note: neck block, bass side, 32 mm")]
    public void List_SaysTheSideAndTheWall(string preset, string words) => Assert.Contains(words, Drawn.One(preset, "grain").Words());

    /// <summary>Marks of two numbers run nowhere so near each other that they read as one: straight ones 3 mm apart, those of walls 0.9 mm.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void Marks_OfTwoNumbers_DoNotMelt(string preset)
    {
        foreach (var kind in (string[])["grain", "inside-plan", "outside-plan"])
        {
            var marks = Marks(Drawn.One(preset, kind));
            foreach (var ((part, one), (other, two)) in marks.SelectMany(m => marks.Select(o => (m, o))).Where(p => string.CompareOrdinal(p.m.Part, p.o.Part) < 0))
            {
                var apart = one.Segments.Concat(two.Segments).Any(s => s.IsArc) ? 0.9 : 3;
                var melted = one.Segments.SelectMany(s => Enumerable.Range(0, (int)s.Length).Select(mm => s.PointAt(mm / s.Length))).Count(p => two.DistanceTo(p) < apart);
                Assert.True(melted <= 3, $"{kind}: {part} lies on {other} for {melted} mm");
            }
        }
    }

    /// <summary>A leader leaves its mark at a right angle, so that it runs along no edge, and each number stands nearer to its own mark than to any other.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void Numbers_StandByTheirMarks_AndLeadersGoAcross(string preset)
    {
        foreach (var kind in (string[])["grain", "inside-plan", "outside-plan"])
        {
            var sheet = Drawn.One(preset, kind);
            var marks = Marks(sheet);
            foreach (var number in sheet.Labels().Where(l => l.Role == Role.Finding && l.Part.StartsWith("grain run", StringComparison.Ordinal)))
            {
                var (own, others) = (marks.Where(m => m.Part == number.Part).ToList(), marks.Where(m => m.Part != number.Part).ToList());
                var leaders = sheet.Lines(number.Part, Role.Dimension).Where(s => !s.Contour.IsClosed).Select(s => s.Contour).ToList();
                if (own.Count > 0 && leaders.Count == 0)
                {
                    double To(IEnumerable<(string, Contour Line)> some) => some.Min(m => m.Line.DistanceTo(number.Bounds.Center));
                    Assert.True(others.Count == 0 || To(own) < To(others), $"{kind}: {number.Text} stands by another mark");
                }

                foreach (var leader in leaders)
                {
                    var foot = leader.Segments[^1].End;
                    var edge = own.SelectMany(m => m.Line.Segments).MinBy(s => s.DistanceTo(foot));
                    var along = edge.TangentAt(Math.Clamp(edge.NearestFraction(foot), 0, 1));
                    Check.Near(0, along.Dot((leader.Segments[^1].Start - foot).Unit), 0.01, $"{kind}: the leader of {number.Text}");
                }
            }
        }
    }

    /// <summary>By the drawings: on the octave mandolin each mark has a piece at the inner wall and a short one at the outer; on the ukulele two short ones.</summary>
    [Theory]
    [InlineData("octave-mandolin", "1", 2)]
    [InlineData("octave-mandolin", "2", 2)]
    [InlineData("tenor-ukulele", "1", 6)]
    [InlineData("straight-tongue", "3", 1)]
    public void Numbers_OfAMarkInPieces_StandAtEachPiece(string preset, string number, int pieces) =>
        Assert.Equal(pieces, Drawn.One(preset, "grain").Labels().Count(l => l.Part == "grain run " + number && l.Text == number));

    /// <summary>Whatever part the list under the grain sheet speaks of has its name on it.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void Parts_OfTheGrainSheet_HaveTheirNames(string preset)
    {
        var (sheet, grain) = (Drawn.One(preset, "grain"), GrainCheck.Of(Built.Preset(preset)));

        Assert.NotEmpty(grain.Sides);
        Assert.Subset(sheet.Words().ToHashSet(), grain.Sides.Select(s => s.Member).Concat(grain.Findings.SelectMany(f => f.Edges).Select(e => e.Part)).ToHashSet());
    }

    // The long lines of the marks; their grain lines are faint.
    private static List<(string Part, Contour Line)> Marks(Sheet sheet) =>
        [.. sheet.Shapes.OfType<ContourShape>()
            .Where(s => s.Part.StartsWith("grain run", StringComparison.Ordinal) && s.Role == Role.Finding && s.Emphasis != Emphasis.Faint && s.Contour.Length > 6.5)
            .Select(s => (s.Part, s.Contour))];

    /// <summary>By hand: over 60 stand 2 to 3, whose top lies from 2.2 to 2.4, and 6 alone; 4 to 5 stays under it.</summary>
    [Fact]
    public void Peaks_AreTheStretchesOverTheLimit()
    {
        Point2[] profile = [new(6, 61), new(1, 10), new(2, 60), new(2.2, 80), new(2.4, 80), new(3, 70), new(3.01, 20), new(4, 59.9), new(5, 59.9)];

        var peaks = ProfilePeaks.Of(profile, 60);

        Assert.Equal([(2, 3, 80), (6, 6, 61)], peaks.Select(p => (p.FromX, p.ToX, p.LengthMm)));
        Check.Near(2.3, peaks[0].TopX, 1e-12, "the middle of its top");
    }

    /// <summary>Every peak over 60 has its length, those of findings the mark too; the rest is said.</summary>
    [Theory]
    [InlineData("straight-tongue")]
    [InlineData("measured")]
    public void Peaks_OfAPlan_HaveTheirNumbers(string preset)
    {
        var sheet = Drawn.One(preset, "grain");
        var numbers = sheet.Labels().Where(l => l.Part == "grain profile" && (char.IsAsciiDigit(l.Text[0]) || l.Text.StartsWith("mark", StringComparison.Ordinal)) && !l.Text.Contains("and more", StringComparison.Ordinal)).ToList();
        var most = GrainCheck.Of(Built.Preset(preset)).Profile.Max(s => s.LongestMm);

        // The highest peak has its length, or the mark whose line in the list says another.
        Assert.Contains(numbers, l => l.Text.Split(',')[0] == NumberFormat.Trimmed(Math.Round(most), 0) || (preset == "measured" && l.Text is "mark 1"));
        Assert.Contains(ProfilePeaks.Unmarked, sheet.Words());
        if (preset == "straight-tongue")
        {
            Assert.Contains(sheet.Words(), w => w.StartsWith("115, marks 1 and 3", StringComparison.Ordinal));
            Assert.Contains(sheet.Words(), w => w.StartsWith("115, marks 2 and 4", StringComparison.Ordinal));
        }
    }
}
