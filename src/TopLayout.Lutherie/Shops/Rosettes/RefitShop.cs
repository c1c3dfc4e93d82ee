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

        if (Refusal(layout, diameter, salvaged) is { } refusal)
        {
            return (null, refusal);
        }

        var hole = DesignEditor.Set(text, Parameters.Table, Soundhole.Diameter.To(diameter));
        if (hole.Refusal is { } objection)
        {
            return (null, objection);
        }

        var (after, misfits) = Laid(hole.Text!, file);
        if (after is null)
        {
            return (null, $"with a hole of {Say.Mm(diameter)} {misfits[0].Sentence}");
        }

        return (Report(layout, after, hole.Text!, file, salvaged), null);
    }

    private static RefitReport Report(Layout before, Layout after, string text, string file, OldRing? salvaged)
    {
        var ring = salvaged ?? RingOf(before);
        var design = after.Design;
        var floor = after.Top.ThicknessMm - design[Rosette.Depth].Value;
        var body = design.Find(Body.Type)?.Value;
        var refit = new RefitCase(ring, after.Hole.Radius!.Value, design[Rosette.Margin].Value, floor, (inner, outer) => HiddenArc.Of(after, inner, outer))
        {
            UsualMarginMm = Rosette.Margin.UsualFor(body)!.Value.High,
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
            Options = [.. RefitStrategy.Weighed(refit).Select(o => Tried(o, Width(design, salvaged), text, file, known)).OrderBy(t => t.Option.Verdict)],
        };
    }

    private static string? Refusal(Layout layout, double diameter, OldRing? salvaged)
    {
        var design = layout.Design;
        var possible = Soundhole.Diameter.Possible!.Value;
        return layout.Hole.Radius is null ? "the hole is not round, and rings are refitted to round holes only"
            : !design.Has(Rosette.Section) ? "the design has no [rosette], so there is no margin and no depth to go by"
            : salvaged is not null && design.Has(Rings.Section) ? "the design has rings of its own; take them out to try a salvaged one"
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
                Repeat = row.SecondWood is null ? 1 : 2,
                RingNumber = row.Number,
                IsByLength = layout.Design.Each(Rings.Section)[row.Number - 1].Find(Rings.TileLength).HasValue,
            },
        };
    }

    // A salvaged ring makes the channel as wide as itself and the room for glue.
    private static RefitChange? Width(Design design, OldRing? salvaged) =>
        salvaged is null ? null : new RefitChange(Rosette.Width.To(salvaged.WidthMm + design[Rosette.Clearance].Value));

    private static TriedOption Tried(RefitOption option, RefitChange? width, string text, string file, IReadOnlyList<Finding> known)
    {
        if (option.Verdict == RefitVerdict.Refused)
        {
            return new TriedOption(option, null, []);
        }

        foreach (var change in width is { } wide ? option.Changes.Add(wide) : option.Changes)
        {
            var edit = DesignEditor.Set(text, Parameters.Table, change.Setting, change.Number);
            if (edit.Refusal is { } objection)
            {
                return Refused(option, objection);
            }

            text = edit.Text!;
        }

        var (layout, misfits) = Laid(text, file);
        return layout is null ? Refused(option, misfits[0].Sentence) : Judged(option, text, [.. Checked(layout).Where(f => !IsKnown(f))]);

        bool IsKnown(Finding f) => known.Any(k => k.Rule == f.Rule && k.Subject == f.Subject && k.Severity >= f.Severity);
    }

    // A check that now fails must be cured first, so the option cannot stand as it is.
    private static TriedOption Judged(RefitOption option, string text, ImmutableArray<Finding> added) =>
        added.FirstOrDefault(f => f.Severity == Severity.Fail) is { } worst && option.Verdict == RefitVerdict.Recommended
            ? new TriedOption(option with { Verdict = RefitVerdict.Workable, Reason = $"once this is cured: {worst.Sentence}" }, text, added)
            : new TriedOption(option, text, added);

    private static TriedOption Refused(RefitOption option, string why) => new(option with { Verdict = RefitVerdict.Refused, Reason = why }, null, []);

    private static IReadOnlyList<Finding> Checked(Layout layout) => [.. Finding.Sorted(LayoutChecks.Of(layout).Where(f => f.Severity > Severity.Pass))];

    private static (Layout? Layout, ImmutableArray<Finding> Misfits) Laid(string text, string file)
    {
        var reading = DesignReader.Read(text, file, Parameters.Table);
        return reading.Design is { } design ? LayoutBuilder.Build(design) : (null, reading.Findings);
    }
}
