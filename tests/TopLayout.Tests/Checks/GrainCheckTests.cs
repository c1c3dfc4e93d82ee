using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Checks;

public class GrainCheckTests
{
    /// <summary>By hand: block 35 and tongue 60 in one line from the inside of the sides, less the 6 mm that the rim supports: 89 mm.</summary>
    [Fact]
    public void StraightTongue_InLineWithItsBlock_FailsOnBothFlanksOver89Mm()
    {
        var review = GrainCheck.Of(Built.Preset("straight-tongue"));

        foreach (var side in (string[])["bass", "treble"])
        {
            var finding = review.Findings.Single(f => f.Subject == $"tongue, {side} flank and neck block, {side} side");
            Assert.Equal(Severity.Fail, finding.Severity);
            Check.Near(89, finding.Measured!.Value.Value, 0.01, side);
            Assert.StartsWith(
                $"the {side} flank of the tongue and the {side} side of the neck block run along the grain for 89 mm without support, at 0° to it, "
                + $"8 mm to 97 mm from the neck edge on the grain line 30 mm to the {side} side; elsewhere the sides support it; flat-sawn black cherry (grain along) on quarter-sawn Sitka "
                + "spruce, glued at 60 % and used at 25 % humidity, 21 °C",
                finding.Sentence,
                StringComparison.Ordinal);
            Assert.Contains($"the {side} edge of the fretboard extension on the other face lies on the same grain line", finding.Sentence, StringComparison.Ordinal);
            Assert.StartsWith("taper the tongue (`shape = \"tapered\"`, `edge_angle = 15` or more)", finding.Cure, StringComparison.Ordinal);
            Check.Near(side == "bass" ? -30 : 30, finding.Where!.Value.From.X, 1e-6, "the mark lies on the flank");
        }
    }

