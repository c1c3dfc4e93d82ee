using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

/// <summary>What a careful maker keeps to inside one section, stated here once more and not asked of the builders.</summary>
internal static class Coherence
{
    private static readonly Dictionary<Section, Func<Design, bool>> Agreements = new()
    {
        [Outline.Section] = IsOutline,
        [Teardrop.Section] = IsTeardrop,
        [Limits.Section] = AreLimits,
        [Soundhole.Section] = IsHole,
        [Rings.Section] = design => IsRing(design.Each(Rings.Section)[0]),
    };

    /// <summary>Whether the lines of a section agree with each other and with what is left to the body's defaults.</summary>
    public static bool Holds(Section section, BodyType? body, string lines)
    {
        if (!Agreements.TryGetValue(section, out var agrees))
        {
            return true;
        }

        var kind = body is { } type ? $"body = \"{Body.Word(type)}\"\n" : "";
        var reading = DesignReader.Read($"name = \"c\"\nunits = \"mm\"\n{kind}scale.length = 600\n{section.Header}\n{lines}", "c.toml", Parameters.Table);
        return reading.Design is { } design
            && agrees(design);
    }

    // Stations in order, a waist, and room for a quarter circle at each end.
    private static bool IsOutline(Design design)
    {
        double Of(Parameter<double> parameter) => design[parameter].Value;
        return Of(Outline.UpperAt) < Of(Outline.WaistAt)
            && Of(Outline.WaistAt) < Of(Outline.LowerAt)
            && Of(Outline.LowerAt) < Of(Outline.Length)
            && Of(Outline.WaistWidth) < Math.Min(Of(Outline.UpperWidth), Of(Outline.LowerWidth))
            && Of(Outline.UpperAt) <= (Of(Outline.UpperWidth) - Of(Outline.NeckFlat)) / 2
            && Of(Outline.Length) - Of(Outline.LowerAt) <= (Of(Outline.LowerWidth) - Of(Outline.TailFlat)) / 2;
    }

    // Room for a quarter circle at the tail.
    private static bool IsTeardrop(Design design) =>
        design[Teardrop.Length].Value - design[Teardrop.WidthAt].Value is > 0 and var tail
        && tail <= (design[Teardrop.Width].Value - design[Teardrop.TailFlat].Value) / 2;

    private static bool AreLimits(Design design) =>
        design[Limits.StopsBelow].Value <= design[Limits.RunsFrom].Value
        && design[Limits.NoteFrom].Value <= design[Limits.WarnFrom].Value
        && design[Limits.WarnFrom].Value <= design[Limits.FailFrom].Value;

    private static bool IsHole(Design design) => design.Get(Soundhole.Shape).Value == HoleShape.Round == !design.Find(Soundhole.Length).HasValue
        && (design[Soundhole.Liner].Value > 0 || !(design.Find(Soundhole.LinerOf).HasValue || design.Find(Soundhole.LinerLap).HasValue));

    // A ring alone in its channel: tiles by number or by length, two woods on an even number of them, motifs whole.
    private static bool IsRing(DesignSection ring)
    {
        var (tiles, length, second, repeat) = (ring.Find(Rings.Tiles), ring.Find(Rings.TileLength), ring.Find(Rings.SecondWood), ring.Find(Rings.Repeat));
        return ring[Rings.Gap].IsDefault
            && (ring.Get(Rings.Kind).Value == RingKind.Tiles
                ? tiles.HasValue != length.HasValue && (second is null || ((tiles?.Value ?? 0) % 2 == 0 && (repeat?.Value ?? 2) % 2 == 0)) && (repeat is null || (tiles?.Value ?? 0) % repeat.Value.Value == 0)
                : !tiles.HasValue && !length.HasValue && second is null && repeat is null);
    }
}
