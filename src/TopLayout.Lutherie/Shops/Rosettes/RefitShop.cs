using System.Collections.Immutable;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>Weighs every way to put a design's ring, or a salvaged one, round another hole, and tries each on the design's own text.</summary>
public static class RefitShop
{
    /// <summary>The report; or, in lower case without a full stop, why there is none.</summary>
    /// <param name="text">A design that is read and built without error.</param>
    /// <param name="file">Its name, for the places in findings.</param>
    /// <param name="diameter">Diameter of the new hole, mm.</param>
    /// <param name="salvaged">The ring to refit; null for the design's own.</param>
    public static (RefitReport? Report, string? Refusal) Weigh(string text, string file, double diameter, OldRing? salvaged)
    {
        var (layout, _) = Laid(text, file);
        if (layout is null)
        {
            return (null, "the design cannot be laid out as it is");
        }

        if (Refusal(layout, diameter) is { } refusal)
        {
            return (null, refusal);
        }

        // Filler lines belong to the hole they were laid for: what is refitted are the rings behind them.
        var (plain, objection) = RefitDesign.WithoutFillers(text, layout.Design);
        if (plain is null)
        {
            return (null, objection);
        }

        var hole = DesignEditor.Set(plain, Parameters.Table, Soundhole.Diameter.To(diameter));
        if (hole.Refusal is { } refused)
        {
            return (null, refused);
        }

        var (after, misfits) = Laid(hole.Text!, file);
        if (after is null)
        {
            return (null, $"with a hole of {Say.Mm(diameter)} {misfits[0].Sentence}");
        }

        return (Report(layout, salvaged ?? RingOf(Laid(plain, file).Layout!), after, hole.Text!, salvaged is not null), null);
    }

    private static RefitReport Report(Layout before, OldRing ring, Layout after, string text, bool isSalvaged)
    {
        var design = after.Design;
        var floor = after.Top.ThicknessMm - (isSalvaged ? design[Rosette.Depth].Value : Rosette.DeepestMm(design));
        var body = design.Find(Body.Type)?.Value;
        var margins = Rosette.Margin.UsualFor(body)!.Value;
        var refit = new RefitCase(ring, after.Hole.Radius!.Value, before.Design[Rosette.Margin].Value, floor, (inner, outer) => HiddenArc.Of(after, inner, outer))
        {
            UsualMarginMm = margins.High,
            FilledMarginMm = (margins.Low + margins.High) / 2,
            CanFill = isSalvaged || design.Each(Rings.Section).Length is > 0 and var rings && rings + KeepRing.MostFillers <= Rings.Section.Most,
        };
        var known = Checked(before);
        var (diameter, usual) = (2 * refit.HoleRadiusMm, Soundhole.Diameter.UsualFor(body)!.Value);
        return new RefitReport
        {
            Ring = ring,
            OldDiameterMm = 2 * before.Hole.Radius!.Value,
            NewDiameterMm = diameter,
            FloorMm = floor,
            Remark = diameter < usual.Low || diameter > usual.High ? Soundhole.Diameter.UsualPhrase(LengthUnit.Millimetre, body) : null,
            AirBeforeHz = AirResonance.Of(before),
            AirAfterHz = AirResonance.Of(after),
            Options = [.. RefitStrategy.Weighed(refit).Select(o => Tried(o, refit, text, design, isSalvaged, known)).OrderBy(t => t.Option.Verdict)],
        };
    }

    private static string? Refusal(Layout layout, double diameter)
    {
        var design = layout.Design;
        var possible = Soundhole.Diameter.Possible!.Value;
        return layout.Hole.Radius is null ? "the hole is not round, and rings are refitted to round holes only"
            : !design.Has(Rosette.Section) ? "the design has no [rosette], so there is no margin and no depth to go by"
            : diameter < possible.Low || diameter > possible.High ? $"the hole must be {Soundhole.Diameter.AllowedText()} across; it is {Say.Mm(diameter)}"
            : null;
    }

    /// <summary>The ring as the design has it: from the first inner wall to the last ring's outer edge.</summary>
    public static OldRing RingOf(Layout layout)
    {
        var radius = layout.Hole.Radius!.Value;
        var channels = Rosette.Channels(layout.Design, radius);
        var rings = channels.SelectMany(c => c.Rings).ToList();
        var inner = radius + channels[0].InnerMm;
        var whole = new OldRing(inner, rings.Count == 0 ? radius + channels[^1].OuterMm : radius + rings[^1].OuterMm);
        if (rings.Count == 0)
        {
            return whole;
        }

        var row = rings.Where(r => r.Tiles is not null).MaxBy(r => r.WidthMm);
        return whole with
        {
            WidestPieceMm = rings.Max(r => r.WidthMm),
            Tiles = row is null ? null : new OldTiles(row.Tiles!.Count, radius + row.InnerMm - inner, row.WidthMm)
            {
                Repeat = row.Tiles!.Repeat,
                RingNumber = row.Number,
                IsByLength = layout.Design.Each(Rings.Section)[row.Number - 1].Find(Rings.TileLength).HasValue,
            },
        };
    }

    private static TriedOption Tried(RefitOption option, RefitCase refit, string text, Design design, bool isSalvaged, IReadOnlyList<Finding> known)
    {
        if (option.Verdict == RefitVerdict.Refused)
        {
            return new TriedOption(option, null, []);
        }

        var (written, objection) = RefitDesign.With(text, design, refit, option, isSalvaged);
        if (written is null)
        {
            return Refused(option, objection!);
        }

        var (layout, misfits) = Laid(written, design.File);
        if (layout is null)
        {
            return Refused(option, misfits[0].Sentence);
        }

        var now = Checked(layout);
        return Judged(option, written, [.. now.Where(f => !IsIn(known, f))]) with { GoneFindings = [.. known.Where(f => !IsIn(now, f))] };
    }

    // Whether the same is said already, as gravely or more so.
    private static bool IsIn(IReadOnlyList<Finding> findings, Finding finding) =>
        findings.Any(f => f.Rule == finding.Rule && f.Subject == finding.Subject && f.Severity >= finding.Severity);

    // A check that now fails must be cured first, so the option cannot stand as it is.
    private static TriedOption Judged(RefitOption option, string text, ImmutableArray<Finding> added) =>
        added.FirstOrDefault(f => f.Severity == Severity.Fail) is { } worst && option.Verdict == RefitVerdict.Recommended
            ? new TriedOption(option with { Verdict = RefitVerdict.Workable, Reason = $"once this is cured: {worst.Sentence}" }, text, added)
            : new TriedOption(option, text, added);

    private static TriedOption Refused(RefitOption option, string why) => new(option with { Verdict = RefitVerdict.Refused, Reason = why }, null, []);

    private static IReadOnlyList<Finding> Checked(Layout layout) =>
        [.. Finding.Sorted(GrainCheck.Of(layout).Findings.Concat(LayoutChecks.Of(layout)).Where(f => f.Severity > Severity.Pass))];

    private static (Layout? Layout, ImmutableArray<Finding> Misfits) Laid(string text, string file)
    {
        var reading = DesignReader.Read(text, file, Parameters.Table);
        return reading.Design is { } design ? LayoutBuilder.Build(design) : (null, reading.Findings);
    }
}