    /// <summary>
    /// By hand: half of the tongue's 60 is straight now, and of the round tip the arc stays within 6 mm of the flank's line over 30·sin(acos(24/30))
    /// = 18 mm: 35 + 30 + 18 − 6 = 77, still far over 60.
    /// </summary>
    [Fact]
    public void StraightTongue_OnlyRoundedAtItsTip_StillFails()
    {
        var review = GrainCheck.Of(Built.Preset("straight-tongue", t => t.Replaced("shape = \"straight\"", "shape = \"straight-round\"")));

        foreach (var side in (string[])["bass", "treble"])
        {
            var finding = review.Findings.Single(f => f.Severity == Severity.Fail && f.Sentence.StartsWith($"the {side} flank and the tip of the tongue", StringComparison.Ordinal));
            Check.Near(77, finding.Measured!.Value.Value, 0.05, side);
            Assert.StartsWith("taper the tongue", finding.Cure, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TaperedTongue_SameTopMended_HasNoFailureAndNoWordOnTheTongue()
    {
        var review = GrainCheck.Of(Built.Preset("tapered-tongue"));

        Assert.DoesNotContain(review.Findings, f => f.Severity >= Severity.Warning);
        var tongue = review.Findings.Single(f => f.Subject == "tongue" && f.Rule == Rules.EdgeAlongGrain);
        Assert.Equal(Severity.Pass, tongue.Severity);

        // 2w/tan 16° with w 3 mm: the closed form for a straight flank between tangent curves.
        Check.Near(6 / Math.Tan(16 * Math.PI / 180), tongue.Measured!.Value.Value, 0.01, "run of the flank");
    }

    [Theory]
    [InlineData("sawing = \"flat\"", "", "how the fretboard extension, the bridge, the tongue, the bass lining and the treble lining are sawn is not said; the worse case was taken, flat-sawn")]
    [InlineData("wood = \"black_walnut\"", "wood = \"rosewood_indian\"", "how far Indian rosewood moves was worked out from its shrinkage from green to dry")]
    [InlineData("wood = \"black_walnut\"", "wood = \"rosewood_indian\"", "the wood table does not have the stiffness of Indian rosewood; the worst of the woods it knows was taken, American basswood or black cherry")]
    [InlineData("temperature = 21", "# temperature = 21", "the top by itself would shrink by 2.8 mm over its 338 mm of width")]
    [InlineData("glued_humidity = 60", "# glued_humidity = 60", "the season is not said by the design; taken were glued at 60 % and used at 25 % humidity, 21 °C; wood loses 5.6 % moisture between the two")]
    public void Assumptions_WhatTheDesignLeavesOpen_IsSaid(string from, string to, string expected)
    {
        var review = GrainCheck.Of(Built.Preset("straight-tongue", text => text.Replace(from, to, StringComparison.Ordinal)));

        Assert.Contains(expected, review.Assumptions);
    }

    [Fact]
    public void Season_ThatDoesNotDryTheTop_IsSaidAndJudgesNothing()
    {
        var review = GrainCheck.Of(Built.Preset("straight-tongue", text => text.Replace("used_humidity = 25", "used_humidity = 70", StringComparison.Ordinal)));

        var note = review.Findings.Single(f => f.Rule == Rules.SeasonDoesNotDry);
        Assert.Equal(Severity.Note, note.Severity);
        Assert.Equal(
            "the air in use, 70 %, is no drier than the air at gluing, 60 %: the grain check judges drying only, and no edge here; the top by itself would "
            + "grow by 1.1 mm over its 338 mm of width, and the bridge plate would curl it by 0.69 mm over its width",
            note.Sentence);
        Assert.DoesNotContain(review.Findings, f => f.Severity > Severity.Note);
    }

    [Fact]
    public void StraightTongue_QuarterSawnMapleGluedDry_IsNoFailureByItself()
    {
        var review = GrainCheck.Of(Built.Preset("straight-tongue", text => text
            .Replace("wood = \"black_cherry\"", "wood = \"sugar_maple\"", StringComparison.Ordinal)
            .Replace("sawing = \"flat\"", "sawing = \"quarter\"", StringComparison.Ordinal)));

        Assert.All(review.Sides.Where(s => s.Member == "tongue"), s => Assert.True(s.Severity < Severity.Fail, $"{s.Edge}: {s.Severity}"));
    }

    [Fact]
    public void Sides_EveryMemberThatRunsAlongTheGrain_IsListedWithItsNumber()
    {
        var review = GrainCheck.Of(Built.Preset("auditorium"));

        Assert.Contains(review.Sides, s => s.Member == "bass lining" && s.Edge == "inner edge" && s.RunMm > 50 && s.Severity == Severity.Pass);
        Assert.All(review.Sides, s => Assert.True(s.RunMm > 0, s.Member));
    }

    [Theory]
    [InlineData("auditorium")]
    [InlineData("classical")]
    [InlineData("concert")]
    [InlineData("jumbo")]
    [InlineData("straight-tongue")]
    [InlineData("tapered-tongue")]
    public void Review_SymmetricTop_MirrorsItself(string preset)
    {
        // Tone bars and saddle are the only parts of the presets that have no mirror image.
        var review = GrainCheck.Of(Built.Preset(preset));
        foreach (var name in (string[])["bass lining", "X leg, bass", "neck block", "fretboard extension", "bridge plate"])
        {
            var other = name.Replace("bass", "treble", StringComparison.Ordinal);
            double Longest(string member) => review.Sides.Where(s => s.Member == member).Select(s => s.RunMm).DefaultIfEmpty(0).Max();
            Check.Near(Longest(name), Longest(other), 1e-5, name);
        }
    }

    [Fact]
    public void Skew_OfOneHalf_ShiftsThatHalfsAnglesOnly()
    {
        var straight = GrainCheck.Of(Built.Preset("auditorium"));
        var skewed = GrainCheck.Of(Built.Preset("auditorium", text => text.Replace("skew_bass = 0 ", "skew_bass = 2 ", StringComparison.Ordinal)));

        double Angle(GrainReview review, string edge) => review.Sides.Single(s => s.Member == "fretboard extension" && s.Edge == edge).LeastAngle.Degrees;
        Check.Near(Angle(straight, "treble edge"), Angle(skewed, "treble edge"), 1e-9, "treble");
        Check.Near(Angle(straight, "bass edge"), Angle(straight, "treble edge"), 1e-9, "before");

        // The board's edge leans outward towards the tail by about 0.9°; so does the grain now, by 2°: 2° − 0.9° are left.
        Check.Near(2 - Angle(straight, "bass edge"), Angle(skewed, "bass edge"), 1e-6, "bass");
    }

    // Parts of the top's wood that are narrow, kerfed, or cross the grain pull on nothing to speak of, however long they run.
    [Theory]
    [InlineData("classical", "fan strut", 7, 50)]
    [InlineData("classical", "lining", 2, 50)]
    [InlineData("jumbo", "lining", 2, 50)]
    public void Sides_FanStrutsAndLinings_RunFarAndStayQuiet(string preset, string part, int members, double atLeast)
    {
        var review = GrainCheck.Of(Built.Preset(preset));
        var sides = review.Sides.Where(s => s.Member.Contains(part, StringComparison.Ordinal)).ToList();

        Assert.Equal(members, sides.Select(s => s.Member).Distinct().Count());
        Assert.True(sides.Max(s => s.RunMm) > atLeast, $"{sides.Max(s => s.RunMm):R}");
        Assert.All(sides, s => Assert.Equal(Severity.Pass, s.Severity));
        Assert.DoesNotContain(review.Findings, f => f.Severity > Severity.Pass && f.Sentence.Contains(part, StringComparison.Ordinal));
    }

    [Fact]
    public void RingInLineWithAChannelWall_IsOneNoteWithACureForARing()
    {
        var layout = Built.Preset("classical", t => t.WithRosette("margin = 5\nwidth = 12\ndepth = 1.2\n"));
        var found = GrainCheck.Of(layout).Findings.Where(f => f.Severity > Severity.Pass).ToList();

        var note = Assert.Single(found);
        Assert.Equal(
            "the walls of the rosette channel run along the grain for 53 and 47 mm at either side of the hole; they weaken the top there, and nothing pulls on them; "
            + "the outer edge of the hole reinforcement on the other face lies on the same grain line",
            note.Sentence);
        Assert.Equal(
            "move the rosette channel until its walls stand 6 mm or more from the edge on the same grain line; make the hole reinforcement wider or narrower, "
            + "until its edges stand 6 mm or more from that line",
            note.Cure);
    }

    [Fact]
    public void Run_SupportedElsewhere_SaysByWhatAndWhatTheLeversGive()
    {
        var review = GrainCheck.Of(Built.Preset("tapered-tongue", text => text.Replaced("sawing = \"quarter\"\n\n[outline]", "\n[outline]")));
        var finding = review.Findings.First(f => f.Subject == "fretboard extension, bass edge");

        Assert.Contains("; elsewhere the sides, the neck block and the upper transverse brace support it; flat-sawn (not said; the worse case) black walnut", finding.Sentence, StringComparison.Ordinal);
        Assert.Contains("saw the fretboard extension on the quarter (`sawing = \"quarter\"`): its mismatch 0.17 instead of 0.32, and a note is left", finding.Cure, StringComparison.Ordinal);
    }

    /// <summary>
    /// What the hints promise holds when each is done alone: quarter-sawing the board leaves all four failures; gluing at 45 % leaves two of the
    /// board, and warnings of the tongue.
    /// </summary>
    [Theory]
    [InlineData("past_last_fret = 5\n", "past_last_fret = 5\nsawing = \"quarter\"\n", "saw the fretboard extension", "by itself not enough", 4)]
    [InlineData("glued_humidity = 60", "glued_humidity = 45", "glue at 45 %", "by itself not enough; and a warning is left", 2)]
    public void Cure_OfWoodAndAir_ComesToWhatItSays(string from, string to, string lever, string said, int failures)
    {
        var fails = GrainCheck.Of(Built.Preset("straight-tongue")).Findings.Where(f => f.Severity == Severity.Fail).ToList();
        var outcomes = fails.Select(f => f.Cure!.Split("; ").Single(c => c.StartsWith(lever, StringComparison.Ordinal)).Split(", ")[^1]).Distinct();

        Assert.Equal(said, string.Join("; ", outcomes));
        var changed = GrainCheck.Of(Built.Preset("straight-tongue", t => t.Replaced(from, to))).Findings;
        Assert.Equal(failures, changed.Count(f => f.Severity == Severity.Fail));
        Assert.Equal(4 - failures, changed.Count(f => f.Severity == Severity.Warning));
    }

    /// <summary>A ring beside the hole is the same on both sides: so is its mark.</summary>
    [Theory]
    [InlineData("parlour")]
    [InlineData("jumbo")]
    [InlineData("auditorium")]
    [InlineData("concert")]
    [InlineData("tenor-ukulele")]
    public void ChannelNotes_OfASymmetricRing_AreMarkedOnBothSides(string preset)
    {
        var notes = GrainCheck.Of(Built.Preset(preset)).Findings.Where(f => f.Sentence.StartsWith("the walls of the rosette channel", StringComparison.Ordinal)).ToList();

        var marks = notes.SelectMany(f => f.AlsoAt.Prepend(f.Where!.Value)).Select(w => (X: Math.Round(w.From.X, 6), Y: Math.Round(w.From.Y, 6))).ToList();
        Assert.NotEmpty(marks);
        Assert.Equal(marks.Order(), marks.Select(m => (-m.X, m.Y)).Order());
        Assert.Equal(notes.Count == 1, notes[0].Sentence.Contains("at either side of the hole", StringComparison.Ordinal));
    }

    // Class B: a rigid part across the grain from 60 to 25 % would be 1; a plate of maple comes near, a thin brace of spruce less.
    [Fact]
    public void PartsAcrossTheGrain_HaveTheirNumberAndPass()
    {
        var held = GrainCheck.Of(Built.Preset("straight-tongue")).Findings.Where(f => f.Rule == Rules.HoldsTopWide).ToList();

        Assert.Contains(held, f => f.Subject == "bridge plate");
        Assert.All(held, f => Assert.Equal(Severity.Pass, f.Severity));
        Assert.All(held, f => Assert.InRange(f.Measured!.Value.Value, 0.5, 1.1));
        Assert.StartsWith("the bridge plate crosses the grain and holds the top wide: it loads the top under it to ", held.Single(f => f.Subject == "bridge plate").Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("auditorium")]
    [InlineData("classical")]
    [InlineData("concert")]
    [InlineData("jumbo")]
    [InlineData("straight-tongue")]
    [InlineData("tapered-tongue")]
    public void Sentences_OfEveryPreset_PromiseNothing(string preset)
    {
        var review = GrainCheck.Of(Built.Preset(preset));

        Assert.All(
            review.Findings.SelectMany(f => (string?[])[f.Sentence, f.Cure]).Concat(review.Assumptions).OfType<string>(),
            text => Assert.DoesNotMatch("(?i)\\bsafe|guarantee|never crack|% of", text));
    }
}
