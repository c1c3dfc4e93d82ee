using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>What refitting a ring writes into a design's text, edit by edit; each edit is refused rather than changing anything else.</summary>
internal static class RefitDesign
{
    /// <summary>The text without the filler lines inside its rings; the margin is as much wider, so that the rings stay where they are.</summary>
    public static (string? Text, string? Refusal) WithoutFillers(string text, Design design)
    {
        var fillers = Fillers(design);
        if (fillers.IsEmpty)
        {
            return (text, null);
        }

        var margin = Rosette.Margin.To(design[Rosette.Margin].Value + fillers.Sum(f => f[Rings.Width].Value));
        return InTurn(text, [.. fillers.Select(_ => (Func<string, DesignEdit>)(t => SectionEditor.RemoveFirst(t, Parameters.Table, Rings.Section))), t => Set(t, margin)]);
    }

    /// <summary>The text with an option; fillers are taken out of it already.</summary>
    /// <param name="text">The text with the new hole.</param>
    /// <param name="design">The design it says.</param>
    /// <param name="refit">What was weighed.</param>
    /// <param name="option">The option.</param>
    /// <param name="isSalvaged">Whether the ring is not the design's own, and takes the place of that.</param>
    public static (string? Text, string? Refusal) With(string text, Design design, RefitCase refit, RefitOption option, bool isSalvaged)
    {
        var edits = new List<Func<string, DesignEdit>>();
        if (isSalvaged)
        {
            edits.AddRange(design.Each(Rings.Section).Select(_ => (Func<string, DesignEdit>)(t => SectionEditor.RemoveFirst(t, Parameters.Table, Rings.Section))));
            edits.Add(t => SectionEditor.RemoveKey(t, Parameters.Table, Rosette.Width));
            edits.Add(t => Insert(t, Salvaged(refit.Ring, option)));
        }

        edits.AddRange(option.Changes.Select(c => (Func<string, DesignEdit>)(t => Set(t, c.Setting, c.Number))));
        if (option.RoomMm > 0)
        {
            edits.Add(t => Set(t, Rosette.Clearance.To(design[Rosette.Clearance].Value + option.RoomMm)));
        }

        var depth = isSalvaged || !design.Has(Rings.Section) ? null : design.Each(Rings.Section)[0].Find(Rings.Depth)?.Value;
        for (var i = 0; i < option.Fillers; i++)
        {
            edits.Add(t => Insert(t, [Rings.Kind.To(RingKind.Filler), Rings.Width.To(refit.FillerMm), .. depth is { } own ? [Rings.Depth.To(own)] : (Setting[])[]]));
        }

        return InTurn(text, edits);
    }

    /// <summary>The filler lines inside the rings, in one channel with the first of them; none when there is nothing else.</summary>
    public static ImmutableArray<DesignSection> Fillers(Design design)
    {
        var rings = design.Each(Rings.Section);
        var count = rings.TakeWhile(r => r.Get(Rings.Kind).Value == RingKind.Filler).Count();
        if (count == rings.Length)
        {
            return [];
        }

        double Depth(DesignSection ring) => ring.Find(Rings.Depth)?.Value ?? design[Rosette.Depth].Value;
        var isOneChannel = rings.Skip(1).Take(count).All(r => r[Rings.Gap].Value == 0 && Math.Abs(Depth(r) - Depth(rings[0])) <= Tolerances.TouchMm);
        return isOneChannel ? rings[..count] : [];
    }

    private static Setting[] Salvaged(OldRing ring, RefitOption option) => ring.Tiles is { } tiles
        ? [Rings.Kind.To(RingKind.Tiles), Rings.Width.To(ring.WidthMm), Rings.Tiles.To(option.Tiles ?? tiles.Count)]
        : [Rings.Kind.To(RingKind.Band), Rings.Width.To(ring.WidthMm)];

    private static DesignEdit Insert(string text, IReadOnlyList<Setting> settings) => SectionEditor.Insert(text, Parameters.Table, settings, Rosette.Section);

    private static DesignEdit Set(string text, Setting setting, int number = 1) => DesignEditor.Set(text, Parameters.Table, setting, number);

    private static (string? Text, string? Refusal) InTurn(string text, IEnumerable<Func<string, DesignEdit>> edits)
    {
        foreach (var edit in edits)
        {
            var edited = edit(text);
            if (edited.Refusal is { } objection)
            {
                return (null, objection);
            }

            text = edited.Text!;
        }

        return (text, null);
    }
}
